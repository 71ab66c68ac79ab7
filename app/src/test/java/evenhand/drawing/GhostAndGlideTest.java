package evenhand.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.End;
import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Mark;
import evenhand.drawing.Item.Outline;
import evenhand.look.SetupStyle;
import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class GhostAndGlideTest {
    private static final Scenario SALOON = Demo.read("harbour-saloon");
    private static final Stance AS_BOUGHT = DrawingTest.stance(SALOON, 0);
    private static final Stance LOWERED = DrawingTest.stance(SALOON, 1);
    private static final TurnAnswer.Turns TURN =
            DrawingTest.turn(SALOON.setups().get(0), Direction.LEFT);

    private static Drawing rear(Stance stance) {
        return RearView.of(stance, End.REAR, DrawingTest.METRIC, List.of());
    }

    private static List<Outline> drawn(Drawing drawing, Ink ink) {
        return drawing.items().stream()
                .filter(item -> item instanceof Outline outline && outline.ink() == ink)
                .map(Outline.class::cast)
                .toList();
    }

    @Test
    void aCarOverItselfHasNoGhost() {
        Drawing one = rear(AS_BOUGHT);
        assertThat(one.over(rear(AS_BOUGHT), "As bought", AS_BOUGHT.style())).isEqualTo(one);
    }

    /** Lowered by 30 mm: body, roll centre and centre of gravity of the base stand higher; the wheels stand where they stood. */
    @Test
    void theBaseIsSeenWhereItStandsOtherwiseAndNamedOnce() {
        Drawing lowered = rear(LOWERED);
        Drawing over = lowered.over(rear(AS_BOUGHT), "As bought", AS_BOUGHT.style());
        List<Outline> ghost = drawn(over, Ink.GHOST);
        assertThat(ghost).extracting(Outline::style).containsOnly(new SetupStyle(0));
        Outline body = drawn(rear(AS_BOUGHT), Ink.BODY).get(0);
        assertThat(ghost)
                .anySatisfy(one -> assertThat(one.path().getBounds2D())
                        .isEqualTo(body.path().getBounds2D()));
        double tyre = drawn(rear(LOWERED), Ink.TYRE).get(0).path().getBounds2D().getWidth();
        assertThat(ghost).noneMatch(one -> Math.abs(one.path().getBounds2D().getWidth() - tyre) < 1e-6);
        assertThat(over.words().stream().filter("As bought"::equals)).hasSize(1);
        int all = over.items().size();
        assertThat(over.items().subList(all - lowered.items().size(), all)).isEqualTo(lowered.items());
    }

    @Test
    void aGlideBeginsWhereItStoodAndEndsAtTheStance() {
        Drawing rest = rear(AS_BOUGHT);
        Drawing leaning = rear(AS_BOUGHT.turning(TURN.limit().row()));
        assertThat(rest.isAlike(leaning)).isTrue();
        assertThat(rest.towards(leaning, 1)).isSameAs(leaning);
        Drawing half = rest.towards(leaning, 0.5);
        assertThat(rest.towards(leaning, 0).marks()).extracting(Mark::z).isEqualTo(heights(rest));
        for (int i = 0; i < rest.marks().size(); i++) {
            double middle = (rest.marks().get(i).x() + leaning.marks().get(i).x()) / 2;
            assertThat(half.marks().get(i).x()).isCloseTo(middle, within(1e-12));
        }
        double highest = drawn(half, Ink.BODY).get(0).path().getBounds2D().getMaxY();
        assertThat(highest)
                .isBetween(
                        drawn(rest, Ink.BODY).get(0).path().getBounds2D().getMaxY() - 1e-9,
                        drawn(leaning, Ink.BODY).get(0).path().getBounds2D().getMaxY() + 1e-9);
    }

    private static List<Double> heights(Drawing drawing) {
        return drawing.marks().stream().map(Mark::z).toList();
    }

    @Test
    void nothingGlidesToAnotherViewOrToOtherParts() {
        Drawing side = SideView.of(AS_BOUGHT, DrawingTest.METRIC, List.of());
        assertThat(rear(AS_BOUGHT).isAlike(side)).isFalse();
        assertThat(rear(AS_BOUGHT).isAlike(RearView.of(AS_BOUGHT, End.FRONT, DrawingTest.METRIC, List.of())))
                .isFalse();
        List<Drawing> shown = new ArrayList<>();
        Glide glide = new Glide(rear(AS_BOUGHT), shown::add);
        glide.show(side, true);
        assertThat(shown).containsExactly(side);
    }

    @Test
    void aDrawingThatComesWhileItGlidesIsShownAtOnce() {
        Drawing rest = rear(AS_BOUGHT);
        Drawing slow = rear(AS_BOUGHT.turning(TURN.rows().get(2)));
        Drawing fast = rear(AS_BOUGHT.turning(TURN.limit().row()));
        List<Drawing> shown = new ArrayList<>();
        Glide glide = new Glide(rest, shown::add);
        glide.show(slow, true);
        assertThat(shown.get(0).marks()).extracting(Mark::z).isEqualTo(heights(rest));
        glide.show(fast, true);
        assertThat(shown.get(shown.size() - 1)).isSameAs(fast);
        glide.show(slow, false);
        assertThat(shown.get(shown.size() - 1)).isSameAs(slow);
    }

    /** The saloon's front has a roll centre and no points: both arms of a side, drawn on, meet on the line from the contact through it. */
    @Test
    void sketchedArmsAimWhereTheRollCentreAsksForIt() {
        Drawing front = RearView.of(AS_BOUGHT, End.FRONT, DrawingTest.METRIC, List.of());
        assertThat(front.note()).isEqualTo(RearView.SKETCHED);
        List<double[]> arms =
                drawn(front, Ink.SKETCH).stream().map(GhostAndGlideTest::ends).toList();
        assertThat(arms).hasSize(4);
        double half = AS_BOUGHT.car().front().track() / 2;
        double height = AS_BOUGHT.car().front().geometry().rollCentreHeight();
        for (int side = 0; side < 2; side++) {
            double[] a = arms.get(2 * side);
            double[] b = arms.get(2 * side + 1);
            double slopeA = (a[3] - a[1]) / (a[2] - a[0]);
            double slopeB = (b[3] - b[1]) / (b[2] - b[0]);
            double x = (b[1] - a[1] + slopeA * a[0] - slopeB * b[0]) / (slopeA - slopeB);
            double z = a[1] + slopeA * (x - a[0]);
            double contact = Math.signum(a[0]) * half;
            assertThat(z).isCloseTo(height * (x - contact) / -contact, within(0.02));
        }
        assertThat(drawn(rear(AS_BOUGHT), Ink.SKETCH)).isEmpty();
    }

    private static double[] ends(Outline line) {
        double[] from = new double[6];
        double[] to = new double[6];
        PathIterator path = line.path().getPathIterator(null);
        path.currentSegment(from);
        path.next();
        path.currentSegment(to);
        return new double[] {from[0], from[1], to[0], to[1]};
    }
}
