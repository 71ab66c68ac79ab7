/** Sentences on what parts two set-ups. */
@NullMarked
package evenhand.words.compare;

import org.jspecify.annotations.NullMarked;
