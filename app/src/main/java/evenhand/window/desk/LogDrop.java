package evenhand.window.desk;

import evenhand.scenario.ScenarioWriter;
import evenhand.scenario.TestGiven;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A log of an instrument that is dropped on the window: it joins the last road test of the file. */
public record LogDrop(Path log) {
    /** What came of it. */
    public sealed interface Outcome {
        /** @param test that it has joined */
        record Joined(String test) implements Outcome {}

        record Refused(String why) implements Outcome {}
    }

    /** Puts it into the job, as an act that undo takes back. */
    public Outcome on(Bench bench) {
        Desk desk = bench.desk();
        String name = String.valueOf(log.getFileName());
        List<TestGiven> tests = desk.work().scenario().roadTests();
        if (desk.filed().path().isEmpty()) {
            return new Outcome.Refused(
                    "“" + name + "” is a log: save the car in a file first, for a log stands beside it.");
        }
        if (tests.isEmpty()) {
            return new Outcome.Refused(
                    "“" + name
                            + "” is a log, and there is no road test that it could belong to: begin one by File, At the circle.");
        }
        Path home = desk.filed().path().get().toAbsolutePath().normalize().getParent();
        Path whole = log.toAbsolutePath().normalize();
        String beside =
                home != null && whole.startsWith(home) ? home.relativize(whole).toString() : whole.toString();
        int last = tests.size() - 1;
        String path = "roadTests[" + last + "].logs[" + tests.get(last).logs().size() + "]";
        String json = "{\"file\": " + ScenarioWriter.quoted(beside.replace('\\', '/')) + "}";
        return bench.act(new EditAct.SetInFile(path, Optional.of(json)))
                .<Outcome>map(why -> new Outcome.Refused("“" + name + "” cannot join the road test: " + why + "."))
                .orElseGet(() -> {
                    bench.act(new LookAct.Ask(Question.ROAD));
                    return new Outcome.Joined(tests.get(last).name());
                });
    }
}
