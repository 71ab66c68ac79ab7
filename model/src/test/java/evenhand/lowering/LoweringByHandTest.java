package evenhand.lowering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.car.RoadCars;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.Weights;
import evenhand.turn.Direction;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** One car let down, against subtraction and proportion on paper. */
class LoweringByHandTest {
    private static final double G = Weights.GRAVITY;
    private static final Trial TRIAL = new Trial(List.of(0.3 * G), 40, Direction.LEFT);
    private static final OptionalDouble AS_THEY_ARE = OptionalDouble.empty();

    /** Bump stops of foam: they say when they are touched, and hold next to nothing. */
    private static Stops stops(double gap, OptionalDouble toMetal, OptionalDouble droop) {
        Curve foam = new Curve(List.of(new Curve.Point(0, 0), new Curve.Point(0.020, 0.1)));
        return new Stops(
                Optional.of(new Stops.Bump(gap, foam, OptionalDouble.empty())),
                droop.isPresent()
                        ? Optional.of(new Stops.Droop(droop.getAsDouble(), 1e5, OptionalDouble.empty()))
                        : Optional.empty(),
                toMetal.isPresent()
                        ? Optional.of(new Stops.Metal(toMetal.getAsDouble(), OptionalDouble.empty()))
                        : Optional.empty());
    }

