/** Sentences on bumps and rough roads. */
@NullMarked
package evenhand.words.road;

import org.jspecify.annotations.NullMarked;
