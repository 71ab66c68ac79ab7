/** Where the program starts: in the terminal or in the window. */
@NullMarked
package evenhand.start;

import org.jspecify.annotations.NullMarked;
