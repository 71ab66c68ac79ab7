/** Sentences on the balance of a set-up, its limit and why it goes there. */
@NullMarked
package evenhand.words.balance;

import org.jspecify.annotations.NullMarked;
