/** The question {@code roadtest}: what the car on the road says of the car on paper. */
@NullMarked
package evenhand.terminal.roadtest;

import org.jspecify.annotations.NullMarked;
