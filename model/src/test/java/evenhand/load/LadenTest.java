package evenhand.load;

import static evenhand.load.Loads.atRest;
import static evenhand.load.Loads.gap;
import static evenhand.load.Loads.one;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.car.RoadCars;
import evenhand.car.Side;
import evenhand.car.Sinking;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold whatever car settles under whatever load. */
class LadenTest {
    private static final double G = Weights.GRAVITY;

    private static final int CARS = 5_000;

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
                double carried = before.axleLoad(end) + 2 * axle.tyre().verticalRate() * sinking.squash();
                tyres += carried;
                moment += end == End.REAR ? carried * car.wheelbase() : 0;
                // Springs and stops of the car before, pressed in by the travel, between body and axle.
                AxleSuspension springs = AxleSuspension.of(before.settled(), end);
                springs.at(sinking.travel(), 0, unladen.geometry().rollCentreHeight());
                double hung = axle.unsprung().mass() * G;
                assertThat(springs.force).as(which).isCloseTo(carried - hung, within(1e-9 * carried));
                if (loose(before.settled(), end)) {
                    onStopsAlone++; // it would lean a little as well
                    continue;
                }
                assertThat(springs.moment).as(which).isCloseTo(0, within(1e-6));
                // And those of the car as it has settled, at rest.
                AxleSuspension settled = AxleSuspension.of(car, end);
                settled.at(0, 0, axle.geometry().rollCentreHeight());
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
        return springs.springLoadAtRest(Side.LEFT) <= 0 || springs.springLoadAtRest(Side.RIGHT) <= 0;
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
            assertThat(a.geometry().rollCentreHeight())
                    .as(which)
                    .isCloseTo(b.geometry().rollCentreHeight(), within(1e-10));
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
                    assertThat(mirrored.car().staticLoad(end, Side.LEFT))
                            .isCloseTo(rest.car().staticLoad(end, Side.RIGHT), within(1e-9));
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
                assertThat(rest.car().staticLoad(end, Side.LEFT) - rest.car().staticLoad(end, Side.RIGHT))
                        .isCloseTo(car.staticLoad(end, Side.LEFT) - car.staticLoad(end, Side.RIGHT), within(1e-9));
            }
        }
    }
}
