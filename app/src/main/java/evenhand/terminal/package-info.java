/** The command line: reads a command, asks the model, and writes tables, JSON or CSV to standard output. */
@NullMarked
package evenhand.terminal;

import org.jspecify.annotations.NullMarked;
