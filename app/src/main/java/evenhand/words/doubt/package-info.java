/** Sentences on how sure an answer is. */
@NullMarked
package evenhand.words.doubt;

import org.jspecify.annotations.NullMarked;
