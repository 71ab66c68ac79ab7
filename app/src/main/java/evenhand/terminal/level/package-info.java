/** {@code evenhand level}. */
@NullMarked
package evenhand.terminal.level;

import org.jspecify.annotations.NullMarked;
