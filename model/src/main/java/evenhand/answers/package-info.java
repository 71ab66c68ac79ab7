/** One car asked every question, and the list of figures in the answer. */
@NullMarked
package evenhand.answers;

import org.jspecify.annotations.NullMarked;
