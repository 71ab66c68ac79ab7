package evenhand.window.question;

import evenhand.answers.Aim;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Adjustable;
import evenhand.chart.Chart;
import evenhand.chart.CurveCharts;
import evenhand.choice.Finding;
import evenhand.choice.OneChange;
import evenhand.choice.Span;
import evenhand.look.SetupStyle;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.window.desk.Act;
import evenhand.window.desk.Figures;
import evenhand.window.desk.FormField;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.Work;
import evenhand.words.AimText;
import evenhand.words.ChangeWords;
import evenhand.words.FindWords;
import evenhand.words.JudgedWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Which value of one adjustment meets an aim, and what it can reach at all. */
final class WhatMakesItNeutral implements Question {
    private static final int STEPS_EACH_WAY = 8;

    @Override
    public String key() {
        return "find";
    }

    @Override
    public String words() {
        return "What would make it neutral?";
    }

    /** The words of what may change; the first is what is tried first. */
    private static List<String> changes(Setup setup) {
        Stream<String> all = Stream.concat(
                Knobs.springsAndBars(setup).stream(),
                Stream.concat(Knobs.rollCentres(setup).stream(), Knobs.heights().stream()));
        return Knobs.here(setup, all);
    }

    @Override
    public List<Field> fields(Work work) {
        List<String> paths = changes(work.activeSetup());
        String start = paths.contains("rear.bar.rollStiffness") ? "rear.bar.rollStiffness" : "rear.spring.rate";
        return List.of(
                new Field(
                        "change",
                        "change",
                        paths.stream().map(ChangeWords::name).toList(),
                        ChangeWords.name(start)),
                new Field("from", "from", List.of(), ""),
                new Field("to", "to", List.of(), ""),
                new Field("aim", "so that", List.of(), "limit balance 0 %"),
                new Field("grid", "in steps of", List.of(), ""));
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.joined(active, Knobs.springsAndBars(active), Knobs.rollCentres(active));
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        Setup setup = asked.active().setup();
        List<Field> fields = fields(asked.work());
        Aim aim;
        try {
            aim = AimText.read(asked.wish(fields.get(3)));
        } catch (InvalidValue wrong) {
            return Reply.only("The aim " + wrong.getMessage() + ".");
        }
        String name = asked.wish(fields.get(0));
        String path = changes(setup).stream()
                .filter(one -> ChangeWords.name(one).equals(name))
                .findFirst()
                .orElseGet(() -> changes(setup).get(0));
        try {
            Span span = span(setup, path, asked.wish(fields.get(1)), asked.wish(fields.get(2)));
            Trial trial = aim.judged().pace().isPresent()
                    ? asked.work().usualTrial().at(aim.judged().pace().getAsDouble())
                    : asked.work().usualTrial();
            OptionalDouble grid = grid(asked.wish(fields.get(4)), span);
            return reply(asked, OneChange.find(setup.entries(), span, aim, List.of(), grid, trial, progress));
        } catch (InvalidValue wrong) {
            return Reply.only(ChangeWords.name(path) + " " + wrong.getMessage() + ".");
        } catch (QuantityException wrong) {
            return Reply.only("From, to and steps: a value " + wrong.getMessage() + ".");
        }
    }

    private static OptionalDouble grid(String text, Span span) throws QuantityException {
        return text.isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Quantity.parse(text, span.adjustable().dimension()).si());
    }

    private static Span span(Setup setup, String path, String from, String to) throws QuantityException {
        Adjustable now = setup.values().stream()
                .filter(value -> value.path().equals(path))
                .findFirst()
                .orElseThrow(() -> new InvalidValue(path, "has no value on this car"));
        double low = from.isBlank()
                ? now.slot().bounds().cut(now.si() - STEPS_EACH_WAY * now.step())
                : Quantity.parse(from, now.dimension()).si();
        double high = to.isBlank()
                ? now.slot().bounds().cut(now.si() + STEPS_EACH_WAY * now.step())
                : Quantity.parse(to, now.dimension()).si();
        return Span.of(setup.entries(), path, low, high);
    }

    private static Reply reply(Asked asked, Finding finding) {
        Setup setup = asked.active().setup();
        List<String> sentences = new ArrayList<>(FindWords.of(finding, asked.units()));
        if (!(finding instanceof Finding.One one)) {
            return new Reply(sentences, List.of(), List.of(), Figures.NONE, List.of());
        }
        sentences.set(0, Said.named(setup) + ": " + sentences.get(0));
        int large = Math.min(2, sentences.size());
        String value = FindWords.value(one.change().adjustable(), one.value(), asked.units());
        Reply.Next apply = new Reply.Next(
                (one.met() ? "take " : "take the nearest, ")
                        + ChangeWords.name(one.change().path()) + " " + value,
                Optional.of(
                        new Act.SetValue(Optional.of(setup.name()), one.change().path(), plain(value))));
        return new Reply(
                sentences.subList(0, large),
                List.of(new Reply.Paragraph("How sharp it is", sentences.subList(large, sentences.size()))),
                List.of(chart(asked, setup, one)),
                Figures.NONE,
                List.of(apply));
    }

    /** With the minus sign of a file. */
    private static String plain(String shown) {
        return shown.replace('−', '-');
    }

    private static Chart chart(Asked asked, Setup setup, Finding.One one) {
        Adjustable change = one.change().adjustable();
        Unit along = FormField.unit(change.dimension(), asked.units());
        Unit up = asked.units().of(one.aim().judged().criterion());
        String figure = JudgedWords.figure(one.aim().judged());
        return CurveCharts.search(
                "What " + ChangeWords.name(change.path()) + " can do",
                new CurveCharts.Quantity(ChangeWords.name(change.path()), along, 1),
                new CurveCharts.Quantity(
                        figure, up, one.aim().judged().criterion().digits()),
                new CurveCharts.Search(
                        setup.name(),
                        new SetupStyle(SideBySide.index(asked, setup.name())),
                        one.curve().stream().mapToDouble(Finding.Point::at).toArray(),
                        one.curve().stream().mapToDouble(Finding.Point::figure).toArray(),
                        OptionalDouble.of(one.aim().value()),
                        one.solutions(),
                        OptionalDouble.of(change.si())));
    }
}
