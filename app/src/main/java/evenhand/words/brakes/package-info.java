/** Braking straight ahead in sentences. */
@NullMarked
package evenhand.words.brakes;

import org.jspecify.annotations.NullMarked;
