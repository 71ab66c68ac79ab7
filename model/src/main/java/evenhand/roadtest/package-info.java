/** What a road test says of the car: predictions beside readings, the numbers corrected by them, and what is left of doubt. */
@NullMarked
package evenhand.roadtest;

import org.jspecify.annotations.NullMarked;
