/** The desktop window: views of the desk. Knows neither terminal nor report. */
@NullMarked
package evenhand.window;

import org.jspecify.annotations.NullMarked;
