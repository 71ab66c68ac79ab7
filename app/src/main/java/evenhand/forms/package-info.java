/** The forms that an answer takes: what it contains is declared once, and JSON, CSV and tables are made of it. */
@NullMarked
package evenhand.forms;

import org.jspecify.annotations.NullMarked;
