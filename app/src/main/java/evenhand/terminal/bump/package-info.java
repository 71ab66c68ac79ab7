/** Command bump: a wheel over a bump. */
@NullMarked
package evenhand.terminal.bump;

import org.jspecify.annotations.NullMarked;
