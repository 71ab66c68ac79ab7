/** {@code evenhand log}. */
@NullMarked
package evenhand.terminal.book;

import org.jspecify.annotations.NullMarked;
