package evenhand.choice;

import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.OneNumber;
import evenhand.catalogue.Slot;
import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;

/**
 * How far one step of an adjustment moves one figure, all else left as it is: what would move it most.
 *
 * @param step what is done
 * @param base the figure of the car as it stands, SI
 * @param difference by how much it moves, SI
 */
public record Lever(Effect.Step step, double base, double difference) {
    /** A light bar of a road car, N·m/rad: common practice, no source. */
    public static final double LIGHT_BAR = Unit.of("N*m/deg").toSi(60);

    /** What moves a figure by less than this part of what is noticeable is none. */
    private static final double SMALLEST = 0.02;

    /** Which way the figure is to go. */
    public enum Way {
        UP,
        DOWN,
        EITHER
    }

    /** What is asked. */
    private record Question(Entries car, OneNumber numbers, Trial trial, Judged figure, double base, Way way) {
        /** A step's effect; none where no car can have it, or has no such figure. */
        Optional<Lever> of(Effect.Step step) {
            Optional<Car> after = step instanceof Effect.ByNumber number
                    ? numbers.with(number.path(), si -> si + number.size())
                    : Effect.after(car, step);
            OptionalDouble value = after.map(built -> figure.si(trial.ask(built, List.of(figure))))
                    .orElseGet(OptionalDouble::empty);
            return value.isPresent()
                    ? Optional.of(new Lever(step, base, value.getAsDouble() - base))
                    : Optional.empty();
        }

        private boolean helps(Lever lever) {
            return Math.abs(lever.difference) > SMALLEST * figure.criterion().noticeable()
                    && switch (way) {
                        case UP -> lever.difference > 0;
                        case DOWN -> lever.difference < 0;
                        case EITHER -> true;
                    };
        }

        /** The step that was tried, or else the same adjustment's other way, where the figure goes as it is to go. */
        Optional<Lever> helping(Tried tried) {
            if (tried.lever().isEmpty() || helps(tried.lever().get())) {
                return tried.lever();
            }
            return tried.others().stream()
                    .flatMap(step -> of(step).stream())
                    .filter(this::helps)
                    .findFirst();
        }

        /** The first of some steps that has such a figure, and those after it. */
        Tried tried(List<Effect.Step> steps) {
            for (int i = 0; i < steps.size(); i++) {
                Optional<Lever> lever = of(steps.get(i));
                if (lever.isPresent()) {
                    return new Tried(lever, steps.subList(i + 1, steps.size()));
                }
            }
            return new Tried(Optional.empty(), List.of());
        }
    }

    /** A step that was tried, and the other way that the same adjustment can go. */
    private record Tried(Optional<Lever> lever, List<Effect.Step> others) {
        double size() {
            return lever.map(one -> Math.abs(one.difference)).orElse(0.0);
        }
    }

    /**
     * The adjustments that move a figure most by one usual step, largest first. Only what a shop can turn, cut, swap or rebuild;
     * weights and a tyre's law are what they are, and a stop is no lever. A bar that is not fitted may be fitted. Each steps up, or down where that is what
     * the figure is to go by.
     *
     * @param most work that a step may take
     * @param way which way the figure is to go
     * @param count how many
     * @return fewer where fewer move it; none where the car as it stands has no such figure
     * @throws CancellationException if it is no longer wanted
     */
    public static List<Lever> strongest(
            Entries car, Trial trial, Judged figure, Slot.Work most, Way way, int count, Progress progress) {
        OneNumber numbers = new OneNumber(car);
        Trial asked = trial.with(figure);
        Optional<Answers> before = numbers.asGiven().map(built -> asked.ask(built, List.of(figure)));
        OptionalDouble base = before.map(figure::si).orElseGet(OptionalDouble::empty);
        if (base.isEmpty()) {
            return List.of();
        }
        Question question = new Question(car, numbers, asked, figure, base.getAsDouble(), way);
        List<Tried> tried = progress.each(steps(car, most), question::tried).stream()
                .sorted(Comparator.comparingDouble(one -> -one.size()))
                .toList();
        List<Lever> levers = new ArrayList<>();
        for (int i = 0; i < tried.size() && levers.size() < count; i++) {
            question.helping(tried.get(i)).ifPresent(levers::add);
        }
        return levers.stream()
                .sorted(Comparator.comparingDouble(lever -> -Math.abs(lever.difference)))
                .toList();
    }

    private static List<List<Effect.Step>> steps(Entries car, Slot.Work most) {
        List<List<Effect.Step>> all = new ArrayList<>(Effect.ways(car));
        Optional<Car> built = Catalogue.build(car).value();
        for (End end : End.values()) {
            if (built.isPresent() && built.get().axle(end).bar().isEmpty()) {
                all.add(List.of(new Effect.ByBar(end.key() + ".bar.rollStiffness", LIGHT_BAR)));
            }
        }
        all.removeIf(
                ways -> ways.get(0).work().compareTo(most) > 0 || ways.get(0).movesStop());
        return all;
    }
}
