package evenhand.start;

import evenhand.answers.Progress;
import evenhand.doubt.Tolerance;
import evenhand.report.CannotReport;
import evenhand.report.Delivery;
import evenhand.report.PaperSize;
import evenhand.report.Question;
import evenhand.report.Reader;
import evenhand.report.ReportFile;
import evenhand.report.ShopPicture;
import evenhand.scenario.AsTested;
import evenhand.scenario.Scenario;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.WhichCar;
import evenhand.words.TestedWords;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;

/** The report of the job in the window: the same as the terminal's of the same set-ups. */
public final class JobReport implements ReportWriter {
    /** The handover's has nothing but what the others have, and the book. */
    private static final List<Reader> BOUND = List.of(Reader.OWNER, Reader.ENGINEER, Reader.INSPECTOR, Reader.WORKSHOP);

    @Override
    public Outcome write(Order order, Progress progress) {
        try {
            ReportFile target = ReportFile.of(order.to(), true);
            AsTested car = order.which().isTested()
                    ? AsTested.of(
                            order.scenario(),
                            List.of(),
                            Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                            order.which() == WhichCar.AS_TESTED_ALL_THE_SAME,
                            progress)
                    : new AsTested.Corrected(order.scenario());
            if (!(car instanceof AsTested.Corrected corrected)) {
                return new Outcome.Failed("The car cannot be reported as tested: " + TestedWords.why(car) + ".");
            }
            Scenario scenario = corrected.scenario();
            Question question = new Question(
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
                            order.home()
                                    .orElseGet(() -> Path.of(order.scenario().file()))),
                    order.date());
            Delivery delivery = Delivery.write(
                    question, BOUND, target, order.paper() == Paper.A4 ? PaperSize.A4 : PaperSize.LETTER, progress);
            return new Outcome.Written(delivery.remarks());
        } catch (CannotReport why) {
            return new Outcome.Failed(String.valueOf(why.getMessage()));
        } catch (CancellationException stopped) {
            return new Outcome.Failed("Stopped; nothing was written.");
        }
    }
}
