/** The steady turn: the nonlinear equilibrium of the car on a circle, from straight ahead to the limit. */
@NullMarked
package evenhand.turn;

import org.jspecify.annotations.NullMarked;
