package evenhand.chart;

import evenhand.look.SetupStyle;
import java.util.List;

/** Something in a chart, in the units of its axes. */
public sealed interface Part permits Part.Line, Part.Band, Part.Bar, Part.Whisker, Part.Mark, Part.Rule, Part.Guide {
    /** A place in a chart. */
    record Point(double x, double y) {}

    /**
     * A curve.
     *
     * @param name of the set-up, or of what it is
     * @param part which of several lines of the set-up, in words: "front"; else empty
     * @param ending what is said of its end: "limit 0.771 g"; else empty
     * @param weight second lines of a set-up are finer, besides the words
     * @param points in the order that they are joined; rising in x, but for a trade between two figures
     */
    record Line(String name, String part, String ending, SetupStyle style, Weight weight, List<Point> points)
            implements Part {
        public Line {
            points = List.copyOf(points);
        }

        /** Whose line it is, and which. */
        public String label() {
            return name.isEmpty() ? part : part.isEmpty() ? name : name + ", " + part;
        }
    }

    /** How heavy a line is drawn. */
    enum Weight {
        HEAVY(2.2),
        FINE(1.3),
        /** Joins places; it has no markers of its own. */
        THREAD(0.9);

        private final double width;

        Weight(double width) {
            this.width = width;
        }

        /** Of the line, for type of 12 px. */
        public double width() {
            return width;
        }
    }

    /** Doubt about a curve: between low and high. Points rising in x, as many below as above. */
    record Band(String name, String part, SetupStyle style, List<Point> low, List<Point> high) implements Part {
        public Band {
            low = List.copyOf(low);
            high = List.copyOf(high);
        }
    }

    /**
     * A bar in a row, from one value to another.
     *
     * @param row index of the row
     * @param lane which of {@code lanes} bars of the row, the first on top
     * @param name of the set-up, or of what it is
     * @param part what the bar is a part of the sum for: "roll steer"; else empty
     * @param hatch how it is filled where parts stand beside each other
     * @param words at its end
     */
    record Bar(
            int row,
            int lane,
            int lanes,
            String name,
            String part,
            SetupStyle style,
            Hatch hatch,
            double from,
            double to,
            String words)
            implements Part {
        /** Where its middle is along the axis of rows. */
        public double middle() {
            return row - 0.5 + (lane + 0.5) / lanes;
        }
    }

    /**
     * A value in a row, and what doubt leaves of it.
     *
     * @param row index of the row
     * @param lane which of {@code lanes} of the row, the first on top
     * @param name of the set-up
     * @param low where the whisker begins; the value itself where nothing is known of its doubt
     * @param words beside it
     */
    record Whisker(
            int row,
            int lane,
            int lanes,
            String name,
            SetupStyle style,
            double low,
            double value,
            double high,
            String words)
            implements Part {
        /** Where it is along the axis of rows. */
        public double middle() {
            return row - 0.5 + (lane + 0.5) / lanes;
        }
    }

    /** How a part of a bar is filled, so that causes are told apart without colour. */
    enum Hatch {
        FULL,
        RISING,
        FALLING,
        UPRIGHT,
        CROSSED,
        EMPTY,
        DOTTED
    }

    /**
     * A place that has a name.
     *
     * @param name of the set-up that it belongs to; else empty
     */
    record Mark(Mark.Kind kind, String name, SetupStyle style, Point at, String words) implements Part {
        /** What it marks. */
        public enum Kind {
            EVENT,
            LIMIT,
            ANSWER,
            NOW
        }
    }

    /** A straight line all across. */
    record Rule(Rule.Kind kind, Along along, double value, String words) implements Part {
        /** What it is for. */
        public enum Kind {
            ZERO,
            PACE,
            AIM,
            REACH,
            NOTE
        }

        /** Which axis the value stands on. */
        public enum Along {
            ACROSS,
            UP
        }
    }

    /**
     * A quiet line to hold curves against, such as a bound of a rule or all places alike in something. Nothing is read off it.
     *
     * @param points in the order that they are joined, two or more
     * @param at where its words stand
     */
    record Guide(List<Point> points, Point at, String words) implements Part {
        public Guide {
            points = List.copyOf(points);
        }
    }
}
