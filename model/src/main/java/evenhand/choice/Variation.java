package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;

/**
 * A car with some of its values free.
 *
 * @param car all else
 * @param spans what is free
 * @param trial in which each car is asked
 * @param progress of whoever waits for it
 */
record Variation(Entries car, List<Span> spans, Trial trial, Progress progress) {
    /**
     * What the car answers with these values, in the order of the spans; nothing where they make no car.
     *
     * @throws CancellationException if it is no longer wanted
     */
    Optional<Answers> at(double... values) {
        progress.goOn();
        Entries changed = car;
        for (int i = 0; i < values.length; i++) {
            changed = Catalogue.with(changed, spans.get(i).path(), values[i]);
        }
        return Catalogue.build(changed).value().map(trial::ask);
    }

    /** The figure that decides an aim with these values, SI. */
    OptionalDouble figure(Aim aim, double... values) {
        return at(values).map(aim::figure).orElseGet(OptionalDouble::empty);
    }

    /** Whether what is to be kept is kept. */
    static boolean keeps(Answers answers, List<Aim> keeps) {
        for (Aim keep : keeps) {
            OptionalDouble figure = keep.figure(answers);
            if (figure.isEmpty() || !keep.met(figure.getAsDouble())) {
                return false;
            }
        }
        return true;
    }

    /** How each thing to be kept stands with these values. */
    List<Finding.Kept> kept(List<Aim> keeps, double... values) {
        Optional<Answers> answers = at(values);
        return keeps.stream()
                .map(keep -> {
                    OptionalDouble figure = answers.map(keep::figure).orElseGet(OptionalDouble::empty);
                    return new Finding.Kept(keep, figure, figure.isPresent() && keep.met(figure.getAsDouble()));
                })
                .toList();
    }
}
