/**
 * Charts, for window and report alike.
 *
 * <p>A {@link evenhand.chart.Chart} is data in the units of its axes, made by pure functions from answers:
 * {@link evenhand.chart.TurnCharts} (the turn up to the limit) from a list of {@link evenhand.chart.Shown} set-ups. A test or a
 * view reads {@code chart.lines()}, {@code bars()}, {@code marks()}; {@link evenhand.chart.CrossHair} reads all values at one
 * place, {@link evenhand.chart.Zoom} says what part is looked at, {@link evenhand.chart.ChartPainter} paints it in an
 * {@code evenhand.look.Theme}.
 */
@NullMarked
package evenhand.chart;

import org.jspecify.annotations.NullMarked;
