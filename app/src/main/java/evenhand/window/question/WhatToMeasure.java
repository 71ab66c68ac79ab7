package evenhand.window.question;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.chart.Chart;
import evenhand.chart.CurveCharts;
import evenhand.chart.DoubtCharts;
import evenhand.doubt.Doubt;
import evenhand.doubt.Spread;
import evenhand.doubt.Tolerance;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import evenhand.scenario.AimReading;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.doubt.DoubtWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** What measuring errors and guesses leave of the answers, and what to go and measure. */
final class WhatToMeasure implements Question {
    private static final int SAMPLES = 512;
    private static final int MOST_BARS = 10;

    /** Where a set-up has no such figure. */
    private static final String NOTHING = "–";

    /** Of a curve with its band. */
    private static final int PACES = 24;

    /** The figure that is looked at first, as an aim whose value does not matter. */
    private static final List<String> FIGURES = List.of(
            "understeer near the limit",
            "understeer at 0.5 g",
            "understeer at 0.2 g",
            "limit",
            "roll gradient at 0.5 g");

    private static final Field FIGURE = new Field("figure", "so that I know better", FIGURES, FIGURES.get(0));

    @Override
    public String key() {
        return "doubt";
    }

    @Override
    public Group group() {
        return Group.TRUST;
    }

    @Override
    public String words() {
        return "What should I measure better?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return List.of(FIGURE);
    }

    @Override
    public List<String> adjustments(Setup active) {
        return List.of();
    }

    @Override
    public boolean drawsTheCar() {
        return false;
    }

    private static Aim aim(String figure) {
        return AimReading.read(
                switch (figure) {
                    case "understeer at 0.5 g" -> "understeer 0 deg/g at 0.5 g";
                    case "understeer at 0.2 g" -> "understeer 0 deg/g at 0.2 g";
                    case "limit" -> "limit 1 g";
                    case "roll gradient at 0.5 g" -> "roll gradient 5 deg/g at 0.5 g";
                    default -> "understeer near the limit 0 deg/g";
                });
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        List<TurnedSetup> turning =
                asked.shown().stream().filter(one -> one.turn().isPresent()).toList();
        if (turning.isEmpty()) {
            return Reply.only("No set-up that is shown has an answer.");
        }
        Aim aim = aim(asked.wish(FIGURE));
        Criterion followed = followed(aim.judged().criterion());
        Trial trial = asked.work().usualTrial().bothWays();
        Doubt.Answer answer = Doubt.of(
                turning.stream().map(one -> one.setup().entries()).toList(),
                new Doubt.Question(
                        trial,
                        SAMPLES,
                        1,
                        Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                        Optional.of(aim),
                        paces(turning).stream()
                                .map(pace -> new Judged(followed, OptionalDouble.of(pace)))
                                .toList(),
                        progress));
        Units units = asked.units();
        Doubt.Left first = answer.cars().get(0);
        Spread spread = first.spreads().get(0);
        List<String> headlines = new ArrayList<>(DoubtWords.measureNext(answer.measureNext(), spread, units));
        if (headlines.isEmpty()) {
            headlines.add("No single measurement would narrow it noticeably.");
        }
        List<Reply.Paragraph> more = new ArrayList<>();
        List<Chart> charts = new ArrayList<>(bands(asked, turning, followed, answer));
        for (int i = 0; i < turning.size(); i++) {
            TurnedSetup one = turning.get(i);
            Doubt.Left left = answer.cars().get(i);
            List<String> sentences = new ArrayList<>(DoubtWords.alone(left, Optional.empty(), trial.ways(), units));
            if (i > 0) {
                sentences.addAll(DoubtWords.apart(
                        one.setup().name(),
                        turning.get(0).setup().name(),
                        answer.differences().get(i - 1),
                        left,
                        units));
            }
            more.add(new Reply.Paragraph(one.setup().name(), sentences));
            charts.add(causes(asked, one, left.spreads().get(0)));
        }
        return new Reply(headlines, more, charts, table(turning, answer, units), List.of());
    }

