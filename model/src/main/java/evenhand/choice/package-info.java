/** Choosing between set-ups: what each change is worth, and what one step of every adjustment does. */
@NullMarked
package evenhand.choice;

import org.jspecify.annotations.NullMarked;
