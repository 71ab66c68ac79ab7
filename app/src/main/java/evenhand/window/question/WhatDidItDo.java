package evenhand.window.question;

import evenhand.answers.Criterion;
import evenhand.answers.Progress;
import evenhand.chart.Chart;
import evenhand.chart.CurveCharts;
import evenhand.chart.Shown;
import evenhand.chart.TurnCharts;
import evenhand.choice.AskedOnce;
import evenhand.choice.Comparison;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.SetupChange;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.ChangeWords;
import evenhand.words.GripText;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.compare.ComparisonWords;
import evenhand.words.compare.ComparisonWords.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What differs from the base, and which change did how much of it. */
final class WhatDidItDo implements Question {
    /** A difference that no number tells. */
    private static final String NO_DIFFERENCE = "–";

    private static final int SAID_FIRST = 2;
    private static final int MOST_BARS = 8;

    @Override
    public String key() {
        return "compare";
    }

    @Override
    public Group group() {
        return Group.BALANCE;
    }

    @Override
    public String words() {
        return "What did the changes do?";
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.joined(
                active, Knobs.heights(), Knobs.joined(active, Knobs.rollCentres(active), Knobs.springsAndBars(active)));
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        TurnedSetup base = asked.base();
        List<TurnedSetup> others = asked.shown().stream()
                .filter(one -> !one.setup().name().equals(base.setup().name()))
                .toList();
        if (others.isEmpty()) {
            return Reply.only("There is nothing to compare: tick a second set-up on the left, or add one.");
        }
        if (base.turn().isEmpty()) {
            return Reply.only("The base, " + Said.named(base.setup()) + ", has no answer: "
                    + base.silence().orElse("it falls over") + ".");
        }
        List<String> headlines = new ArrayList<>();
        List<Reply.Paragraph> more = new ArrayList<>();
        List<Chart> charts = new ArrayList<>();
        Table.Builder table = new Table.Builder(List.of("before", "now", "difference"));
        TurnedSetup foremost = others.contains(asked.active()) ? asked.active() : others.get(others.size() - 1);
        AskedOnce cars = new AskedOnce(asked.work().usualTrial().firstBend());
        for (int i = 0; i < others.size(); i++) {
            TurnedSetup one = others.get(i);
            if (one.turn().isEmpty()) {
                more.add(new Reply.Paragraph(
                        one.setup().name(),
                        List.of("No answer: " + one.silence().orElse("it falls over") + ".")));
                continue;
            }
            Comparison comparison = Comparison.each(
                            base.setup().entries(),
                            one.setup().entries(),
                            cars,
                            progress.part((double) i / others.size(), (i + 1.0) / others.size()))
                    .get(0);
            List<Told> told = ComparisonWords.told(comparison, asked.units());
            List<String> sentences =
                    new ArrayList<>(told.stream().map(Told::sentence).toList());
            if (one.equals(foremost)) {
                headlines.add(Said.named(one.setup()) + " against " + Said.named(base.setup()) + ":");
                List<String> first = Told.byWeight(told).stream()
                        .limit(SAID_FIRST)
                        .map(Told::sentence)
                        .toList();
                headlines.addAll(first);
                sentences.removeAll(first);
                if (others.size() > 1) {
                    headlines.add((others.size() == 2 ? "One more is" : others.size() - 1 + " more are")
                            + " compared below.");
                }
                shares(comparison, one, asked).forEach(charts::add);
            }
            more.add(new Reply.Paragraph(one.setup().name(), sentences));
            rows(comparison, one, asked, table);
        }
        List<Shown> shown = SideBySide.cars(asked);
        charts.add(TurnCharts.understeerFromBase(shown, asked.work().base(), asked.units()));
        charts.add(TurnCharts.rollFromBase(shown, asked.work().base(), asked.units()));
        charts.add(TurnCharts.understeerGradient(shown, asked.units()));
        charts.add(TurnCharts.roll(shown, asked.units()));
        return new Reply(headlines, more, charts, table.build(), List.of());
    }

    private static List<Chart> shares(Comparison comparison, TurnedSetup one, Asked asked) {
        List<Chart> charts = new ArrayList<>();
        for (Criterion criterion : List.of(Criterion.NEAR_UNDERSTEER, Criterion.UNDERSTEER)) {
            Optional<Comparison.Difference> last = comparison.differences().stream()
                    .filter(difference -> difference.judged().criterion().equals(criterion))
                    .reduce((a, b) -> b);
            last.flatMap(difference -> difference
                            .shares()
                            .map(shares -> chart(comparison, difference, shares.shares(), one, asked)))
                    .ifPresent(charts::add);
        }
        return charts;
    }

    private static Chart chart(
            Comparison comparison,
            Comparison.Difference difference,
            List<Double> shares,
            TurnedSetup one,
            Asked asked) {
        Criterion criterion = difference.judged().criterion();
        Unit unit = asked.units().of(criterion);
        List<CurveCharts.Cause> causes = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            causes.add(new CurveCharts.Cause(
                    ChangeWords.name(comparison.changes().get(i)),
                    shares.get(i),
                    SetupChange.wasAndIs(comparison.changes().get(i), one.setup(), asked.units())));
        }
        String figure = criterion.name() + (criterion.atLimit() ? "" : " " + JudgedWords.pace(difference.judged()));
        return CurveCharts.causes(
                "Which change did how much of it: " + figure,
                new CurveCharts.Quantity(
                        "share of the difference in " + figure,
                        unit,
                        asked.units().digits(criterion)),
                one.setup().name(),
                new SetupStyle(SideBySide.look(asked, one.setup().name())),
                causes,
                MOST_BARS);
    }

    private static void rows(Comparison comparison, TurnedSetup one, Asked asked, Table.Builder table) {
        table.heading(one.setup().name());
        for (Comparison.Difference difference : comparison.differences()) {
            Criterion criterion = difference.judged().criterion();
            Unit unit = asked.units().of(criterion);
            table.row(
                    criterion.name() + (criterion.atLimit() ? "" : " " + JudgedWords.pace(difference.judged())),
                    unit.symbol(),
                    List.of(
                            cell(criterion, difference.base(), asked.units()),
                            cell(criterion, difference.value(), asked.units()),
                            GripText.times(criterion, Math.max(difference.base(), difference.value()))
                                            .isPresent()
                                    ? NO_DIFFERENCE
                                    : Numbers.signed(
                                            unit.fromSi(difference.difference()),
                                            asked.units().digits(criterion))));
        }
    }

    private static String cell(Criterion criterion, double si, Units units) {
        return GripText.times(criterion, si).orElseGet(() -> JudgedWords.cell(criterion, si, units));
    }
}
