package evenhand.window.question;

import evenhand.advice.Advice;
import evenhand.advice.Remedy;
import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Entry;
import evenhand.choice.Effect;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.scenario.ScenarioWriter;
import evenhand.window.desk.Act;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.Units;
import evenhand.words.effects.Complaint;
import evenhand.words.effects.EffectWords;
import evenhand.words.effects.RemedyWords;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What helps against a complaint, each with the act that does it: both ways round, as the terminal says it. */
final class Remedies {
    private static final int DIGITS = 4;

    private final TurnedSetup one;
    private final Trial trial;
    private final Complaint complaint;
    private final Answers before;
    private final Advice advice;
    private final Units units;

    private Remedies(TurnedSetup one, Trial trial, Complaint complaint, Answers before, Advice advice, Units units) {
        this.one = one;
        this.trial = trial;
        this.complaint = complaint;
        this.before = before;
        this.advice = advice;
        this.units = units;
    }

    static Remedies against(String words, TurnedSetup one, Question.Asked asked) {
        Trial trial = asked.work().usualTrial().bothWays();
        Answers before = trial.ask(one.setup().car());
        Complaint complaint = Complaint.of(words, one.setup().car(), before, Trial.GENTLE, Trial.BRISK)
                .orElseThrow();
        Advice advice = complaint.shown()
                ? Advice.against(one.setup().entries(), trial, before, complaint.wish())
                : Advice.NONE;
        return new Remedies(one, trial, complaint, before, advice, asked.units());
    }

    Complaint complaint() {
        return complaint;
    }

    /** What helps, best first; none where the car does not turn, or not at that pace. */
    List<Remedy> helping() {
        return advice.remedies();
    }

    /** The effects of what can be undone, in the worse way; of all where nothing else helps. */
    List<Effect> easy() {
        return easily().stream().map(Remedy::whereWorst).toList();
    }

    private List<Remedy> easily() {
        List<Remedy> easy = helping().stream()
                .filter(remedy -> !remedy.step().takesRebuilding())
                .toList();
        return easy.isEmpty() ? helping() : easy;
    }

    List<String> sentences() {
        return said().help(one.setup().car(), before, advice);
    }

    private RemedyWords said() {
        return new RemedyWords(
                complaint, trial.ways(), trial.asksAlike(one.setup().car()), units);
    }

    String size(Remedy remedy) {
        return said().size(remedy);
    }

    /** The best few as what to do next. */
    List<Reply.Next> next(int most) {
        return easily().stream().limit(most).map(this::next).toList();
    }

    private Reply.Next next(Remedy remedy) {
        Effect effect = remedy.whereWorst();
        Effect.Move move = effect.move(complaint.judged()).orElseThrow();
        List<String> others = EffectWords.sideEffects(effect, complaint.judged(), units);
        String what = RemedyWords.name(remedy.step()) + " " + EffectWords.step(effect, units);
        String said = what + " moves the "
                + complaint.judged().criterion().name() + " by " + EffectWords.difference(move, units)
                + (others.isEmpty() ? "" : "; with it " + String.join("; ", others))
                + EffectWords.past(complaint, move, units)
                        .map(caution -> ". " + caution)
                        .orElse("");
        return new Reply.Next(what + ": " + EffectWords.difference(move, units), said, Optional.of(act(remedy.step())));
    }

    private Act act(Effect.Step step) {
        Optional<String> setup = Optional.of(one.setup().name());
        if (step instanceof Effect.ByNumber number) {
            return new EditAct.SetValue(setup, step.path(), text(number.adjustable(), number.size()));
        }
        if (step instanceof Effect.ByBar bar) {
            return new EditAct.SetValue(
                    setup,
                    step.path(),
                    Quantity.of(bar.rollStiffness(), Unit.of("N*m/deg")).text());
        }
        if (step instanceof Effect.ByForces forces) {
            Map<String, String> curves = new LinkedHashMap<>();
            forces.curves(one.setup().entries()).forEach((path, curve) -> curves.put(path, json(curve)));
            return new EditAct.SetJsons(setup, curves);
        }
        return new EditAct.SetJson(setup, step.path(), ScenarioWriter.quoted(((Effect.ToSetting) step).to()));
    }

    private static String json(Entry.Drawn curve) {
        return curve.points().stream()
                .map(point -> "[" + ScenarioWriter.quoted(point.at().text()) + ", "
                        + ScenarioWriter.quoted(point.force().text()) + "]")
                .collect(Collectors.joining(", ", "[", "]"));
    }

    /** A value one step on, in the unit that the person used, without a tail of digits. */
    static String text(Adjustable value, double step) {
        Unit unit = value.unit();
        double number = unit.fromSi(value.si() + step);
        double rounded = new BigDecimal(number).round(new MathContext(DIGITS)).doubleValue();
        return Quantity.of(unit.toSi(rounded), unit).text();
    }
}
