/** Command ride: frequencies, damping and comfort. */
@NullMarked
package evenhand.terminal.ride;

import org.jspecify.annotations.NullMarked;
