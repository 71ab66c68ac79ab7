/** Springs, bars and stops as the body feels them through the travel: one definition for the turn and for the ride. */
@NullMarked
package evenhand.suspension;

import org.jspecify.annotations.NullMarked;
