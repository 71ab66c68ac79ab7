package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import java.util.Optional;

/**
 * The rod that steers a wheel, or holds its toe at the rear.
 *
 * @param inner on the rack, or on what swings; on the body at the rear
 * @param outer on the upright
 * @param swing where the inner end turns about an upright pivot (drop arm and idler) instead of sliding with a rack
 */
public record TieRod(Point inner, Point outer, Rod rod, Optional<Swing> swing) {
    /** An upright pivot, m: ahead of the axle's line and out from the middle. */
    public record Swing(double ahead, double out) {
        public Swing {
            require(Math.abs(ahead) < 10, "ahead", "must be less than ten metres from the axle's line");
            require(out >= 0, "out", "counts outwards on either side, so it must not be below zero");
        }
    }

    public TieRod {
        rod.fits(inner.distanceTo(outer), "outer");
        double innerAhead = inner.ahead();
        require(
                swing.isEmpty() || Math.abs(innerAhead - swing.get().ahead()) >= 1e-3,
                "swing",
                "stands as far ahead as the tie rod's inner end, which could not move sideways; give the pivot's place");
    }
}
