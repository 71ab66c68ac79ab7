package evenhand.window.question;

import evenhand.load.Laden;
import evenhand.scenario.Setup;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.BalanceWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sentences of the terminal, for the window. */
final class Said {
    private Said() {}

    /** One sentence a set-up: which end lets go first. The one that is adjusted comes first. */
    static List<String> limits(Question.Asked asked) {
        List<String> sentences = new ArrayList<>();
        boolean several = asked.shown().size() > 1;
        for (TurnedSetup one : activeFirst(asked)) {
            String name = several ? named(one.setup()) + ": " : "";
            String said = one.turn()
                    .map(turn -> BalanceWords.ofLimit(turn, asked.units()))
                    .orElseGet(() -> "No answer: " + one.silence().orElse("it falls over") + ".");
            sentences.add(name + said);
        }
        return sentences;
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
