/** Sentences on what adjustments do, and on remedies for a complaint. */
@NullMarked
package evenhand.words.effects;

import org.jspecify.annotations.NullMarked;
