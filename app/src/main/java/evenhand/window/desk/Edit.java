package evenhand.window.desk;

import evenhand.catalogue.Entries;
import evenhand.scenario.Problem;
import evenhand.scenario.Reading;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.ScenarioWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An edit of the scenario's text: it is read again, and refused where it would make no sound scenario. */
final class Edit {
    /** Something in a row of a table: the path of the table, the row, and what is in it. */
    private static final Pattern ROW = Pattern.compile("(.*?)\\[(\\d+)](\\[\\d+]|\\.\\w+)?");

    private Edit() {}

    /** Edits the value at a path; a refusal speaks of that value. */
    static Outcome at(String path, Desk desk, UnaryOperator<String> edit) {
        return read(desk, desk.work(), path, edit);
    }

    static Outcome whole(Desk desk, Work work, UnaryOperator<String> edit) {
        return read(desk, work, "", edit);
    }

    /** An edit that adds a set-up, which is then shown and active. */
    static Outcome adding(Desk desk, String name, UnaryOperator<String> edit) {
        Outcome outcome = whole(desk, desk.work(), edit);
        if (!(outcome instanceof Outcome.Done done)) {
            return outcome;
        }
        Outcome shown = new TrialAct.Show(name.strip(), true).on(done.desk());
        return shown instanceof Outcome.Done next ? new TrialAct.Activate(name.strip()).on(next.desk()) : shown;
    }

    private static Outcome read(Desk desk, Work work, String path, UnaryOperator<String> edit) {
        Scenario old = desk.work().scenario();
        String text;
        try {
            text = edit.apply(old.text());
        } catch (IllegalArgumentException wrong) {
            return new Outcome.Refused(String.valueOf(wrong.getMessage()));
        }
        if (text.equals(old.text())) {
            return new Outcome.Done(desk);
        }
        Reading reading = ScenarioReader.again(old, text);
        return reading.scenario()
                .<Outcome>map(next -> new Outcome.Done(desk.with(work.withScenario(next))))
                .orElseGet(() -> new Outcome.Refused(why(reading.problems(), path)));
    }

    /** The text without what cannot stand beside something else; a set-up says that it has none of it. */
    static String without(String text, Optional<String> setup, List<String> paths) {
        String edited = text;
        for (String path : paths) {
            edited = setup.isPresent()
                    ? ScenarioWriter.setJson(edited, setup, path, "null")
                    : ScenarioWriter.remove(edited, path);
        }
        return edited;
    }

    /** The text with the list that a path leads into among the set-up's own changes: a list is changed as a whole. */
    static String withOwnList(Desk desk, String text, Optional<String> setup, String path) {
        int bracket = path.indexOf('[');
        if (setup.isEmpty() || bracket < 0) {
            return text;
        }
        String list = path.substring(0, bracket);
        if (ScenarioWriter.isChanged(text, setup.get(), list)) {
            return text;
        }
        Entries car = desk.work().scenario().setup(setup.get()).orElseThrow().entries();
        return FormPlace.given(car, list)
                .map(given -> ScenarioWriter.setJson(text, setup, list, given))
                .orElse(text);
    }

    private static String why(List<Problem> problems, String path) {
        for (Problem problem : problems) {
            String where = problem.where();
            if (!path.isEmpty() && where.endsWith(path)) {
                return problem.what();
            }
            Matcher row = ROW.matcher(where);
            if (!path.isEmpty() && row.matches() && row.group(1).endsWith(path)) {
                return "row " + (Integer.parseInt(row.group(2)) + 1) + " " + problem.what();
            }
        }
        return problems.stream()
                .findFirst()
                .map(first -> first.where().isEmpty() ? first.what() : first.where() + " " + first.what())
                .orElse("this makes no car");
    }
}
