package evenhand.advice;

import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.car.End;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Range;
import evenhand.choice.Effect;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The single steps that help a figure go the way that is wished, and those that would but are not advised.
 *
 * <p>Each adjustment of the car is moved by its usual step up and down, or by half of it where the whole is too much; a bar that is not
 * fitted is fitted in usual sizes, dampers go to their next setting or change all their forces. A step is judged by the worse way round
 * before and after it. It is no remedy where it
 *
 * <ul>
 *   <li>makes the car slide, or slide more, either way round, at any of the paces or near the limit;
 *   <li>takes a value past what is usual;
 *   <li>takes what a lowered road car must have, as {@link Need} lists it, or makes less of what is too little already;
 *   <li>rests on a stop: on the same car without its stops it would not do half as much, and it does not move the car off them;
 *   <li>makes the ride better by its number alone: softer springs against wallowing, too little damping against hardness.
 * </ul>
 *
 * @param remedies what helps, best first
 * @param refused what would move the figure most is first
 */
public record Advice(List<Remedy> remedies, List<Refused> refused) {
    /** What moves a figure by less than this part of what is noticeable is no help: two such steps would only just be felt. */
    private static final double SMALLEST = 0.5;

    /** Without the stops a step must do this part of what it does with them. */
    private static final double BY_ITSELF = 0.5;

    private static final String REAR_TOE = End.REAR.key() + ".toe";

    /** Of a sum of angles, rad. */
    private static final double ROUNDING = 1e-9;

    public Advice {
        remedies = List.copyOf(remedies);
        refused = List.copyOf(refused);
    }

    /** Nothing to be advised, and nothing that is not. */
    public static final Advice NONE = new Advice(List.of(), List.of());

    /**
     * What helps.
     *
     * @param car that builds
     * @param before what the car answers as it stands
     */
    public static Advice against(Entries car, Trial trial, Answers before, Wish wish) {
        return wish.worstValue(before).isEmpty() || Catalogue.build(car).value().isEmpty()
                ? NONE
                : against(new Steps(car, trial, before), wish);
    }

    /** What helps, where other things may be wished of the same car: no step is tried twice. */
    public static Advice against(Steps steps, Wish wish) {
        return wish.worstValue(steps.before()).isEmpty() ? NONE : new Search(steps, wish).advice();
    }

    /** Each step as it turns out. */
    private sealed interface Outcome {
        record Helps(Remedy remedy) implements Outcome {}

        record Not(Refused refused) implements Outcome {}

        /** It does nothing for the figure, or leaves the car without an answer. */
        record Idle() implements Outcome {}
    }

    /** What came of one adjustment. */
    private record Tried(Optional<Remedy> remedy, List<Refused> refused) {}

    private static final class Search {
        private final Steps steps;
        private final Answers before;
        private final Wish wish;
        private final Set<Judged> figures;
        private final RoadNeeds needs;
        private final OptionalDouble worstWithoutStops;

        Search(Steps steps, Wish wish) {
            this.steps = steps;
            this.wish = wish;
            before = steps.before();
            figures = new LinkedHashSet<>(steps.trial().judged(before));
            figures.add(wish.judged());
            needs = steps.needs();
            worstWithoutStops = worst(steps.withoutStops());
        }

        private OptionalDouble worst(Optional<Answers> answers) {
            return answers.map(wish::worstValue).orElseGet(OptionalDouble::empty);
        }

        Advice advice() {
            List<Tried> all = steps.courses().parallelStream().map(this::tried).toList();
            return new Advice(
                    all.stream()
                            .flatMap(tried -> tried.remedy().stream())
                            .sorted(Comparator.comparingDouble(remedy -> -remedy.worth()))
                            .toList(),
                    all.stream()
                            .flatMap(tried -> tried.refused().stream())
                            .sorted(Comparator.comparingDouble(refused -> -refused.felt()))
                            .toList());
        }

        private Tried tried(List<List<Effect.Step>> ways) {
            List<Remedy> remedies = new ArrayList<>();
            List<Refused> refused = new ArrayList<>();
            for (List<Effect.Step> way : ways) {
                tried(way, remedies, refused);
            }
            Optional<Remedy> best = remedies.stream().max(Comparator.comparingDouble(Remedy::worth));
            return new Tried(best, refused);
        }

        private void tried(List<Effect.Step> way, List<Remedy> remedies, List<Refused> refused) {
            Optional<Remedy> found = Optional.empty();
            Optional<Refused> first = Optional.empty();
            for (Effect.Step step : way) {
                boolean inSizes = step instanceof Effect.ByBar;
                if (found.isPresent() && !inSizes) {
                    break;
                }
                Outcome outcome = outcome(step);
                if (outcome instanceof Outcome.Helps helps) {
                    found = Optional.of(
                            found.map(smaller -> smaller.upTo(helps.remedy())).orElse(helps.remedy()));
                } else {
                    if (outcome instanceof Outcome.Not not && first.isEmpty()) {
                        first = Optional.of(not.refused());
                    }
                    if (outcome instanceof Outcome.Idle || inSizes) {
                        break;
                    }
                }
            }
            if (found.isPresent()) {
                remedies.add(found.get());
            } else {
                first.ifPresent(refused::add);
            }
        }

