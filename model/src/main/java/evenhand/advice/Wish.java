package evenhand.advice;

import evenhand.answers.Answers;
import evenhand.answers.Judged;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A figure that is to go one way, in whatever bend it is the worst.
 *
 * @param judged the figure
 * @param up whether it should grow
 */
public record Wish(Judged judged, boolean up) {
    /** A value so that more of it is better. */
    double good(double value) {
        return up ? value : -value;
    }

    /** The figure in each bend, SI, in the trial's order. */
    List<OptionalDouble> values(Answers answers) {
        List<OptionalDouble> values = new ArrayList<>();
        for (int bend = 0; bend < answers.bends().size(); bend++) {
            values.add(judged.si(answers.in(bend)));
        }
        return values;
    }

    /** The bend that is the worst; the first where none has the figure. */
    public int worst(Answers answers) {
        List<OptionalDouble> values = values(answers);
        int worst = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int bend = 0; bend < values.size(); bend++) {
            if (values.get(bend).isPresent() && good(values.get(bend).getAsDouble()) < least) {
                least = good(values.get(bend).getAsDouble());
                worst = bend;
            }
        }
        return worst;
    }

    /** The figure where it is the worst, SI; none where no bend has it. */
    public OptionalDouble worstValue(Answers answers) {
        return answers.bends().isEmpty()
                ? OptionalDouble.empty()
                : values(answers).get(worst(answers));
    }
}
