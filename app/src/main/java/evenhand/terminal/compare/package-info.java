/** Command compare: what the changes between two set-ups do. */
@NullMarked
package evenhand.terminal.compare;

import org.jspecify.annotations.NullMarked;
