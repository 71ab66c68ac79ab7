/** Command travel: what the links do through the travel. */
@NullMarked
package evenhand.terminal.travel;

import org.jspecify.annotations.NullMarked;
