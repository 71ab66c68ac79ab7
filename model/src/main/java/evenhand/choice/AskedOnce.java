package evenhand.choice;

import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.LinkCriteria;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What cars answer in one trial, each asked once however often its answer is wanted: set-ups that share changes meet the same
 * combinations of them on their ways from the base. May be asked from several threads.
 */
public final class AskedOnce {
    private final Trial trial;
    private final Function<Car, Answers> ask;
    private final Map<Entries, Optional<Answers>> answers = new ConcurrentHashMap<>();

    /** For all that the trial judges, and what the links say besides. */
    public AskedOnce(Trial trial) {
        this(trial, car -> trial.askAlso(car, LinkCriteria.JUDGED));
    }

    /** For some figures alone. */
    AskedOnce(Trial trial, List<Judged> figures) {
        this(trial, car -> trial.ask(car, figures));
    }

    private AskedOnce(Trial trial, Function<Car, Answers> ask) {
        this.trial = trial;
        this.ask = ask;
    }

    /** What a car answers; nothing where it does not build. */
    public Optional<Answers> of(Entries car) {
        Optional<Answers> known = answers.get(car);
        if (known != null) {
            return known;
        }
        // Not in one step with the look: whoever wants another car need not wait for this one.
        Optional<Answers> asked = Catalogue.build(car).value().map(ask);
        answers.put(car, asked);
        return asked;
    }

    Trial trial() {
        return trial;
    }
}
