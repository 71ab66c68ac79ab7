/** The questions of the window, each a class: its words, what matters for it, and its answer as data. No screen here. */
@NullMarked
package evenhand.window.question;

import org.jspecify.annotations.NullMarked;
