/** What the window shows and what can be done to it: one immutable state, acts, and what is kept on the disk. No screen here. */
@NullMarked
package evenhand.window.desk;

import org.jspecify.annotations.NullMarked;
