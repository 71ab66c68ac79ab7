/** The linear ride: frequencies, damping, comfort and grip of a car that stands at its ride height, on roads by their spectrum. */
@NullMarked
package evenhand.ride;

import org.jspecify.annotations.NullMarked;
