package evenhand.words;

import evenhand.choice.Span;
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
            String why = "";
            boolean used = false;
            for (int i = 0; i < spans.size(); i++) {
                try {
                    Quantity step =
                            Quantity.parse(text, spans.get(i).adjustable().dimension());
                    steps.set(i, OptionalDouble.of(sound(text, step, spans.get(i))));
                    used = true;
                } catch (QuantityException other) { // meant for another change
                    why = why.isEmpty() ? String.valueOf(other.getMessage()) : why;
                }
            }
            if (!used) {
                throw new InvalidValue(
                        text,
                        "is no step of " + spans.get(0).adjustable().dimension().words() + ", as "
                                + spans.get(0).path() + " is: " + why);
            }
        }
        return List.copyOf(steps);
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
