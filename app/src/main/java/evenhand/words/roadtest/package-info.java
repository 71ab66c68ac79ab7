/** What road tests say, in sentences. */
@NullMarked
package evenhand.words.roadtest;

import org.jspecify.annotations.NullMarked;
