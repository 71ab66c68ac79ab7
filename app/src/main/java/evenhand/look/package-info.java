/**
 * How pictures look, charts and drawings alike: colours, line styles, markers, type, and room for labels. Knows nothing of what
 * is shown.
 */
@NullMarked
package evenhand.look;

import org.jspecify.annotations.NullMarked;
