package evenhand.terminal.asked;

import evenhand.terminal.page.Console;

/** A command with what was asked of it. */
public interface Asked {
    Status run(Console console) throws Mistake;
}
