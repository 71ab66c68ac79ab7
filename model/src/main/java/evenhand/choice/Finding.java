package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a search for an aim has found. SI. */
public sealed interface Finding permits Finding.Found, Finding.NoValue {
    /** What is to be known of the place that was found. */
    enum Note {
        /** The figure bends or jumps right there: a stop is just touched, a wheel just lifts. */
        KINK("kink"),
        END_OF_RANGE("endOfRange"),
        /** The whole range moves the figure by less than anyone notices. */
        FLAT("flat"),
        /** A value that was found lies where most cars have none. */
        UNUSUAL("unusual");

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

    /**
     * How a thing to be kept stands at what was found.
     *
     * @param value that decides: of the worse bend, or the mean
     * @param off the bends that are further off an exact value than a driver would let pass
     */
    record Kept(Aim keep, OptionalDouble value, List<Answers.Bend> off, boolean ok) {
        public Kept {
            off = List.copyOf(off);
        }
    }

    /** One place of the curve. */
    record Point(double at, double figure) {}

    /**
     * Where a figure jumps past the aim.
     *
     * @param otherLimit whether in some bend another cause ends the turn, or another end goes first, on the other side of it
     */
    record Jump(double at, boolean otherLimit) {}

    /**
     * What the figure of the aim can be in one bend by itself.
     *
     * @param radius of the circle, m
     * @param reach none where it has no value anywhere
     * @param slope at the value that was found, per SI unit of the change; none for several changes and for a yes or no
     * @param curve over the range; none for several changes
     */
    record InBend(double radius, Direction direction, Optional<Reach> reach, OptionalDouble slope, List<Point> curve) {
        public InBend {
            curve = List.copyOf(curve);
        }

        InBend turned(Direction other) {
            return new InBend(radius, other, reach, slope, curve);
        }
    }

    /** The last values at which the front still goes first in every bend, and what the car answers there. */
    record FrontFirst(List<Double> values, Answers answers) {
        public FrontFirst {
            values = List.copyOf(values);
        }
    }

    /**
     * What was found, in every bend.
     *
     * @param answers of the car there
     * @param alike whether one way round is the mirror image of the other for all values
     * @param bends in the trial's order
     * @param frontFirst beside what was found, where the front does not go first in every bend there and does elsewhere
     */
    record AllRound(Answers answers, boolean alike, List<InBend> bends, Optional<FrontFirst> frontFirst) {
        public AllRound {
            bends = List.copyOf(bends);
        }
    }

    /** With one change or several. Figures that are of no bend are those that decide: of the worse bend, or the mean. */
    sealed interface Found extends Finding permits One, Several {
        Aim aim();

        boolean met();

        double achieved();

        Reach reach();

        List<Kept> kept();

        List<Note> notes();

        AllRound allRound();

        /** What changes. */
        List<Span> spans();

        /** What was found for each, in their order, SI. */
        List<Double> values();
    }

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
            List<Jump> jumps,
            Reach reach,
            double slope,
            List<Point> curve,
            List<Kept> kept,
            List<Note> notes,
            AllRound allRound)
            implements Found {
        public One {
            solutions = List.copyOf(solutions);
            jumps = List.copyOf(jumps);
            curve = List.copyOf(curve);
            kept = List.copyOf(kept);
            notes = List.copyOf(notes);
        }

        @Override
        public List<Span> spans() {
            return List.of(change);
        }

        @Override
        public List<Double> values() {
            return List.of(value);
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
            List<Note> notes,
            AllRound allRound)
            implements Found {
        public Several {
            changes = List.copyOf(changes);
            values = List.copyOf(values);
            kept = List.copyOf(kept);
            notes = List.copyOf(notes);
        }

        @Override
        public List<Span> spans() {
            return changes;
        }
    }

    /**
     * Nowhere in the range has the figure a value in every bend.
     *
     * @param bends what it can be in each by itself
     */
    record NoValue(Aim aim, TurnAnswer.Reason reason, String text, List<InBend> bends) implements Finding {
        public NoValue {
            bends = List.copyOf(bends);
        }
    }
}
