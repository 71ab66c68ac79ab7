package evenhand.scenario;

import evenhand.road.MeasuredProfile;
import java.util.List;
import java.util.Optional;

/** What a road profile's file holds: the profile, or its problems in the order of the file. */
public record RoadReading(Optional<MeasuredProfile> profile, List<Problem> problems) {
    public RoadReading {
        problems = List.copyOf(problems);
    }
}