    /** What is followed along the curve for a figure: the same, or the balance on the way to that of the limit. */
    private static Criterion followed(Criterion criterion) {
        return criterion.hasPace() ? criterion : Criterion.GRIP_BALANCE;
    }

    /** A row of paces up to the highest limit, the usual ones among them, m/s². */
    private static List<Double> paces(List<TurnedSetup> turning) {
        double highest = turning.stream()
                .mapToDouble(one -> one.turn().orElseThrow().limit().lateralAcceleration())
                .max()
                .orElseThrow();
        TreeSet<Double> paces = new TreeSet<>(Trial.USUAL_PACES);
        for (int i = 1; i < PACES; i++) {
            paces.add(highest * i / PACES);
        }
        return List.copyOf(paces);
    }

    /** The curves with their bands, and the difference of the foremost set-up from the first. */
    private static List<Chart> bands(Asked asked, List<TurnedSetup> turning, Criterion followed, Doubt.Answer answer) {
        List<DoubtCharts.Doubted> doubted = new ArrayList<>();
        for (int i = 0; i < turning.size(); i++) {
            doubted.add(new DoubtCharts.Doubted(
                    SideBySide.shown(asked, turning.get(i)),
                    answer.cars().get(i).along()));
        }
        List<Chart> charts = new ArrayList<>();
        charts.add(DoubtCharts.curves(followed, doubted, asked.units()));
        for (int i = 1; i < doubted.size(); i++) {
            DoubtCharts.Doubted apart = new DoubtCharts.Doubted(
                    doubted.get(i).car(), answer.differences().get(i - 1).along());
            charts.add(DoubtCharts.difference(followed, doubted.get(0).car(), apart, asked.units()));
        }
        return charts;
    }

    private static Chart causes(Asked asked, TurnedSetup one, Spread spread) {
        return CurveCharts.causes(
                one.setup().name() + ": whose fault the doubt about the " + JudgedWords.figure(spread.judged()) + " is",
                new CurveCharts.Quantity("share of the variance", Unit.of("%"), 0),
                one.setup().name(),
                new SetupStyle(SideBySide.look(asked, one.setup().name())),
                spread.causes().stream()
                        .map(cause -> new CurveCharts.Cause(
                                ChangeWords.name(cause.path()),
                                cause.share(),
                                DoubtWords.tolerance(cause.tolerance(), asked.units())))
                        .toList(),
                MOST_BARS);
    }

    /** A row for each figure, a column for each set-up. */
    private static Table table(List<TurnedSetup> turning, Doubt.Answer answer, Units units) {
        Table.Builder table = new Table.Builder(
                turning.stream().map(one -> one.setup().name()).toList());
        table.heading("As given, and where it lies nineteen times in twenty");
        Set<Judged> figures = new LinkedHashSet<>();
        answer.cars().forEach(left -> left.spreads().forEach(spread -> figures.add(spread.judged())));
        for (Judged figure : figures) {
            table.row(
                    JudgedWords.figure(figure),
                    units.of(figure.criterion()).symbol(),
                    answer.cars().stream()
                            .map(left -> left.spreads().stream()
                                    .filter(spread -> spread.judged().equals(figure))
                                    .findFirst()
                                    .map(spread -> cell(spread, units))
                                    .orElse(NOTHING))
                            .toList());
        }
        return table.build();
    }

    /** "8.5 (−1.3 to 17.4)". */
    private static String cell(Spread spread, Units units) {
        Unit unit = units.of(spread.judged().criterion());
        int digits = spread.judged().criterion().digits();
        String nominal = spread.nominal().isPresent()
                ? Numbers.fixed(unit.fromSi(spread.nominal().getAsDouble()), digits)
                : NOTHING;
        return nominal + " (" + Numbers.fixed(unit.fromSi(spread.low()), digits) + " to "
                + Numbers.fixed(unit.fromSi(spread.high()), digits) + ")";
    }
}
