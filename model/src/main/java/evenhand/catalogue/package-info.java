/**
 * What can be named and changed: every key of a car in a file is declared here once, with its meaning, and reader, writer,
 * schema, form and search are written over these declarations.
 */
@NullMarked
package evenhand.catalogue;

import org.jspecify.annotations.NullMarked;
