package evenhand.terminal.reply;

import evenhand.answers.FirstStops;
import evenhand.answers.FlatRide;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.load.Laden;
import evenhand.ride.BodyOverHump;
import evenhand.ride.Ride;
import evenhand.ride.RideAnswer;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.AskedRoad;
import evenhand.turn.TurnAnswer;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import evenhand.words.ride.RideWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A set-up and what it answers to the questions of {@code ride}. */
public sealed interface SetupRide extends SetupAnswer permits SetupRide.Rides, SetupAnswer.None {

    /**
     * It rides.
     *
     * @param load what was asked for
     * @param rest how it stands with it
     * @param speed on the road, m/s
     * @param stops where the turn first touches a stop
     * @param passages over a hump, from slow to fast
     */
    record Rides(
            Setup setup,
            Optional<LoadCase> load,
            Laden.AtRest rest,
            AskedRoad road,
            double speed,
            Ride ride,
            FirstStops stops,
            List<BodyOverHump.Passage> passages)
            implements SetupRide {
        /** The car as it stands. */
        public Car car() {
            return rest.car();
        }

        /** How its load sits and how it rides, in sentences. */
        public List<String> words(Units units) {
            List<String> sentences = new ArrayList<>();
            load.ifPresent(aboard -> sentences.add(LoadWords.sits(aboard, rest, units)));
            sentences.addAll(RideWords.of(car(), ride, stops, passages, road.words(), units));
            return sentences;
        }

        /** More is estimated for a ride, and the answer itself warns. */
        @Override
        public SharedParts.Remarks remarks() {
            List<String> warnings = new ArrayList<>();
            for (End end : End.values()) {
                RideWords.warnings(ride.axle(end)).forEach(warnings::add);
            }
            road.warning(speed).ifPresent(warnings::add);
            return SharedParts.Remarks.of(setup, setup.estimatedForRide(car()), warnings);
        }
    }

    /** Asks a set-up. */
    static SetupRide of(Setup setup, Optional<LoadCase> load, AskedRoad road, double speed) {
        Laden laden = Laden.of(setup.car(), load);
        if (!(laden instanceof Laden.AtRest rest)) {
            return none(setup, ((Laden.NoRest) laden).text());
        }
        Car car = rest.car();
        RideAnswer answer = Ride.of(car, road.road(), speed);
        if (answer instanceof RideAnswer.NoRide none) {
            return none(setup, none.text());
        }
        Ride ride = (Ride) answer;
        return new Rides(setup, load, rest, road, speed, ride, FirstStops.of(car), FlatRide.over(car, ride));
    }

    private static SetupAnswer.None none(Setup setup, String why) {
        return new SetupAnswer.None(setup, TurnAnswer.Reason.NO_EQUILIBRIUM, why);
    }
}
