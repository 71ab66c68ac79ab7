package evenhand.window.question;

import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.words.Alike;
import java.util.List;
import java.util.Optional;

/** How set-ups that brake or pull away are told: the first sentence of each group large, the rest below. */
final class Straight {
    /** Over what is to be heeded. */
    static final String MIND = "Mind";

    private Straight() {}

    /** The first sentence of the set-up that is adjusted; the others have their lines in the verdict. */
    static List<String> large(Question.Asked asked, List<Alike> groups) {
        String active = asked.work().active();
        return groups.stream()
                .filter(group -> group.names().contains(active))
                .map(group -> (asked.shown().size() > 1 ? "\"" + active + "\": " : "")
                        + group.sentences().get(0))
                .toList();
    }

    /** What follows it, each group under its set-up. */
    static List<Reply.Paragraph> below(Question.Asked asked, List<Alike> groups) {
        String active = asked.work().active();
        return groups.stream()
                .map(group -> new Reply.Paragraph(
                        group.heading(),
                        group.saidOfAll()
                                .subList(
                                        group.names().contains(active) ? 1 : 0,
                                        group.saidOfAll().size())))
                .filter(paragraph -> !paragraph.sentences().isEmpty())
                .toList();
    }

    /** The way to the form, where something is given first. */
    static Reply.Next toTheForm(String words) {
        return new Reply.Next(words, Optional.of(new LookAct.Ask(Question.FORM)));
    }
}
