package evenhand.bump;

import evenhand.tyre.LateralLaw;
import evenhand.tyre.SideForce;
import java.util.OptionalDouble;

/**
 * Side force of a tyre by its load alone: in mid-corner at the slip and lean that the wheel has there, straight ahead
 * the greatest that it could give upright. What drive takes is held to be the same share at every load, and falls out.
 */
final class SideGrip {
    private final SideForce tyre;
    private final OptionalDouble slip;
    private final double lean;

    private SideGrip(LateralLaw law, OptionalDouble slip, double lean) {
        tyre = SideForce.of(law);
        this.slip = slip;
        this.lean = lean;
    }

    static SideGrip atSlip(LateralLaw law, double slip, double lean) {
        return new SideGrip(law, OptionalDouble.of(slip), lean);
    }

    static SideGrip greatest(LateralLaw law) {
        return new SideGrip(law, OptionalDouble.empty(), 0);
    }

    /** Side force at a load, N. */
    double at(double load) {
        tyre.at(slip.orElse(0), lean, load);
        return slip.isPresent() ? tyre.force : tyre.peak;
    }
}
