/**
 * What links, brackets and mounts carry: statics of rigid bodies, one case of hard use at a time, for comparing designs. It is no
 * proof of strength.
 *
 * <p>Axes are the body's: x forwards, y to the left, z up; the origin on the car's middle plane in the front axle's line, where the
 * floor was when the car was measured. Forces in N, moments in N·m, lengths in m.
 */
@NullMarked
package evenhand.structure;

import org.jspecify.annotations.NullMarked;
