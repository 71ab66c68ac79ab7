package evenhand.validation;

import evenhand.car.Curve;
import evenhand.car.Damper;
import evenhand.suspension.WheelDamper;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Dampers of checks. */
final class DamperInputs {
    private DamperInputs() {}

    /** One rate both ways, N·s/m, at a motion ratio on a wheel of its own. */
    static WheelDamper linear(double rate, double motionRatio) {
        Curve line = new Curve(List.of(new Curve.Point(0, 0), new Curve.Point(1, rate)));
        Damper.Forces forces = new Damper.Forces(line, line);
        Damper damper = new Damper(
                OptionalDouble.of(motionRatio),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(forces),
                List.of(),
                Optional.empty());
        return WheelDamper.of(new PlainCar().build().rear(), damper, forces);
    }
}
