/** One wheel and its part of the body over an event of the road, in time, with all that bends: stops, dampers, contact. */
@NullMarked
package evenhand.bump;

import org.jspecify.annotations.NullMarked;
