/** Sentences on what a search found. */
@NullMarked
package evenhand.words.find;

import org.jspecify.annotations.NullMarked;
