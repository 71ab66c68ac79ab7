/** What people and luggage do to a car at rest. */
@NullMarked
package evenhand.load;

import org.jspecify.annotations.NullMarked;
