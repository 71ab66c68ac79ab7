package evenhand.report;

import evenhand.car.End;
import evenhand.chart.BrakeCharts;
import evenhand.chart.BrakeCharts.Stopping;
import evenhand.chart.Chart;
import evenhand.chart.LaunchCharts;
import evenhand.chart.LaunchCharts.Launching;
import evenhand.look.SetupStyle;
import evenhand.report.Block.Figures;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Plot;
import evenhand.report.Block.Points;
import evenhand.report.Block.Text;
import evenhand.report.Block.Tone;
import evenhand.scenario.Setup;
import evenhand.straight.Braking;
import evenhand.words.InPrint;
import evenhand.words.Units;
import evenhand.words.brakes.BrakeWords;
import evenhand.words.brakes.BrakedSetup.Braked;
import evenhand.words.drive.DriveWords;
import evenhand.words.drive.DrivenSetup.Driven;
import java.util.ArrayList;
import java.util.List;

/** How the car brakes and pulls away, before and now. */
final class AheadPages {
    private final BrakedAndDriven ahead;
    private final Setup chosen;
    private final Units units;

    private AheadPages(Findings findings, BrakedAndDriven ahead) {
        this.ahead = ahead;
        chosen = findings.chosen().setup();
        units = findings.question().units();
    }

    static Section of(Findings findings, BrakedAndDriven ahead) {
        AheadPages pages = new AheadPages(findings, ahead);
        List<Block> blocks = new ArrayList<>();
        pages.braking(blocks);
        if (!ahead.driven().isEmpty()) {
            blocks.add(new Heading("Off the line"));
            pages.driving(blocks);
            pages.lifting(blocks);
        }
        return new Section(ahead.driven().isEmpty() ? "Braking" : "Braking and driving", true, blocks);
    }

    private void braking(List<Block> blocks) {
        for (Braked one : ahead.braked()) {
            List<String> words = one.words(units);
            boolean now = one.setup().equals(chosen);
            String verdict =
                    InPrint.sentence((ahead.braked().size() > 1 ? (now ? "Now: " : "Before: ") : "") + words.get(0));
            boolean unsafe = now && rearFirst(one.answer());
            blocks.add(new Text(verdict, unsafe ? Tone.WARNING : Tone.PLAIN));
        }
        Braked now = ahead.braked().get(ahead.braked().size() - 1);
        String yardstick = BrakeWords.yardstick(now.answer());
        List<String> others = now.words(units).stream()
                .skip(1)
                .filter(sentence -> !sentence.equals(yardstick))
                .toList();
        List<Stopping> stopping = ahead.braked().stream()
                .map(one -> new Stopping(
                        one.setup().name(), new SetupStyle(one.setup().look()), one.answer()))
                .toList();
        blocks.add(Figures.even(0.24, new Plot(BrakeCharts.forces(stopping, units))));
        blocks.add(Figures.even(0.24, new Plot(BrakeCharts.adhesion(stopping, units))));
        blocks.add(Text.plain(InPrint.sentence(yardstick)));
        blocks.add(new Text(String.join(" ", BrakeWords.CAUTIONS), Tone.WARNING));
        blocks.add(new Points(InPrint.sentences(others)));
    }

    private static boolean rearFirst(Braking.Answer answer) {
        return answer.own().locks().filter(locks -> locks.axle() == End.REAR).isPresent();
    }

    /** Off the throttle in the bend: what is said first says what is done, the last is the caution. */
    private void lifting(List<Block> blocks) {
        List<String> said = ahead.lifted();
        if (said.isEmpty()) {
            return;
        }
        blocks.add(new Heading("Off the throttle in the bend"));
        blocks.add(new Text(said.get(said.size() - 1), Tone.WARNING));
        blocks.add(Text.plain(said.get(0)));
        blocks.add(new Points(InPrint.sentences(said.subList(1, said.size() - 1))));
    }

    private void driving(List<Block> blocks) {
        Driven now = ahead.driven().get(ahead.driven().size() - 1);
        blocks.add(new Text(String.join(" ", DriveWords.CAUTIONS), Tone.WARNING));
        blocks.add(new Points(InPrint.sentences(now.words(units))));
        List<Launching> launching = ahead.driven().stream()
                .map(one -> new Launching(
                        one.setup().name(),
                        new SetupStyle(one.setup().look()),
                        one.rest().car(),
                        one.answer()))
                .toList();
        List<Chart> charts =
                new ArrayList<>(List.of(LaunchCharts.wheelLoads(launching, units), LaunchCharts.gears(launching)));
        charts.removeIf(Chart::isEmpty);
        if (!charts.isEmpty()) {
            blocks.add(Figures.even(0.32, charts.stream().map(Plot::new).toArray(Block.Figure[]::new)));
        }
    }
}
