package evenhand.report;

import evenhand.answers.Trial;
import evenhand.quantity.Unit;
import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.words.Units;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Reports of the demo cars, with doubt from few samples. */
final class Reports {
    static final Trial TRIAL =
            new Trial(List.of(Unit.of("g").toSi(0.2), Unit.of("g").toSi(0.5)), 40, Direction.LEFT);

    private Reports() {}

    static Question question(Scenario scenario, List<Setup> setups, Units units) {
        return new Question(
                scenario, setups, scenario.setups().get(0), TRIAL, true, 48, units, Optional.empty(), Optional.empty());
    }

    /** The first set-up of a demo car against its last. */
    static Findings demo(String name, Units units) {
        Scenario scenario = Demo.read(name);
        int last = scenario.setups().size() - 1;
        return Findings.of(question(scenario, List.of(scenario.setups().get(last)), units), done -> {});
    }

    /** The same the other way round. */
    static Findings turnedRound(String name) {
        Scenario scenario = Demo.read(name);
        int last = scenario.setups().size() - 1;
        Question question = new Question(
                scenario,
                List.of(scenario.setups().get(0)),
                scenario.setups().get(last),
                TRIAL,
                true,
                48,
                Units.METRIC,
                Optional.empty(),
                Optional.empty());
        return Findings.of(question, done -> {});
    }

    static String text(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All sentences of a section. */
    static List<String> sentences(Paper paper, String title) {
        return paper.sections().stream()
                .filter(section -> section.title().startsWith(title))
                .flatMap(section -> section.blocks().stream())
                .flatMap(block -> block instanceof Block.Points points
                        ? points.sentences().stream()
                        : block instanceof Block.Text text
                                ? java.util.stream.Stream.of(text.text())
                                : java.util.stream.Stream.empty())
                .toList();
    }
}
