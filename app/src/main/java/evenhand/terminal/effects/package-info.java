/** Command effects: what each adjustment does, and what helps against a complaint. */
@NullMarked
package evenhand.terminal.effects;

import org.jspecify.annotations.NullMarked;
