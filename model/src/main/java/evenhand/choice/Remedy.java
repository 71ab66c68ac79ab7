package evenhand.choice;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A step that moves a figure the way that is wished, in whatever bend it is the worst.
 *
 * <p>A car that pushes to the left and lets its tail go to the right is not helped by what makes it push less on both sides: a
 * step is judged by the worse way round before and after it, and one that takes another way past neutral is none.
 *
 * @param effects of the step in each bend, in the trial's order; where the car does not turn as it stands, without its figures
 * @param gain by how much the worst value gets better, SI
 * @param worst the bend that has it as the car stands
 */
public record Remedy(Effect.Step step, List<Effect> effects, double gain, int worst) {
    /** What moves a figure by less than this part of what is noticeable is no help: five such steps would only just be felt. */
    private static final double SMALLEST = 0.2;

    public Remedy {
        effects = List.copyOf(effects);
    }

    /** What it does where the figure is the worst now. */
    public Effect whereWorst() {
        return effects.get(worst);
    }

    /**
     * The single changes that help, best first: each a step up or down, whichever helps more. Only what a shop can turn, cut or
     * swap at an axle, in the drive or the steering; weights, heights of masses and a tyre's law are what they are.
     *
     * @param before what the car answers as it stands
     * @param wish the figure
     * @param up whether the figure is to grow
     */
    public static List<Remedy> against(Entries car, Trial trial, Answers before, Judged wish, boolean up) {
        Wish wished = new Wish(wish, up, values(wish, before));
        if (wished.before().stream().allMatch(OptionalDouble::isEmpty)) {
            return List.of();
        }
        Set<Judged> figures = new LinkedHashSet<>(trial.judged(before));
        figures.add(wish);
        Comparator<Remedy> best = Comparator.comparingDouble(remedy -> -remedy.gain());
        return Effect.ways(car).stream()
                .filter(ways -> ways.stream().noneMatch(step -> step.work() == Slot.Work.ANOTHER_CAR))
                .toList()
                .parallelStream()
                .flatMap(ways -> ways.stream()
                        .flatMap(
                                step -> Effect.after(car, step, trial)
                                        .flatMap(after -> wished.met(step, before, after, figures))
                                        .stream())
                        .sorted(best)
                        .limit(1))
                .sorted(best)
                .toList();
    }

    private static List<OptionalDouble> values(Judged wish, Answers answers) {
        List<OptionalDouble> values = new ArrayList<>();
        for (int bend = 0; bend < answers.bends().size(); bend++) {
            values.add(wish.si(answers.in(bend)));
        }
        return values;
    }

    /**
     * What is wished.
     *
     * @param before the figure in each bend as the car stands, SI
     */
    private record Wish(Judged judged, boolean up, List<OptionalDouble> before) {
        /** A value so that more of it is better. */
        private double good(double value) {
            return up ? value : -value;
        }

        private int worst() {
            int worst = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int bend = 0; bend < before.size(); bend++) {
                if (before.get(bend).isPresent() && good(before.get(bend).getAsDouble()) < least) {
                    least = good(before.get(bend).getAsDouble());
                    worst = bend;
                }
            }
            return worst;
        }

        /** What a step is worth; nothing where it does not help, or harms elsewhere. */
        Optional<Remedy> met(Effect.Step step, Answers now, Answers after, Set<Judged> figures) {
            List<Effect> effects = new ArrayList<>();
            int worst = worst();
            double worstBefore = good(before.get(worst).orElseThrow());
            double worstAfter = Double.POSITIVE_INFINITY;
            for (int bend = 0; bend < before.size(); bend++) {
                boolean turned = now.in(bend).noTurn().isEmpty();
                Optional<Effect> effect = Effect.between(step, now.in(bend), after.in(bend), figures);
                OptionalDouble value = judged.si(after.in(bend));
                if ((turned && effect.isEmpty()) || (before.get(bend).isPresent() && value.isEmpty())) {
                    return Optional.empty();
                }
                effects.add(effect.orElseGet(() -> new Effect(step, List.of())));
                if (before.get(bend).isPresent()) {
                    double good = good(value.orElseThrow());
                    worstAfter = Math.min(worstAfter, good);
                    if (harms(good(before.get(bend).getAsDouble()), good, worstBefore)) {
                        return Optional.empty();
                    }
                }
            }
            double gain = worstAfter - worstBefore;
            return gain > SMALLEST * judged.criterion().noticeable()
                    ? Optional.of(new Remedy(step, effects, gain, worst))
                    : Optional.empty();
        }

        /**
         * Whether a way that pushes less than the worst is made to slide, or to slide more: no driver wants that for a little less
         * push the other way round. That a way pushes more, so that the other slides less, is no harm. Where not even the worst
         * way pushes, sliding is what is asked for.
         */
        private boolean harms(double was, double is, double worst) {
            double noticeable = judged.criterion().noticeable();
            return isOfBalance() && !up && worst < 0 && was > worst + noticeable && is > noticeable && is > was;
        }

        private boolean isOfBalance() {
            return judged.criterion().equals(Criterion.UNDERSTEER)
                    || judged.criterion().equals(Criterion.NEAR_UNDERSTEER);
        }
    }
}
