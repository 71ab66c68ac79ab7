/** Command roughness: how rough a measured road is. */
@NullMarked
package evenhand.terminal.roughness;

import org.jspecify.annotations.NullMarked;
