/**
 * What a shop makes or trusts to carry load, and what the car is put through: validated records in SI units.
 *
 * <p>A mount takes the forces of ends of links, springs, dampers and bars: a pin, a washer or plate that spreads them on sheet, a
 * rubber eye, a beam between two rails. {@link HardUse} lists the cases whose forces are looked at. Axes are the body's, x forwards,
 * y to the left, z up.
 */
@NullMarked
package evenhand.car.mounts;

import org.jspecify.annotations.NullMarked;
