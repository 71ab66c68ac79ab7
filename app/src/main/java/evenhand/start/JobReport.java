package evenhand.start;

import evenhand.answers.Progress;
import evenhand.doubt.Tolerance;
import evenhand.report.Block;
import evenhand.report.CannotReport;
import evenhand.report.Delivery;
import evenhand.report.PaperSize;
import evenhand.report.Papers;
import evenhand.report.Question;
import evenhand.report.Reader;
import evenhand.report.ReportFile;
import evenhand.report.Section;
import evenhand.report.SeenPages;
import evenhand.report.ShopPicture;
import evenhand.scenario.AsTested;
import evenhand.scenario.Scenario;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.WhichCar;
import evenhand.words.TestedWords;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;

/** The papers of the job in the window: the same as the terminal's of the same set-ups. */
public final class JobReport implements ReportWriter {
    /** That nothing came of it because nobody waited for it. */
    private static final String STOPPED = "Stopped; nothing was written.";

    @Override
    public List<String> readers() {
        return Reader.all().stream().map(Reader::word).toList();
    }

    @Override
    public Outcome write(Order order, Path to, Progress progress) {
        try {
            ReportFile target = ReportFile.of(to, true);
            Delivery delivery =
                    Delivery.write(question(order, progress), readers(order), target, size(order), progress);
            return new Outcome.Written(delivery.remarks());
        } catch (CannotReport why) {
            return new Outcome.Failed(String.valueOf(why.getMessage()));
        } catch (CancellationException stopped) {
            return new Outcome.Failed(STOPPED);
        }
    }

    @Override
    public Preview preview(Order order, Progress progress) {
        try {
            return new Preview.Ready(
                    new Seen(Delivery.seen(question(order, progress), readers(order), size(order), progress)));
        } catch (CannotReport why) {
            return new Preview.Failed(String.valueOf(why.getMessage()));
        }
    }

    @Override
    public Verdict verdict(Order order, Progress progress) {
        try {
            Section told = Papers.verdict(question(order, progress), progress);
            return new Verdict(
                    told.blocks().stream().flatMap(JobReport::said).toList(),
                    told.blocks().stream().flatMap(JobReport::foot).findFirst().orElse(""));
        } catch (CannotReport why) {
            return new Verdict(List.of(new Verdict.Said("", String.valueOf(why.getMessage()), true)), "");
        }
    }

    private static Stream<Verdict.Said> said(Block block) {
        if (block instanceof Block.Facts facts) {
            return facts.facts().stream()
                    .map(fact -> new Verdict.Said(fact.lead(), fact.text(), fact.tone() == Block.Tone.WARNING));
        }
        return block instanceof Block.Text text && text.tone() == Block.Tone.WARNING
                ? Stream.of(new Verdict.Said("", text.text(), true))
                : Stream.empty();
    }

    private static Stream<String> foot(Block block) {
        return block instanceof Block.Text text && text.tone() == Block.Tone.QUIET
                ? Stream.of(text.text())
                : Stream.empty();
    }

    private static List<Reader> readers(Order order) {
        return order.readers().stream()
                .flatMap(word -> Reader.of(word).stream())
                .toList();
    }

    private static PaperSize size(Order order) {
        return order.paper() == Paper.A4 ? PaperSize.A4 : PaperSize.LETTER;
    }

    private static Question question(Order order, Progress progress) throws CannotReport {
        AsTested car = order.which().isTested()
                ? AsTested.of(
                        order.scenario(),
                        List.of(),
                        Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                        order.which() == WhichCar.AS_TESTED_ALL_THE_SAME,
                        progress)
                : new AsTested.Corrected(order.scenario());
        if (!(car instanceof AsTested.Corrected corrected)) {
            throw new CannotReport("The car cannot be reported as tested: " + TestedWords.why(car) + ".");
        }
        Scenario scenario = corrected.scenario();
        return new Question(
                scenario,
                order.setups().stream()
                        .map(setup -> scenario.setup(setup.name()).orElseThrow())
                        .toList(),
                scenario.setup(order.base().name()).orElseThrow(),
                order.trial(),
                true,
                Question.USUAL_SAMPLES,
                order.units(),
                ShopPicture.of(
                        order.scenario(),
                        order.home().orElseGet(() -> Path.of(order.scenario().file()))),
                order.date());
    }

    /** Pages of a paper for the window. */
    private record Seen(SeenPages pages) implements Pages {
        @Override
        public int count() {
            return pages.count();
        }

        @Override
        public double heightByWidth() {
            return pages.heightByWidth();
        }

        @Override
        public BufferedImage picture(int page, int width) {
            return pages.picture(page, width);
        }
    }
}
