package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.chart.Chart;
import evenhand.chart.Part;
import evenhand.forms.Table;
import evenhand.ride.AxleRide;
import evenhand.ride.Ride;
import evenhand.ride.RoadClass;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WhichDamperTest {
    private static final String ROADSTER = "tinkers-lane-roadster";
    private static final String SETTING = "front.damper.setting";

    private static Ride ride(Car car, RoadClass road, double kmh) {
        return (Ride) Ride.of(car, road, kmh / 3.6);
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void everyDemoCarIsAnsweredAtBothEnds(String demo) throws Exception {
        for (Units units : Units.values()) {
            Reply reply = Asks.demo(demo).in(units).reply("damper");
            assertThat(Asks.all(reply)).doesNotContain("defect").doesNotContain("NaN");
            assertThat(reply.headlines()).hasSize(3);
            assertThat(reply.charts()).hasSizeGreaterThanOrEqualTo(2).noneMatch(Chart::isEmpty);
        }
    }

    @Test
    void eachSettingLiesWhereACarWithThatSettingRides() throws Exception {
        Asks asks = Asks.demo(ROADSTER).wish("damper/road", "C").wish("damper/speed", "60 km/h");
        String active = asks.work().active();
        Reply reply = asks.reply("damper");
        Chart chart = reply.charts().get(0);
        for (String setting : List.of("soft", "middle", "firm")) {
            Asks set = Asks.demo(ROADSTER).act(new EditAct.SetValue(Optional.of(active), SETTING, setting));
            Car car = set.work().activeSetup().car().settled();
            AxleRide axle = ride(car, RoadClass.C, 60).front();
            Part.Mark mark = chart.marks().stream()
                    .filter(one -> one.words().startsWith(setting))
                    .findFirst()
                    .orElseThrow();
            assertThat(mark.at().x()).isCloseTo(axle.comfort().orElseThrow(), within(1e-12));
            assertThat(mark.at().y()).isCloseTo(100 * axle.tyreLoadVariation().orElseThrow(), within(1e-10));
            assertThat(mark.kind() == Part.Mark.Kind.NOW).isEqualTo(setting.equals("middle"));
            List<String> cells =
                    Asks.row(reply.figures(), "Front", setting + (setting.equals("middle") ? ", set now" : ""));
            assertThat(cells.get(0)).isEqualTo(Numbers.fixed(axle.dampingRatio().orElseThrow(), 2));
            assertThat(cells.get(5)).isEqualTo(Numbers.fixed(axle.comfort().orElseThrow(), 3));
        }
    }

    @Test
    void doingItSetsTheSettingThatWasAdvisedAndItIsAdvisedNoMore() throws Exception {
        Asks asks = Asks.demo(ROADSTER);
        Reply.Next next = asks.reply("damper").next().get(0);
        assertThat(next.words()).startsWith("set the front dampers to \"soft\" for comfort");
        asks.act(next.act().orElseThrow());
        assertThat(asks.work()
                        .activeSetup()
                        .car()
                        .front()
                        .damper()
                        .orElseThrow()
                        .setting())
                .contains("soft");
        Reply after = asks.reply("damper");
        assertThat(after.next()).noneMatch(one -> one.words().contains("for comfort"));
        assertThat(after.next())
                .anyMatch(one -> one.words().startsWith("set the front dampers to \"middle\" for grip"));
        assertThat(after.headlines().get(1)).contains("\"soft\" for comfort, as it is set");
    }

    @Test
    void theNextSettingCostsWhatTheSentenceSays() throws Exception {
        Asks asks = Asks.demo(ROADSTER);
        Car car = asks.work().activeSetup().car().settled();
        Ride ride = ride(car, RoadClass.B, 80);
        AxleRide front = ride.front();
        List<AxleRide.Setting> settings = front.settings(car, ride.road(), ride.speed());
        double middle = settings.get(1).damped().road().weightedAcceleration();
        double firm = settings.get(2).damped().road().weightedAcceleration();
        assertThat(Asks.all(asks.reply("damper")))
                .contains("One setting firmer, \"firm\"")
                .contains("rides " + Numbers.fixed(100 * (firm / middle - 1), 0) + " % harsher, "
                        + Numbers.fixed(firm, 3) + " m/s² instead of " + Numbers.fixed(middle, 3) + " m/s²");
    }

    @Test
    void aNameThatLooksLikeANumberIsStillAName() throws Exception {
        Asks asks = Asks.demo(ROADSTER, text -> text.replace("\"name\": \"soft\"", "\"name\": \"3\""));
        Reply.Next next = asks.reply("damper").next().get(0);
        asks.act(next.act().orElseThrow());
        assertThat(asks.work()
                        .activeSetup()
                        .car()
                        .front()
                        .damper()
                        .orElseThrow()
                        .setting())
                .contains("3");
    }

    @Test
    void oneCurveIsSaidToHaveNoClicksAndIsPlacedOnAScale() throws Exception {
        Reply reply = Asks.demo("harbour-saloon").reply("damper");
        assertThat(reply.headlines().get(1)).startsWith("Front: one damper without settings, a ratio of ");
        assertThat(Asks.all(reply)).contains("so there is no click to choose").contains("times its force");
        assertThat(reply.next()).isEmpty();
        Chart chart = reply.charts().get(0);
        assertThat(chart.marks()).anyMatch(mark -> mark.words().equals("0.3"));
        assertThat(chart.marks()).anyMatch(mark -> mark.words().equals("as it is"));
        assertThat(chart.notes()).isNotEmpty();
    }

    @Test
    void withoutDampersItSaysWhatToMeasure() throws Exception {
        Asks asks = Asks.demo("harbour-saloon");
        for (String path : List.of("front.damper", "rear.damper")) {
            asks.act(new EditAct.TakeBack(Optional.empty(), path));
        }
        Reply reply = asks.reply("damper");
        assertThat(reply.headlines().get(1)).contains("the file has no damper curves there");
        assertThat(Asks.all(reply)).contains("Measure at the front: the damper's force at 0.05, 0.1, 0.3 and 0.6 m/s");
        assertThat(reply.charts()).hasSize(2);
        assertThat(reply.figures()).isEqualTo(Table.NONE);
        Reply ride = asks.reply("ride");
        assertThat(Asks.all(ride)).contains("no damper curves at the front").doesNotContain("defect");
        assertThat(ride.charts())
                .noneMatch(Chart::isEmpty)
                .noneMatch(chart -> chart.title().contains("sits in it"));
    }

    @Test
    void theRideShowsPitchAndLeavesTheSettingsToTheDampers() throws Exception {
        Reply ride = Asks.demo(ROADSTER).reply("ride");
        assertThat(Asks.all(ride)).doesNotContain("Settings of the");
        assertThat(ride.charts().stream().map(Chart::title)).noneMatch(title -> title.startsWith("Comfort"));
        assertThat(ride.charts().stream().map(chart -> chart.across().title())).contains("speed over the hump, km/h");
    }

    @ParameterizedTest
    @ValueSource(strings = {"damper", "bump", "ride"})
    void whatDoesNotComeToRestIsSaidAndShowsNoPicture(String question) throws Exception {
        Asks asks = Asks.demo("orchard-estate", text -> text.replace("\"140 kg\"", "\"3000 kg\""))
                .act(new TrialAct.ChooseLoad(Optional.of("Four up")));
        Reply reply = asks.reply(question);
        String active = "\"" + asks.work().active() + "\": No answer: ";
        assertThat(reply.headlines()).anyMatch(said -> said.startsWith(active));
        assertThat(Asks.all(reply)).doesNotContain("defect").doesNotContain("NaN");
        assertThat(reply.charts()).allMatch(Chart::isEmpty);
        assertThat(reply.figures().lines()).noneMatch(Table.Row.class::isInstance);
    }

    @Test
    void aSpeedThatIsNoneIsAnsweredInASentence() throws Exception {
        for (String wrong : List.of("80", "", "fast", "0 km/h", "-5 km/h", "9000 km/h", "3 kg")) {
            Reply reply = Asks.demo(ROADSTER).wish("damper/speed", wrong).reply("damper");
            assertThat(reply.headlines()).hasSize(1);
            assertThat(reply.headlines().get(0)).startsWith("The speed ").endsWith(".");
            assertThat(reply.charts()).isEmpty();
        }
    }

    @Test
    void setupsWithTheSameDampersAreToldOnce() throws Exception {
        Reply reply = Asks.demo("harbour-saloon").reply("damper");
        assertThat(reply.charts().get(2).notes()).containsExactly("\"As bought\" has the dampers of \"Lowered\".");
        assertThat(reply.charts().get(2).lines()).hasSize(1);
        Part.Line line = reply.charts().get(2).lines().get(0);
        assertThat(line.points()).isSortedAccordingTo((one, other) -> Double.compare(one.x(), other.x()));
        assertThat(line.points().get(0).y()).isNegative();
    }
}
