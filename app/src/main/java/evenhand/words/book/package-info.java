/** The book of a car, in words. */
@NullMarked
package evenhand.words.book;

import org.jspecify.annotations.NullMarked;
