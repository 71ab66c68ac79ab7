package evenhand.terminal.asked;

import evenhand.terminal.page.Console;
import evenhand.words.Units;

/** What a command has worked out. */
@FunctionalInterface
public interface Answer {
    /** None, after its problems were told. */
    Answer NONE = (form, console, units) -> Status.WRONG;

    /** Gives it in one of its forms, and says how the command ends by it. */
    Status give(FormOptions.Form form, Console console, Units units);
}
