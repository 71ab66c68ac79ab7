/** {@code evenhand drive}. */
@NullMarked
package evenhand.terminal.drive;

import org.jspecify.annotations.NullMarked;
