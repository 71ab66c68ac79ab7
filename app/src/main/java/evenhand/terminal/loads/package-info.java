/** {@code evenhand loads}. */
@NullMarked
package evenhand.terminal.loads;

import org.jspecify.annotations.NullMarked;
