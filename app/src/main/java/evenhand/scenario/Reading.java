package evenhand.scenario;

import java.util.List;
import java.util.Optional;

/** What came of reading a file: the scenario unless there are problems, and the problems in the order of the file. */
public record Reading(Optional<Scenario> scenario, List<Problem> problems) {
    public Reading {
        problems = List.copyOf(problems);
    }
}
