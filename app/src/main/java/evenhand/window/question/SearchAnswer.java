package evenhand.window.question;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.chart.Chart;
import evenhand.chart.CurveCharts;
import evenhand.chart.MoveChart;
import evenhand.choice.Finding;
import evenhand.choice.OneChange;
import evenhand.choice.SeveralChanges;
import evenhand.choice.Span;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.FormField;
import evenhand.window.desk.Names;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.SetupAct;
import evenhand.window.question.SearchFields.Wanted;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.find.FindWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What a search answers: what was found, how sharp it is, what it does besides, and how to take it over. */
final class SearchAnswer {
    /** What is told before and after besides what was asked for. */
    interface Besides {
        /** What a car answers, as far as it is told. */
        Answers ask(Trial trial, Car car, Set<Judged> asked);

        /** What is told of a car that answers so before. */
        List<Judged> told(Wanted wanted, Car car, Answers before);
    }

    private final Besides besides;

    SearchAnswer(Besides besides) {
        this.besides = besides;
    }

    /** What was found, alike for one change and for several. */
    private record Found(List<Span> spans, List<Double> values, boolean met, Finding finding) {
        static Optional<Found> of(Finding finding) {
            if (!(finding instanceof Finding.Found found)) {
                return Optional.empty();
            }
            boolean met = found.met() || (found instanceof Finding.One one && besideAJump(one));
            return Optional.of(new Found(found.spans(), found.values(), met, found));
        }

        /** An aim that is jumped past is met by what nobody tells from it. */
        private static boolean besideAJump(Finding.One one) {
            return !one.jumps().isEmpty()
                    && one.aim().nearlyMet(one.achieved())
                    && one.kept().stream().allMatch(Finding.Kept::ok);
        }

        /** The car with what was found. */
        Entries in(Entries car) {
            Entries changed = car;
            for (int i = 0; i < values.size(); i++) {
                changed = Catalogue.with(changed, spans.get(i).path(), values.get(i));
            }
            return changed;
        }
    }

    /** The answer to what is wanted of the active set-up. */
    Reply to(Question.Asked asked, Wanted wanted, Progress progress) {
        Setup setup = asked.active().setup();
        Finding finding = wanted.spans().size() == 1
                ? clearOfJump(
                        wanted.car(),
                        wanted,
                        one(wanted.car(), wanted.spans().get(0), wanted, progress),
                        progress.part(1, 1))
                : SeveralChanges.find(
                        wanted.car(),
                        wanted.spans(),
                        wanted.aim(),
                        wanted.keeps(),
                        wanted.steps(),
                        wanted.trial(),
                        progress);
        List<String> sentences = new ArrayList<>(FindWords.of(finding, asked.units()));
        sentences.addAll(FindWords.turns(finding, wanted.car()));
        sentences.set(0, Said.named(setup) + ": " + sentences.get(0));
        return Found.of(finding)
                .map(found -> reply(asked, wanted, found, sentences))
                .orElseGet(() -> new Reply(sentences, List.of(), List.of(), Table.NONE, List.of()));
    }

    private static Finding one(Entries car, Span span, Wanted wanted, Progress progress) {
        return OneChange.find(
                car, span, wanted.aim(), wanted.keeps(), wanted.steps().get(0), wanted.trial(), progress);
    }

    /**
     * Where the figure jumps past the aim, the nearest value is right beside the jump, and the part that is fitted may fall on its
     * other side. So the nearest is taken that is as far from it as a shop's tolerance.
     */
    private static Finding clearOfJump(Entries car, Wanted wanted, Finding found, Progress progress) {
        if (!(found instanceof Finding.One one) || one.met() || one.jumps().isEmpty()) {
            return found;
        }
        Span span = one.change();
        double jump = one.jumps().stream()
                .map(Finding.Jump::at)
                .min(Comparator.comparingDouble(at -> Math.abs(at - one.value())))
                .orElseThrow();
        double tolerance = Math.max(
                span.adjustable().usualTolerance(), wanted.steps().get(0).orElse(0));
        boolean above = one.value() > jump;
        double from = above ? Math.min(jump + tolerance, span.to()) : span.from();
        double to = above ? span.to() : Math.max(jump - tolerance, span.from());
        if (Math.abs(one.value() - jump) >= tolerance || !(from < to)) {
            return found;
        }
        Span clear = new Span(span.adjustable(), from, to);
        OptionalDouble step = wanted.steps().get(0);
        Wanted there =
                wanted.in(clear, step.isPresent() && clear.holds(step.getAsDouble()) ? step : OptionalDouble.empty());
        return one(car, clear, there, progress) instanceof Finding.One other
                ? new Finding.One(
                        span,
                        one.aim(),
                        false,
                        other.value(),
                        other.achieved(),
                        other.unrounded(),
                        one.solutions(),
                        one.jumps(),
                        one.reach(),
                        other.slope(),
                        one.curve(),
                        other.kept(),
                        other.notes().stream()
                                .filter(note -> note != Finding.Note.END_OF_RANGE && note != Finding.Note.FLAT)
                                .toList(),
                        other.allRound())
                : found;
    }

    private Reply reply(Question.Asked asked, Wanted wanted, Found found, List<String> sentences) {
        Setup setup = asked.active().setup();
        int warnings = FindWords.warnings(found.finding(), asked.units()).size();
        int large = Math.min(2 + warnings, sentences.size());
        String heading = found.finding() instanceof Finding.One ? "How sharp it is" : "What is to be known of it";
        return new Reply(
                sentences.subList(0, large),
                List.of(new Reply.Paragraph(heading, sentences.subList(large, sentences.size()))),
                List.of(
                        found.finding() instanceof Finding.One one
                                ? curve(asked, setup, one)
                                : moves(asked, setup, found)),
                beforeAndAfter(wanted, setup, found, asked.units()),
                next(asked, wanted, setup, found));
    }

