/** What the links of an axle do through the travel, in sentences. */
@NullMarked
package evenhand.words.travel;

import org.jspecify.annotations.NullMarked;
