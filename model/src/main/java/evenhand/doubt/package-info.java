/** What measuring errors and guesses leave of the answers: spread, causes, and what to measure next. */
@NullMarked
package evenhand.doubt;

import org.jspecify.annotations.NullMarked;
