/** Command doubt: how sure the answers are, and what to measure. */
@NullMarked
package evenhand.terminal.doubt;

import org.jspecify.annotations.NullMarked;
