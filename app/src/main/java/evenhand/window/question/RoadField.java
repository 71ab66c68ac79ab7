package evenhand.window.question;

import evenhand.ride.Ride;
import evenhand.ride.RideAnswer;
import evenhand.ride.RoadClass;
import evenhand.window.desk.Question;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.ride.RideWords;
import java.util.Arrays;

/** The road that a ride is asked about. */
final class RoadField {
    static final Question.Field ROAD = new Question.Field(
            "road",
            "on a road of class",
            Arrays.stream(RoadClass.values()).map(Enum::name).toList(),
            "B");

    private RoadField() {}

    static RoadClass of(Question.Asked asked) {
        return RoadClass.valueOf(asked.wish(ROAD));
    }

    /** How a set-up rides on it; no answer where the load that is aboard lets it come to no rest. */
    static RideAnswer ride(Question.Asked asked, TurnedSetup one, double speed) {
        return Said.noRest(asked, one)
                .<RideAnswer>map(RideAnswer.NoRide::new)
                .orElseGet(() -> Ride.of(one.standing(), of(asked), speed));
    }

    /** "a class B road (a good main road)". */
    static String words(RoadClass road) {
        return "a class " + road.name() + " road (" + RideWords.like(road) + ")";
    }
}
