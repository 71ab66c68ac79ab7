/** Command find: the value of an adjustment that meets an aim. */
@NullMarked
package evenhand.terminal.find;

import org.jspecify.annotations.NullMarked;
