/** What was asked: the options that commands share, how a mistake in them is told, and the exit status. */
@NullMarked
package evenhand.terminal.asked;

import org.jspecify.annotations.NullMarked;