    /** Springs at the wheels of 22 N/mm in front; upright ones of 24 N/mm, 1.0 m apart, on a live axle behind. */
    private static Car car(double frontGap, double rearGap) {
        return car(frontGap, rearGap, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static Car car(double frontGap, double rearGap, OptionalDouble frontToMetal, OptionalDouble frontDroop) {
        Car any = RoadCars.plain(4);
        Axle.Independent front = (Axle.Independent) any.front();
        Axle.Live rear = (Axle.Live) any.rear();
        return new Car(
                new Weights.Whole(1100, 0.55),
                2.45,
                0.52,
                Double.POSITIVE_INFINITY,
                any.steering(),
                any.air(),
                0,
                new Axle.Independent(
                        1.40,
                        front.unsprung(),
                        new Axle.RollCentre(0.06, -1),
                        new Spring.AtWheel(22e3, 1, Spring.Lengths.UNKNOWN),
                        front.bar(),
                        stops(frontGap, frontToMetal, frontDroop),
                        Optional.empty(),
                        0,
                        front.rollCamber(),
                        front.alignment(),
                        front.tyre(),
                        OptionalDouble.empty()),
                new Axle.Live(
                        1.36,
                        rear.unsprung(),
                        rear.lateralLocator(),
                        new Spring.Upright(24e3, 1.0, 1, Spring.Lengths.UNKNOWN),
                        Optional.empty(),
                        stops(rearGap, OptionalDouble.empty(), OptionalDouble.empty()),
                        Optional.empty(),
                        0,
                        rear.alignment(),
                        rear.tyre(),
                        OptionalDouble.empty()),
                any.drive(),
                OptionalDouble.empty(),
                any.seat());
    }

    private static Stance.Stands stands(Car car, OptionalDouble reserve, Trial trial) {
        Stance stance = Stance.of(car, 0, reserve, trial);
        assertThat(stance).isInstanceOf(Stance.Stands.class);
        return (Stance.Stands) stance;
    }

    private static List<Double> heights(LoweringStudy study) {
        return study.rows().stream().map(Stance::lowered).toList();
    }

    @Test
    void heightsGoDownByTheStepAndTheLastOneIsTheLast() {
        Car car = car(0.200, 0.200);
        // 0.007/0.001 is a hair more than seven as the machine divides: there is no eighth step for that.
        List<Double> reported = new ArrayList<>();
        LoweringStudy even = LoweringStudy.of(car, 0.001, 0.008, 0.001, AS_THEY_ARE, TRIAL, reported::add);
        assertThat(heights(even)).hasSize(8).endsWith(0.008);
        assertThat(heights(even).get(3)).isCloseTo(0.004, within(1e-15));
        // Eight rows and five heights of the search: all is done at the end, and each is as much more.
        assertThat(reported).isSorted();
        assertThat(reported.get(0)).isCloseTo(1 / 13.0, within(1e-12));
        assertThat(reported.get(7)).isCloseTo(8 / 13.0, within(1e-12));
        assertThat(reported.get(8)).isCloseTo(9 / 13.0, within(1e-12));
        assertThat(reported.get(reported.size() - 1)).isCloseTo(1, within(1e-12));
        LoweringStudy uneven = LoweringStudy.of(car, -0.002, 0.003, 0.002, AS_THEY_ARE, TRIAL, Progress.NONE);
        assertThat(heights(uneven)).hasSize(4).startsWith(-0.002, 0.0, 0.002).endsWith(0.003);
    }

    private static OptionalDouble end(LoweringStudy study, String need) {
        return study.ends().stream()
                .filter(one -> one.need().key().equals(need))
                .findFirst()
                .orElseThrow()
                .lowered();
    }

    @Test
    void aTravelNeedEndsWhereSubtractionSays() {
        // 33.3 mm to the front stop, of which 25 are needed: 8.3 mm down it ends; behind there is 10.1 mm left to give.
        LoweringStudy study =
                LoweringStudy.of(car(0.0333, 0.0351), 0.001, 0.011, 0.01, AS_THEY_ARE, TRIAL, Progress.NONE);
        assertThat(end(study, "frontBumpTravelToStop").orElseThrow()).isBetween(0.0083 - 1.1e-6, 0.0083 + 1e-12);
        assertThat(end(study, "rearBumpTravelToStop").orElseThrow()).isBetween(0.0101 - 1.1e-6, 0.0101 + 1e-12);
        assertThat(end(
                        LoweringStudy.of(car(0.0333, 0.0351), 0.001, 0.008, 0.01, AS_THEY_ARE, TRIAL, Progress.NONE),
                        "frontBumpTravelToStop"))
                .isEmpty();
    }

    @Test
    void theSearchOnlyGoesDown() {
        // With 3 mm of droop the axle would hang if the body were raised by as much as the search goes down.
        Car car = car(0.0333, 0.2, OptionalDouble.empty(), OptionalDouble.of(0.003));
        LoweringStudy study = LoweringStudy.of(car, 0, 0.010, 0.01, AS_THEY_ARE, TRIAL, Progress.NONE);
        assertThat(end(study, "frontBumpTravelToStop").orElseThrow()).isCloseTo(0.0083, within(1.1e-6));
        assertThat(study.first().lowered()).isZero();
        assertThat(study.last().lowered()).isEqualTo(0.010);
    }

    @Test
    void aStopThatIsTouchedAlmostAtOnceIsTouchedByProportion() {
        // Where both ends have room, travel grows with the acceleration; a gap of a tenth of a millimetre is gone after
        // as
        // much of it. The stops of the live axle stand with its springs, half a metre from the middle.
        Stance.Stands free = stands(car(0.2, 0.2), AS_THEY_ARE, TRIAL);
        TurnRow row = free.turns().orElseThrow().rows().get(0);
        double ay = row.lateralAcceleration();
        double gap = 1e-4 * ay;
        double outer = row.wheel(Wheel.of(End.FRONT, Side.RIGHT)).travel();
        double first = stands(car(gap, 0.2), AS_THEY_ARE, TRIAL).firstStop().orElseThrow();
        assertThat(first).isCloseTo(ay * gap / outer, within(0.002 * first));
        double left = row.wheel(Wheel.of(End.REAR, Side.LEFT)).travel();
        double right = row.wheel(Wheel.of(End.REAR, Side.RIGHT)).travel();
        double atStop = (left + right) / 2 + (right - left) / 1.36 * 0.5;
        double behind = stands(car(0.2, gap), AS_THEY_ARE, TRIAL).firstStop().orElseThrow();
        assertThat(behind).isCloseTo(ay * gap / atStop, within(0.002 * behind));
        assertThat(stands(car(gap, gap), AS_THEY_ARE, TRIAL).firstStop().orElseThrow())
                .isCloseTo(Math.min(first, behind), within(0.002 * behind));
        // To the right the other wheel is the outer one.
        Trial turned = new Trial(List.of(0.3 * G), 40, Direction.RIGHT);
        assertThat(stands(car(gap, 0.2), AS_THEY_ARE, turned).firstStop().orElseThrow())
                .isCloseTo(first, within(0.002 * first));
    }

    @Test
    void springsThatKeepAReserveAreItsLoadOverTheTravel() {
        // 0.9 g of what stands on a front spring in 60 mm; the rear has room enough for it as it is.
        Car car = car(0.060, 0.300);
        double load = (1100 * 0.55 - car.front().unsprung().mass()) / 2 * G;
        ReserveSprings found =
                stands(car, OptionalDouble.of(0.9), TRIAL).springs().orElseThrow();
        assertThat(found.rate(End.FRONT)).isCloseTo(0.9 * load / 0.060, within(1e-6 * 0.9 * load / 0.060));
        assertThat(found.rate(End.REAR)).isEqualTo(24e3);
        // √(0.9·9.80665/0.06)/2π = 1.9303 Hz
        assertThat(found.needs(End.FRONT).orElseThrow()).isCloseTo(1.9303, within(1e-4));
        assertThat(ReserveSprings.frequency(1, 0.1)).isCloseTo(1.5761, within(1e-4));
        assertThat(ReserveSprings.frequency(1, 0)).isInfinite();
    }

    @Test
    void underALoadTheReserveIsOfTheTravelThatIsLeft() {
        // 100 kg over the front axle: it carries 50 kg more a side and stands deeper by 50·g over the new spring's rate
        // k:
        // k·(60 mm − 50·g/k) = 0.7·(W + 50·g), so k = (0.7·(W + 50·g) + 50·g)/60 mm.
        Car car = car(0.060, 0.300);
        LoadCase load = new LoadCase("in front", List.of(new LoadCase.Added("ballast", 100, 0, 0.6)));
        double added = 50 * G;
        double stands = (1100 * 0.55 - car.front().unsprung().mass()) / 2 * G + added;
        ReserveSprings found = stands(car, OptionalDouble.of(0.7), TRIAL.with(Optional.of(load)))
                .springs()
                .orElseThrow();
        double rate = (0.7 * stands + added) / 0.060;
        assertThat(found.rate(End.FRONT)).isCloseTo(rate, within(1e-6 * rate));
        double left = 0.060 - added / rate;
        assertThat(found.needs(End.FRONT).orElseThrow())
                .isCloseTo(Math.sqrt(0.7 * G / left) / (2 * Math.PI), within(1e-6));
        // The same behind: 100 kg over the rear axle.
        LoadCase boot = new LoadCase("behind", List.of(new LoadCase.Added("ballast", 100, 2.45, 0.6)));
        Car other = car(0.300, 0.060);
        double onRear = (1100 * 0.45 - other.rear().unsprung().mass()) / 2 * G + added;
        double rear = (0.7 * onRear + added) / 0.060;
        assertThat(stands(other, OptionalDouble.of(0.7), TRIAL.with(Optional.of(boot)))
                        .springs()
                        .orElseThrow()
                        .rate(End.REAR))
                .isCloseTo(rear, within(1e-6 * rear));
    }

    @Test
    void aReserveThatNoSpringKeepsIsSaidWithItsNumbers() {
        // √(2·9.80665/0.012)/2π = 6.43 Hz
        assertThat(Stance.of(car(0.012, 0.3), 0, OptionalDouble.of(2), TRIAL)
                        .noAnswer()
                        .orElseThrow())
                .isEqualTo(
                        "a reserve of 2.0 g in the 12 mm that are left to its front bump stops asks for 6.4 Hz, and no"
                                + " road spring holds so hard");
        assertThat(Stance.of(car(0.3, -0.001), 0, OptionalDouble.of(2), TRIAL)
                        .noAnswer()
                        .orElseThrow())
                .isEqualTo("it stands on its rear bump stops, so no spring keeps a reserve there");
    }

    @Test
    void aCarThatIsTooLowIsRaisedUntilItWorks() {
        // 62.7 mm to metal at 0: at 8 mm down there are 54.7 of the 60 that are needed; it has to come up by 5.3 mm.
        Car car = car(0.12, 0.12, OptionalDouble.of(0.0627), OptionalDouble.empty());
        LoweringStudy study = LoweringStudy.of(car, 0.008, 0.009, 0.001, AS_THEY_ARE, TRIAL, Progress.NONE);
        assertThat(study.ends().stream()
                        .filter(LoweringStudy.Ending::atOnce)
                        .map(one -> one.need().key()))
                .containsExactly("frontBumpTravelToMetal");
        assertThat(study.higher().orElseThrow()).isBetween(0.0053 - 1e-12, 0.0053 + 1.1e-6);
        assertThat(study.works().orElseThrow().lowered()).isCloseTo(0.0027, within(1.1e-6));
        assertThat(study.lowest()).isEmpty();
    }
}
