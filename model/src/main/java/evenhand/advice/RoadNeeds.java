package evenhand.advice;

import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Unit;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * What a car must still have on the road after a step: what {@link Need} asks of a lowered car. What it had must stay; what it did not
 * have must not become less.
 *
 * @param before the car as it stands
 * @param lowest how far it can be let down and still has all of it, found when it is first asked for
 */
record RoadNeeds(Trial trial, Stance before, Supplier<OptionalDouble> lowest) {
    /** By this part of its bound a need may become worse where it is not met anyway. */
    private static final double HARDLY = 0.02;

    /** A stop that is touched later by this has been moved away from, m/s². */
    private static final double LATER = Unit.of("g").toSi(0.005);

    /** How far a car is let down to see how low it can stand, m. */
    private static final double LOWEST = Unit.of("mm").toSi(80);

    /** So much higher than its lowest a step must leave a car, m: less is nobody's loss. */
    private static final double HIGHER = Unit.of("mm").toSi(1);

    static RoadNeeds of(Car car, Trial trial) {
        return new RoadNeeds(trial, stance(car, trial), new Lowest(car, trial));
    }

    /** Looked for once, by whichever thread asks first. */
    private static final class Lowest implements Supplier<OptionalDouble> {
        private final Car car;
        private final Trial trial;
        private Optional<OptionalDouble> known = Optional.empty();

        Lowest(Car car, Trial trial) {
            this.car = car;
            this.trial = trial;
        }

        @Override
        public synchronized OptionalDouble get() {
            if (known.isEmpty()) {
                known = Optional.of(search());
            }
            return known.get();
        }

        private OptionalDouble search() {
            try {
                return LoweringStudy.lowest(car, 0, LOWEST, trial);
            } catch (InvalidValue e) {
                return OptionalDouble.empty(); // its body cannot come down so far
            }
        }
    }

    /** What a step takes of the room to the stops. */
    Price price(Car changed, Stance after) {
        OptionalDouble was = Need.FIRST_STOP_TOUCHED.value(before);
        OptionalDouble is = Need.FIRST_STOP_TOUCHED.value(after);
        Optional<Price.Earlier> earlier =
                is.isPresent() && is.getAsDouble() < was.orElse(Double.POSITIVE_INFINITY) - LATER
                        ? Optional.of(new Price.Earlier(was, is.getAsDouble()))
                        : Optional.empty();
        return new Price(earlier, lessLow(changed));
    }

    private Optional<Price.LessLow> lessLow(Car changed) {
        OptionalDouble now = lowest.get();
        if (now.isEmpty() || now.getAsDouble() < HIGHER) {
            return Optional.empty();
        }
        try {
            Stance there = Stance.judged(changed, now.getAsDouble() - HIGHER, OptionalDouble.empty(), trial);
            return Need.ALL.stream()
                    .filter(need -> !need.metBy(there))
                    .findFirst()
                    .map(need -> new Price.LessLow(
                            now.getAsDouble(),
                            new Refused.Missed(need, need.isNumber() ? need.value(there) : OptionalDouble.empty())));
        } catch (InvalidValue e) {
            return Optional.empty();
        }
    }

    private static Stance stance(Car car, Trial trial) {
        return Stance.judged(car, 0, OptionalDouble.empty(), trial);
    }

    Stance after(Car car) {
        return stance(car, trial);
    }

    /** The first need that a step takes away from, most telling first. */
    Optional<Refused.Missed> missed(Stance after) {
        return Need.ALL.stream()
                .filter(need ->
                        !need.metBy(after) && (need.metBy(before) || isWorse(need, after) || turnsRound(need, after)))
                .findFirst()
                .map(need -> new Refused.Missed(need, need.isNumber() ? need.value(after) : OptionalDouble.empty()));
    }

    private boolean isWorse(Need need, Stance after) {
        OptionalDouble was = need.value(before);
        OptionalDouble is = need.value(after);
        if (was.isEmpty() || is.isEmpty()) {
            return false;
        }
        double worse = need.atLeast() ? was.getAsDouble() - is.getAsDouble() : is.getAsDouble() - was.getAsDouble();
        return worse > HARDLY * Math.abs(need.bound());
    }

    /** Whether the front went first in a bend, and does no longer: in each by itself, for in another the tail may have gone anyway. */
    private boolean turnsRound(Need need, Stance after) {
        return need.equals(Need.FRONT_FIRST)
                && before instanceof Stance.Stands was
                && was.bends().stream()
                        .anyMatch(bend -> need.metBy(before.in(one -> isSame(one, bend)))
                                && !need.metBy(after.in(one -> isSame(one, bend))));
    }

    private static boolean isSame(Stance.Bend one, Stance.Bend other) {
        return one.radius() == other.radius() && one.direction() == other.direction();
    }

    /**
     * Whether a stop is touched on the way to where a figure is judged.
     *
     * @param pace up to which it is looked for, m/s²; to the limit where there is none
     */
    static boolean touches(Stance stance, OptionalDouble pace) {
        if (!(stance instanceof Stance.Stands stands)) {
            return false;
        }
        return stands.onStop()
                || stands.bends().stream()
                        .anyMatch(bend -> bend.turn() instanceof TurnAnswer.Turns turns
                                && turns.eventsToLimit().stream()
                                        .anyMatch(event -> isOfStop(event)
                                                && event.lateralAcceleration()
                                                        <= pace.orElse(Double.POSITIVE_INFINITY)));
    }

    private static boolean isOfStop(TurnEvent event) {
        return event.kind() == TurnEvent.Kind.STOP_TOUCHED || event.kind() == TurnEvent.Kind.DROOP_REACHED;
    }

    /** Whether the bump stops come into play later than they did. */
    boolean movesOffStops(Stance after) {
        OptionalDouble was = Need.FIRST_STOP_TOUCHED.value(before);
        OptionalDouble is = Need.FIRST_STOP_TOUCHED.value(after);
        return was.isPresent()
                && after instanceof Stance.Stands
                && (is.isEmpty() || is.getAsDouble() > was.getAsDouble() + LATER);
    }
}
