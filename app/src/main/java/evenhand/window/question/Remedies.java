package evenhand.window.question;

import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.catalogue.Adjustable;
import evenhand.choice.Effect;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.scenario.ScenarioWriter;
import evenhand.window.desk.Act;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.ChangeWords;
import evenhand.words.effects.Complaint;
import evenhand.words.effects.EffectWords;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What helps against a complaint, each with the act that does it. */
final class Remedies {
    private static final int DIGITS = 4;

    private Remedies() {}

    static Complaint complaint(String words, TurnedSetup one, Trial trial) {
        Answers before = trial.ask(one.setup().car());
        return Complaint.of(words, one.setup().car(), before, Trial.GENTLE, Trial.BRISK)
                .orElseThrow();
    }

    /**
     * The effects that help, best first, those that take rebuilding behind the others; none where the car does not turn, or not at
     * that pace.
     */
    static List<Effect> helping(TurnedSetup one, Trial trial, Complaint complaint) {
        Answers before = trial.ask(one.setup().car());
        return complaint.judged().si(before).isEmpty()
                ? List.of()
                : Effect.helping(one.setup().entries(), trial, before, complaint.judged(), complaint.up()).stream()
                        .sorted(Comparator.comparing(Effect::takesRebuilding))
                        .toList();
    }

    /** The best few as what to do next. */
    static List<Reply.Next> next(TurnedSetup one, Question.Asked asked, String words, int most) {
        Trial trial = asked.work().usualTrial();
        Complaint complaint = complaint(words, one, trial);
        return helping(one, trial, complaint).stream()
                .limit(most)
                .map(effect -> next(one, asked, complaint, effect))
                .toList();
    }

    static Reply.Next next(TurnedSetup one, Question.Asked asked, Complaint complaint, Effect effect) {
        Effect.Move move = effect.move(complaint.judged()).orElseThrow();
        List<String> others = EffectWords.sideEffects(effect, complaint.judged(), asked.units());
        String said = ChangeWords.name(effect.step().path()) + " " + EffectWords.step(effect, asked.units())
                + " moves the " + complaint.judged().criterion().name() + " by "
                + EffectWords.difference(move, asked.units())
                + (others.isEmpty() ? "" : "; with it " + String.join("; ", others))
                + EffectWords.past(complaint, move, asked.units())
                        .map(caution -> ". " + caution)
                        .orElse("");
        return new Reply.Next(said, Optional.of(act(one.setup().name(), effect.step())));
    }

    private static Act act(String setup, Effect.Step step) {
        return step instanceof Effect.ByNumber number
                ? new EditAct.SetValue(Optional.of(setup), step.path(), text(number.adjustable(), number.size()))
                : new EditAct.SetJson(
                        Optional.of(setup), step.path(), ScenarioWriter.quoted(((Effect.ToSetting) step).to()));
    }

    /** A value one step on, in the unit that the person used, without a tail of digits. */
    static String text(Adjustable value, double step) {
        Unit unit = value.unit();
        double number = unit.fromSi(value.si() + step);
        double rounded = new BigDecimal(number).round(new MathContext(DIGITS)).doubleValue();
        return Quantity.of(unit.toSi(rounded), unit).text();
    }
}
