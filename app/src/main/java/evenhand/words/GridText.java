package evenhand.words;

import evenhand.choice.Span;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/** Steps that can be built, as they are written: "5 mm". Each holds for the changes of its dimension. */
public final class GridText {
    private GridText() {}

    /**
     * Reads steps.
     *
     * @param texts one step each
     * @param spans the changes, at least one
     * @return the step of each change, SI; none where it can have any value
     * @throws InvalidValue if a text is no step for any of the changes; its component is the text
     */
    public static List<OptionalDouble> read(List<String> texts, List<Span> spans) {
        List<OptionalDouble> steps = new ArrayList<>(Collections.nCopies(spans.size(), OptionalDouble.empty()));
        for (String text : texts) {
            boolean used = false;
            for (int i = 0; i < spans.size(); i++) {
                OptionalDouble step = read(text, spans.get(i));
                if (step.isPresent()) {
                    steps.set(i, step);
                    used = true;
                }
            }
            if (!used) {
                Dimension first = spans.get(0).adjustable().dimension();
                throw new InvalidValue(
                        text,
                        "is no step of " + first.words() + ", as "
                                + spans.get(0).path() + " is; write for example " + first.example());
            }
        }
        return List.copyOf(steps);
    }

    /** Nothing where it is of another dimension, meant for another change. */
    private static OptionalDouble read(String text, Span span) {
        double step;
        try {
            step = Quantity.parse(text, span.adjustable().dimension()).si();
        } catch (QuantityException other) {
            return OptionalDouble.empty();
        }
        if (step <= 0) {
            throw new InvalidValue(text, "must be above zero, for example \"5 mm\"");
        }
        if (!span.holds(step)) {
            throw new InvalidValue(
                    text,
                    "has no whole multiple in the range of " + span.path()
                            + "; widen the range or take a smaller step");
        }
        return OptionalDouble.of(step);
    }
}
