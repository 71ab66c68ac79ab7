package evenhand.words.ride;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.ride.AxleRide;
import evenhand.ride.DamperChoice;
import evenhand.ride.DamperChoice.Fitted;
import evenhand.ride.DampingAtSpeed;
import evenhand.ride.DampingSweep.Point;
import evenhand.ride.Ride;
import evenhand.ride.RoadClass;
import evenhand.scenario.Demo;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which setting is said to be best, and what the next one is said to cost: the words turn round with the numbers. */
class DamperWordsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final Car CAR =
            Demo.read("harbour-saloon").setup("As bought").orElseThrow().car().settled();
    private static final Ride RIDE = (Ride) Ride.of(CAR, RoadClass.B, 80 / 3.6);
    private static final AxleRide.Damped DAMPED = RIDE.rear().damped().orElseThrow();
    private static final Damper.Forces FORCES = new Damper.Forces(line(100), line(200));

    private static Curve line(double force) {
        return new Curve(List.of(new Curve.Point(0, 0), new Curve.Point(0.1, force)));
    }

    /** A setting by its ratio, its shaking in m/s² and the variation of its tyre's load. */
    private static Fitted fitted(String name, boolean set, double ratio, double shakes, double varies) {
        return new Fitted(
                name.isEmpty() ? Optional.empty() : Optional.of(name),
                set,
                FORCES,
                DAMPED,
                new Point(4000 * ratio, ratio, shakes, varies),
                new DampingAtSpeed(0.1, ratio - 0.05, ratio + 0.05, ratio, ratio));
    }

    private static final Optional<Point> SOFTEST = Optional.of(new Point(600, 0.15, 0.40, 0.12));
    private static final Optional<Point> STEADIEST = Optional.of(new Point(1600, 0.4, 0.55, 0.08));

    private static DamperChoice choice(Fitted... settings) {
        return new DamperChoice(List.of(settings), SOFTEST, STEADIEST);
    }

    private static String verdict(Car car, DamperChoice choice) {
        return clean(DamperWords.verdict(car, RIDE, End.REAR, choice, Units.METRIC));
    }

    private static List<String> said(Car car, DamperChoice choice, Units units) {
        List<String> said = DamperWords.of(car, RIDE, End.REAR, choice, units);
        said.forEach(DamperWordsTest::clean);
        return said;
    }

    private static List<String> said(DamperChoice choice) {
        return said(CAR, choice, Units.METRIC);
    }

    private static String clean(String sentence) {
        assertThat(sentence)
                .endsWith(".")
                .doesNotContain("NaN")
                .doesNotContain("Infinity")
                .doesNotContain("null");
        return sentence;
    }

    private static final Fitted SOFT = fitted("soft", true, 0.25, 0.481, 0.098);
    private static final Fitted HARD = fitted("hard", false, 0.40, 0.520, 0.091);

    @Test
    void comfortAndGripEachHaveTheirSetting() {
        assertThat(verdict(CAR, choice(SOFT, HARD)))
                .isEqualTo(
                        "Rear: \"soft\" for comfort, as it is set (0.481 m/s²), \"hard\" for grip (tyre load varies by"
                                + " 9.1 %).");
        assertThat(DamperWords.verdict(CAR, RIDE, End.FRONT, choice(SOFT, HARD), Units.METRIC))
                .startsWith("Front: ");
    }

    @Test
    void oneSettingMayBeBestForBoth() {
        Fitted best = fitted("mid", false, 0.3, 0.47, 0.090);
        assertThat(verdict(CAR, choice(SOFT, best, HARD)))
                .isEqualTo(
                        "Rear: \"mid\" for comfort and for grip (0.470 m/s², tyre load varies by 9.0 %); \"soft\" is set"
                                + " (0.481 m/s², tyre load varies by 9.8 %).");
        assertThat(verdict(CAR, choice(fitted("mid", true, 0.3, 0.47, 0.090), HARD)))
                .isEqualTo(
                        "Rear: \"mid\" for comfort and for grip, as it is set (0.470 m/s², tyre load varies by 9.0 %).");
    }

    @Test
    void whatIsNotKnownToBeSetIsSaid() {
        Fitted soft = fitted("soft", false, 0.25, 0.481, 0.098);
        assertThat(verdict(CAR, choice(soft, HARD))).endsWith("; the file does not say which is set.");
        Fitted between = fitted("", true, 0.3, 0.49, 0.095);
        assertThat(verdict(CAR, choice(soft, between, HARD)))
                .endsWith("; it stands between its settings (0.490 m/s², tyre load varies by 9.5 %).");
    }

    @Test
    void oneDamperAloneIsToldWithItsFirmness() {
        assertThat(verdict(CAR, choice(fitted("", true, 0.25, 0.481, 0.098))))
                .isEqualTo(
                        "Rear: one damper without settings, a ratio of 0.25, as for comfort (0.481 m/s², tyre load varies"
                                + " by 9.8 %).");
        assertThat(verdict(CAR, choice(fitted("only", true, 0.55, 0.6, 0.1))))
                .startsWith("Rear: one setting only, \"only\", a ratio of 0.55, as for track use (");
    }

    @Test
    void aFirmerSettingCostsOrGivesWhatItsNumbersSay() {
        assertThat(step(0.520, 0.091))
                .isEqualTo(
                        "One setting firmer, \"hard\" (ratio 0.40), rides 8 % harsher, 0.520 m/s² instead of 0.481 m/s²,"
                                + " but holds the road more steadily: the tyre load varies by 9.1 % instead of 9.8 %.");
        assertThat(step(0.520, 0.105)).contains("rides 8 % harsher, ").contains(", and holds the road less steadily: ");
        assertThat(step(0.443, 0.091)).contains("rides 8 % softer, ").contains(", and holds the road more steadily: ");
        assertThat(step(0.443, 0.105)).contains("rides 8 % softer, ").contains(", but holds the road less steadily: ");
        // Half a per cent is not felt, and half a digit not seen.
        assertThat(step(0.483, 0.105)).contains("rides as softly, ").contains(", and holds the road less steadily: ");
        assertThat(step(0.484, 0.105)).contains("rides 1 % harsher, ");
        assertThat(step(0.520, 0.0984)).contains(", and holds the road as well: ");
        assertThat(step(0.520, 0.0976)).contains(", and holds the road as well: ");
        assertThat(step(0.520, 0.0986)).contains(", and holds the road less steadily: ");
        assertThat(step(0.520, 0.0974)).contains(", but holds the road more steadily: ");
    }

    private static String step(double shakes, double varies) {
        List<String> said = said(choice(SOFT, fitted("hard", false, 0.4, shakes, varies)));
        assertThat(said).noneMatch(sentence -> sentence.startsWith("One setting less firm"));
        return said.stream()
                .filter(sentence -> sentence.startsWith("One setting firmer"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void betweenTwoBothNeighboursAreTold() {
        List<String> said = said(choice(
                fitted("soft", false, 0.25, 0.481, 0.098),
                fitted("mid", true, 0.32, 0.5, 0.094),
                fitted("hard", false, 0.40, 0.520, 0.091)));
        assertThat(said.get(0))
                .startsWith(
                        "The rear dampers are on \"mid\", which damps the body by a ratio of 0.32 (bump 0.27, rebound"
                                + " 0.37) and the wheel by ")
                .endsWith(", as for fast road.");
        assertThat(said.get(1))
                .startsWith(
                        "With the rear springs, on this road, the body above the axle shakes least at a damping ratio of"
                                + " 0.15 and the tyre load is steadiest at 0.40: ");
        assertThat(said.get(2)).startsWith("One setting less firm, \"soft\" (ratio 0.25), rides 4 % softer, ");
        assertThat(said.get(3)).startsWith("One setting firmer, \"hard\" (ratio 0.40), rides 4 % harsher, ");
        assertThat(said).hasSize(4);
    }

    @Test
    void withoutAnEndOfTheSweepThereIsNoWhy() {
        assertThat(said(new DamperChoice(List.of(SOFT, HARD), Optional.empty(), STEADIEST)))
                .noneMatch(sentence -> sentence.startsWith("With the rear springs"));
        assertThat(said(new DamperChoice(List.of(SOFT, HARD), SOFTEST, Optional.empty())))
                .noneMatch(sentence -> sentence.startsWith("With the rear springs"));
    }

    @Test
    void upToTheLastSettingThatDoesNotHoldTheBodyItIsSaid() {
        Fitted first = fitted("1", false, 0.12, 0.4, 0.12);
        Fitted second = fitted("2", false, 0.199, 0.42, 0.11);
        Fitted third = fitted("3", true, 0.2, 0.44, 0.1);
        assertThat(said(choice(first, second, third)))
                .contains(
                        "Up to \"2\" there is too little to hold the body on a wavy road (a ratio below 0.20), whatever"
                                + " comfort on this road says.");
        assertThat(said(choice(third, HARD))).noneMatch(sentence -> sentence.startsWith("Up to"));
        assertThat(verdict(CAR, choice(first, second, third))).contains("\"3\" for comfort");
    }

    @Test
    void aDamperWithoutSettingsIsScaled() {
        Fitted only = fitted("", true, 0.25, 0.481, 0.098); // 1000 N·s/m
        assertThat(said(choice(only)).get(1))
                .isEqualTo(
                        "The file names no settings of the rear dampers, so there is no click to choose. Scaled, it would"
                                + " give the softest ride with 0.60 times its force, 0.400 m/s² at a ratio of 0.15, too little to"
                                + " hold the body, and the steadiest tyre load with 1.60 times its force, 8.0 % at a ratio of 0.40.");
        Optional<Point> held = Optional.of(new Point(800, 0.2, 0.45, 0.1));
        assertThat(said(new DamperChoice(List.of(only), held, Optional.empty())).get(1))
                .endsWith(
                        "Scaled, it would give the softest ride with 0.80 times its force, 0.450 m/s² at a ratio of 0.20.");
        assertThat(said(new DamperChoice(List.of(only), Optional.empty(), Optional.empty()))
                        .get(1))
                .endsWith("No damper of any force would be best within the range that is swept.");
    }

    /** The saloon with other dampers behind. */
    private static Car with(Optional<Damper> damper) {
        Axle.Live rear = (Axle.Live) CAR.rear();
        return new Car(
                CAR.weights(),
                CAR.wheelbase(),
                CAR.cgHeight(),
                CAR.chassisTorsionalStiffness(),
                CAR.steering(),
                CAR.air(),
                CAR.rollingResistance(),
                CAR.front(),
                new Axle.Live(
                        rear.track(),
                        rear.unsprung(),
                        rear.lateralLocator(),
                        rear.spring(),
                        rear.bar(),
                        rear.stops(),
                        damper,
                        rear.lowered(),
                        rear.alignment(),
                        rear.tyre(),
                        rear.rollInertia()),
                CAR.drive(),
                CAR.pitchInertia(),
                CAR.seat());
    }

    private static Damper damper(Optional<Damper.Forces> forces, List<Damper.Setting> settings) {
        return new Damper(NONE, NONE, NONE, forces, settings, Optional.empty());
    }

    @Test
    void withoutCurvesItSaysWhatToMeasure() {
        DamperChoice nothing = new DamperChoice(List.of(), SOFTEST, STEADIEST);
        Car none = with(Optional.empty());
        assertThat(verdict(none, nothing))
                .isEqualTo("Rear: nothing can be said of comfort and grip, as the file has no damper curves there.");
        double held = 0.2
                * 2
                * Math.sqrt(RIDE.rear().rates().heave() * RIDE.rear().undamped().sprungMass());
        assertThat(said(none, nothing, Units.METRIC))
                .satisfiesExactly(
                        first -> assertThat(first)
                                .startsWith("Measure at the rear: ")
                                .contains(", and with the tape how far it moves for each millimetre of the wheel"),
                        second -> assertThat(second)
                                .isEqualTo(String.format(
                                        "Until then: on this spring the body is held from about %.0f N*s/m at the wheel on,"
                                                + " and the tyre load would be steadiest with 1600 N*s/m (a ratio of 0.40).",
                                        held)));
        Car known = with(Optional.of(damper(Optional.empty(), List.of())));
        assertThat(said(known, new DamperChoice(List.of(), SOFTEST, Optional.empty()), Units.IMPERIAL))
                .satisfiesExactly(
                        first -> assertThat(first).doesNotContain("with the tape"),
                        second -> assertThat(second)
                                .isEqualTo(String.format(
                                        "Until then: on this spring the body is held from about %.1f lbf*s/in at the wheel on.",
                                        held / 175.126835)));
    }

    @Test
    void curvesWithoutForceAreToBeLookedOver() {
        DamperChoice nothing = new DamperChoice(List.of(), SOFTEST, STEADIEST);
        Damper.Forces flat = new Damper.Forces(line(0), line(0));
        for (Damper damper : List.of(
                damper(Optional.of(flat), List.of()),
                damper(Optional.empty(), List.of(new Damper.Setting("flat", flat))))) {
            Car car = with(Optional.of(damper));
            assertThat(verdict(car, nothing)).endsWith("as the damper curves there give no force at 0.1 m/s.");
            assertThat(said(car, nothing, Units.METRIC))
                    .containsExactly("The rear curves have no force at 0.1 m/s: look them over, bump and rebound.");
        }
    }
}
