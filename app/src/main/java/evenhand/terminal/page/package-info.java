/** What stands on the screen: paragraphs, tables as text, colour, one screen. */
@NullMarked
package evenhand.terminal.page;

import org.jspecify.annotations.NullMarked;
