package evenhand.chart;

import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Hatch;
import evenhand.chart.Part.Rule;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** How far each of several changes goes, as a part of its range. */
public final class MoveChart {
    private MoveChart() {}

    /**
     * A change of one adjustment.
     *
     * @param words what is changed
     * @param beside its value as it stands, and its range
     * @param from where it stands, as a part of the range: 0 at its beginning, 1 at its end
     * @param to where it goes
     * @param then its value there, with its unit
     */
    public record Move(String words, String beside, double from, double to, String then) {}

    /** A bar for each change, from where it stands to where it goes. */
    public static Chart of(String title, String name, SetupStyle style, List<Move> moves) {
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        for (Move move : moves) {
            parts.add(new Bar(
                    rows.size(), 0, 1, name, "", style, Hatch.FULL, 100 * move.from(), 100 * move.to(), move.then()));
            rows.add(new Axis.Row(move.words(), move.beside()));
        }
        parts.add(new Rule(Rule.Kind.REACH, Rule.Along.ACROSS, 0, ""));
        parts.add(new Rule(Rule.Kind.REACH, Rule.Along.ACROSS, 100, ""));
        Span span = Span.around(Stream.of(0.0, 100.0).mapToDouble(end -> end));
        for (Move move : moves) {
            span = span.including(100 * move.from()).including(100 * move.to());
        }
        return new Chart(
                title,
                Axis.Measure.of("place in its range, from the beginning to the end", Unit.of("%"), 0, span.rounded()),
                new Axis.Rows("", rows),
                parts);
    }
}
