/**
 * The car to scale, for window and report alike.
 *
 * <p>A {@link evenhand.drawing.Stance} is a set-up at rest or at a pace; {@link evenhand.drawing.RearView},
 * {@link evenhand.drawing.SideView} and {@link evenhand.drawing.TopView} make a {@link evenhand.drawing.Drawing} of one stance, or
 * of several over one another. A drawing is data in metres: outlines, marks, words and {@link evenhand.drawing.Handle}s.
 * {@link evenhand.drawing.DrawingPainter} paints it, {@link evenhand.drawing.DrawingView} shows it and reports every
 * {@link evenhand.drawing.Pull} of a handle; it changes nothing itself.
 *
 * <p>{@code drawing.measuring} has sketches of how a value is measured, painted alike.
 *
 * <p>Of the body only size and stance are known, so it is a quiet outline of no particular car.
 */
@NullMarked
package evenhand.drawing;

import org.jspecify.annotations.NullMarked;
