package evenhand.load;

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
import evenhand.car.RoadCars;
import evenhand.car.Sinking;
import evenhand.car.Spring;
import evenhand.car.Steering;
import evenhand.car.Stops;
import evenhand.car.Unsprung;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;
import evenhand.tyre.MagicFormula;
import evenhand.tyre.Tyre;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LadenTest {
    private static final double G = Weights.GRAVITY;
    private static final int CARS = 5_000;
    private static final double WHEELBASE = 2.350;

    /** Up to three masses, from a boot full of bricks to a mast on the nose. */
    private static LoadCase any(long seed, double wheelbase) {
        SplittableRandom random = new SplittableRandom(seed);
        List<LoadCase.Added> added = new ArrayList<>();
        int pieces = 1 + random.nextInt(3);
        for (int i = 0; i < pieces; i++) {
            added.add(new LoadCase.Added(
                    "piece " + i,
                    150 * random.nextDouble(),
                    wheelbase * (-0.2 + 1.5 * random.nextDouble()),
                    0.3 + random.nextDouble()));
        }
        return new LoadCase("load " + seed, added);
    }

    private static LoadCase one(double mass, double behindFrontAxle, double height) {
        return new LoadCase("one", List.of(new LoadCase.Added("ballast", mass, behindFrontAxle, height)));
    }

    private static Laden.AtRest atRest(Car car, LoadCase load) {
        Laden laden = Laden.of(car, Optional.of(load));
        assertThat(laden).isInstanceOf(Laden.AtRest.class);
        return (Laden.AtRest) laden;
    }

    private static String noRest(Car car, LoadCase load) {
        Laden laden = Laden.of(car, Optional.of(load));
        assertThat(laden).isInstanceOf(Laden.NoRest.class);
        return ((Laden.NoRest) laden).text();
    }

    private static double gap(Axle axle) {
        return axle.stops().bump().map(Stops.Bump::gap).orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void springsStopsAndTyresCarryTheCarAndItsLoad() {
        int onStops = 0;
        int onStopsAlone = 0;
        for (long seed = 0; seed < CARS; seed++) {
            Car before = RoadCars.any(seed);
            LoadCase load = any(seed, before.wheelbase());
            Laden.AtRest rest = atRest(before, load);
            Car car = rest.car();
            String which = "seed " + seed;
            double moment = 0;
            double tyres = 0;
            for (End end : End.values()) {
                Axle axle = car.axle(end);
                Axle unladen = before.settled().axle(end);
                Sinking sinking = end == End.FRONT ? rest.front() : rest.rear();
                // Tyres: what they were pressed by at rest, and what they gave since.
                double carried = before.staticLoad(end, true)
                        + before.staticLoad(end, false)
                        + 2 * axle.tyre().verticalRate() * sinking.squash();
                tyres += carried;
                moment += end == End.REAR ? carried * car.wheelbase() : 0;
                // Springs and stops of the car before, pressed in by the travel, between body and axle.
                AxleSuspension springs = AxleSuspension.of(before.settled(), end);
                springs.at(sinking.travel(), 0, unladen.rollCentreHeight());
                double hung = axle.unsprung().mass() * G;
                assertThat(springs.force).as(which).isCloseTo(carried - hung, within(1e-9 * carried));
                if (loose(before.settled(), end)) {
                    onStopsAlone++; // it would lean a little as well
                    continue;
                }
                assertThat(springs.moment).as(which).isCloseTo(0, within(1e-6));
                // And those of the car as it has settled, at rest.
                AxleSuspension settled = AxleSuspension.of(car, end);
                settled.at(0, 0, axle.rollCentreHeight());
                assertThat(settled.force).as(which).isCloseTo(carried - hung, within(1e-9 * carried));
                assertThat(settled.moment).as(which).isCloseTo(0, within(1e-6));
                onStops += gap(axle) < 0 ? 1 : 0;
            }
            double ofCar = before.weights().mass() * before.cgBehindFront();
            double ofLoad = load.added().stream()
                    .mapToDouble(one -> one.mass() * one.behindFrontAxle())
                    .sum();
            assertThat(tyres).as(which).isCloseTo(G * (before.weights().mass() + load.mass()), within(1e-9 * tyres));
            assertThat(moment).as(which).isCloseTo(G * (ofCar + ofLoad), within(1e-9 * moment));
            assertThat(car.weights().mass()).isCloseTo(tyres / G, within(1e-9));
            assertThat(car.cgBehindFront())
                    .isCloseTo((ofCar + ofLoad) / car.weights().mass(), within(1e-9));
        }
        assertThat(onStops).as("axles that came down on their stops").isBetween(200, CARS);
        assertThat(onStopsAlone)
                .as("axles whose stops would carry more than there is")
                .isLessThan(CARS / 500);
    }

    @Test
    void nothingAddedChangesNothingAtAll() {
        LoadCase empty = new LoadCase("empty", List.of());
        LoadCase air = one(0, 1, 0.5);
        for (long seed = 0; seed < CARS; seed++) {
            Car car = RoadCars.any(seed);
            Laden none = Laden.of(car, Optional.empty());
            assertThat(none).isEqualTo(new Laden.AtRest(car.settled(), Sinking.NONE, Sinking.NONE));
            assertThat(Laden.of(car, Optional.of(empty))).isEqualTo(none);
            assertThat(Laden.of(car, Optional.of(air))).isEqualTo(none);
        }
    }

    @Test
    void aFeatherChangesNextToNothing() {
        for (long seed = 0; seed < CARS; seed++) {
            Car car = RoadCars.any(seed).settled();
            Laden.AtRest rest = atRest(car, one(1e-6, 1.3, 0.6));
            if (!loose(car, End.FRONT) && !loose(car, End.REAR)) {
                assertThat(rest.front().drop()).as("seed " + seed).isCloseTo(0, within(1e-8));
                assertThat(rest.rear().drop()).as("seed " + seed).isCloseTo(0, within(1e-8));
                assertThat(rest.car().cgHeight()).isCloseTo(car.cgHeight(), within(1e-8));
            }
        }
    }

    @Test
    void loadedInTwoGoesItStandsAsLoadedAtOnce() {
        int compared = 0;
        for (long seed = 0; seed < CARS; seed++) {
            Car car = RoadCars.any(seed);
            LoadCase first = any(seed, car.wheelbase());
            LoadCase second = any(seed + CARS, car.wheelbase());
            List<LoadCase.Added> both = new ArrayList<>(first.added());
            both.addAll(second.added());
            if (!straight(car)
                    || !(Laden.of(car, Optional.of(first)) instanceof Laden.AtRest half)
                    || !(Laden.of(car, Optional.of(new LoadCase("both", both))) instanceof Laden.AtRest once)) {
                continue;
            }
            // Whoever gets in second finds his seat lower: let down first, then by who got in before him.
            List<LoadCase.Added> lower = second.added().stream()
                    .map(one -> {
                        double part = one.behindFrontAxle() / car.wheelbase();
                        double inFront = car.front().lowered() + half.front().drop();
                        double behind = car.rear().lowered() + half.rear().drop();
                        return new LoadCase.Added(
                                one.what(),
                                one.mass(),
                                one.behindFrontAxle(),
                                one.height() - inFront * (1 - part) - behind * part);
                    })
                    .toList();
            if (Laden.of(half.car(), Optional.of(new LoadCase("second", lower))) instanceof Laden.AtRest twice) {
                alike(once.car(), twice.car(), "seed " + seed);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(CARS / 2);
    }

    /** Whether the rates of a car's springs stay when they are pressed in, and none is loose at rest. */
    private static boolean straight(Car car) {
        for (End end : End.values()) {
            if (car.axle(end).spring().lengths().installed().isPresent() || loose(car.settled(), end)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a stop would carry more than stands on one side at rest: that car's springs hang loose. */
    private static boolean loose(Car settled, End end) {
        AxleSuspension springs = AxleSuspension.of(settled, end);
        return springs.springLoadAtRest(true) <= 0 || springs.springLoadAtRest(false) <= 0;
    }

    private static void alike(Car one, Car other, String which) {
        assertThat(one.weights().mass()).as(which).isCloseTo(other.weights().mass(), within(1e-9));
        assertThat(one.cgBehindFront()).as(which).isCloseTo(other.cgBehindFront(), within(1e-10));
        assertThat(one.cgHeight()).as(which).isCloseTo(other.cgHeight(), within(1e-10));
        assertThat(one.sprung().height()).as(which).isCloseTo(other.sprung().height(), within(1e-10));
        assertThat(one.air().dragHeight().orElse(0))
                .as(which)
                .isCloseTo(other.air().dragHeight().orElse(0), within(0.05));
        for (End end : End.values()) {
            Axle a = one.axle(end);
            Axle b = other.axle(end);
            assertThat(a.rollCentreHeight()).as(which).isCloseTo(b.rollCentreHeight(), within(1e-10));
            assertThat(a.alignment().camber()).as(which).isCloseTo(b.alignment().camber(), within(1e-10));
            assertThat(a.unsprung().height()).as(which).isCloseTo(b.unsprung().height(), within(1e-10));
            assertThat(a.tyre().loadedRadius()).as(which).isCloseTo(b.tyre().loadedRadius(), within(1e-10));
            if (a.stops().bump().isPresent()) {
                assertThat(gap(a)).as(which).isCloseTo(gap(b), within(1e-10));
            }
        }
    }

    @Test
    void theMirroredCarSettlesAsTheMirrorImage() {
        for (long seed = 0; seed < CARS; seed++) {
            Car car = RoadCars.any(seed);
            LoadCase load = any(seed, car.wheelbase());
            if (Laden.of(car, Optional.of(load)) instanceof Laden.AtRest rest) {
                Laden.AtRest mirrored = atRest(car.mirrored(), load);
                alike(rest.car(), mirrored.car(), "seed " + seed);
                for (End end : End.values()) {
                    assertThat(mirrored.car().staticLoad(end, true))
                            .isCloseTo(rest.car().staticLoad(end, false), within(1e-9));
                }
            }
        }
    }

    @Test
    void aCrossWeightStaysAsManyNewtonsAsItWas() {
        for (long seed = 0; seed < 200; seed++) {
            Car car = RoadCars.any(seed);
            Laden.AtRest rest = atRest(car, one(150, 1.9, 0.6));
            for (End end : End.values()) {
                assertThat(rest.car().staticLoad(end, true) - rest.car().staticLoad(end, false))
                        .isCloseTo(car.staticLoad(end, true) - car.staticLoad(end, false), within(1e-9));
            }
        }
    }

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
                OptionalDouble.of(1500));
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
        assertThat(rear.rollCentreHeight()).isCloseTo(0.230 - 0.0150153 - 0.0019613, within(1e-7));
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
        settled.at(0, 0, rest.car().rear().rollCentreHeight());
        assertThat(settled.forceByTravel).isCloseTo(2 * (26124.36 + 50e3), within(0.1));
        assertThat(settled.bumpDeflection(0, 0, true)).isCloseTo(0.0060188, within(1e-7));
    }

    /** 160 kg half way between the axles: 784.532 N for two springs of 21 N/mm and two tyres of 200 N/mm in front. */
    @Test
    void anIndependentAxleFollowsItsLinks() {
        Laden.AtRest rest = atRest(coupe(0.040, 0.070, 0.075), one(160, WHEELBASE / 2, 0.600));
        double travel = 784.532 / 42e3;
        double squash = 784.532 / 400e3;
        assertThat(rest.front().travel()).isCloseTo(travel, within(1e-9));
        Axle front = rest.car().front();
        assertThat(front.rollCentreHeight()).isCloseTo(0.050 - 1.3 * travel - squash, within(1e-9));
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
        assertThat(front.droopExcess(0, 0, true)).isCloseTo(630.9975 / 2042e3, within(1e-9));
        // The springs carry what the axle weighs on the body and what the stop holds back.
        assertThat(front.springLoadAtRest(true))
                .isCloseTo((1120 * 0.53 - 76) * G / 2 + 21e3 * rest.front().travel(), within(1e-6));
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
        assertThat(noRest(bare, one(1100, WHEELBASE, 0.7)))
                .isEqualTo("with \"one\" aboard it would come down by 0 mm in front and 233 mm behind, further than its"
                        + " heights allow");
    }
}
