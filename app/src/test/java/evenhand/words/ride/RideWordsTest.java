package evenhand.words.ride;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.FirstStops;
import evenhand.bump.BodyOverHump.Passage;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.ride.AxleRide;
import evenhand.ride.AxleTramp;
import evenhand.ride.Modes;
import evenhand.ride.Ride;
import evenhand.ride.RoadClass;
import evenhand.ride.SeatRide;
import evenhand.ride.Standing;
import evenhand.scenario.Demo;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each sentence on the ride, with the numbers on both sides of where it changes its mind. */
class RideWordsTest {
    private static final double G = 9.80665;
    private static final String ROAD = "a class B road (a good main road)";
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final Car CAR =
            Demo.read("harbour-saloon").setup("As bought").orElseThrow().car().settled();
    private static final Ride RIDE = (Ride) Ride.of(CAR, RoadClass.B, 80 / 3.6);

    private static OptionalDouble mm(double value) {
        return OptionalDouble.of(value / 1000);
    }

    /** An axle at rest with plenty of everything, or with nothing known. */
    private static final Standing PLENTY = new Standing(3000, NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE);

    private static Standing travels(OptionalDouble toStop, OptionalDouble toMetal, OptionalDouble droop) {
        return new Standing(3000, NONE, NONE, NONE, toStop, toMetal, droop, NONE, NONE);
    }

    private static Standing spring(OptionalDouble perchMove, OptionalDouble coilRoom, OptionalDouble preloadInDroop) {
        return new Standing(3000, NONE, perchMove, coilRoom, NONE, NONE, NONE, NONE, preloadInDroop);
    }

    private static AxleRide axle(AxleRide own, double frequency, Standing standing, Optional<AxleTramp> tramp) {
        return new AxleRide(
                own.end(),
                own.rates(),
                own.undamped(),
                new Modes(
                        new Modes.Mode(2 * Math.PI * frequency, 0),
                        own.undampedModes().hop()),
                own.damped(),
                standing,
                own.staticLoad(),
                tramp);
    }

    private static Ride ride(AxleRide front, AxleRide rear, Optional<SeatRide> seat) {
        return new Ride(front, rear, RIDE.road(), RIDE.speed(), RIDE.pitchBounce(), seat);
    }

    private static Ride swinging(double front, double rear) {
        return ride(
                axle(RIDE.front(), front, PLENTY, Optional.empty()),
                axle(RIDE.rear(), rear, PLENTY, Optional.empty()),
                RIDE.seat());
    }

    private static Ride standing(Standing front, Standing rear) {
        return ride(
                axle(RIDE.front(), 1.3, front, Optional.empty()),
                axle(RIDE.rear(), 1.5, rear, Optional.empty()),
                RIDE.seat());
    }

    private static List<String> all(Car car, Ride ride, FirstStops stops, List<Passage> passages, Units units) {
        List<String> said = RideWords.of(car, ride, stops, passages, ROAD, units);
        assertThat(said)
                .allSatisfy(sentence -> assertThat(sentence)
                        .endsWith(".")
                        .doesNotContain("NaN")
                        .doesNotContain("Infinity")
                        .doesNotContain("null"));
        return said;
    }

    private static List<String> all(Ride ride) {
        return all(CAR, ride, FirstStops.NONE, List.of(), Units.METRIC);
    }

    private static Optional<String> of(List<String> said, String part) {
        return said.stream().filter(sentence -> sentence.contains(part)).findFirst();
    }

    private static String one(List<String> said, String part) {
        return of(said, part).orElseThrow();
    }

