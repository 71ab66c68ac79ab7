package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a search for an aim has found. SI. */
public sealed interface Finding permits Finding.One, Finding.Several, Finding.NoValue {
    /** What is to be known of the place that was found. */
    enum Note {
        /** The figure bends or jumps right there: a stop is just touched, a wheel just lifts. */
        KINK("kink"),
        END_OF_RANGE("endOfRange"),
        /** The whole range moves the figure by less than anyone notices. */
        FLAT("flat");

        private final String key;

        Note(String key) {
            this.key = key;
        }

        /** Name in answers. */
        public String key() {
            return key;
        }
    }

    /** The least and the greatest that the figure can be within the ranges. */
    record Reach(double lowest, double highest) {}

    /** How a thing to be kept stands at what was found. */
    record Kept(Aim keep, OptionalDouble value, boolean ok) {}

    /** One place of the curve. */
    record Point(double at, double figure) {}

    /**
     * With one change.
     *
     * @param met whether the aim is met, to the nearest buildable step where steps were asked for; else the nearest is given
     * @param value that was found
     * @param achieved the figure there
     * @param unrounded the solution before it was rounded to a step
     * @param solutions every value in the range that meets the aim, or its edges where the aim is a bound
     * @param jumps where the figure jumps past the aim
     * @param slope of the figure at the value, per SI unit of the change
     * @param curve of the figure over the range
     */
    record One(
            Span change,
            Aim aim,
            boolean met,
            double value,
            double achieved,
            OptionalDouble unrounded,
            List<Double> solutions,
            List<Double> jumps,
            Reach reach,
            double slope,
            List<Point> curve,
            List<Kept> kept,
            List<Note> notes)
            implements Finding {
        public One {
            solutions = List.copyOf(solutions);
            jumps = List.copyOf(jumps);
            curve = List.copyOf(curve);
            kept = List.copyOf(kept);
            notes = List.copyOf(notes);
        }
    }

    /**
     * With several changes: the smallest that do, each measured by its range.
     *
     * @param met whether the aim is met and all is kept that should be; else the nearest is given
     * @param values in the order of the changes
     * @param achieved the figure there
     * @param unrounded the solution before it was rounded to steps
     */
    record Several(
            List<Span> changes,
            Aim aim,
            boolean met,
            List<Double> values,
            double achieved,
            Optional<List<Double>> unrounded,
            Reach reach,
            List<Kept> kept,
            List<Note> notes)
            implements Finding {
        public Several {
            changes = List.copyOf(changes);
            values = List.copyOf(values);
            kept = List.copyOf(kept);
            notes = List.copyOf(notes);
        }
    }

    /** Nowhere in the range has the figure a value. */
    record NoValue(Aim aim, TurnAnswer.Reason reason, String text) implements Finding {}
}
