/** Sentences for the owner of the car. */
@NullMarked
package evenhand.words.owner;

import org.jspecify.annotations.NullMarked;
