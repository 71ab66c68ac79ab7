package evenhand.window.desk;

import evenhand.scenario.Problem;
import evenhand.scenario.Reading;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioReader;
import java.util.List;
import java.util.function.UnaryOperator;

/** An edit of the scenario's text: it is read again, and refused where it would make no sound scenario. */
final class Edit {
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
        Outcome shown = new Act.Show(name.strip(), true).on(done.desk());
        return shown instanceof Outcome.Done next ? new Act.Activate(name.strip()).on(next.desk()) : shown;
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

    private static String why(List<Problem> problems, String path) {
        for (Problem problem : problems) {
            if (!path.isEmpty() && problem.where().endsWith(path)) {
                return problem.what();
            }
        }
        return problems.stream()
                .findFirst()
                .map(first -> first.where().isEmpty() ? first.what() : first.where() + " " + first.what())
                .orElse("this makes no car");
    }
}
