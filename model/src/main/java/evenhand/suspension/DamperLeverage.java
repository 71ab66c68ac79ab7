package evenhand.suspension;

import evenhand.car.Axle;
import evenhand.car.Side;
import evenhand.geometry.LinkMotion;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.WheelPairMotion;
import java.util.Optional;

/** How far dampers known by points go per mean travel of their axle, wherever it stands: MR = −∂ℓ/∂u. */
final class DamperLeverage {
    private DamperLeverage() {}

    /** Of one side, the roll held, rad; none where the damper is not known by points. */
    static Optional<DamperLines.Ratio> side(Axle axle, Side side, double roll) {
        return axle.motion().filter(LinkMotion::guidesDampers).map(motion -> {
            if (motion instanceof LiveAxleMotion live) {
                return onAxle(live.reading(), LiveAxleMotion.LEFT_DAMPER + side.index(), roll);
            }
            WheelPairMotion wheels = (WheelPairMotion) motion;
            double more = -side.sign() * wheels.made().track() / 2 * roll;
            return atWheel(wheels.reading(side == Side.LEFT), more);
        });
    }

    /** Of half the axle in heave: the mean of both sides. */
    static Optional<DamperLines.Ratio> half(Axle axle) {
        Optional<DamperLines.Ratio> left = side(axle, Side.LEFT, 0);
        Optional<DamperLines.Ratio> right = side(axle, Side.RIGHT, 0);
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DamperLines.Ratio() {
            @Override
            void at(double travel) {
                left.get().at(travel);
                right.get().at(travel);
                value = (left.get().value + right.get().value) / 2;
                byTravel = (left.get().byTravel + right.get().byTravel) / 2;
            }
        });
    }

    private static DamperLines.Ratio onAxle(LiveAxleMotion.Reading axle, int damper, double roll) {
        return new DamperLines.Ratio() {
            @Override
            void at(double travel) {
                axle.at(travel, roll);
                axle.bend(damper);
                value = -axle.byTravel();
                byTravel = -axle.byTravelTwice();
            }
        };
    }

    private static DamperLines.Ratio atWheel(WheelPairMotion.Reading wheel, double more) {
        return new DamperLines.Ratio() {
            @Override
            void at(double travel) {
                wheel.at(travel + more);
                wheel.bend(WheelPairMotion.DAMPER);
                value = -wheel.byTravel();
                byTravel = -wheel.byTravelTwice();
            }
        };
    }
}
