/** Pulling away, gears and tyres in sentences. */
@NullMarked
package evenhand.words.drive;

import org.jspecify.annotations.NullMarked;
