/** Roads as a wheel meets them: single events, random and measured profiles, and how rough a profile is. */
@NullMarked
package evenhand.road;

import org.jspecify.annotations.NullMarked;
