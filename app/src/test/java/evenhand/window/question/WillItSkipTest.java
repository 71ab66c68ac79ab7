package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.bump.DriveOver;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.chart.Chart;
import evenhand.chart.Part;
import evenhand.road.Profile;
import evenhand.turn.Direction;
import evenhand.turn.Wheel;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WillItSkipTest {
    private static final String COUPE = "slipper-coupe";

    private static Car active(Asks asks) {
        return asks.work().activeSetup().car().settled();
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void everyDemoCarIsAnsweredInTheTurnAndStraightAhead(String demo) throws Exception {
        for (String where : List.of("in the turn, at the pace below", "straight ahead")) {
            for (Units units : Units.values()) {
                Reply reply =
                        Asks.demo(demo).in(units).wish("bump/where", where).reply("bump");
                assertThat(Asks.all(reply)).doesNotContain("defect").doesNotContain("NaN");
                assertThat(reply.charts())
                        .hasSize(where.equals("straight ahead") ? 9 : 8)
                        .noneMatch(Chart::isEmpty);
                assertThat(reply.charts())
                        .allMatch(chart -> chart.across().title().equals("time, s"));
                assertThat(reply.figures().lines()).isNotEmpty();
            }
        }
    }

    @Test
    void theChartsShowTheSeriesOfTheModelWithItsPeaks() throws Exception {
        Asks asks = Asks.demo(COUPE)
                .wish("bump/over", "hump 60 mm by 2 m")
                .wish("bump/speed", "40 km/h")
                .wish("bump/where", "straight ahead");
        Reply reply = asks.reply("bump");
        BumpAnswer.Straight straight =
                (BumpAnswer.Straight) DriveOver.straight(active(asks), radius -> Profile.hump(0.06, 2), 40 / 3.6);
        Bump front = Objects.requireNonNull(straight.axles().get(End.FRONT));
        String name = asks.work().active();
        assertThat(highest(reply.charts().get(2), name, "")).isCloseTo(1000 * front.peakBumpTravel(), within(0.5));
        double least = line(reply.charts().get(0), name, "").points().stream()
                .mapToDouble(Part.Point::y)
                .min()
                .orElseThrow();
        assertThat(least).isCloseTo(front.leastTyreLoad(), within(30.0));
        Part.Line road = reply.charts().get(6).lines().get(0);
        assertThat(road.label()).isEqualTo("road");
        assertThat(road.points().stream().mapToDouble(Part.Point::y).max().orElseThrow())
                .isCloseTo(60, within(0.1));
        assertThat(Asks.row(reply.figures(), "Front wheels", "hardest jolt of the body"))
                .contains(Numbers.fixed(front.peakBodyAcceleration() / 9.80665, 2));
    }

    @Test
    void ofSetupsThatComeOutTheSameItIsSaidOnce() throws Exception {
        Asks asks = Asks.demo("harbour-saloon").wish("bump/where", "straight ahead");
        for (String name : List.of("Pivot low", "Pivot high")) {
            asks.act(new TrialAct.Show(name, true)); // another roll centre is nothing to a wheel that goes straight
        }
        assertThat(asks.reply("bump").more())
                .filteredOn(paragraph -> List.of("As bought", "Lowered", "Pivot low", "Pivot high")
                        .contains(paragraph.heading()))
                .extracting(paragraph ->
                        paragraph.sentences().get(paragraph.sentences().size() - 1))
                .hasSize(3)
                .filteredOn("\"Pivot high\" comes out the same."::equals)
                .hasSize(1);
    }

    @Test
    void aDriveIsGivenUpOnItsWay() {
        Car car = ByHand.demo("harbour-saloon").activeSetup().car().settled();
        assertThatThrownBy(() -> DriveOver.straight(car, radius -> Profile.hump(0.06, 2), 10, () -> {
                    throw new CancellationException("enough");
                }))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void inTheTurnItAnswersAtThePaceOfTheSlider() throws Exception {
        Asks asks = Asks.demo(COUPE).act(new TrialAct.ChoosePace(0.4 * 9.80665, false));
        Reply reply = asks.reply("bump");
        assertThat(reply.headlines().get(0)).contains("turning left at 0.4 g");
        BumpAnswer.InCorner corner = (BumpAnswer.InCorner) DriveOver.inCorner(
                active(asks), radius -> Profile.ripples(0.005, 1.2, 8), 50 / 3.6, 0.4 * 9.80665, Direction.LEFT);
        Bump outer = Objects.requireNonNull(corner.wheels().get(Wheel.FRONT_RIGHT));
        List<String> cells = Asks.row(reply.figures(), "Outer front wheel", "least load of the tyre");
        assertThat(cells).contains(Numbers.fixed(outer.leastTyreLoad(), 0));
        assertThat(line(reply.charts().get(0), asks.work().active(), "outer")
                        .points()
                        .get(0)
                        .y())
                .isCloseTo(outer.series().tyreLoad().get(0), within(1e-6));
        double front = corner.gripLost(End.FRONT).orElseThrow();
        assertThat(reply.headlines().get(1))
                .contains("the front loses " + Numbers.fixed(100 * front, 1) + " % of its side grip");
    }

    @Test
    void aRightTurnNamesTheOtherWheelOuter() throws Exception {
        Asks left = Asks.demo("bakery-front-drive");
        Asks right = Asks.demo("bakery-front-drive").act(new TrialAct.ChooseDirection(Direction.RIGHT));
        List<String> one = Asks.row(left.reply("bump").figures(), "Outer front wheel", "least load of the tyre");
        List<String> other = Asks.row(right.reply("bump").figures(), "Outer front wheel", "least load of the tyre");
        assertThat(Double.parseDouble(other.get(0)))
                .isCloseTo(Double.parseDouble(one.get(0)), within(0.1 * Double.parseDouble(one.get(0)) + 50));
    }

    @Test
    void contactThatIsLostIsSaidNotedAndMarkedWhereTheLoadIsZero() throws Exception {
        Asks asks = Asks.demo(COUPE).wish("bump/over", "kerb 80 mm").wish("bump/where", "straight ahead");
        Reply reply = asks.reply("bump");
        Chart loads = reply.charts().get(0);
        assertThat(reply.headlines().get(1)).contains("the ground").contains(" s in all");
        assertThat(loads.notes())
                .anyMatch(note ->
                        note.startsWith("Off the ground, \"" + asks.work().active()));
        assertThat(loads.marks()).isNotEmpty().allMatch(mark -> mark.at().y() == 0);
        Reply gentle = asks.wish("bump/over", "hump 5 mm by 4 m").reply("bump");
        assertThat(gentle.headlines().get(1))
                .contains("no tyre leaves the ground")
                .contains("no stop is struck");
        assertThat(gentle.charts().get(0).notes()).isEmpty();
        assertThat(gentle.charts().get(0).marks()).isEmpty();
    }

    @Test
    void stopsStandInTheTravelWhereTheCarHasThem() throws Exception {
        Asks asks = Asks.demo("harbour-saloon").wish("bump/where", "straight ahead");
        Chart travel = asks.reply("bump").charts().get(2);
        assertThat(travel.rules().stream().map(Part.Rule::words))
                .contains("bump stop, As bought", "bump stop, Lowered", "droop stop, Lowered");
        Part.Rule lowered = travel.rules().stream()
                .filter(rule -> rule.words().equals("bump stop, Lowered"))
                .findFirst()
                .orElseThrow();
        assertThat(lowered.value()).isCloseTo(28, within(0.5)); // 58 mm of gap, let down by 30 mm
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "hump",
                "hump 80 mm",
                "hump 80 by 3.7 m",
                "a page of text",
                "kerb 5 m",
                "ripples 10 mm by 1 m times 2.5",
                "road Z",
                "no-such-road.csv"
            })
    void whatIsNoEventIsAnsweredInASentence(String over) throws Exception {
        Reply reply = Asks.demo(COUPE).wish("bump/over", over).reply("bump");
        assertThat(reply.headlines()).hasSize(1);
        assertThat(reply.headlines().get(0))
                .endsWith(".")
                .doesNotContain("defect")
                .doesNotContain("--over");
        assertThat(reply.charts()).isEmpty();
    }

    @Test
    void aCircleThatNoCarDrivesIsRefusedInWords() throws Exception {
        Reply reply = Asks.demo(COUPE).wish("bump/speed", "5 km/h").reply("bump");
        assertThat(reply.headlines()).hasSize(1);
        assertThat(reply.headlines().get(0)).contains("a circle of less than 4 m");
    }

    @Test
    void aPaceBeyondTheLimitIsSaidForTheSetup() throws Exception {
        Reply reply = Asks.demo(COUPE)
                .act(new TrialAct.ChoosePace(1.6 * 9.80665, false))
                .reply("bump");
        assertThat(reply.headlines()).anyMatch(said -> said.contains("beyond its limit"));
        assertThat(reply.charts()).isEmpty();
    }

    @Test
    void withoutDampersItIsSaidAndStillAnswered() throws Exception {
        Asks asks = Asks.demo("harbour-saloon").act(new EditAct.TakeBack(Optional.empty(), "rear.damper"));
        Reply reply = asks.reply("bump");
        assertThat(Asks.all(reply)).contains("no damper curves at the rear");
        assertThat(reply.charts()).hasSize(8);
    }

    private static Part.Line line(Chart chart, String name, String part) {
        return chart.line(name, part).findFirst().orElseThrow();
    }

    private static double highest(Chart chart, String name, String part) {
        return line(chart, name, part).points().stream()
                .mapToDouble(Part.Point::y)
                .max()
                .orElseThrow();
    }
}
