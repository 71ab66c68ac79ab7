package evenhand.terminal;

import evenhand.answers.FirstStops;
import evenhand.answers.FlatRide;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.load.Laden;
import evenhand.ride.BodyOverHump;
import evenhand.ride.Ride;
import evenhand.ride.RideAnswer;
import evenhand.ride.Road;
import evenhand.scenario.Setup;
import evenhand.words.RideWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A set-up and what it answers to the questions of {@code ride}. */
sealed interface SetupRide permits SetupRide.Rides, SetupRide.Unanswered {
    Setup setup();

    /**
     * It rides.
     *
     * @param rest how it stands, with the load that was asked for
     * @param stops where the turn first touches a stop
     * @param passages over a hump, from slow to fast
     */
    record Rides(Setup setup, Laden.AtRest rest, Ride ride, FirstStops stops, List<BodyOverHump.Passage> passages)
            implements SetupRide {
        /** The car as it stands. */
        Car car() {
            return rest.car();
        }

        /** What the answer itself warns of. */
        List<String> warnings() {
            List<String> warnings = new ArrayList<>();
            for (End end : End.values()) {
                RideWords.warnings(ride.axle(end)).forEach(warnings::add);
            }
            return warnings;
        }
    }

    /** It has no answer. */
    record Unanswered(Setup setup, String text) implements SetupRide {}

    /** Asks a set-up. */
    static SetupRide of(Setup setup, Optional<LoadCase> load, Road road, double speed) {
        Laden laden = Laden.of(setup.car(), load);
        if (!(laden instanceof Laden.AtRest rest)) {
            return new Unanswered(setup, ((Laden.NoRest) laden).text());
        }
        Car car = rest.car();
        RideAnswer answer = Ride.of(car, road, speed);
        if (answer instanceof RideAnswer.NoRide none) {
            return new Unanswered(setup, none.text());
        }
        Ride ride = (Ride) answer;
        return new Rides(setup, rest, ride, FirstStops.of(car), FlatRide.over(car, ride));
    }
}
