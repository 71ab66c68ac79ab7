/** Sketches of how a value is measured: what it is measured on, and where tape, rule, level or scale go. */
@org.jspecify.annotations.NullMarked
package evenhand.drawing.measuring;
