/** The tyre's law: side force, aligning moment and vertical stiffness, and what can be estimated from its size. */
@NullMarked
package evenhand.tyre;

import org.jspecify.annotations.NullMarked;
