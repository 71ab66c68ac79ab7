/**
 * What links do through the travel: poses of a live axle and of a wheel under their rods, and every figure that comes out
 * of them.
 *
 * <p>The body stands still and the wheels move. Axes are those of ISO 8855 with the origin on the floor under the middle
 * of the axle as it was measured: x forwards, y to the left, z up. Lengths in m, angles in rad.
 */
@NullMarked
package evenhand.linkage;

import org.jspecify.annotations.NullMarked;
