package evenhand.chart;

import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.List;

/** What stands along one side of a chart. */
public sealed interface Axis permits Axis.Measure, Axis.Rows {
    /** As a person reads it, with the unit: "lateral acceleration, g". */
    String title();

    Span span();

    /**
     * A number with its unit.
     *
     * @param words what it measures: "lateral acceleration"
     * @param unit as it is shown, for instance "deg/g"
     * @param digits behind the point when a value is read off
     * @param span from where to where, in that unit
     * @param scale how lengths along it grow with the number
     */
    record Measure(String words, String unit, int digits, Span span, Scale scale) implements Axis {
        public Measure {
            if (scale == Scale.LOGARITHMIC && !(span.low() > 0)) {
                throw new IllegalArgumentException("a logarithmic axis of " + words + " cannot begin at " + span.low());
            }
        }

        public static Measure of(String words, Unit unit, int digits, Span span) {
            return new Measure(words, InPrint.symbol(unit), digits, span, Scale.LINEAR);
        }

        @Override
        public String title() {
            return unit.isEmpty() ? words : words + ", " + unit;
        }

        /** A value on it, with its unit: "−0.12 deg/g". */
        public String show(double value) {
            return withUnit(number(value));
        }

        /** A value on it, without its unit. */
        String number(double value) {
            return Numbers.fixed(value, digits);
        }

        /** A value on it, with its sign and unit. */
        public String showSigned(double value) {
            return withUnit(Numbers.signed(value, digits));
        }

        private String withUnit(String number) {
            return unit.isEmpty() ? number : number + " " + unit;
        }

        /** The same axis from where to where. */
        public Measure over(Span other) {
            return new Measure(words, unit, digits, other, scale);
        }
    }

    /** Names below one another, the first on top; row i reaches from i − ½ to i + ½, downwards. */
    record Rows(String words, List<Row> rows) implements Axis {
        public Rows {
            rows = List.copyOf(rows);
        }

        @Override
        public String title() {
            return words;
        }

        @Override
        public Span span() {
            return new Span(-0.5, Math.max(1, rows.size()) - 0.5);
        }
    }

    /** One name, and what is said beside its bars. */
    record Row(String words, String beside) {}

    /** How lengths along an axis grow. */
    enum Scale {
        LINEAR,
        LOGARITHMIC
    }

    /** The unit that a dimension is shown in. */
    static Unit unit(Units units, Dimension dimension) {
        return units.of(dimension);
    }
}
