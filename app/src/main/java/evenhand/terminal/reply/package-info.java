/** What a reply shares with others: its forms, a set-up's answer, both ways round. */
@NullMarked
package evenhand.terminal.reply;

import org.jspecify.annotations.NullMarked;
