package evenhand.load;

import static evenhand.load.Loads.atRest;
import static evenhand.load.Loads.gap;
import static evenhand.load.Loads.noRest;
import static evenhand.load.Loads.one;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Air;
import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.LateralLocator;
import evenhand.car.LoadCase;
import evenhand.car.Seat;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Steering;
import evenhand.car.Stops;
import evenhand.car.Unsprung;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;
import evenhand.tyre.MagicFormula;
import evenhand.tyre.Tyre;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** How far one coupé settles, against sums on paper. */
class LadenByHandTest {
    private static final double G = Weights.GRAVITY;
    private static final double WHEELBASE = 2.350;

    /** Wishbones in front, 21 N/mm at the wheel; coil-overs of 28 N/mm that lean by 15 degrees behind; tyres of 200 N/mm. */
    private static Car coupe(Stops front, Stops rear, Spring.Lengths coils, double lowered) {
        Tyre tyre = new Tyre(
                0.300,
                200e3,
                new MagicFormula(3000, 40e3, 1, 0.1, 2, 1.3, -0.5, 0.05, 2, 0.02, 0.03),
                1,
                OptionalDouble.empty());
        return new Car(
                new Weights.Whole(1120, 0.53),
                WHEELBASE,
                0.500,
                Double.POSITIVE_INFINITY,
                Steering.USUAL,
                new Air(0.7, OptionalDouble.of(0.600), 0, 0),
                0,
                new Axle.Independent(
                        1.320,
                        new Unsprung(76, 0.300),
                        new Axle.RollCentre(0.050, -1.3),
                        new Spring.AtWheel(21e3, 1, Spring.Lengths.UNKNOWN),
                        Optional.empty(),
                        front,
                        Optional.empty(),
                        lowered,
                        0.75,
                        new Alignment(Math.toRadians(-0.5), 0, 0, 0, 0),
                        tyre,
                        OptionalDouble.empty()),
                new Axle.Live(
                        1.300,
                        new Unsprung(125, 0.300),
                        new LateralLocator.WattsLinkage(0.230, LateralLocator.CarriedBy.BODY),
                        new Spring.Leaning(28e3, 0.960, Math.toRadians(15), 0.200, coils),
                        Optional.empty(),
                        rear,
                        Optional.empty(),
                        lowered,
                        new Alignment(0, 0, 0, 0, 0),
                        tyre,
                        OptionalDouble.empty()),
                Drive.USUAL,
                OptionalDouble.of(1500),
                Seat.USUAL);
    }

    private static Stops stops(double bump, double droop, double metal) {
        Curve rubber = new Curve(List.of(new Curve.Point(0, 0), new Curve.Point(0.020, 1000)));
        return new Stops(
                Optional.of(new Stops.Bump(bump, rubber, OptionalDouble.empty())),
                Optional.of(new Stops.Droop(droop, 1e6, OptionalDouble.empty())),
                Optional.of(new Stops.Metal(metal, OptionalDouble.empty())));
    }

    private static Car coupe(double bump, double droop, double metal) {
        Stops stops = stops(bump, droop, metal);
        return coupe(stops, stops, Spring.Lengths.UNKNOWN, 0);
    }

    /**
     * 80 kg right over the rear axle: 784.532 N press two springs of 28·cos² 15° = 26.12436 N/mm by 15.0153 mm and two tyres by 1.9613
     * mm. Some 15 mm is what a shop sees.
     */
    @Test
    void eightyKilogramsOverTheAxleAreFifteenMillimetresOfSpring() {
        Laden.AtRest rest = atRest(coupe(0.040, 0.070, 0.075), one(80, WHEELBASE, 0.700));
        assertThat(rest.front().drop()).isCloseTo(0, within(1e-12));
        assertThat(rest.rear().travel()).isCloseTo(0.0150153, within(1e-7));
        assertThat(rest.rear().squash()).isCloseTo(0.0019613, within(1e-7));
        Axle rear = rest.car().rear();
        assertThat(rear.geometry().rollCentreHeight()).isCloseTo(0.230 - 0.0150153 - 0.0019613, within(1e-7));
        assertThat(gap(rear)).isCloseTo(0.040 - 0.0150153, within(1e-7));
        assertThat(rear.stops().droop().orElseThrow().travel()).isCloseTo(0.070 + 0.0150153, within(1e-7));
        assertThat(rear.stops().metal().orElseThrow().gap()).isCloseTo(0.075 - 0.0150153, within(1e-7));
        assertThat(((Spring.Leaning) rear.spring()).lowerMountHeight()).isCloseTo(0.200 - 0.0019613, within(1e-7));
        assertThat(rear.unsprung().height()).isCloseTo(0.300 - 0.0019613, within(1e-7));
        assertThat(rear.tyre().loadedRadius()).isCloseTo(0.300 - 0.0019613, within(1e-7));
        assertThat(gap(rest.car().front())).isCloseTo(0.040, within(1e-12));
    }

