package evenhand.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.tyre.SideForce;
import evenhand.tyre.Tyre;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The shares of the drive force, worked back from what an answer shows. */
class DifferentialTest {
    private static final double G = Weights.GRAVITY;

    /** One driven wheel of an answer: the share that it must have had, and the rim speed over the car's that gives it. */
    private record Driven(double share, double most, double stiffness, double turnSpeed) {
        static Driven of(Car car, TurnRow row, Side side, double radius) {
            End end = car.drive().axle();
            WheelState wheel = row.wheel(Wheel.of(end, side));
            Tyre tyre = car.axle(end).tyre();
            double longitudinal = wheel.longitudinalForce() * Math.cos(wheel.steer())
                    + wheel.lateralForce() * Math.sin(wheel.steer());
            double share = longitudinal + car.rollingResistance() * wheel.load();
            SideForce force = SideForce.of(tyre.lateral());
            force.at(wheel.slip(), wheel.lean(), wheel.load());
            double most = tyre.longitudinalFrictionRatio() * force.peak
                    + Math.signum(share) * car.rollingResistance() * wheel.load();
            double stiffness = tyre.longitudinalStiffness().isPresent()
                    ? tyre.longitudinalStiffness().getAsDouble()
                            * wheel.load()
                            / tyre.lateral().referenceLoad()
                    : tyre.lateral().corneringStiffness(wheel.load());
            double offset = 0;
            for (Wheel each : Wheel.values()) {
                offset += each.side().sign()
                        * car.axle(each.end()).track()
                        / 2
                        * car.staticLoad(each.end(), each.side())
                        / (car.weights().mass() * G);
            }
            double y = side.sign() * car.axle(end).track() / 2 - offset;
            return new Driven(share, most, stiffness, Math.cos(row.sideslip()) - y / radius);
        }

        /** u with X̂·tanh(Cκ·(u/n − 1)/X̂) = share. */
        double rimSpeed() {
            double part = share / most;
            double slip = 0.5 * Math.log((1 + part) / (1 - part)) * most / stiffness;
            return turnSpeed * (1 + slip);
        }
    }

    @Test
    void bothWheelsOfALockedAxleTurnAtOneRimSpeed() {
        int seen = 0;
        for (double radius : new double[] {8, 15, 40, 200}) {
            for (long seed = 0; seed < 200; seed++) {
                Car car = RoadCars.any(seed).settled();
                if (!(car.drive().differential() instanceof Drive.Differential.Locked)) {
                    continue;
                }
                TurnAnswer.Turns turns = (TurnAnswer.Turns) SteadyTurn.answer(car, List.of(), radius, Direction.LEFT);
                for (TurnRow row : turns.rows()) {
                    Driven left = Driven.of(car, row, Side.LEFT, radius);
                    Driven right = Driven.of(car, row, Side.RIGHT, radius);
                    assertThat(left.share() + right.share())
                            .as("seed %d on %.0f m", seed, radius)
                            .isCloseTo(row.driveForce(), within(1e-6 * (1 + Math.abs(row.driveForce()))));
                    assertThat(Math.abs(left.share())).isLessThanOrEqualTo(left.most());
                    if (Math.abs(left.share()) < 0.999 * left.most()
                            && Math.abs(right.share()) < 0.999 * right.most()
                            && left.most() > 1
                            && right.most() > 1) {
                        seen++;
                        assertThat(left.rimSpeed())
                                .as("seed %d on %.0f m at %.3f m/s²", seed, radius, row.lateralAcceleration())
                                .isCloseTo(right.rimSpeed(), within(1e-7));
                    }
                }
            }
        }
        assertThat(seen).isGreaterThan(2_000);
    }

    @Test
    void aTorqueBiasingAxleNeverSharesByMoreThanItsRatioWhileBothWheelsPull() {
        int atTheRatio = 0;
        for (long seed = 0; seed < 600; seed++) {
            Car car = RoadCars.any(seed).settled();
            if (!(car.drive().differential() instanceof Drive.Differential.TorqueBiasing biasing)) {
                continue;
            }
            TurnAnswer.Turns turns = (TurnAnswer.Turns) SteadyTurn.answer(car, List.of(), 20, Direction.LEFT);
            for (TurnRow row : turns.rows()) {
                double left = Driven.of(car, row, Side.LEFT, 20).share();
                double right = Driven.of(car, row, Side.RIGHT, 20).share();
                double ratio = Math.max(left / right, right / left);
                assertThat(ratio).as("seed %d", seed).isBetween(1.0, biasing.biasRatio() * (1 + 1e-9));
                atTheRatio += ratio > biasing.biasRatio() * (1 - 1e-9) ? 1 : 0;
            }
        }
        assertThat(atTheRatio).isPositive();
    }
}
