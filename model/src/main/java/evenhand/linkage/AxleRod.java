package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.Rod;
import java.util.Optional;

/**
 * A rod between the body and a live axle as the mechanism sees it.
 *
 * @param name of the part in answers
 * @param view how its slopes are told: of which side, or of a single one
 * @param body end on the body, or on the crank that the body carries, as measured
 * @param axle end on the axle, or on the crank that the axle carries, as measured
 * @param crank where one of the ends is a pin of the bell-crank
 */
record AxleRod(String name, Optional<Side> view, Place body, Place axle, Rod rod, Crank crank) {
    /** Which end, if any, is a pin of the bell-crank. */
    enum Crank {
        NONE,
        ON_BODY,
        ON_AXLE
    }

    /** Length between the points as measured, m. */
    double measured() {
        return body.distanceTo(axle);
    }
}
