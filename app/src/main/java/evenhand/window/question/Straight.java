package evenhand.window.question;

import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.words.Alike;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How set-ups that brake or pull away are told: the first sentence of each group large, the rest below. */
final class Straight {
    /** Over what is to be heeded. */
    static final String MIND = "Mind";

    private Straight() {}

    /** The first sentence of the set-up that is adjusted and of those alike, then that of the others. */
    static List<String> large(Question.Asked asked, List<Alike> groups) {
        String active = asked.work().active();
        List<String> headlines = new ArrayList<>();
        for (Alike group : groups) {
            boolean foremost = group.names().contains(active);
            String name = foremost ? active : group.heading();
            String words = (asked.shown().size() > 1 ? "\"" + name + "\": " : "")
                    + group.sentences().get(0);
            headlines.add(foremost ? 0 : headlines.size(), words);
        }
        return headlines;
    }

    /** What follows the first sentence, each group under its set-up. */
    static List<Reply.Paragraph> below(Question.Asked asked, List<Alike> groups) {
        return groups.stream()
                .map(group -> new Reply.Paragraph(
                        group.heading(),
                        group.saidOfAll().subList(1, group.saidOfAll().size())))
                .filter(paragraph -> !paragraph.sentences().isEmpty())
                .toList();
    }

    /** The way to the form, where something is given first. */
    static Reply.Next toTheForm(String words) {
        return new Reply.Next(words, Optional.of(new LookAct.Ask(Question.FORM)));
    }
}
