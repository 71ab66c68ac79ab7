package evenhand.advice;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.choice.Effect;
import evenhand.quantity.Dimension;
import evenhand.ride.DamperChoice;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a step makes worse: how much of it, and where it is more than a shop can answer for. */
final class Harm {
    /** A slide that grows by less than this part of what is noticeable is the solver's business. */
    private static final double HARDLY = 0.1;

    private Harm() {}

    /** The largest that gets worse in any bend, in what is noticeable; 0 where nothing noticeable does. */
    static double largest(List<Effect> effects, Judged wish) {
        return effects.stream()
                .flatMap(effect -> effect.moves().stream())
                .filter(move -> !move.judged().equals(wish))
                .mapToDouble(Harm::worse)
                .filter(size -> size >= 1)
                .max()
                .orElse(0);
    }

    /**
     * By how much a figure gets worse, in what is noticeable: further from neutral, more lean, a lighter inside wheel, less limit, a
     * harder seat, a tyre that is pressed less evenly. Figures that only describe the car get neither better nor worse.
     */
    private static double worse(Effect.Move move) {
        Criterion criterion = move.judged().criterion();
        double noticeable = criterion.noticeable();
        if (isOfBalance(criterion)) {
            return (Math.abs(move.base() + move.difference()) - Math.abs(move.base())) / noticeable;
        }
        if (criterion.equals(Criterion.ROLL_GRADIENT)
                || criterion.equals(Criterion.LEAN)
                || isOfComfort(criterion)
                || criterion.equals(Criterion.FRONT_TYRE_LOAD_VARIATION)
                || criterion.equals(Criterion.REAR_TYRE_LOAD_VARIATION)) {
            return move.difference() / noticeable;
        }
        if (criterion.equals(Criterion.LIMIT)
                || criterion.equals(Criterion.INSIDE_FRONT_LOAD)
                || criterion.equals(Criterion.INSIDE_REAR_LOAD)) {
            return -move.difference() / noticeable;
        }
        return 0;
    }

    static boolean isOfBalance(Criterion criterion) {
        return criterion.equals(Criterion.UNDERSTEER) || criterion.equals(Criterion.NEAR_UNDERSTEER);
    }

    /** The accelerations of the ride. */
    static boolean isOfComfort(Criterion criterion) {
        return criterion.ofRide() && criterion.dimension() == Dimension.ACCELERATION;
    }

    /**
     * Whether the car is made to slide, or to slide more, one way round or the other, at a pace or near the limit: no driver wants
     * that for what else he gets.
     */
    static boolean slides(List<Effect> effects) {
        return effects.stream()
                .flatMap(effect -> effect.moves().stream())
                .filter(move -> isOfBalance(move.judged().criterion()))
                .anyMatch(move -> move.base() + move.difference() < 0
                        && move.difference()
                                < -HARDLY * move.judged().criterion().noticeable());
    }

    /** What of the ride forbids a step against a complaint about the ride. */
    static Optional<Refused.Reason> ofRide(Judged wish, Effect effect, Answers before, Answers after) {
        if (wish.criterion().dimension() == Dimension.RATIO
                && effect.moves().stream()
                        .anyMatch(move -> move.judged().criterion().dimension() == Dimension.FREQUENCY
                                && move.difference()
                                        < -HARDLY * move.judged().criterion().noticeable())) {
            return Optional.of(Refused.Reason.SOFTER);
        }
        if (isOfComfort(wish.criterion())) {
            if (isLessDamped(before, after)) {
                return Optional.of(Refused.Reason.UNDAMPED);
            }
            if (effect.moves().stream()
                    .anyMatch(move -> isOfComfort(move.judged().criterion())
                            && !move.judged().equals(wish)
                            && worse(move) >= 1)) {
                return Optional.of(Refused.Reason.RIDES_HARDER);
            }
        }
        return Optional.empty();
    }

    /** Whether an axle has less damping than holds a body, and less than it had. */
    private static boolean isLessDamped(Answers before, Answers after) {
        for (Criterion damping : List.of(Criterion.FRONT_DAMPING, Criterion.REAR_DAMPING)) {
            Judged judged = new Judged(damping, OptionalDouble.empty());
            OptionalDouble was = judged.si(before);
            OptionalDouble is = judged.si(after);
            if (was.isPresent()
                    && is.isPresent()
                    && is.getAsDouble() < DamperChoice.LEAST_RATIO
                    && is.getAsDouble() < was.getAsDouble() - HARDLY * damping.noticeable()) {
                return true;
            }
        }
        return false;
    }
}