    @Test
    void eachFrequencyHasItsKindOfCarUpToItsEnd() {
        String[] kinds = {
            "a soft old saloon",
            "an ordinary car",
            "a fast road car in daily use",
            "a road car for track days",
            "a circuit car"
        };
        double[] front = {1.1, 1.4, 1.7, 2.1};
        double[] rear = {1.2, 1.55, 1.85, 2.2};
        for (int i = 0; i < 4; i++) {
            assertThat(one(all(swinging(front[i] - 0.01, rear[i] - 0.01)), "swings"))
                    .contains(" at the rear, as " + kinds[i] + ";");
            assertThat(one(all(swinging(front[i], rear[i])), "swings"))
                    .contains(" at the rear, as " + kinds[i + 1] + ";");
            assertThat(one(all(swinging(front[i] - 0.01, rear[i])), "swings"))
                    .contains(" at the rear, as " + kinds[i] + " at the front and " + kinds[i + 1] + " at the rear;");
        }
        assertThat(one(all(swinging(1.234, 1.456)), "swings"))
                .startsWith("The body swings at 1.23 Hz at the front and 1.46 Hz at the rear, ");
    }

    @Test
    void theGiveOfTheSpringsIsTheLoadOnTheirRate() {
        double front =
                RIDE.front().undamped().sprungMass() * G / RIDE.front().rates().heave();
        double rear =
                RIDE.rear().undamped().sprungMass() * G / RIDE.rear().rates().heave();
        assertThat(one(all(RIDE), "swings"))
                .endsWith(String.format(
                        "; the springs give %.0f mm and %.0f mm under what stands on them.", front * 1e3, rear * 1e3));
        assertThat(one(all(CAR, RIDE, FirstStops.NONE, List.of(), Units.IMPERIAL), "swings"))
                .endsWith(String.format(
                        "; the springs give %.1f in and %.1f in under what stands on them.",
                        front / 0.0254, rear / 0.0254));
    }

    @Test
    void roomBeforeTheStopsIsTheirGapOverTheGiveOfTheSprings() {
        double front = RIDE.front().staticDeflection();
        double rear = RIDE.rear().staticDeflection();
        Standing half = travels(OptionalDouble.of(front / 2), NONE, NONE);
        Standing quarter = travels(OptionalDouble.of(rear / 4), NONE, NONE);
        assertThat(one(all(standing(half, quarter)), "room for"))
                .isEqualTo("Before the bump stops there is room for 0.50 g of extra load at the front and 0.25 g at the"
                        + " rear.");
        assertThat(one(all(standing(half, travels(mm(-3), NONE, NONE))), "room for"))
                .endsWith("0.00 g at the rear.");
        assertThat(of(all(standing(half, PLENTY)), "room for")).isEmpty();
        assertThat(of(all(standing(PLENTY, half)), "room for")).isEmpty();
    }

    @Test
    void flatRideIsJudgedByTheRatioAsItIsShown() {
        assertThat(one(all(swinging(1.5, 1.485)), "Rear over front"))
                .isEqualTo(
                        "Rear over front frequency is 0.99: the rear is the slower end, so after a bump the body goes"
                                + " on pitching.");
        String less = "less than the 1.1 to 1.2 that lets the rear catch up after a bump.";
        assertThat(one(all(swinging(1, 0.996)), "Rear over front"))
                .contains("is 1.00: ")
                .endsWith(less);
        assertThat(one(all(swinging(1, 1.094)), "Rear over front"))
                .contains("is 1.09: ")
                .endsWith(less);
        String within = "within the 1.1 to 1.2 that makes for a flat ride.";
        assertThat(one(all(swinging(1, 1.096)), "Rear over front"))
                .contains("is 1.10: ")
                .endsWith(within);
        assertThat(one(all(swinging(1, 1.204)), "Rear over front"))
                .contains("is 1.20: ")
                .endsWith(within);
        assertThat(one(all(swinging(1, 1.206)), "Rear over front"))
                .isEqualTo("Rear over front frequency is 1.21: more than the 1.1 to 1.2 that makes for a flat ride: the"
                        + " tail is livelier than it need be.");
    }

