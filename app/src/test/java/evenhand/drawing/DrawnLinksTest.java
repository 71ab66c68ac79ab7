package evenhand.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.car.Side;
import evenhand.catalogue.Adjustable;
import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Outline;
import evenhand.linkage.Assembly;
import evenhand.linkage.AxleLinkage;
import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.ScenarioWriter;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.Wheel;
import java.awt.geom.Rectangle2D;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Measured links in the drawings of the car: they stand where they were measured, and go with what they are fixed to. */
class DrawnLinksTest {
    private static final Scenario TOURER = Demo.read("sluice-tourer");
    private static final int AS_MEASURED = 0;
    private static final int LET_DOWN = 2;

    private static Setup setup(int index) {
        return TOURER.setups().get(index);
    }

    private static Stance turning(int index, Direction direction) {
        PaceAnswer pace = DrawingTest.turn(setup(index), direction).paces().get(0);
        return DrawingTest.stance(TOURER, index).turning(((PaceAnswer.InBalance) pace).row());
    }

    private static List<Rectangle2D> drawn(Drawing drawing, Ink ink) {
        return drawing.items().stream()
                .flatMap(item -> item instanceof Outline outline && outline.ink() == ink
                        ? Stream.of(outline.path().getBounds2D())
                        : Stream.empty())
                .toList();
    }

    private static void assertPivot(Drawing drawing, double x, double z) {
        assertThat(drawn(drawing, Ink.PIVOT)).anySatisfy(place -> {
            assertThat(place.getCenterX()).isCloseTo(x, within(1e-9));
            assertThat(place.getCenterY()).isCloseTo(z, within(1e-9));
        });
    }

    @Test
    void jointsOnTheBodyStandWhereTheyWereMeasuredAndComeDownWithIt() {
        for (int index : new int[] {AS_MEASURED, LET_DOWN}) {
            double down = index == LET_DOWN ? 0.025 : 0;
            Stance rest = DrawingTest.stance(TOURER, index);
            double l = rest.car().wheelbase();
            Drawing side = SideView.of(rest, DrawingTest.METRIC, List.of());
            assertPivot(side, l - 0.905, 0.420 - down); // the torque arm's hanger
            assertPivot(side, 0.018, 0.842 - down); // the strut's top, 18 mm behind the line
            assertPivot(TopView.of(rest, DrawingTest.METRIC), l - 0.450, 0.480); // the right lower link
            assertPivot(RearView.of(rest, End.REAR, DrawingTest.METRIC, List.of()), 0.400, 0.560 - down);
        }
    }

    /** The body's outline comes down with its links: let down, and under a load. */
    @Test
    void theBodyComesDownAsFarAsItsLinks() {
        Setup setup = setup(LET_DOWN);
        LoadCase load = new LoadCase("two more", List.of(new LoadCase.Added("two", 150, 1.8, 0.6)));
        for (Optional<LoadCase> aboard : List.of(Optional.<LoadCase>empty(), Optional.of(load))) {
            Stance measured = DrawingTest.stance(TOURER, AS_MEASURED);
            Stance stance = Stance.laden(setup.name(), 0, setup.car(), aboard, setup.entries());
            double hanger = hanger(measured) - hanger(stance);
            assertThat(hanger).isGreaterThan(aboard.isPresent() ? 0.04 : 0.0249);
            assertThat(sill(measured) - sill(stance)).isCloseTo(hanger, within(1e-9));
        }
    }

    /** Height of the torque arm's hanger, the highest pivot on the middle of the car. */
    private static double hanger(Stance stance) {
        return drawn(RearView.of(stance, End.REAR, DrawingTest.METRIC, List.of()), Ink.PIVOT).stream()
                .filter(place -> Math.abs(place.getCenterX() + 0.06) < 1e-9)
                .findFirst()
                .orElseThrow()
                .getCenterY();
    }

    private static double sill(Stance stance) {
        return drawn(RearView.of(stance, End.REAR, DrawingTest.METRIC, List.of()), Ink.BODY)
                .get(0)
                .getMinY();
    }

    private static LinksView.Axle axle(Setup setup, End end, List<Drawing.Reading> readings) {
        AxleLinkage axle =
                ((Assembly.Standing) Assembly.of(setup.car().linked(end).orElseThrow())).linkage();
        axle.rest();
        return new LinksView.Axle(
                Stance.atRest(setup.name(), 0, setup.car(), setup.entries()),
                end,
                axle.lines(),
                axle.lines(),
                "at rest",
                "",
                Set.of(),
                setup.values(),
                readings,
                DrawingTest.METRIC);
    }

    static Drawing behind(Setup setup, List<Drawing.Reading> readings) {
        return LinksView.behind(axle(setup, End.REAR, readings));
    }

