package evenhand.report;

import evenhand.car.End;
import evenhand.chart.Chart;
import evenhand.chart.LoadCharts;
import evenhand.chart.LoadCharts.Carrying;
import evenhand.chart.Part;
import evenhand.drawing.Drawing;
import evenhand.drawing.ForcesView;
import evenhand.drawing.Stance;
import evenhand.look.SetupStyle;
import evenhand.report.Block.Figures;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Plot;
import evenhand.report.Block.Points;
import evenhand.report.Block.Text;
import evenhand.report.Block.Tone;
import evenhand.report.Block.View;
import evenhand.scenario.Setup;
import evenhand.structure.MountFigure;
import evenhand.structure.Peak;
import evenhand.structure.UseAnswer;
import evenhand.structure.WorstMount;
import evenhand.words.InPrint;
import evenhand.words.Units;
import evenhand.words.loads.LoadedSetup.Loaded;
import evenhand.words.loads.LoadsWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the mounts of the file carry, before and now, with the case that puts the greatest force on one drawn. */
final class LoadPages {
    private final List<Loaded> loaded;
    private final Loaded chosen;
    private final Units units;
    private Optional<Drawing> above = Optional.empty();

    private LoadPages(Findings findings, List<Loaded> loaded) {
        this.loaded = loaded;
        chosen = loaded.get(loaded.size() - 1);
        units = findings.question().units();
    }

    /** @param loaded the base first, the set-up that is handed over last */
    static Section of(Findings findings, List<Loaded> loaded) {
        LoadPages pages = new LoadPages(findings, loaded);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Text(String.join(" ", LoadsWords.CAUTIONS), Tone.WARNING));
        Optional<Loaded> before = loaded.size() > 1 ? Optional.of(loaded.get(0)) : Optional.empty();
        blocks.add(new Points(InPrint.sentences(pages.chosen.words(before, pages.units))));
        pages.drawn(blocks);
        pages.charts(blocks);
        return new Section("What brackets and mounts carry", true, blocks);
    }

    /** The case in which a mount takes the greatest force, and the axle on which that is. */
    private void drawn(List<Block> blocks) {
        Optional<WorstMount> worst = chosen.loads().worstMounts().stream()
                .max((one, other) ->
                        Double.compare(total(one).value(), total(other).value()));
        if (worst.isEmpty()) {
            return;
        }
        String title = total(worst.get()).title();
        End end = chosen.rest().car().mounts().stream()
                .filter(mount -> mount.name().equals(worst.get().mount()))
                .map(mount -> mount.carries().get(0).axle())
                .findFirst()
                .orElse(End.REAR);
        List<Drawing> drawings = chosen.loads().carried().stream()
                .filter(one -> one.title().equals(title))
                .findFirst()
                .map((UseAnswer.Carried one) ->
                        ForcesView.of(stance(), chosen.rest().car(), chosen.loads(), one, end, units))
                .orElse(List.of());
        if (drawings.isEmpty()) {
            return;
        }
        blocks.add(new Heading(worst.get().mount() + " takes the greatest force in " + title));
        blocks.add(new Figures(
                drawings.subList(0, 2).stream()
                        .map(drawing -> (Block.Figure) new View(drawing))
                        .toList(),
                0.5,
                0.42));
        blocks.add(Text.quiet(String.join(" ", ForcesView.MEANING)));
        above = Optional.of(drawings.get(2));
    }

    private Stance stance() {
        Setup setup = chosen.setup();
        return Stance.laden(setup.name(), setup.look(), setup.car(), chosen.load(), setup.entries());
    }

    private static Peak total(WorstMount mount) {
        Peak peak = mount.peaks().get(MountFigure.TOTAL);
        if (peak == null) {
            throw new IllegalStateException(mount.mount() + " carries nothing");
        }
        return peak;
    }

    /** Height of a bar, and of what stands above and below all bars, over the width of the paper's text. */
    private static final double LANE = 0.018;

    private static final double ROOM = 0.145;

    private static long lanes(Chart chart) {
        return chart.parts().stream().filter(Part.Bar.class::isInstance).count();
    }

    private void charts(List<Block> blocks) {
        List<Carrying> carrying = loaded.stream()
                .map(one -> new Carrying(one.name(), new SetupStyle(one.setup().look()), one.loads()))
                .toList();
        List<Chart> charts = new ArrayList<>(List.of(LoadCharts.mounts(carrying, units)));
        for (End end : End.values()) {
            if (chosen.rest().car().mounts().stream()
                    .anyMatch(mount -> mount.carries().stream().anyMatch(of -> of.axle() == end))) {
                charts.add(LoadCharts.members(carrying, end, units));
            }
        }
        charts.removeIf(Chart::isEmpty);
        charts.forEach(chart -> blocks.add(Figures.even(LANE * lanes(chart) + ROOM, new Plot(chart))));
        above.ifPresent(drawing -> blocks.add(Figures.even(0.45, new View(drawing))));
    }
}
