/**
 * Charts, for window and report alike.
 *
 * <p>A {@link evenhand.chart.Chart} is data in the units of its axes, made by pure functions from answers:
 * {@link evenhand.chart.TurnCharts} (the turn up to the limit) and {@link evenhand.chart.CauseCharts} (what load transfer and
 * understeer are made of) from a list of {@link evenhand.chart.Shown} set-ups, {@link evenhand.chart.EffectCharts} (what one step
 * does), {@link evenhand.chart.RideCharts}, and {@link evenhand.chart.CurveCharts} of plain numbers for everything else: a search,
 * causes of doubt, curves over time, a trade between two figures. A test or a view reads {@code chart.lines()}, {@code bars()},
 * {@code marks()}; {@link evenhand.chart.ChartCsv} writes them.
 *
 * <p>{@link evenhand.chart.ChartPainter} paints one in an {@code evenhand.look.Theme}, or makes an {@code evenhand.look.Picture}
 * of it (SVG, PNG, image); {@link evenhand.chart.ChartView} shows it. {@link evenhand.chart.CrossHair} reads all values at one
 * place, {@link evenhand.chart.Zoom} says what part is looked at.
 */
@NullMarked
package evenhand.chart;

import org.jspecify.annotations.NullMarked;
