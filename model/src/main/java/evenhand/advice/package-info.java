/** What to do against what a driver complains of: single steps that help, best first, and why others are not advised. */
@NullMarked
package evenhand.advice;

import org.jspecify.annotations.NullMarked;
