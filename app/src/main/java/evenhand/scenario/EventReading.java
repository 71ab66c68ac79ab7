package evenhand.scenario;

import evenhand.road.RoadEvent;
import java.util.List;

/** What came of reading the text of a road's event. */
public sealed interface EventReading {
    record Found(RoadEvent event) implements EventReading {}

    /** The text names no event: what is wrong with it and how to mend it, as the end of a sentence that begins with it. */
    record Unclear(String what) implements EventReading {}

    /** It names the file of a measured profile, which has problems. */
    record Unread(List<Problem> problems) implements EventReading {
        public Unread {
            problems = List.copyOf(problems);
        }
    }
}
