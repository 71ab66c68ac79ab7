package evenhand.report;

import evenhand.answers.Progress;
import evenhand.chart.RoadTestCharts;
import evenhand.doubt.Tolerance;
import evenhand.quantity.Dimension;
import evenhand.report.Block.Column;
import evenhand.report.Block.Figures;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Plot;
import evenhand.report.Block.Points;
import evenhand.report.Block.Row;
import evenhand.report.Block.Text;
import evenhand.report.Block.Tone;
import evenhand.roadtest.Channel;
import evenhand.roadtest.Findings;
import evenhand.roadtest.Gradient;
import evenhand.roadtest.Observation;
import evenhand.roadtest.Study;
import evenhand.scenario.RoadTests;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.roadtest.RoadTestWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the road said of the file, where there are road tests. */
final class RoadTestPages {
    /** Enough for intervals of two digits. */
    private static final int SAMPLES = 128;

    private RoadTestPages() {}

    /** Asks the tests of the set-up that is handed over, and of those that were driven; none where none has a reading. */
    static Optional<Findings> ask(Question question, Setup chosen) {
        return ask(question, SAMPLES, chosen);
    }

    static Optional<Findings> ask(Question question, int samples, Setup chosen) {
        Scenario scenario = question.scenario();
        RoadTests tests = RoadTests.of(scenario, List.of());
        if (!tests.problems().isEmpty() || tests.tests().isEmpty()) {
            return Optional.empty();
        }
        List<Setup> setups = Stream.concat(
                        Stream.of(chosen),
                        tests.tests().stream().flatMap(test -> scenario.setup(test.setup()).stream()))
                .distinct()
                .toList();
        return Study.of(tests.asked(
                setups, Optional.empty(), samples, 1, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, Progress.NONE));
    }

    static Section of(Findings found, Units units) {
        RoadTestWords words = new RoadTestWords(units);
        List<String> said = words.all(found);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Text(InPrint.sentence(said.get(0)), found.agreement().agrees() ? Tone.PLAIN : Tone.WARNING));
        blocks.add(new Points(InPrint.sentences(said.subList(1, said.size()))));
        blocks.add(new Text(RoadTestWords.CAUTION, Tone.WARNING));
        for (Findings.OfTest test : found.tests()) {
            blocks.add(new Heading(
                    "\"" + test.test().name() + "\", with \"" + test.test().setup() + "\""));
            Plot[] plots = Stream.of(Channel.values())
                    .filter(channel -> test.seen().stream()
                            .anyMatch(seen -> seen.observation() instanceof Observation.Reading reading
                                    && reading.channel() == channel))
                    .map(channel -> new Plot(RoadTestCharts.readings(test, channel)))
                    .toArray(Plot[]::new);
            if (plots.length > 0) {
                blocks.add(Figures.even(plots.length > 1 ? 0.3 : 0.24, plots));
            }
            if (!test.gradients().isEmpty()) {
                blocks.add(gradients(test.gradients()));
            }
        }
        blocks.add(Figures.even(0.3, new Plot(RoadTestCharts.moved(found))));
        return new Section("What the road said", true, blocks);
    }

    private static Block gradients(List<Gradient> gradients) {
        return new Block.Table(
                List.of(
                        Column.words("gradient, deg/g", 3),
                        Column.number("as read", 1),
                        Column.number("± (one σ)", 1),
                        Column.number("by the file", 1),
                        Column.number("corrected", 1)),
                gradients.stream()
                        .map(one -> Row.of(
                                RoadTestWords.head(one),
                                degPerG(one.measured()),
                                degPerG(one.standardError()),
                                degPerG(one.before()),
                                degPerG(one.after())))
                        .toList());
    }

    private static String degPerG(double si) {
        return Numbers.fixed(Dimension.UNDERSTEER_GRADIENT.metric().fromSi(si), 2);
    }
}