    /** 200 kg over the rear axle: 1044.974 N to the rubbers, the rest by springs and rubbers of 50 N/mm: 20 + 6.0188 mm. */
    @Test
    void onItsRubbersItIsHeldByBoth() {
        Laden.AtRest rest = atRest(coupe(0.020, 0.070, 0.075), one(200, WHEELBASE, 0.700));
        assertThat(rest.rear().travel()).isCloseTo(0.0260188, within(1e-7));
        assertThat(gap(rest.car().rear())).isCloseTo(-0.0060188, within(1e-7));
        AxleSuspension settled = AxleSuspension.of(rest.car(), End.REAR);
        settled.at(0, 0, rest.car().rear().geometry().rollCentreHeight());
        assertThat(settled.forceByTravel).isCloseTo(2 * (26124.36 + 50e3), within(0.1));
        assertThat(settled.bumpDeflection(0, 0, Side.LEFT)).isCloseTo(0.0060188, within(1e-7));
    }

    /** 160 kg half way between the axles: 784.532 N for two springs of 21 N/mm and two tyres of 200 N/mm in front. */
    @Test
    void anIndependentAxleFollowsItsLinks() {
        Laden.AtRest rest = atRest(coupe(0.040, 0.070, 0.075), one(160, WHEELBASE / 2, 0.600));
        double travel = 784.532 / 42e3;
        double squash = 784.532 / 400e3;
        assertThat(rest.front().travel()).isCloseTo(travel, within(1e-9));
        Axle front = rest.car().front();
        assertThat(front.geometry().rollCentreHeight()).isCloseTo(0.050 - 1.3 * travel - squash, within(1e-9));
        assertThat(front.alignment().camber())
                .isCloseTo(Math.toRadians(-0.5) - 2 * 0.25 / 1.320 * travel, within(1e-9));
    }

    @Test
    void everyMassFallsByWhatTheBodyFallsAtItsPlace() {
        Car before = coupe(0.040, 0.070, 0.075);
        LoadCase load = new LoadCase(
                "two",
                List.of(new LoadCase.Added("in front", 70, 1.1, 0.55), new LoadCase.Added("boot", 60, 2.7, 0.75)));
        Laden.AtRest rest = atRest(before, load);
        double front = rest.front().drop();
        double rear = rest.rear().drop();
        Car.Sprung sprung = before.sprung();
        double moment = sprung.mass() * (sprung.height() - front * sprung.frontShare() - rear * sprung.rearShare())
                + 70 * (0.55 - front * (1 - 1.1 / WHEELBASE) - rear * 1.1 / WHEELBASE)
                + 60 * (0.75 - front * (1 - 2.7 / WHEELBASE) - rear * 2.7 / WHEELBASE)
                + 76 * (0.300 - rest.front().squash())
                + 125 * (0.300 - rest.rear().squash());
        assertThat(rest.car().cgHeight()).isCloseTo(moment / 1250, within(1e-12));
        assertThat(rest.car().sprung().mass()).isCloseTo(1250 - 201, within(1e-9));
        assertThat(rest.car().air().dragHeight().orElseThrow())
                .isCloseTo(0.600 - front * sprung.frontShare() - rear * sprung.rearShare(), within(1e-12));
    }

    @Test
    void aSeatIsLetDownWithTheBody() {
        Stops none = Stops.NONE;
        Car high = coupe(none, none, Spring.Lengths.UNKNOWN, 0);
        Car low = coupe(none, none, Spring.Lengths.UNKNOWN, 0.030);
        LoadCase load = one(100, 1.4, 0.600);
        double sunk = atRest(high, load).car().sprung().height() - 0.030;
        assertThat(atRest(low, load).car().sprung().height()).isCloseTo(sunk, within(1e-12));
        assertThat(atRest(low, load).car().front().lowered()).isZero();
    }

    /** Two bodies turn about their common centre as their own inertias and that of their reduced mass at their distance. */
    @Test
    void whatStandsFarOffAddsMostToThePitchInertia() {
        Car before = coupe(0.040, 0.070, 0.075);
        Car.Sprung sprung = before.sprung();
        double inertia = atRest(before, one(100, sprung.behindFront() + 1.2, sprung.height() + 0.3))
                .car()
                .pitchInertia()
                .orElseThrow();
        double reduced = sprung.mass() * 100 / (sprung.mass() + 100);
        assertThat(inertia).isCloseTo(1500 + reduced * (1.2 * 1.2 + 0.3 * 0.3), within(1e-6));
        assertThat(atRest(before, one(100, sprung.behindFront(), sprung.height()))
                        .car()
                        .pitchInertia()
                        .orElseThrow())
                .isCloseTo(1500, within(1e-6));
    }

