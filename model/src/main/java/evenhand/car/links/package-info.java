/**
 * Links, springs, dampers and bars by points measured on the car: validated records in SI units.
 *
 * <p>A point says how far it stands ahead of its axle's line, out from the middle (or left of it) and up from the floor,
 * the car standing as it was measured. Each side of a pair is in its own terms: {@code out} counts outwards on either.
 */
@NullMarked
package evenhand.car.links;

import org.jspecify.annotations.NullMarked;
