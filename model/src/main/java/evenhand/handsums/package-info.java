/** Roll, load transfer and understeer in closed form, every intermediate figure kept. */
@NullMarked
package evenhand.handsums;

import org.jspecify.annotations.NullMarked;
