package evenhand.window.desk;

import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes the report of a job to a file. The window does not know how; whoever opens it brings one. */
@FunctionalInterface
public interface ReportWriter {
    /** Sheets that a report is set on. */
    enum Paper {
        A4("A4"),
        LETTER("Letter");

        private final String words;

        Paper(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** What lies in the printer where these units are at home. */
        public static Paper of(Units units) {
            return units == Units.METRIC ? A4 : LETTER;
        }
    }

    /**
     * What is to be written.
     *
     * @param home the file of the job, which a picture's name starts from; none where it was never saved
     * @param setups side by side, the last of them handed over
     * @param base the set-up before
     * @param which whether it is of the car as measured or as tested
     * @param to the file that is written; one that is there already is replaced
     */
    record Order(
            Scenario scenario,
            Optional<Path> home,
            List<Setup> setups,
            Setup base,
            Trial trial,
            Units units,
            Paper paper,
            Optional<LocalDate> date,
            WhichCar which,
            Path to) {
        public Order {
            setups = List.copyOf(setups);
        }

        /** The job as it stands on the desk, saved or not. */
        public static Order of(
                Desk desk, String handedOver, String base, Paper paper, Optional<LocalDate> date, Path to) {
            Work work = desk.work();
            List<Setup> setups = new ArrayList<>(work.shown());
            setups.removeIf(setup -> setup.name().equals(handedOver));
            setups.add(work.scenario().setup(handedOver).orElseThrow());
            return new Order(
                    work.scenario(),
                    desk.filed().path(),
                    setups,
                    work.scenario().setup(base).orElseThrow(),
                    work.usualTrial(),
                    desk.look().units(),
                    paper,
                    date,
                    work.which(),
                    to);
        }
    }

    /** What came of it. */
    sealed interface Outcome {
        /** @param remarks what the paper's reader does not see, a line each */
        record Written(List<String> remarks) implements Outcome {
            public Written {
                remarks = List.copyOf(remarks);
            }
        }

        /** Nothing was written; why, and what to do. */
        record Failed(String why) implements Outcome {}
    }

    /** Writes it, which takes a while; on a thread of its own. */
    Outcome write(Order order, Progress progress);
}
