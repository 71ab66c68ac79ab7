package evenhand.window.question;

import evenhand.load.Laden;
import evenhand.scenario.Setup;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.balance.BalanceWords;
import evenhand.words.balance.VerdictWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sentences of the terminal, for the window. */
final class Said {
    private Said() {}

    /** Which end of the set-up that is adjusted lets go first; the others have their lines in the verdict. */
    static List<String> limit(Question.Asked asked) {
        TurnedSetup one = asked.active();
        return List.of((asked.shown().size() > 1 ? named(one.setup()) + ": " : "")
                + one.turn()
                        .map(turn -> VerdictWords.sentence(turn, asked.turnedBack(one)))
                        .orElse("No answer: " + one.silence().orElse("it falls over") + "."));
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
