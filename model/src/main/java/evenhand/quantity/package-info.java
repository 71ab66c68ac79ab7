/**
 * Numbers with units and tolerances, as a person writes them, and their values in SI.
 *
 * <p>Text becomes SI here and nowhere else. A text that cannot be read gives a {@link evenhand.quantity.QuantityException}
 * whose message says what is wrong and how to mend it; a unit is never guessed.
 */
@NullMarked
package evenhand.quantity;

import org.jspecify.annotations.NullMarked;
