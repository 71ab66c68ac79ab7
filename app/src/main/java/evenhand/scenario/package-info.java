/** Scenario files: read with the place of every value, checked, patched into set-ups, and written without losing anything. */
@NullMarked
package evenhand.scenario;

import org.jspecify.annotations.NullMarked;
