package evenhand.window.desk;

import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes the papers of a job, shows them, and knows what its owner is told. The window does not know how; whoever opens it brings one. */
public interface ReportWriter {
    /** Whom there is a paper for, by the words that they are asked for by. */
    List<String> readers();

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
     * @param readers whom it is for, each by his word, bound in this order
     * @param which whether it is of the car as measured or as tested
     */
    record Order(
            Scenario scenario,
            Optional<Path> home,
            List<Setup> setups,
            Setup base,
            Trial trial,
            Units units,
            List<String> readers,
            Paper paper,
            Optional<LocalDate> date,
            WhichCar which) {
        public Order {
            setups = List.copyOf(setups);
            readers = List.copyOf(readers);
        }

        /** The job as it stands on the desk, saved or not. */
        public static Order of(
                Desk desk,
                String handedOver,
                String base,
                List<String> readers,
                Paper paper,
                Optional<LocalDate> date) {
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
                    readers,
                    paper,
                    date,
                    work.which());
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

    /** Pages as they come out of the printer. */
    interface Pages {
        int count();

        /** Height of each over its width. */
        double heightByWidth();

        /** One of them, so many pixels wide, which takes a moment; for one thread at a time. */
        BufferedImage picture(int page, int width);
    }

    /** What came of looking at them before they are written. */
    sealed interface Preview {
        record Ready(Pages pages) implements Preview {}

        record Failed(String why) implements Preview {}
    }

    /**
     * What an owner is told of his car, in plain words.
     *
     * @param foot what figures without a side are of
     */
    record Verdict(List<Said> said, String foot) {
        public Verdict {
            said = List.copyOf(said);
        }

        /** A sentence or two under a word; a warning is what nobody may miss. */
        public record Said(String head, String words, boolean warning) {}
    }

    /**
     * Writes it, which takes a while; on a thread of its own.
     *
     * @param to the file that is written; one that is there already is replaced
     */
    Outcome write(Order order, Path to, Progress progress);

    /** The pages of the same, which takes as long. */
    Preview preview(Order order, Progress progress);

    /** What the owner is told of the set-up that is handed over, which takes a moment. */
    Verdict verdict(Order order, Progress progress);
}
