/** How low a car can stand: what each height does to it, which need of a road car stops it, and where. */
@NullMarked
package evenhand.lowering;

import org.jspecify.annotations.NullMarked;