    @Test
    void afterAHumpTheFirstTheMiddleAndTheLastSpeedAreTold() {
        List<Passage> passages = Stream.of(20.0, 40.0, 60.0, 80.0, 100.0)
                .map(speed -> new Passage(speed / 3.6, 1, 0.01, 0.01, 0.01, speed / 100))
                .toList();
        assertThat(one(all(CAR, RIDE, FirstStops.NONE, passages, Units.METRIC), "hump"))
                .isEqualTo("Left to itself after a short hump at 20 km/h, 60 km/h and 100 km/h, the ends of the body go"
                        + " 0.20, 0.60 and 1.00 times as far against each other as together.");
        assertThat(of(all(RIDE), "hump")).isEmpty();
    }

    @Test
    void aStopThatCarriesAtRestIsToldWithItsShare() {
        double stands = RIDE.rear().undamped().sprungMass() * G;
        Standing on = new Standing(2000, NONE, NONE, NONE, mm(-4), NONE, NONE, OptionalDouble.of(0.25 * stands), NONE);
        assertThat(all(standing(PLENTY, on)).get(0))
                .startsWith("The rear stands on its bump stops at rest, which carry 25 % of it:");
        assertThat(all(standing(travels(mm(0), NONE, NONE), PLENTY)).get(0)).startsWith("The body swings");
        Standing loose = new Standing(0, NONE, NONE, NONE, mm(-30), NONE, NONE, OptionalDouble.of(2 * stands), NONE);
        assertThat(all(standing(loose, on)).subList(0, 2))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("The front springs are loose at this ride height"),
                        second -> assertThat(second).startsWith("The rear stands on its bump stops"));
    }

    @Test
    void dampingIsFirmerFromBandToBand() {
        assertThat(RideWords.firmness(0.199)).isEqualTo("too little to hold the body on a wavy road");
        assertThat(RideWords.firmness(0.2)).isEqualTo("as for comfort");
        assertThat(RideWords.firmness(0.319)).isEqualTo("as for comfort");
        assertThat(RideWords.firmness(0.32)).isEqualTo("as for fast road");
        assertThat(RideWords.firmness(0.519)).isEqualTo("as for fast road");
        assertThat(RideWords.firmness(0.52)).isEqualTo("as for track use");
        assertThat(RideWords.firmness(0.769)).isEqualTo("as for track use");
        assertThat(RideWords.firmness(0.77)).isEqualTo("more than a track car has");
    }

    private static Curve line(double force) {
        return new Curve(List.of(new Curve.Point(0, 0), new Curve.Point(0.1, force)));
    }

    private static Damper damper(double bump, double rebound) {
        return new Damper(
                OptionalDouble.of(1),
                NONE,
                NONE,
                Optional.of(new Damper.Forces(line(bump), line(rebound))),
                List.of(),
                Optional.empty());
    }

    /** The saloon with other dampers in front. */
    private static Car with(Optional<Damper> front) {
        Axle.Independent axle = (Axle.Independent) CAR.front();
        return new Car(
                CAR.weights(),
                CAR.wheelbase(),
                CAR.cgHeight(),
                CAR.chassisTorsionalStiffness(),
                CAR.steering(),
                CAR.air(),
                CAR.rollingResistance(),
                new Axle.Independent(
                        axle.track(),
                        axle.unsprung(),
                        axle.rollCentre(),
                        axle.spring(),
                        axle.bar(),
                        axle.stops(),
                        front,
                        axle.lowered(),
                        axle.rollCamber(),
                        axle.alignment(),
                        axle.tyre(),
                        axle.rollInertia()),
                CAR.rear(),
                CAR.drive(),
                CAR.pitchInertia(),
                CAR.seat());
    }

    private static String damping(double bump, double rebound) {
        Car car = with(Optional.of(damper(bump, rebound)));
        Ride ride = (Ride) Ride.of(car, RoadClass.B, 80 / 3.6);
        return one(all(car, ride, FirstStops.NONE, List.of(), Units.METRIC), "The front dampers give");
    }

    @Test
    void whatStandsOutBetweenBumpAndReboundIsSaid() {
        assertThat(damping(100, 200)).doesNotContain(";");
        assertThat(damping(100, 100.5)).doesNotContain(";");
        assertThat(damping(100, 95)).endsWith("; bump is the harder of the two, which is unusual.");
        // Three times the force is a little more in ratio; what would be shown as 3.0 is not more than 3.
        assertThat(damping(60, 178)).doesNotContain("pulls the car down");
        assertThat(damping(60, 184))
                .containsPattern(
                        "; rebound is 3\\.[1-2] times bump, and more than 3 pulls the car down on a rough road\\.$");
        assertThat(damping(100, 0)).endsWith("; in rebound they do nothing at that speed, which is unusual.");
        assertThat(damping(0, 200))
                .endsWith("; in bump they do next to nothing at that speed, and rebound alone pulls the car down on a"
                        + " rough road.");
        assertThat(damping(1, 200)).contains("bump 0.00").contains("next to nothing");
    }

    @Test
    void withoutCurvesNothingIsSaidOfDampingComfortAndGripThere() {
        Car car = with(Optional.empty());
        Ride ride = (Ride) Ride.of(car, RoadClass.B, 80 / 3.6);
        List<String> said = all(car, ride, FirstStops.NONE, List.of(), Units.METRIC);
        assertThat(said)
                .contains(
                        "There are no damper curves at the front, so nothing is said of damping, comfort and grip there.");
        assertThat(of(said, "The rear dampers give")).isPresent();
        assertThat(of(said, "the seat's mounting shakes")).isEmpty();
        assertThat(of(all(RIDE), "There are no damper curves")).isEmpty();
    }

    @Test
    void dampersThatStandFarInboardAreSaidToBeWorthLessInRoll() {
        for (double share : new double[] {0.749, 0.751}) {
            AxleRide own = RIDE.rear();
            AxleRide.Damped damped = own.damped().orElseThrow();
            AxleRide rear = new AxleRide(
                    own.end(),
                    own.rates(),
                    own.undamped(),
                    own.undampedModes(),
                    Optional.of(new AxleRide.Damped(damped.quarterCar(), damped.modes(), share, damped.road())),
                    own.standing(),
                    own.staticLoad(),
                    own.tramp());
            String said = one(all(ride(RIDE.front(), rear, RIDE.seat())), "The rear dampers give");
            assertThat(said.contains("; in roll they are worth 75 % of that at the wheels, as they stand inboard."))
                    .isEqualTo(share < 0.75);
        }
    }

    @Test
    void aTrampThatIsHardlyDampedRingsOn() {
        String hops = String.format(
                "The rear axle hops at %.1f Hz and tramps, wheel against wheel, at 12.3 Hz",
                RIDE.rear().hopFrequency());
        assertThat(tramp(OptionalDouble.of(0.1))).isEqualTo(hops + ", damped by 0.10.");
        assertThat(tramp(OptionalDouble.of(0.099)))
                .isEqualTo(hops + ", damped by 0.10: little, so one wheel's bump rings on.");
        assertThat(tramp(NONE)).isEqualTo(hops + ".");
        assertThat(of(all(swinging(1.3, 1.5)), "tramps")).isEmpty();
    }

    private static String tramp(OptionalDouble damping) {
        AxleRide rear = axle(RIDE.rear(), 1.5, PLENTY, Optional.of(new AxleTramp(12.34, damping, 40)));
        return one(all(ride(RIDE.front(), rear, RIDE.seat())), "tramps");
    }

    @Test
    void theRoadIsToldBySeatAxlesAndTyres() {
        SeatRide seat = new SeatRide(RIDE.seat().orElseThrow().car(), 1, 0.55);
        double front = RIDE.comfort(End.FRONT).orElseThrow();
        double rear = RIDE.comfort(End.REAR).orElseThrow();
        assertThat(one(all(ride(RIDE.front(), RIDE.rear(), Optional.of(seat))), "mounting shakes"))
                .startsWith(
                        "On " + ROAD + " at 80 km/h the seat's mounting shakes with 0.55 m/s² as a body feels it,"
                                + " r.m.s.: a little uncomfortable to fairly uncomfortable by ISO 2631-1; on class A (a new motorway) ")
                .contains(" and on class C (an ordinary country road) ")
                .contains(String.format(
                        "Above the front axle it is %.2f m/s² and above the rear one %.2f m/s².", front, rear))
                .endsWith(String.format(
                        "The load of the tyres varies by %.0f %% and %.0f %% of that at rest.",
                        100 * RIDE.tyreLoadVariation(End.FRONT).orElseThrow(),
                        100 * RIDE.tyreLoadVariation(End.REAR).orElseThrow()));
    }

    @Test
    void theRoadThatWasAskedIsNotAmongTheOthers() {
        Ride onC = (Ride) Ride.of(CAR, RoadClass.C, 80 / 3.6);
        assertThat(SeatWords.onOtherRoads(onC).orElseThrow())
                .startsWith("on class A (")
                .doesNotContain("class C");
        assertThat(SeatWords.onOtherRoads(ride(RIDE.front(), RIDE.rear(), Optional.empty())))
                .isEmpty();
    }

    @Test
    void whatIsShortOfTravelIsNamedAndWhatHasJustEnoughIsNot() {
        assertThat(of(all(standing(travels(mm(25), mm(60), mm(60)), PLENTY)), "little travel"))
                .isEmpty();
        assertThat(one(all(standing(travels(mm(24.9), mm(60), mm(60)), PLENTY)), "little travel"))
                .isEqualTo(
                        "At the front there is little travel for the road: 25 mm before the bump stop, where 25 mm are"
                                + " wanted.");
        assertThat(one(all(standing(PLENTY, travels(mm(12), mm(41), mm(38)))), "little travel"))
                .isEqualTo(
                        "At the rear there is little travel for the road: 12 mm before the bump stop, where 25 mm are"
                                + " wanted, 41 mm to metal, where 60 mm are wanted, 38 mm in droop, where 60 mm are wanted.");
        assertThat(one(
                        all(
                                CAR,
                                standing(travels(NONE, mm(30), NONE), PLENTY),
                                FirstStops.NONE,
                                List.of(),
                                Units.IMPERIAL),
                        "little travel"))
                .endsWith(": 1.2 in to metal, where 2.4 in are wanted.");
    }

    private static List<String> touched(OptionalDouble front, OptionalDouble rear) {
        Standing gap = travels(mm(40), NONE, NONE);
        return all(CAR, standing(gap, gap), new FirstStops(front, rear, Optional.empty()), List.of(), Units.METRIC)
                .stream()
                .filter(sentence -> sentence.contains("left turn"))
                .toList();
    }

    @Test
    void howEarlyAStopIsTouchedDecidesWhatIsSaidOfIt() {
        assertThat(touched(OptionalDouble.of(0.399 * G), OptionalDouble.of(0.401 * G)))
                .containsExactly(
                        "In a left turn a front bump stop is reached at 0.399 g, in any brisk bend: it takes part in"
                                + " springs and balance.",
                        "In a left turn a rear bump stop is reached at 0.401 g, in a fast bend.");
        assertThat(touched(OptionalDouble.of(0.699 * G), OptionalDouble.of(0.701 * G)))
                .containsExactly(
                        "In a left turn a front bump stop is reached at 0.699 g, in a fast bend.",
                        "In a left turn a rear bump stop is reached at 0.701 g.");
        assertThat(touched(NONE, NONE))
                .containsExactly("In a left turn the front and rear bump stops are not reached up to the limit.");
        assertThat(touched(NONE, OptionalDouble.of(0.8 * G)))
                .containsExactly(
                        "In a left turn a rear bump stop is reached at 0.800 g.",
                        "In a left turn the front bump stops are not reached up to the limit.");
    }

    @Test
    void ofStopsThatAreNotThereOrCarryAtRestNothingIsSaidInTheTurn() {
        Standing on = new Standing(2000, NONE, NONE, NONE, mm(-4), NONE, NONE, OptionalDouble.of(300), NONE);
        assertThat(of(all(standing(PLENTY, on)), "left turn")).isEmpty();
        FirstStops no = new FirstStops(NONE, NONE, Optional.of("it falls over"));
        assertThat(all(CAR, RIDE, no, List.of(), Units.METRIC))
                .contains("Where a stop is touched in a turn cannot be told: it falls over.");
    }

    @Test
    void aSpringTooLongOrTooShortMovesItsPerchOrTheCar() {
        assertThat(one(all(standing(spring(mm(5.4), NONE, NONE), PLENTY)), "perches"))
                .isEqualTo("The front springs are 5 mm longer than this ride height asks for: the perches have to go"
                        + " down by that, or the car stands higher.");
        assertThat(one(all(standing(PLENTY, spring(mm(-17), NONE, NONE))), "perches"))
                .isEqualTo("The rear springs are 17 mm shorter than this ride height asks for: the perches have to go"
                        + " up by that, or the car stands lower.");
        assertThat(of(all(standing(spring(mm(4.9), NONE, NONE), spring(mm(-4.9), NONE, NONE))), "perches"))
                .isEmpty();
    }

    @Test
    void coilsThatBindOrHaveLittleLeftAreTold() {
        assertThat(one(all(standing(spring(NONE, mm(-7), NONE), PLENTY)), "metal meets"))
                .isEqualTo("The front springs bind 7 mm before metal meets.");
        assertThat(one(all(standing(PLENTY, spring(NONE, mm(5.4), NONE))), "metal meets"))
                .isEqualTo("When metal meets, the rear springs have only 5 mm left between their coils.");
        assertThat(one(all(standing(PLENTY, spring(NONE, mm(0), NONE))), "metal meets"))
                .contains("have only 0 mm left");
        assertThat(of(all(standing(PLENTY, spring(NONE, mm(6), NONE))), "metal meets"))
                .isEmpty();
    }

    @Test
    void aSpringThatHangsLooseIsTold() {
        String loose = "The rear springs hang loose before droop ends: they need a helper or a strap.";
        assertThat(all(standing(PLENTY, spring(NONE, NONE, OptionalDouble.of(-1)))))
                .contains(loose);
        assertThat(all(standing(PLENTY, spring(NONE, NONE, OptionalDouble.of(1)))))
                .doesNotContain(loose);
        assertThat(all(standing(PLENTY, PLENTY))).doesNotContain(loose);
    }

    @Test
    void theOwnerHearsOfFrequencyRoadAndTravelOnly() {
        Ride ride = standing(travels(mm(12), NONE, NONE), spring(mm(20), mm(1), OptionalDouble.of(-1)));
        assertThat(RideWords.forOwner(CAR, ride, ROAD, Units.METRIC))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("The body swings"),
                        second -> assertThat(second).startsWith("On " + ROAD),
                        third -> assertThat(third).startsWith("At the front there is little travel"));
    }

    @Test
    void settingsOfADamperAreListedWithTheOneThatIsSet() {
        List<Damper.Setting> settings = List.of(
                new Damper.Setting("soft", new Damper.Forces(line(80), line(120))),
                new Damper.Setting("hard", new Damper.Forces(line(200), line(300))));
        Car car = with(Optional.of(new Damper(
                OptionalDouble.of(1),
                NONE,
                NONE,
                Optional.of(settings.get(1).forces()),
                settings,
                Optional.of("hard"))));
        Ride ride = (Ride) Ride.of(car, RoadClass.B, 80 / 3.6);
        assertThat(one(all(car, ride, FirstStops.NONE, List.of(), Units.METRIC), "Settings of the front damper"))
                .matches("Settings of the front damper: \"soft\" \\d\\.\\d\\d, felt above the axle \\d\\.\\d\\d m/s²,"
                        + " tyre load varies \\d+\\.\\d %; \"hard\" \\d\\.\\d\\d, felt above the axle \\d\\.\\d\\d m/s²,"
                        + " tyre load varies \\d+\\.\\d % \\(set\\)\\.");
        assertThat(of(
                        RideWords.withoutSettings(car, ride, FirstStops.NONE, List.of(), ROAD, Units.METRIC),
                        "Settings of the front"))
                .isEmpty();
    }
}
