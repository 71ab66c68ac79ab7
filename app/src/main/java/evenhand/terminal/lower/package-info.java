/** Command lower: how low the car can stand. */
@NullMarked
package evenhand.terminal.lower;

import org.jspecify.annotations.NullMarked;
