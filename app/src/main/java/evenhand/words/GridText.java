package evenhand.words;

import evenhand.choice.Span;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Steps that can be built, as they are written: "5 mm". Each holds for its own change, or for all of its dimension. */
public final class GridText {
    private GridText() {}

    /**
     * A step as it is written.
     *
     * @param of the number of the change that it stands behind, from 0; none where it is for all of its dimension
     */
    public record Written(String text, OptionalInt of) {
        /** For all changes of its dimension that have none of their own. */
        public static Written forAll(String text) {
            return new Written(text, OptionalInt.empty());
        }
    }

    /**
     * Reads steps.
     *
     * @param grids one step each
     * @param spans the changes, at least one
     * @return the step of each change, SI; none where it can have any value
     * @throws InvalidValue if a text is no step for any of the changes, or a second one; its component is the text
     */
    public static List<OptionalDouble> read(List<Written> grids, List<Span> spans) {
        List<OptionalDouble> steps = new ArrayList<>(Collections.nCopies(spans.size(), OptionalDouble.empty()));
        for (Written grid : grids) {
            if (grid.of().isPresent()) {
                int i = grid.of().getAsInt();
                put(grid.text(), i, spans, steps, List.of(i));
            }
        }
        List<Integer> others = IntStream.range(0, spans.size())
                .filter(i -> steps.get(i).isEmpty())
                .boxed()
                .toList();
        for (Written grid : grids) {
            if (grid.of().isEmpty()) {
                put(grid.text(), others.isEmpty() ? 0 : others.get(0), spans, steps, others);
            }
        }
        return List.copyOf(steps);
    }

    /** Gives a step to those of some changes whose dimension it has. */
    private static void put(
            String text, int named, List<Span> spans, List<OptionalDouble> steps, List<Integer> changes) {
        String why = "";
        boolean used = false;
        for (int i : changes) {
            try {
                Quantity step = Quantity.parse(text, spans.get(i).adjustable().dimension());
                double size = sound(text, step, spans.get(i));
                if (steps.get(i).isPresent()) {
                    throw new InvalidValue(
                            text, "is a second step for " + spans.get(i).path() + "; leave out one of them");
                }
                steps.set(i, OptionalDouble.of(size));
                used = true;
            } catch (QuantityException other) { // meant for another change
                why = why.isEmpty() ? String.valueOf(other.getMessage()) : why;
            }
        }
        if (!used) {
            throw new InvalidValue(
                    text,
                    "is no step of " + spans.get(named).adjustable().dimension().words() + ", as "
                            + spans.get(named).path() + " is: " + why);
        }
    }

    private static double sound(String text, Quantity step, Span span) {
        if (step.hasTolerance()) {
            throw new InvalidValue(text, "takes no tolerance; leave out the ± and what follows");
        }
        if (step.si() <= 0) {
            throw new InvalidValue(text, "must be above zero, for example \"5 mm\"");
        }
        if (!span.holds(step.si())) {
            throw new InvalidValue(
                    text,
                    "has no whole multiple in the range of " + span.path()
                            + "; widen the range or take a smaller step");
        }
        return step.si();
    }
}
