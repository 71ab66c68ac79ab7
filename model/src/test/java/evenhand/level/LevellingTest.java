package evenhand.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Air;
import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.Perches;
import evenhand.car.RoadCars;
import evenhand.car.Seat;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Steering;
import evenhand.car.Stops;
import evenhand.car.Unsprung;
import evenhand.car.Weights;
import evenhand.level.Levelling.Asked;
import evenhand.level.Levelling.Hold;
import evenhand.level.Levelling.Limit;
import evenhand.level.Levelling.Rise;
import evenhand.level.Levelling.Status;
import evenhand.turn.Wheel;
import evenhand.tyre.MagicFormula;
import evenhand.tyre.Tyre;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Perches turned on a car that is alike at both ends, against sums on paper, and what holds on every car. */
class LevellingTest {
    private static final double G = Weights.GRAVITY;
    private static final Perches.Room PLENTY = Perches.Room.UNKNOWN;

    /**
     * What a turn up on one diagonal and down on the other moves at each corner, N. A turn of 2 mm presses a spring of 30 N/mm by 60 N
     * and the wheel by 60·0.7 = 42 N. The body stays, for what rolls it in front is held behind; springs of 14406 N·m/rad yield beside
     * tyres of 196000 N·m/rad, which the weight of the wheels, 60 kg at 0.3 m, makes softer:
     * 42·196000/(14406 + 196000 − 60·9.80665·0.3) = 39.157 N.
     */
    private static final double BY_A_TURN = 42 * 196_000 / (14_406 + 196_000 - 60 * G * 0.3);

    /** Springs of 30 N/mm at 0.7, tyres of 200 N/mm and 1.4 m of track at both ends; 1000 kg, of which three turns lie crooked. */
    private static Car alike(Perches.Room room, Optional<Bar> bar, double lowered) {
        double crooked = 3 * BY_A_TURN / G;
        Axle axle = axle(room, bar, lowered);
        return new Car(
                new Weights.Corners(250 + crooked, 250 - crooked, 250 - crooked, 250 + crooked),
                2.4,
                0.5,
                Double.POSITIVE_INFINITY,
                Steering.USUAL,
                Air.NONE,
                0,
                axle,
                axle,
                Drive.USUAL,
                OptionalDouble.empty(),
                Seat.USUAL);
    }

