/** Sentences on how low the car can stand and what it costs. */
@NullMarked
package evenhand.words.lowering;

import org.jspecify.annotations.NullMarked;
