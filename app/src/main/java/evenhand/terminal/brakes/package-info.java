/** {@code evenhand brakes}. */
@NullMarked
package evenhand.terminal.brakes;

import org.jspecify.annotations.NullMarked;