    private static Axle axle(Perches.Room room, Optional<Bar> bar, double lowered) {
        Tyre tyre = new Tyre(
                0.300,
                200e3,
                new MagicFormula(3000, 40e3, 1, 0.1, 2, 1.3, -0.5, 0.05, 2, 0.02, 0.03),
                1,
                OptionalDouble.empty());
        Spring.Lengths lengths = new Spring.Lengths(
                OptionalDouble.of(0.250),
                OptionalDouble.empty(),
                OptionalDouble.of(0.180),
                Optional.of(new Perches(0.002, room, room)));
        return new Axle.Independent(
                1.4,
                new Unsprung(60, 0.300),
                new Axle.RollCentre(0, 0),
                new Spring.AtWheel(30e3, 0.7, lengths),
                bar,
                new Stops(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Stops.Metal(0.080, OptionalDouble.empty()))),
                Optional.empty(),
                lowered,
                0.7,
                new Alignment(0, 0, 0, 0, 0),
                tyre,
                OptionalDouble.empty());
    }

    private static Levelling half(Car car) {
        return of(car, new Asked(OptionalDouble.of(0.5), Map.of(), false));
    }

    private static Levelling of(Car car, Asked asked) {
        return Levelling.of(car, car.settled(), asked).orElseThrow();
    }

    private static Map<Wheel, Rise> all(double rise, double tolerance) {
        Map<Wheel, Rise> all = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            all.put(wheel, new Rise(rise, tolerance));
        }
        return all;
    }

    @Test
    void threeTurnsCrookedAreThreeTurnsOnEachCornerBack() {
        Levelling level = half(alike(PLENTY, Optional.empty(), 0));
        assertThat(level.status()).isEqualTo(Status.MET);
        assertThat(level.now().crossWeight()).isCloseTo(0.5 + 6 * BY_A_TURN / (1000 * G), within(1e-12));
        double[] turns = {-3, 3, 3, -3};
        for (Wheel wheel : Wheel.values()) {
            assertThat(level.turns(wheel)).isCloseTo(turns[wheel.index()], within(1e-6));
            assertThat(level.after().corner(wheel).load()).isCloseTo(250 * G, within(1e-4));
            // the tyres give by what they carry less; the springs, pressed by 42 N a turn, by the rest
            double gives = turns[wheel.index()] * 0.98 * 42 / (14_406 + 196_000 - 60 * G * 0.3);
            assertThat(level.after().corner(wheel).rise()).isCloseTo(gives, within(1e-9));
        }
        assertThat(level.after().frontRoll()).isCloseTo(0, within(1e-9));
    }

    /** The rule of the scales: a perch that is raised loads its own corner and the one across, and takes it off the other two. */
    @Test
    void aPerchThatIsRaisedLoadsItsOwnCornerAndTheOneAcross() {
        Car car = alike(PLENTY, Optional.empty(), 0);
        Posture before = new OnPerches(car, false).at(new double[4]).orElseThrow();
        for (Wheel raised : Wheel.values()) {
            double[] by = new double[4];
            by[raised.index()] = 0.002;
            Posture after = new OnPerches(car, false).at(by).orElseThrow();
            double across = 0;
            for (Wheel wheel : Wheel.values()) {
                boolean gains = wheel == raised || (wheel.end() != raised.end() && wheel.side() != raised.side());
                double gain = after.corner(wheel).load() - before.corner(wheel).load();
                assertThat(gains ? gain : -gain).isBetween(5.0, 14.0);
                across += gains ? gain : -gain;
            }
            // a quarter of a turn of both diagonals; that the body leans moves what the sides carry and no more
            assertThat(across / 4).isCloseTo(BY_A_TURN / 4, within(1e-6));
            assertThat(after.corner(raised).rise()).isGreaterThan(0);
        }
    }

    @Test
    void aBarThatStaysHookedHoldsTheCarCrooked() {
        Car car = alike(PLENTY, Optional.of(new Bar.Measured(20_000)), 0);
        double unhooked = half(car).turns(Wheel.FRONT_LEFT);
        double hooked =
                of(car, new Asked(OptionalDouble.of(0.5), Map.of(), true)).turns(Wheel.FRONT_LEFT);
        assertThat(unhooked).isCloseTo(-3, within(1e-6));
        // beside springs of 14406 N·m/rad a bar of 20000 yields with them: less of each turn is left for the tyres
        double tyres = 196_000 - 60 * G * 0.3;
        assertThat(hooked).isCloseTo(-3 * (34_406 + tyres) / (14_406 + tyres), within(1e-6));
    }

    /** 10 mm less a tolerance of 3 mm at the wheel are 4.9 mm along a spring at 0.7: 2.45 turns of 2 mm. */
    @Test
    void aBodyIsRaisedByNoMoreTurnsThanItsToleranceAsksFor() {
        Levelling level =
                of(alike(PLENTY, Optional.empty(), 0), new Asked(OptionalDouble.empty(), all(0.010, 0.003), false));
        assertThat(level.status()).isEqualTo(Status.MET);
        level.turns().forEach(turns -> assertThat(turns).isCloseTo(2.45, within(1e-6)));
        assertThat(level.afterRounded().orElseThrow().corner(Wheel.REAR_LEFT).rise())
                .isCloseTo(2.5 * 0.002 / 0.7, within(1e-9));
    }

    @Test
    void whatTheThreadDoesNotLeaveIsSaidWithWhatStandsInTheWay() {
        Perches.Room half = new Perches.Room(OptionalDouble.of(0.001), OptionalDouble.of(0.001));
        Levelling level = half(alike(half, Optional.empty(), 0));
        assertThat(level.status()).isEqualTo(Status.NEAREST);
        assertThat(level.after().crossWeight()).isCloseTo(0.5 + 5 * BY_A_TURN / (1000 * G), within(1e-9));
        assertThat(level.heldBy())
                .containsExactlyInAnyOrder(
                        new Hold(Wheel.FRONT_LEFT, Limit.THREAD_DOWN),
                        new Hold(Wheel.FRONT_RIGHT, Limit.THREAD_UP),
                        new Hold(Wheel.REAR_LEFT, Limit.THREAD_UP),
                        new Hold(Wheel.REAR_RIGHT, Limit.THREAD_DOWN));
    }

    /**
     * 70 mm between the coils less 56 mm to metal leave 14 mm. The left front spring carries 3·39.2 N more at the wheel, 168 N along
     * its line, and so stands 5.6 mm shorter. With even loads all of it is used up when each wheel has 14/0.7 = 20 mm more to metal.
     */
    @Test
    void noPerchIsRaisedUntilTheCoilsBindBeforeMetalMeets() {
        Levelling level =
                of(alike(PLENTY, Optional.empty(), 0), new Asked(OptionalDouble.empty(), all(0.030, 0.001), false));
        assertThat(level.status()).isEqualTo(Status.NEAREST);
        assertThat(level.heldBy()).extracting(Hold::limit).contains(Limit.COILS);
        assertThat(level.after().corners())
                .allSatisfy(
                        corner -> assertThat(corner.coilMargin().orElseThrow()).isGreaterThan(-1e-6));
        double shorter = 3 * BY_A_TURN / 0.7 / 30e3;
        assertThat(level.now().corner(Wheel.FRONT_LEFT).coilMargin().orElseThrow())
                .isCloseTo(0.014 - shorter, within(1e-9));
        assertThat(level.after().rise(End.FRONT)).isCloseTo(0.020, within(1e-6));
    }

    @Test
    void aBodyThatWasLetDownHasUsedUpItsThread() {
        Perches.Room room = new Perches.Room(OptionalDouble.of(0.010), OptionalDouble.of(0.010));
        assertThat(Levelling.spent(alike(room, Optional.empty(), 0.012))).isEmpty();
        assertThat(Levelling.spent(alike(room, Optional.empty(), 0.016))
                        .orElseThrow()
                        .used())
                .isCloseTo(0.0112, within(1e-12));
        // 12 mm at the wheel are 8.4 mm of thread: 1.6 mm, 0.8 turns, are left to go down, and 9.2 turns to come up
        Levelling level = of(alike(room, Optional.empty(), 0.012), new Asked(OptionalDouble.of(0.5), Map.of(), false));
        assertThat(level.turns(Wheel.FRONT_LEFT)).isCloseTo(-0.8, within(1e-6));
    }

    /** What a turn here presses the spring there, a turn there presses the spring here, on every car (Maxwell and Betti). */
    @Test
    void aTurnHerePressesTheSpringThereAsMuchAsATurnThereThisOne() {
        int asked = 0;
        for (long seed = 1; seed <= 300; seed++) {
            Car car = RoadCars.any(seed).settled();
            OnPerches perches = new OnPerches(car, seed % 2 == 0);
            Optional<double[][]> slopes = slopes(perches);
            if (slopes.isEmpty()) {
                continue;
            }
            asked++;
            double[][] by = slopes.get();
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(by[i][j])
                            .as("seed %d, springs %d and %d", seed, i, j)
                            .isCloseTo(by[j][i], within(1e-4 * (Math.abs(by[i][i]) + Math.abs(by[j][j]))));
                }
            }
        }
        assertThat(asked).isGreaterThan(250);
    }

    private static Optional<double[][]> slopes(OnPerches perches) {
        double small = 1e-6;
        double[][] slopes = new double[4][4];
        for (int j = 0; j < 4; j++) {
            double[] by = new double[4];
            by[j] = small;
            Optional<Posture> up = perches.at(by);
            by[j] = -small;
            Optional<Posture> down = perches.at(by);
            if (up.isEmpty() || down.isEmpty()) {
                return Optional.empty();
            }
            for (int i = 0; i < 4; i++) {
                slopes[i][j] = (up.get().corners().get(i).springForce()
                                - down.get().corners().get(i).springForce())
                        / (2 * small);
            }
        }
        return Optional.of(slopes);
    }

    @Test
    void noPerchMovesWhatAnAxleCarriesAndAMirrorTurnsEverythingRound() {
        for (long seed = 1; seed <= 200; seed++) {
            Car car = RoadCars.any(seed).settled();
            Optional<Posture> here = new OnPerches(car, true).at(new double[] {0.004, -0.001, 0.002, 0.003});
            if (here.isEmpty()) {
                continue;
            }
            Posture mirrored = new OnPerches(car.mirrored(), true)
                    .at(new double[] {-0.001, 0.004, 0.003, 0.002})
                    .orElseThrow();
            for (Wheel wheel : Wheel.values()) {
                assertThat(mirrored.corner(wheel.mirrored()).load())
                        .isCloseTo(here.get().corner(wheel).load(), within(1e-5));
            }
            for (End end : End.values()) {
                double carried = here.get().corner(Wheel.of(end, Side.LEFT)).load()
                        + here.get().corner(Wheel.of(end, Side.RIGHT)).load();
                assertThat(carried).isCloseTo(car.axleLoad(end), within(1e-6));
            }
        }
    }

    @Test
    void theLeastTurnsAreFewerThanAnyOthersThatDo() {
        Car car = alike(PLENTY, Optional.empty(), 0);
        Levelling level = half(car);
        double least = level.turns().stream().mapToDouble(each -> each * each).sum();
        OnPerches perches = new OnPerches(car, false);
        // one corner alone needs four times the turns of each, and tilts the body
        Posture one = perches.at(new double[] {-12 * 0.002, 0, 0, 0}).orElseThrow();
        assertThat(one.crossWeight()).isCloseTo(0.5, within(1e-3));
        assertThat(least).isLessThan(12 * 12 / 3.9);
        assertThat(Math.abs(one.corner(Wheel.FRONT_LEFT).rise())).isGreaterThan(Levelling.KEPT_WITHIN);
    }
}
