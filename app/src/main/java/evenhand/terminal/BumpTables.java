package evenhand.terminal;

import evenhand.bump.BumpAnswer;
import evenhand.words.Alike;
import evenhand.words.BumpRows;
import evenhand.words.BumpWheel;
import evenhand.words.BumpWords;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The answers of {@code bump} for people: a table of all set-ups, then words of each. */
final class BumpTables {
    private final Console console;
    private final Units units;
    private final StringBuilder text = new StringBuilder();

    BumpTables(Console console, Units units) {
        this.console = console;
        this.units = units;
    }

    String write(BumpReply reply) {
        BumpReply.Question question = reply.question();
        List<BumpReply.Answer> answers = reply.answers();
        text.append(Paint.bold(Console.oneLine(reply.scenario().title()), console))
                .append('\n');
        Paragraph.append(
                text,
                "",
                BumpWords.where(question.over(), question.speed(), question.pace(), question.direction(), units),
                console.columns());
        reply.load()
                .ifPresent(aboard -> Paragraph.append(text, "", LoadWords.aboard(aboard, units), console.columns()));
        List<BumpReply.Answer> answered = answers.stream()
                .filter(answer ->
                        !BumpWheel.of(answer.bump(), question.direction()).isEmpty())
                .toList();
        if (!answered.isEmpty()) {
            text.append('\n').append(table(answered, question)).append('\n');
            Paragraph.append(text, "", BumpWords.gripLost(question.pace().isPresent()), console.columns());
        }
        Map<String, List<String>> said = new LinkedHashMap<>();
        reply.setups().forEach(answer -> said.put(answer.setup().name(), said(answer)));
        for (Alike some : Alike.of(said)) {
            text.append('\n').append(Paint.bold(some.heading(), console)).append('\n');
            some.saidOfAll().forEach(sentence -> Paragraph.append(text, "  ", sentence, console.columns()));
        }
        return text.toString();
    }

    private List<String> said(SetupAnswer answer) {
        return answer instanceof SetupAnswer.None none
                ? List.of(none.sentence())
                : ((BumpReply.Answer) answer).words(units);
    }

    private String table(List<BumpReply.Answer> answers, BumpReply.Question question) {
        Table table =
                new Table(answers.stream().map(answer -> answer.setup().name()).toList());
        List<BumpAnswer> bumps = answers.stream().map(BumpReply.Answer::bump).toList();
        for (BumpRows.Group wheel : BumpRows.of(bumps, question.direction(), units)) {
            table.heading(wheel.heading());
            wheel.rows().forEach(row -> table.row(row.words(), row.unit(), row.cells()));
        }
        return table.text(console);
    }
}
