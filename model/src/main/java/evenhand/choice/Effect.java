package evenhand.choice;

import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What one step of one adjustment does to a car in one trial, all else left as it is.
 *
 * @param adjustable what is adjusted, and where it stands
 * @param step up or down, SI
 * @param moves of every figure that both cars have
 */
public record Effect(Adjustable adjustable, double step, List<Move> moves) {
    /** What moves a figure by less than this part of what is noticeable is no help. */
    private static final double SMALLEST = 0.02;

    private static final Pattern WORKSHOPS = Pattern.compile("(front|rear|drive|steering)\\.");

    /** What a figure was, and by how much it moves, SI. */
    public record Move(Judged judged, double base, double difference) {
        /** In what is noticeable of the figure. */
        public double size() {
            return Math.abs(difference) / judged.criterion().noticeable();
        }
    }

    public Effect {
        moves = List.copyOf(moves);
    }

    /**
     * The effects of one usual step up of each adjustment that this car has, largest first; down where a step up makes no car.
     * What leaves the car without an answer either way has none.
     *
     * @param before what the car answers as it stands
     */
    public static List<Effect> each(Entries car, Trial trial, Answers before) {
        return largestFirst(usual(car).parallelStream()
                .flatMap(value -> of(car, value, value.step(), trial, before)
                        .or(() -> of(car, value, -value.step(), trial, before))
                        .stream())
                .toList());
    }

    /**
     * The single changes that move a figure the way that is wished, best first: each a step up or down, whichever helps more.
     * Only what a shop can turn, cut or swap at an axle, in the drive or the steering; weights, heights of masses and a tyre's
     * law are what they are.
     *
     * @param before what the car answers as it stands
     * @param wish the figure
     * @param up whether the figure is to grow
     */
    public static List<Effect> helping(Entries car, Trial trial, Answers before, Judged wish, boolean up) {
        Comparator<Effect> best = Comparator.comparingDouble(effect -> -effect.gain(wish, up));
        return usual(car).stream().filter(value -> isWorkshops(value.path())).toList().parallelStream()
                .flatMap(value -> List.of(value.step(), -value.step()).stream()
                        .flatMap(step -> of(car, value, step, trial, before).stream())
                        .filter(effect -> effect.helps(wish, up))
                        .sorted(best)
                        .limit(1))
                .sorted(best)
                .toList();
    }

    private static boolean isWorkshops(String path) {
        boolean tyre = path.contains(".tyre.") && !path.endsWith(".pressure");
        return WORKSHOPS.matcher(path).lookingAt() && !path.contains(".unsprung") && !tyre;
    }

    private static List<Adjustable> usual(Entries car) {
        return Catalogue.adjustments(car).stream()
                .filter(value -> value.slot().step().isPresent() && value.step() > 0)
                .toList();
    }

    private static List<Effect> largestFirst(List<Effect> effects) {
        return effects.stream()
                .sorted(Comparator.comparingDouble(effect -> -effect.size()))
                .toList();
    }

    private static Optional<Effect> of(Entries car, Adjustable value, double step, Trial trial, Answers before) {
        if (!value.slot().bounds().holds(value.si() + step)) {
            return Optional.empty();
        }
        Optional<Answers> after = Catalogue.build(Catalogue.with(car, value.path(), value.si() + step))
                .value()
                .map(trial::ask);
        if (after.isEmpty() || after.get().noTurn().isPresent()) {
            return Optional.empty();
        }
        List<Move> moves = new ArrayList<>();
        for (Judged judged : trial.judged()) {
            judged.si(before)
                    .ifPresent(base ->
                            judged.si(after.get()).ifPresent(now -> moves.add(new Move(judged, base, now - base))));
        }
        return Optional.of(new Effect(value, step, moves));
    }

    /** The largest move, in what is noticeable. */
    public double size() {
        return moves.stream().mapToDouble(Move::size).max().orElse(0);
    }

    /** The move of one figure. */
    public Optional<Move> move(Judged judged) {
        return moves.stream().filter(move -> move.judged().equals(judged)).findFirst();
    }

    private double gain(Judged wish, boolean up) {
        double difference = move(wish).map(Move::difference).orElse(0.0);
        return up ? difference : -difference;
    }

    private boolean helps(Judged wish, boolean up) {
        return gain(wish, up) > SMALLEST * wish.criterion().noticeable();
    }
}
