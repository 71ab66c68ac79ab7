/** Systems of linear equations for inner loops: the libraries allocate in each solve. */
@NullMarked
package evenhand.linear;

import org.jspecify.annotations.NullMarked;
