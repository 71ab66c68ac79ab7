/** Numbers and sentences for people: SI becomes text here. Pure functions; no face of the program is known here. */
@NullMarked
package evenhand.words;

import org.jspecify.annotations.NullMarked;
