/** What links, springs and mounts carry, in sentences. */
@NullMarked
package evenhand.words.loads;

import org.jspecify.annotations.NullMarked;
