package evenhand.window.question;

import evenhand.advice.Remedy;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.chart.Chart;
import evenhand.chart.EffectCharts;
import evenhand.chart.TurnCharts;
import evenhand.choice.Effect;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.Asked;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Work;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.effects.Complaint;
import evenhand.words.effects.EffectWords;
import evenhand.words.effects.RemedyWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Which single change helps against what the driver complains of; or what each adjustment does, whether it helps or not. */
final class SpringsOrBars implements Question {
    private static final int SAID_FIRST = 2;

    private static final String EVERY = "is as wished; show what each adjustment does";

    private static final List<String> COMPLAINTS = List.of(
            "pushes gently",
            "pushes briskly",
            "pushes at the limit",
            "slides gently",
            "slides briskly",
            "slides at the limit",
            "leans",
            "spins the inside wheel",
            "rides hard",
            "wallows",
            EVERY);

    private static final Field COMPLAINT = new Field("complaint", "it", COMPLAINTS, "pushes at the limit");
    private static final Judged NEAR_LIMIT = new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty());
    private static final int MOST_BARS = 10;
    private static final int MOST_EVERY = 10;
    private static final int MOST_NEXT = 4;

    @Override
    public String key() {
        return "effects";
    }

    @Override
    public Group group() {
        return Group.BALANCE;
    }

    @Override
    public String words() {
        return "Springs or bars?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return isEvery(asking) ? List.of(COMPLAINT, figure(asking.work())) : List.of(COMPLAINT);
    }

    private static boolean isEvery(Asking asking) {
        return asking.wish(COMPLAINT.key()).equals(Optional.of(EVERY));
    }

    /** Which figure's moves are shown. */
    private static Field figure(Work work) {
        List<String> figures =
                work.usualTrial().judged().stream().map(JudgedWords::figure).toList();
        return new Field("figure", "to", figures, JudgedWords.figure(NEAR_LIMIT));
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.joined(active, Knobs.springsAndBars(active), Knobs.rollCentres(active));
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        if (isEvery(asked.asking())) {
            return every(asked);
        }
        TurnedSetup active = asked.active();
        String wish = asked.wish(COMPLAINT);
        Remedies remedies = Remedies.against(COMPLAINTS.contains(wish) ? wish : COMPLAINT.start(), active, asked);
        Complaint complaint = remedies.complaint();
        SetupStyle style = new SetupStyle(SideBySide.look(asked, active.setup().name()));
        List<String> sentences = new ArrayList<>(remedies.sentences());
        sentences.set(0, Said.named(active.setup()) + ": " + sentences.get(0));
        int large = Math.min(SAID_FIRST, sentences.size());
        List<Reply.Paragraph> more = new ArrayList<>();
        if (large < sentences.size()) {
            more.add(new Reply.Paragraph(active.setup().name(), sentences.subList(large, sentences.size())));
        }
        if (remedies.helping().size() > 1) {
            more.add(new Reply.Paragraph("How they are ordered", List.of(RemedyWords.RULE)));
        }
        return new Reply(
                sentences.subList(0, large),
                more,
                List.of(
                        EffectCharts.effects(
                                active.setup().name(),
                                style,
                                remedies.easy(),
                                complaint.judged(),
                                MOST_BARS,
                                asked.units()),
                        TurnCharts.understeerGradient(SideBySide.cars(asked), asked.units())),
                table(remedies, asked),
                remedies.next(MOST_NEXT));
    }

    /** One usual step of every adjustment, and what it moves. */
    private static Reply every(Asked asked) {
        Setup setup = asked.active().setup();
        Trial trial = asked.work().usualTrial();
        String wish = asked.wish(figure(asked.work()));
        Judged judged = trial.judged().stream()
                .filter(one -> JudgedWords.figure(one).equals(wish))
                .findFirst()
                .orElse(NEAR_LIMIT);
        Answers before = trial.ask(setup.car());
        List<Effect> effects = before.noTurn().isPresent()
                ? List.of()
                : EffectWords.byMove(judged, Effect.each(setup.entries(), trial, before));
        String said = String.join(" ", EffectWords.each(judged, effects, asked.units()));
        List<Chart> charts = effects.isEmpty()
                ? List.of()
                : List.of(EffectCharts.effects(
                        setup.name(),
                        new SetupStyle(SideBySide.look(asked, setup.name())),
                        effects,
                        judged,
                        MOST_EVERY,
                        asked.units()));
        Table.Builder table = new Table.Builder(List.of("one step", "moves it by", "besides"));
        table.heading("Every adjustment, largest first");
        for (Effect effect : effects) {
            List<String> others = EffectWords.sideEffects(effect, judged, asked.units());
            table.row(
                    ChangeWords.name(effect.step().path()),
                    "",
                    List.of(
                            EffectWords.step(effect, asked.units()),
                            EffectWords.difference(effect.move(judged).orElseThrow(), asked.units()),
                            others.isEmpty() ? "–" : others.get(0)));
        }
        return new Reply(List.of(Said.named(setup) + ": " + said), List.of(), charts, table.build(), List.of());
    }

    private static Table table(Remedies remedies, Asked asked) {
        Table.Builder table = new Table.Builder(List.of("one step", "moves it by"));
        List<Remedy> easy = remedies.helping().stream()
                .filter(remedy -> !remedy.step().takesRebuilding())
                .toList();
        List<Remedy> hard = remedies.helping().stream()
                .filter(remedy -> remedy.step().takesRebuilding())
                .toList();
        table.heading("What helps, best first");
        easy.forEach(remedy -> row(table, remedy, remedies, asked));
        if (!hard.isEmpty()) {
            table.heading("What helps too, but takes other links, brackets or wheels");
            hard.forEach(remedy -> row(table, remedy, remedies, asked));
        }
        return table.build();
    }

    private static void row(Table.Builder table, Remedy remedy, Remedies remedies, Asked asked) {
        table.row(
                RemedyWords.name(remedy.step()),
                "",
                List.of(
                        remedies.size(remedy),
                        remedy.whereWorst()
                                .move(remedies.complaint().judged())
                                .map(move -> EffectWords.difference(move, asked.units()))
                                .orElse("–")));
    }
}
