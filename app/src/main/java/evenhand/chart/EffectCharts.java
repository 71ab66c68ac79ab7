package evenhand.chart;

import evenhand.answers.Judged;
import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Hatch;
import evenhand.chart.Part.Rule;
import evenhand.choice.Effect;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import evenhand.words.ChangeWords;
import evenhand.words.InPrint;
import evenhand.words.JudgedWords;
import evenhand.words.Units;
import evenhand.words.effects.EffectWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** What one step of each adjustment does. */
public final class EffectCharts {
    private EffectCharts() {}

    /**
     * The moves of one figure, largest first, with what else moves noticeably in words beside.
     *
     * @param style of the set-up that is adjusted
     * @param most no more than so many adjustments
     */
    public static Chart effects(
            String name, SetupStyle style, List<Effect> effects, Judged judged, int most, Units units) {
        Unit unit = units.of(judged.criterion());
        List<Effect> largest =
                EffectWords.byMove(judged, effects).stream().limit(most).toList();
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        for (Effect effect : largest) {
            Effect.Move move = effect.move(judged).orElseThrow();
            List<String> others = EffectWords.sideEffects(effect, judged, units);
            parts.add(new Bar(
                    rows.size(),
                    0,
                    1,
                    name,
                    "",
                    style,
                    Hatch.FULL,
                    0,
                    unit.fromSi(move.difference()),
                    EffectWords.difference(move, units)));
            rows.add(new Axis.Row(
                    ChangeWords.name(effect.step().path()) + " " + InPrint.symbol(EffectWords.step(effect, units)),
                    others.isEmpty() ? "" : "also " + String.join("; ", others)));
        }
        parts.add(new Rule(Rule.Kind.ZERO, Rule.Along.ACROSS, 0, ""));
        Span span = Span.around(parts.stream()
                        .flatMapToDouble(
                                part -> part instanceof Bar bar ? DoubleStream.of(bar.to()) : DoubleStream.empty()))
                .including(0)
                .loosened(0.2)
                .rounded();
        String figure = JudgedWords.figure(judged);
        return new Chart(
                "What one step moves " + figure + " by",
                Axis.Measure.of("change of " + figure, unit, judged.criterion().digits(), span),
                new Axis.Rows("", rows),
                parts,
                List.of());
    }
}
