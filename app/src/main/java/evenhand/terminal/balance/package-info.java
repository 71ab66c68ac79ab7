/** Command balance: how the set-ups behave on a circle. */
@NullMarked
package evenhand.terminal.balance;

import org.jspecify.annotations.NullMarked;