    /** Every point of the file can be pulled, is where it was measured, and grows towards where its coordinate counts. */
    @Test
    void everyMeasuredPointHasItsHandleWhereItWasMeasured() {
        Setup setup = setup(AS_MEASURED);
        for (End end : End.values()) {
            LinksView.Axle axle = axle(setup, end, List.of());
            List<Drawing> views = List.of(LinksView.behind(axle), LinksView.side(axle), LinksView.above(axle));
            Set<String> pulled = new LinkedHashSet<>();
            for (Drawing view : views) {
                for (Handle handle : view.handles()) {
                    handle.ways().forEach(way -> pulled.add(way.path()));
                    // A shim has moved the damper's lower eye along its bolt.
                    if (!handle.path().contains("damper.bottom")
                            && !handle.path().contains(".right.")) {
                        assertWhereMeasured(handle);
                    }
                }
            }
            assertThat(pulled)
                    .containsExactlyInAnyOrderElementsOf(setup.values().stream()
                            .map(Adjustable::path)
                            .filter(path -> path.startsWith(end.key() + "."))
                            .filter(path -> path.matches(".*\\.(ahead|out|left|up)") && !path.contains("clearances"))
                            .toList());
        }
    }

    private static void assertWhereMeasured(Handle handle) {
        for (Handle.Way way : handle.ways()) {
            double there = way.direction() == Handle.Direction.UP ? handle.z() : handle.x();
            assertThat(way.sign() * there).as(way.path()).isCloseTo(way.value(), within(1e-9));
        }
    }

    @Test
    void whatDiffersOnTheRightIsPulledByItsOwnCoordinate() {
        Drawing side = LinksView.side(axle(setup(AS_MEASURED), End.REAR, List.of()));
        String right = "rear.links.lowerLink.right.body";
        assertThat(side.handle(right)).as("covered by the left one").isEmpty();
        String text = ScenarioWriter.set(TOURER.text(), Optional.empty(), right + ".up", "243 mm");
        Setup uneven = ScenarioReader.read("uneven.json", text)
                .scenario()
                .orElseThrow()
                .setups()
                .get(AS_MEASURED);
        Handle end =
                LinksView.side(axle(uneven, End.REAR, List.of())).handle(right).orElseThrow();
        assertThat(end.z()).isCloseTo(0.243, within(1e-9));
        assertThat(end.words()).isEqualTo("rear lower link body, right");
        assertThat(end.values()).containsOnlyKeys("rear.links.lowerLink.body.ahead", right + ".up");
        Handle across = behind(uneven, List.of()).handle(right).orElseThrow();
        assertThat(across.way(Handle.Direction.ACROSS).orElseThrow().sign()).isEqualTo(1);
    }

    @Test
    void theAxleStandsOnItsWheelsInTheTurn() {
        for (Direction direction : Direction.values()) {
            Stance stance = turning(LET_DOWN, direction);
            Rectangle2D tube = drawn(RearView.of(stance, End.REAR, DrawingTest.METRIC, List.of()), Ink.PART)
                    .get(0);
            double left = stance.wheel(Wheel.of(End.REAR, Side.LEFT)).height();
            double right = stance.wheel(Wheel.of(End.REAR, Side.RIGHT)).height();
            assertThat(left < right).as("the outside wheel is pressed down").isEqualTo(direction == Direction.RIGHT);
            // The drawing rolls the body about its roll centre, the turn counts heights as if it were small.
            assertThat(tube.getMinY()).isCloseTo(Math.min(left, right), within(1.5e-3));
            assertThat(tube.getMaxY()).isCloseTo(Math.max(left, right), within(1.5e-3));
            assertThat(tube.getWidth()).isCloseTo(1.4, within(0.01));
        }
    }

    @Test
    void theRackGoesWithTheSteer() {
        Drawing rest = TopView.of(DrawingTest.stance(TOURER, AS_MEASURED), DrawingTest.METRIC);
        Drawing left = TopView.of(turning(AS_MEASURED, Direction.LEFT), DrawingTest.METRIC);
        // Behind the axle's line the rack goes to the right, upwards in the picture, when it steers to the left.
        assertThat(rack(left).getCenterY() - rack(rest).getCenterY()).isBetween(0.005, 0.03);
    }

    /** Between both inner ends, 118 mm behind the front axle's line. */
    private static Rectangle2D rack(Drawing above) {
        return drawn(above, Ink.PART).stream()
                .filter(place -> Math.abs(place.getCenterX() - 0.118) < 1e-9 && place.getHeight() > 0.6)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsMeasuredTakesThePlaceOfWhatIsSketchedAndOnlyThere() {
        Stance tourer = DrawingTest.stance(TOURER, AS_MEASURED);
        Drawing rear = RearView.of(
                tourer, End.REAR, DrawingTest.METRIC, setup(AS_MEASURED).values());
        assertThat(drawn(rear, Ink.LINK))
                .as("the final drive, and two marks of the stops")
                .hasSize(3);
        assertThat(rear.handle("rear.lateralLocator.pivot")).hasValueSatisfying(handle -> {
            assertThat(handle.x()).isZero();
            assertThat(handle.z()).isCloseTo(0.29, within(1e-12));
        });
        Scenario saloon = Demo.read("harbour-saloon");
        Drawing sketched = RearView.of(DrawingTest.stance(saloon, 0), End.REAR, DrawingTest.METRIC, List.of());
        assertThat(drawn(sketched, Ink.ROD)).isEmpty();
        assertThat(drawn(sketched, Ink.LINK)).hasSizeGreaterThan(4);
    }
}
