package evenhand.terminal.asked;

import evenhand.terminal.page.Console;
import evenhand.words.Units;

/** A command whose answer is worked out without regard to the form that it is given in. */
public interface AskedInForms extends EachFile {
    UsualOptions usual();

    /** The answer; what is wrong with a file is told on the console. */
    Answer answer(Console console) throws Mistake;

    @Override
    default Status run(Console console) throws Mistake {
        FormOptions.Form form = forms().form();
        Units units = usual().units();
        return answer(console).give(form, console, units);
    }
}
