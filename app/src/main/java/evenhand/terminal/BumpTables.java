package evenhand.terminal;

import evenhand.bump.BumpAnswer;
import evenhand.car.LoadCase;
import evenhand.scenario.Scenario;
import evenhand.words.Alike;
import evenhand.words.BumpRows;
import evenhand.words.BumpWheel;
import evenhand.words.BumpWords;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The answers of {@code bump} for people: a table of all set-ups, then words of each. */
final class BumpTables {
    private final Console console;
    private final Units units;
    private final StringBuilder text = new StringBuilder();

    BumpTables(Console console, Units units) {
        this.console = console;
        this.units = units;
    }

    String write(
            Scenario scenario,
            Optional<LoadCase> load,
            BumpCommand.Question question,
            List<BumpCommand.Answer> answers) {
        text.append(Paint.bold(Console.oneLine(scenario.title()), console)).append('\n');
        Paragraph.append(
                text,
                "",
                BumpWords.where(question.over(), question.speed(), question.pace(), question.direction(), units),
                console.columns());
        load.ifPresent(aboard -> Paragraph.append(text, "", LoadWords.aboard(aboard, units), console.columns()));
        List<BumpCommand.Answer> answered = answers.stream()
                .filter(answer ->
                        !BumpWheel.of(answer.bump(), question.direction()).isEmpty())
                .toList();
        if (!answered.isEmpty()) {
            text.append('\n').append(table(answered, question)).append('\n');
            Paragraph.append(text, "", BumpWords.gripLost(question.pace().isPresent()), console.columns());
        }
        Map<String, List<String>> said = new LinkedHashMap<>();
        answers.forEach(answer -> said.put(answer.setup().name(), said(answer, question)));
        for (Alike some : Alike.of(said)) {
            text.append('\n').append(Paint.bold(some.heading(), console)).append('\n');
            some.saidOfAll().forEach(sentence -> Paragraph.append(text, "  ", sentence, console.columns()));
        }
        return text.toString();
    }

    private List<String> said(BumpCommand.Answer answer, BumpCommand.Question question) {
        return answer.bump() instanceof BumpAnswer.None none
                ? List.of("No answer: " + none.text() + ".")
                : BumpWords.of(answer.car(), answer.bump(), question.direction(), units);
    }

    private String table(List<BumpCommand.Answer> answers, BumpCommand.Question question) {
        Table table =
                new Table(answers.stream().map(answer -> answer.setup().name()).toList());
        List<BumpAnswer> bumps = answers.stream().map(BumpCommand.Answer::bump).toList();
        for (BumpRows.Group wheel : BumpRows.of(bumps, question.direction(), units)) {
            table.heading(wheel.heading());
            wheel.rows().forEach(row -> table.row(row.words(), row.unit(), row.cells()));
        }
        return table.text(console);
    }
}
