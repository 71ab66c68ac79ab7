package evenhand.roadtest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class SteadyPiecesTest {
    private static final double G = RoadTestCars.G;
    private static final double STEP = 0.1;

    private static Log log(double seconds, DoubleUnaryOperator inG, DoubleUnaryOperator wheel) {
        List<Double> times = new ArrayList<>();
        List<Double> acceleration = new ArrayList<>();
        List<Double> angle = new ArrayList<>();
        for (int i = 0; i * STEP < seconds; i++) {
            times.add(i * STEP);
            acceleration.add(inG.applyAsDouble(i * STEP) * G);
            angle.add(Math.toRadians(wheel.applyAsDouble(i * STEP)));
        }
        return new Log(
                times,
                List.of(
                        new Log.Series(Log.Kind.LATERAL_ACCELERATION, acceleration, 0.02 * G),
                        new Log.Series(Log.Kind.STEERING_WHEEL, angle, Math.toRadians(1))));
    }

    /** Straight, then ten seconds at 0.3 g to the left, then six at 0.2 g to the right, with ways between. */
    private static double run(double t) {
        return t < 5 ? 0 : t < 8 ? 0.1 * (t - 5) : t < 18 ? 0.3 : t < 23 ? 0.3 - 0.1 * (t - 18) : t < 29 ? -0.2 : 0;
    }

    @Test
    void eachSteadyPieceIsAReadingOfItsSide() {
        List<Observation.Reading> readings =
                SteadyPieces.of(log(40, SteadyPiecesTest::run, t -> 300 * run(t)), Optional.empty());
        assertThat(readings).hasSize(2);
        Observation.Reading left = readings.get(0);
        assertThat(left.turn()).isEqualTo(Direction.LEFT);
        assertThat(left.channel()).isEqualTo(Channel.STEERING_WHEEL);
        assertThat(Math.toDegrees(left.measured().value())).isCloseTo(90, within(1.5));
        assertThat(left.pace().acceleration(1)).isCloseTo(0.3 * G, within(0.005 * G));
        Observation.Reading right = readings.get(1);
        assertThat(right.turn()).isEqualTo(Direction.RIGHT);
        assertThat(Math.toDegrees(right.measured().value())).isCloseTo(60, within(1.5));
        assertThat(right.pace()).isInstanceOf(Pace.Accelerometer.class);
    }

    @Test
    void nothingIsSteadyThatIsTooGentleOrTooShortOrTurnedOrPressedOn() {
        assertThat(SteadyPieces.of(log(20, t -> 0.045, t -> 20), Optional.empty()))
                .isEmpty();
        assertThat(SteadyPieces.of(log(20, t -> t > 8 && t < 9.7 ? 0.3 : 0, t -> 50), Optional.empty()))
                .isEmpty();
        assertThat(SteadyPieces.of(log(10, t -> 0.1 + 0.025 * t, t -> 50), Optional.empty()))
                .isEmpty();
        assertThat(SteadyPieces.of(log(10, t -> 0.3, t -> 6 * t), Optional.empty()))
                .isEmpty();
        assertThat(SteadyPieces.of(log(10, t -> 0.3, t -> 4 * t), Optional.empty()))
                .isNotEmpty();
    }

    /** Quarters of 1, 3, 1, 3 deg: their standard deviation is 2/√3, half of that the standard error. */
    @Test
    void theErrorIsThatOfTheQuartersAndOfTheInstrument() {
        List<Observation.Reading> readings =
                SteadyPieces.of(log(8, t -> 0.3, t -> (int) ((t + 1e-9) / 2) % 2 == 0 ? 1 : 3), Optional.empty());
        double error = 2 / Math.sqrt(3) / 2;
        Measured read = readings.get(0).measured();
        assertThat(Math.toDegrees(read.value())).isCloseTo(2, within(1e-9));
        assertThat(Math.toDegrees(read.tolerance())).isCloseTo(Math.hypot(1, 2 * error), within(1e-9));
    }

    @Test
    void thePaceIsSpeedOnACircleElseSpeedTimesYawRateElseWhatIsFelt() {
        List<Double> times = new ArrayList<>();
        List<Double> speed = new ArrayList<>();
        List<Double> yaw = new ArrayList<>();
        List<Double> roll = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            times.add(i * STEP);
            speed.add(10.0);
            yaw.add(-0.3);
            roll.add(-0.02);
        }
        Log log = new Log(
                times,
                List.of(
                        new Log.Series(Log.Kind.SPEED, speed, 0.2),
                        new Log.Series(Log.Kind.YAW_RATE, yaw, 0.01),
                        new Log.Series(Log.Kind.ROLL, roll, 0.001)));
        Observation.Reading onCircle = SteadyPieces.of(log, Optional.of(40.0)).get(0);
        assertThat(onCircle.turn()).isEqualTo(Direction.RIGHT);
        assertThat(onCircle.measured().value()).isCloseTo(0.02, within(1e-12));
        assertThat(onCircle.pace().acceleration(40)).isCloseTo(2.5, within(1e-12));
        assertThat(onCircle.pace().acceleration(20)).isCloseTo(5, within(1e-12));
        Observation.Reading anywhere = SteadyPieces.of(log, Optional.empty()).get(0);
        assertThat(anywhere.pace().acceleration(40)).isCloseTo(3, within(1e-12));
        assertThat(anywhere.pace().spread(1)).isCloseTo(Math.hypot(0.2 * 0.3, 0.01 * 10) / 2, within(1e-12));
        assertThat(SteadyPieces.tellsPace(
                        new Log(times, List.of(new Log.Series(Log.Kind.SPEED, speed, 0.2))), Optional.empty()))
                .isFalse();
    }
}
