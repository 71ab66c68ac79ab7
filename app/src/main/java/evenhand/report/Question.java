package evenhand.report;

import evenhand.answers.Trial;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is to be reported.
 *
 * @param setups in the order of the comparison; the last of them is handed over
 * @param base the set-up before, which the others are compared with; the only one where nothing is compared
 * @param trial one way round, whose figures are shown
 * @param bothWays whether the other way round is asked too
 * @param samples of cars that doubt is taken from
 * @param complaint what a driver complains of in the set-up that is handed over, in the words of {@link
 *     evenhand.words.effects.Complaint}
 */
public record Question(
        Scenario scenario,
        List<Setup> setups,
        Setup base,
        Trial trial,
        boolean bothWays,
        int samples,
        Units units,
        Optional<ShopPicture> picture,
        Optional<LocalDate> date,
        Optional<String> complaint) {
    /** Samples enough for intervals of two digits, and few enough to wait for. */
    public static final int USUAL_SAMPLES = 512;

    public Question {
        setups = List.copyOf(setups);
        if (setups.isEmpty()) {
            throw new IllegalArgumentException("no set-up to report");
        }
    }

    /** Without a complaint. */
    public Question(
            Scenario scenario,
            List<Setup> setups,
            Setup base,
            Trial trial,
            boolean bothWays,
            int samples,
            Units units,
            Optional<ShopPicture> picture,
            Optional<LocalDate> date) {
        this(scenario, setups, base, trial, bothWays, samples, units, picture, date, Optional.empty());
    }

    /** The same with what a driver complains of. */
    public Question complaining(Optional<String> words) {
        return new Question(scenario, setups, base, trial, bothWays, samples, units, picture, date, words);
    }

    /** The trial by which a car is judged. */
    Trial judging() {
        return bothWays ? trial.bothWays() : trial;
    }
}