        private Outcome outcome(Effect.Step step) {
            Optional<Steps.After> changed = steps.after(step);
            if (changed.isEmpty()) {
                return new Outcome.Idle();
            }
            Answers after = changed.get().answers();
            List<Effect> effects = new ArrayList<>();
            List<OptionalDouble> was = wish.values(before);
            for (int bend = 0; bend < was.size(); bend++) {
                boolean turned = before.in(bend).noTurn().isEmpty();
                Optional<Effect> effect = Effect.between(step, before.in(bend), after.in(bend), figures);
                boolean lost = was.get(bend).isPresent()
                        && wish.judged().si(after.in(bend)).isEmpty();
                if ((turned && effect.isEmpty()) || lost) {
                    return new Outcome.Idle();
                }
                effects.add(effect.orElseGet(() -> new Effect(step, List.of())));
            }
            double gain = wish.good(wish.worstValue(after).orElseThrow())
                    - wish.good(wish.worstValue(before).orElseThrow());
            double felt = gain / wish.judged().criterion().noticeable();
            if (felt <= SMALLEST) {
                return new Outcome.Idle();
            }
            int worst = wish.worst(before);
            Effect there = effects.get(worst);
            Optional<Refused.Reason> why = reason(step, effects, after);
            if (why.isPresent()) {
                return new Outcome.Not(new Refused(step, there, felt, why.get(), Optional.empty()));
            }
            Stance stance = steps.stance(step, changed.get());
            Optional<Refused.Missed> missed = needs.missed(stance);
            if (missed.isPresent()) {
                return new Outcome.Not(new Refused(step, there, felt, Refused.Reason.NEED, missed));
            }
            return restsOnStop(step, gain, stance)
                    ? new Outcome.Not(new Refused(step, there, felt, Refused.Reason.STOP, Optional.empty()))
                    : new Outcome.Helps(new Remedy(
                            step,
                            effects,
                            gain,
                            worst,
                            felt,
                            Harm.largest(effects, wish.judged()),
                            gain
                                    < JustFelt.least(
                                            wish.judged(),
                                            wish.worstValue(before).orElseThrow()),
                            steps.price(step, changed.get()),
                            Optional.empty()));
        }

        private Optional<Refused.Reason> reason(Effect.Step step, List<Effect> effects, Answers after) {
            if (Harm.slides(effects)) {
                return Optional.of(Refused.Reason.SLIDES);
            }
            if (step instanceof Effect.ByNumber number && isPastUsual(number)) {
                return Optional.of(Refused.Reason.UNUSUAL);
            }
            return wish.judged().criterion().ofRide()
                    ? Harm.ofRide(wish.judged(), effects.get(0), before, after)
                    : Optional.empty();
        }

        /** Whether it goes out of what is usual, or further out. Rear wheels that toe out are usual on no road car. */
        private static boolean isPastUsual(Effect.ByNumber number) {
            Optional<Range> usual = number.adjustable().slot().usual();
            double after = number.adjustable().si() + number.size();
            if (number.path().equals(REAR_TOE) && number.size() < 0 && after < -ROUNDING) {
                return true;
            }
            return usual.isPresent()
                    && ((number.size() > 0 && after > usual.get().high())
                            || (number.size() < 0 && after < usual.get().low()));
        }

        private boolean restsOnStop(Effect.Step step, double gain, Stance after) {
            boolean off = needs.movesOffStops(after);
            if (step.movesStop()) {
                return !off;
            }
            OptionalDouble pace = wish.judged().pace();
            boolean atRest = wish.judged().criterion().ofRide();
            boolean touched = atRest
                    ? isOnStop(needs.before()) || isOnStop(after)
                    : RoadNeeds.touches(needs.before(), pace) || RoadNeeds.touches(after, pace);
            return touched && !off && gainWithoutStops(step) < BY_ITSELF * gain;
        }

        private static boolean isOnStop(Stance stance) {
            return stance instanceof Stance.Stands stands && stands.onStop();
        }

        /** What the step gains on the same car without its stops, SI; as much as can be where that car has no such figure. */
        private double gainWithoutStops(Effect.Step step) {
            OptionalDouble after = worst(steps.withoutStops(step));
            return after.isPresent() && worstWithoutStops.isPresent()
                    ? wish.good(after.getAsDouble()) - wish.good(worstWithoutStops.getAsDouble())
                    : Double.NEGATIVE_INFINITY;
        }
    }
}
