package evenhand.terminal.bump;

import evenhand.forms.BumpTable;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.words.Alike;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import evenhand.words.road.BumpWheel;
import evenhand.words.road.BumpWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The answers of {@code bump} for people: a table of all set-ups, then words of each. */
final class BumpTables {
    private final Page page;
    private final Units units;

    BumpTables(Console console, Units units) {
        this.page = new Page(console);
        this.units = units;
    }

    String write(BumpReply reply) {
        BumpReply.Question question = reply.question();
        List<BumpReply.Answer> answers = reply.answers();
        page.title(reply.scenario().title());
        page.paragraph(
                "", BumpWords.where(question.over(), question.speed(), question.pace(), question.direction(), units));
        reply.load().ifPresent(aboard -> page.paragraph("", LoadWords.aboard(aboard, units)));
        List<BumpReply.Answer> answered = answers.stream()
                .filter(answer ->
                        !BumpWheel.of(answer.bump(), question.direction()).isEmpty())
                .toList();
        if (!answered.isEmpty()) {
            page.table(BumpTable.of(
                    answered, answer -> answer.setup().name(), BumpReply.Answer::bump, question.direction(), units));
            page.blank();
            page.paragraph("", BumpWords.gripLost(question.pace().isPresent()));
        }
        Map<String, List<String>> said = new LinkedHashMap<>();
        reply.setups().forEach(answer -> said.put(answer.setup().name(), said(answer)));
        for (Alike some : Alike.of(said)) {
            page.heading(some.heading());
            page.sentences(some.saidOfAll());
        }
        return page.text();
    }

    private List<String> said(SetupAnswer answer) {
        return answer instanceof SetupAnswer.None none
                ? List.of(none.sentence())
                : ((BumpReply.Answer) answer).words(units);
    }
}