    /** The spring of the settled car is 15.0153·cos 15° mm shorter and carries half the load more, along its line. */
    @Test
    void aLeaningSpringsRateFallsWithItsNewLoadAndLength() {
        Spring.Lengths coils =
                new Spring.Lengths(OptionalDouble.of(0.330), OptionalDouble.empty(), OptionalDouble.empty());
        Car before = coupe(Stops.NONE, Stops.NONE, coils, 0);
        double cos = Math.cos(Math.toRadians(15));
        double sin = Math.sin(Math.toRadians(15));
        double rest = (1120 * 0.47 - 125) * G / 2;
        double rate = 28e3 * cos * cos - rest / cos * sin * sin / 0.330;
        Laden.AtRest laden = atRest(before, one(80, WHEELBASE, 0.700));
        double travel = 80 * G / 2 / rate;
        assertThat(laden.rear().travel()).isCloseTo(travel, within(1e-12));
        double now = 28e3 * cos * cos - (rest + 40 * G) / cos * sin * sin / (0.330 - travel * cos);
        assertThat(AxleSuspension.of(laden.car(), End.REAR).heaveRate()).isCloseTo(now, within(1e-6));
    }

    /** 300 kg half a wheelbase behind the rear axle: 1470.9975 N less in front, 840 N of it by 20 mm of spring. */
    @Test
    void anAxleThatIsLiftedHangsOnItsDroopStop() {
        Laden.AtRest rest = atRest(
                coupe(stops(0.060, 0.020, 0.1), Stops.NONE, Spring.Lengths.UNKNOWN, 0), one(300, 1.5 * WHEELBASE, 0.7));
        assertThat(rest.front().travel()).isCloseTo(-0.020 - 630.9975 / 2042e3, within(1e-9));
        AxleSuspension front = AxleSuspension.of(rest.car(), End.FRONT);
        front.at(0, 0, 0);
        assertThat(front.force).isCloseTo((1120 * 0.53 - 76 - 150) * G, within(1e-6));
        assertThat(front.droopExcess(0, 0, Side.LEFT)).isCloseTo(630.9975 / 2042e3, within(1e-9));
        // The springs carry what the axle weighs on the body and what the stop holds back.
        assertThat(front.springLoadAtRest(Side.LEFT))
                .isCloseTo((1120 * 0.53 - 76) * G / 2 + 21e3 * rest.front().travel(), within(1e-6));
    }

    /** Of 1120 kg 201 are wheels and axles, which stay: the centre of all falls by 919/1120 of what the body does. */
    @Test
    void aBodyThatIsLetDownTakesItsWeightAndItsDragWithIt() {
        Car low = coupe(Stops.NONE, Stops.NONE, Spring.Lengths.UNKNOWN, 0.030).settled();
        assertThat(low.air().dragHeight().orElseThrow()).isCloseTo(0.570, within(1e-12));
        assertThat(low.cgHeight()).isCloseTo(0.500 - 0.030 * 919 / 1120, within(1e-12));
    }

    /** In front 593.6 kg stand on the tyres, 76 of them the wheels': what takes 517.6 kg away lifts the body off its springs. */
    @Test
    void anAxleIsLiftedWhereNothingIsLeftOnItsSprings() {
        Car car = coupe(Stops.NONE, Stops.NONE, Spring.Lengths.UNKNOWN, 0);
        assertThat(noRest(car, one(518, 2 * WHEELBASE, 0.7))).contains("its front axle is lifted");
        Laden less = Laden.of(car, Optional.of(one(517, 2 * WHEELBASE, 0.7)));
        assertThat(less instanceof Laden.NoRest none && none.text().contains("is lifted"))
                .isFalse();
    }

    @Test
    void aLoadThatNoCarCarriesIsSaidInWords() {
        Car car = coupe(0.040, 0.070, 0.075);
        assertThat(noRest(car, one(900, 2 * WHEELBASE, 0.7)))
                .isEqualTo("with \"one\" aboard its front axle is lifted: the load stands too far beyond the other");
        assertThat(noRest(car, one(900, WHEELBASE, 0.7)))
                .isEqualTo("with \"one\" aboard its rear suspension would have to go 84 mm into bump, and metal meets"
                        + " metal after 75 mm");
        Spring.Lengths coils =
                new Spring.Lengths(OptionalDouble.of(0.330), OptionalDouble.empty(), OptionalDouble.of(0.310));
        assertThat(noRest(coupe(Stops.NONE, Stops.NONE, coils, 0), one(200, WHEELBASE, 0.7)))
                .isEqualTo(
                        "with \"one\" aboard its rear suspension would have to go 38 mm into bump, and the springs are"
                                + " coil-bound after 21 mm");
        Car bare = coupe(Stops.NONE, Stops.NONE, Spring.Lengths.UNKNOWN, 0);
        assertThat(noRest(bare, one(9000, WHEELBASE / 2, 0.7)))
                .isEqualTo(
                        "with \"one\" aboard its front springs are far too soft: it comes down by more than a metre");
        // 1200 kg more on each axle: 280.2 + 29.4 mm in front, 225.2 + 29.4 mm behind
        assertThat(noRest(bare, one(2400, WHEELBASE / 2, 0.7)))
                .isEqualTo("with \"one\" aboard it would come down by 310 mm in front and 255 mm behind, further than"
                        + " its heights allow");
        assertThat(noRest(bare, one(1100, WHEELBASE, 0.7)))
                .isEqualTo("with \"one\" aboard it would come down by 0 mm in front and 233 mm behind, further than its"
                        + " heights allow");
    }
}
