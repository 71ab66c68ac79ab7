package evenhand.terminal.find;

import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.choice.Finding;
import evenhand.choice.Span;
import evenhand.scenario.Problem;
import evenhand.scenario.Reading;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioFile;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.ScenarioWriter;
import evenhand.scenario.Setup;
import evenhand.scenario.WholeFile;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.InputFile;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.words.find.FindWords;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Adds what was found to the file as it stands by then: a search takes its time, and somebody may have written meanwhile.
 *
 * @param scenario as it was read before the search
 * @param setup that was searched
 * @param name of the new set-up
 */
record SaveAs(Scenario scenario, Setup setup, String name) {
    /** A found value is saved with so many digits: more than can be built, so that the figure stays the same. */
    private static final int SAVED = 7;

    /** Why nothing can be saved, in a line. */
    private static final class Refusal extends RuntimeException {
        private static final long serialVersionUID = 1;

        Refusal(String why) {
            super(why);
        }
    }

    /** @throws Mistake where it is plain already that nothing can be saved */
    void check() throws Mistake {
        String option = "--save-as \"" + name + "\": ";
        if (scenario.setup(name).isPresent()) {
            throw new Mistake(option + "there is a set-up of this name already; take another");
        }
        if (InputFile.isStandard(Path.of(scenario.file()))) {
            throw new Mistake(option + "standard input cannot be written to; name the file, or leave it out");
        }
        if (WholeFile.isProtected(Path.of(scenario.file()))) {
            throw new Mistake(option + scenario.file()
                    + " is write-protected; let it be written first, or search in a copy of it");
        }
        try {
            with(scenario.text(), Map.of());
        } catch (Refusal | IllegalArgumentException e) {
            throw new Mistake(option + e.getMessage());
        }
    }

    /** Saves, and says where; what went wrong is complained of in a line. */
    boolean save(Entries car, Finding finding, FormOptions.Form form, Console console) {
        if (!(finding instanceof Finding.Found found) || !found.met()) {
            console.complain("evenhand find: nothing was saved as \"" + name + "\": the aim is not met");
            return true;
        }
        try {
            ScenarioFile.change(Path.of(scenario.file()), now -> added(now, car, found, console));
            saved(form, console);
            return true;
        } catch (Refusal | IllegalArgumentException e) {
            return refused(String.valueOf(e.getMessage()), console);
        } catch (NoSuchFileException gone) {
            return refused("the file is not there any more", console);
        } catch (IOException | SecurityException | ReadOnlyFileSystemException e) {
            return refused(
                    "cannot write " + scenario.file() + " (" + WholeFile.why(e)
                            + "), which is as it was; copy it to where you may write and search there",
                    console);
        }
    }

    /** People read it below the answer; an answer for programs stays as it is. */
    private void saved(FormOptions.Form form, Console console) {
        String where = " as the set-up \"" + name + "\", based on \"" + setup.name() + "\", in " + scenario.file();
        if (form == FormOptions.Form.PEOPLE) {
            Page page = new Page(console);
            page.blank();
            page.paragraph("", "Saved" + where + ".");
            console.answer(page.text());
        } else {
            console.complain("evenhand find: saved" + where);
        }
    }

    private boolean refused(String why, Console console) {
        console.complain("evenhand find: --save-as \"" + name + "\": nothing was saved: " + why);
        return false;
    }

    private String added(String now, Entries car, Finding.Found found, Console console) {
        Reading reading = ScenarioReader.read(scenario.file(), now);
        Scenario there = reading.scenario()
                .orElseThrow(() -> new Refusal("the file is broken by now: "
                        + reading.problems().get(0).what()));
        if (there.setup(name).isPresent()) {
            throw new Refusal("there is a set-up of this name by now; take another");
        }
        Setup base = there.setup(setup.name())
                .orElseThrow(() -> new Refusal("its base \"" + setup.name() + "\" is not in the file any more"));
        String text = with(now, changes(car, found));
        if (!Catalogue.differences(setup.entries(), base.entries()).isEmpty()) {
            console.complain("evenhand find: \"" + setup.name()
                    + "\" was changed in the file meanwhile; what was found is for how it was");
        }
        return text;
    }

    private String with(String now, Map<String, String> changes) {
        String text = ScenarioWriter.addSetup(now, name, Optional.of(setup.name()), Optional.empty(), changes);
        List<Problem> problems = ScenarioReader.read(scenario.file(), text).problems();
        if (!problems.isEmpty()) {
            throw new Refusal("the file would be broken: " + problems.get(0).what());
        }
        return text;
    }

    /** A bar that stays without stiffness is not fitted. */
    private Map<String, String> changes(Entries car, Finding.Found found) {
        Map<String, String> changes = new LinkedHashMap<>();
        for (int i = 0; i < found.spans().size(); i++) {
            Span span = found.spans().get(i);
            double value = found.values().get(i);
            if (!(span.isOfNoBar() && value == 0)) {
                changes.put(span.path(), FindWords.written(car, span, value, SAVED));
            }
        }
        return changes;
    }
}
