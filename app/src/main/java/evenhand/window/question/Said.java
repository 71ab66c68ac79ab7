package evenhand.window.question;

import evenhand.load.Laden;
import evenhand.scenario.Setup;
import evenhand.turn.TurnAnswer;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.balance.BalanceWords;
import evenhand.words.balance.LimitWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sentences of the terminal, for the window. */
final class Said {
    private Said() {}

    /**
     * Which end of a set-up lets go first, both ways round. What goes one way here and the other way there is said before all
     * else; then the set-up that is adjusted comes first.
     */
    static List<String> limits(Question.Asked asked) {
        List<String> split = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        for (TurnedSetup one : activeFirst(asked)) {
            String name = asked.shown().size() > 1 ? named(one.setup()) + ": " : "";
            if (one.turn().isEmpty()) {
                sentences.add(name + "No answer: " + one.silence().orElse("it falls over") + ".");
                continue;
            }
            TurnAnswer.Turns turn = one.turn().get();
            TurnAnswer back = asked.turnedBack(one);
            LimitWords.split(turn, back).ifPresent(warning -> split.add(name + warning));
            List<String> both = new ArrayList<>(List.of(BalanceWords.ofLimit(turn, asked.units())));
            both.addAll(BalanceWords.ofOtherWay(turn, back));
            sentences.add(name + String.join(" ", both));
        }
        split.addAll(sentences);
        return split;
    }

    /** The set-ups that are shown, the one that is adjusted before the others: what is said first is read. */
    static List<TurnedSetup> activeFirst(Question.Asked asked) {
        List<TurnedSetup> ordered = new ArrayList<>(asked.shown());
        TurnedSetup active = asked.active();
        if (ordered.remove(active)) {
            ordered.add(0, active);
        }
        return ordered;
    }

    /** All that is to be said of each set-up. */
    static List<Reply.Paragraph> balances(Question.Asked asked) {
        List<Reply.Paragraph> paragraphs = new ArrayList<>();
        for (TurnedSetup one : asked.shown()) {
            if (one.turn().isPresent() && one.sums().isPresent()) {
                paragraphs.add(new Reply.Paragraph(
                        one.setup().name(),
                        BalanceWords.of(one.sums().get(), one.turn().get(), asked.turnedBack(one), asked.units())));
            }
        }
        return paragraphs;
    }

    /** Why a set-up does not come to rest with what is aboard; nothing where it does. */
    static Optional<String> noRest(Question.Asked asked, TurnedSetup one) {
        return Laden.of(one.setup().car(), asked.work().trial().load()) instanceof Laden.NoRest none
                ? Optional.of(none.text())
                : Optional.empty();
    }

    static String named(Setup setup) {
        return "\"" + setup.name() + "\"";
    }
}
