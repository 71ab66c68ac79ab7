/** Sentences on ride and dampers. */
@NullMarked
package evenhand.words.ride;

import org.jspecify.annotations.NullMarked;
