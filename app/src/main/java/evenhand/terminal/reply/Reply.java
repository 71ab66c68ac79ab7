package evenhand.terminal.reply;

import evenhand.car.LoadCase;
import evenhand.scenario.Scenario;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.words.TestedWords;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;

/** What a command answers about a scenario, in each of its forms. */
public interface Reply extends Answer {
    Scenario scenario();

    /** What is aboard besides what the car was weighed with. */
    Optional<LoadCase> load();

    Written written();

    /** What each set-up answers. */
    List<? extends SetupAnswer> setups();

    /** Who has no answer, and why: said beside CSV, which has no room for it. */
    default List<String> silent(Units units) {
        return setups().stream()
                .flatMap(one -> one.noAnswer().map(why -> noAnswer(one.setup().name(), why.text())).stream())
                .toList();
    }

    /** Whether every set-up has an answer. */
    default boolean complete() {
        return setups().stream().allMatch(one -> one.noAnswer().isEmpty());
    }

    /** That a set-up has no answer, in a line. */
    default String noAnswer(String setup, String why) {
        return "evenhand " + written().command() + ": no answer for \"" + setup + "\": " + why;
    }

    @Override
    default Status give(FormOptions.Form form, Console console, Units units) {
        if (form == FormOptions.Form.CSV) {
            silent(units).forEach(console::complain);
            scenario()
                    .tested()
                    .map(TestedWords::inALine)
                    .ifPresent(line -> console.complain("evenhand " + written().command() + ": " + line));
        } else if (form == FormOptions.Form.PEOPLE) {
            scenario().tested().map(TestedWords::inALine).ifPresent(line -> {
                Page page = new Page(console);
                page.paragraph("! ", line);
                console.answer(page.text());
            });
        }
        written().give(form, console, units);
        return complete() ? Status.DONE : Status.NO_ANSWER;
    }

    /** Those of one kind. */
    static <K> List<K> only(Class<K> kind, List<?> answers) {
        return answers.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
