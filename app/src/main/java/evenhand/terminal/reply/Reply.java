package evenhand.terminal.reply;

import evenhand.car.LoadCase;
import evenhand.scenario.Scenario;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.page.Console;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;

/** What a command answers about a scenario, in each of its forms. */
public interface Reply {
    Scenario scenario();

    /** What is aboard besides what the car was weighed with. */
    Optional<LoadCase> load();

    byte[] json();

    String csv(Units units);

    String text(Console console, Units units);

    String command();

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
        return "evenhand " + command() + ": no answer for \"" + setup + "\": " + why;
    }

    /** Answers in the form that was asked for. */
    default void give(FormOptions.Form form, Console console, Units units) {
        switch (form) {
            case JSON -> console.answer(json());
            case CSV -> {
                silent(units).forEach(console::complain);
                console.answer(csv(units));
            }
            case PEOPLE -> console.answer(text(console, units));
        }
    }

    /** Those of one kind. */
    static <K> List<K> only(Class<K> kind, List<?> answers) {
        return answers.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
