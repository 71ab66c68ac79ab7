package evenhand.window.question;

import evenhand.scenario.Setup;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.BalanceWords;
import java.util.ArrayList;
import java.util.List;

/** The sentences of the terminal, for the window. */
final class Said {
    private Said() {}

    /** One sentence a set-up: which end lets go first. */
    static List<String> limits(Question.Asked asked) {
        List<String> sentences = new ArrayList<>();
        boolean several = asked.shown().size() > 1;
        for (TurnedSetup one : asked.shown()) {
            String name = several ? named(one.setup()) + ": " : "";
            String said = one.turn()
                    .flatMap(turn -> one.sums().map(sums -> BalanceWords.ofLimit(sums, turn, asked.units())))
                    .orElseGet(() -> "No answer: " + one.silence().orElse("it falls over") + ".");
            sentences.add(name + said);
        }
        return sentences;
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

    static String named(Setup setup) {
        return "\"" + setup.name() + "\"";
    }
}
