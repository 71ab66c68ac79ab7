/** Turns of the perches, and what comes of them, in words. */
@NullMarked
package evenhand.words.level;

import org.jspecify.annotations.NullMarked;
