/** How the perches are to be turned so that the corners carry and stand as they are wanted to. */
@NullMarked
package evenhand.level;

import org.jspecify.annotations.NullMarked;
