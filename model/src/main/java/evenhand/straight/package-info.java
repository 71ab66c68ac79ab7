/** The car straight ahead, braking and driving: what the tyres carry, how it dives and squats, what locks and what spins. */
@NullMarked
package evenhand.straight;

import org.jspecify.annotations.NullMarked;
