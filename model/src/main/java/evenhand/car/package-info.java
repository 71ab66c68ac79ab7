/** The car as built: validated records in SI units. Axes ISO 8855; heights above the ground at rest. */
@NullMarked
package evenhand.car;

import org.jspecify.annotations.NullMarked;
