package evenhand.linkage;

import java.util.OptionalDouble;

/**
 * A link at rest and through the travel.
 *
 * @param name of the part
 * @param length between its ends at rest, m: as measured plus {@code longer}, and what it gives where the axle binds
 * @param slopes at rest
 * @param bodyJoint greatest angle of its joint on the body over heave, roll and one wheel, rad
 * @param movingJoint of its joint on the axle or the wheel, rad
 * @param turns of its thread that make it longer, where their advance is known
 */
public record LinkAnswer(
        String name, double length, LinkSlopes slopes, double bodyJoint, double movingJoint, OptionalDouble turns) {}