    /** What was found, done to the set-up, or as a set-up of its own. */
    private static List<Reply.Next> next(Question.Asked asked, Wanted wanted, Setup setup, Found found) {
        Map<String, String> texts = new LinkedHashMap<>();
        List<String> said = new ArrayList<>();
        for (int i = 0; i < found.spans().size(); i++) {
            Span span = found.spans().get(i);
            double value = found.values().get(i);
            if (value != span.adjustable().si()) {
                texts.put(span.path(), FindWords.written(wanted.car(), span, value, asked.units()));
                said.add(
                        ChangeWords.name(span.path()) + " " + FindWords.value(span.adjustable(), value, asked.units()));
            }
        }
        if (texts.isEmpty()) {
            return List.of();
        }
        String name = Names.free(asked.work(), setup.name() + ", " + (found.met() ? "found" : "nearest"));
        return List.of(
                new Reply.Next(
                        (found.met() ? "take " : "take the nearest, ") + String.join("; ", said),
                        Optional.of(new EditAct.SetValues(Optional.of(setup.name()), texts))),
                new Reply.Next(
                        "keep \"" + setup.name() + "\" as it is, and add it as \"" + name + "\"",
                        Optional.of(new SetupAct.AddSetup(name, Optional.of(setup.name()), Optional.empty(), texts))));
    }

    private Table beforeAndAfter(Wanted wanted, Setup setup, Found found, Units units) {
        Set<Judged> asked = new LinkedHashSet<>();
        asked.add(wanted.aim().judged());
        wanted.keeps().stream().map(Aim::judged).forEach(asked::add);
        Optional<Answers> after =
                Catalogue.build(found.in(wanted.car())).value().map(car -> besides.ask(wanted.trial(), car, asked));
        if (after.isEmpty()) {
            return Table.NONE;
        }
        Answers before = besides.ask(wanted.trial(), setup.car(), asked);
        Set<Judged> told = new LinkedHashSet<>(besides.told(wanted, setup.car(), before));
        told.removeAll(asked);
        Table.Builder table = new Table.Builder(List.of("before", "after", "difference"));
        table.heading("Asked for");
        asked.forEach(judged -> row(table, judged, before, after.get(), units));
        table.heading("Besides");
        told.forEach(judged -> row(table, judged, before, after.get(), units));
        return table.build();
    }

    private static void row(Table.Builder table, Judged judged, Answers before, Answers after, Units units) {
        Unit unit = units.of(judged.criterion());
        int digits = units.digits(judged.criterion());
        OptionalDouble was = judged.si(before);
        OptionalDouble is = judged.si(after);
        boolean both = was.isPresent() && is.isPresent() && !judged.criterion().equals(Criterion.FRONT_FIRST);
        table.row(
                JudgedWords.figure(judged),
                unit.symbol(),
                List.of(
                        was.isPresent() ? JudgedWords.cell(judged.criterion(), was.getAsDouble(), units) : "–",
                        is.isPresent() ? JudgedWords.cell(judged.criterion(), is.getAsDouble(), units) : "–",
                        both ? Numbers.signed(unit.fromSi(is.getAsDouble() - was.getAsDouble()), digits) : "–"));
    }

    private static Chart curve(Question.Asked asked, Setup setup, Finding.One one) {
        Adjustable change = one.change().adjustable();
        Unit along = FormField.unit(change.dimension(), asked.units());
        Unit up = asked.units().of(one.aim().judged().criterion());
        String figure = JudgedWords.figure(one.aim().judged());
        return CurveCharts.search(
                "What " + ChangeWords.name(change.path()) + " can do",
                new CurveCharts.Quantity(ChangeWords.name(change.path()), along, 1),
                new CurveCharts.Quantity(
                        figure, up, asked.units().digits(one.aim().judged().criterion())),
                new CurveCharts.Search(
                        setup.name(),
                        new SetupStyle(SideBySide.look(asked, setup.name())),
                        one.curve().stream().mapToDouble(Finding.Point::at).toArray(),
                        one.curve().stream().mapToDouble(Finding.Point::figure).toArray(),
                        OptionalDouble.of(one.aim().value()),
                        one.solutions(),
                        OptionalDouble.of(change.si())));
    }

    private static Chart moves(Question.Asked asked, Setup setup, Found found) {
        List<MoveChart.Move> moves = new ArrayList<>();
        for (int i = 0; i < found.spans().size(); i++) {
            Span span = found.spans().get(i);
            Adjustable now = span.adjustable();
            double value = found.values().get(i);
            moves.add(new MoveChart.Move(
                    ChangeWords.name(span.path()),
                    "now " + FindWords.value(now, now.si(), asked.units()) + "; "
                            + FindWords.value(now, span.from(), asked.units()) + " to "
                            + FindWords.value(now, span.to(), asked.units()),
                    (now.si() - span.from()) / span.width(),
                    (value - span.from()) / span.width(),
                    FindWords.value(now, value, asked.units())));
        }
        return MoveChart.of(
                "How far each change goes in its range",
                setup.name(),
                new SetupStyle(SideBySide.look(asked, setup.name())),
                moves);
    }
}
