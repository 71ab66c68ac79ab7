package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.function.DoublePredicate;

/**
 * The last place at which the front still goes first in every bend and all is kept: on the way from the present car to what was
 * found, where it does not; where there is none on that way, the nearest elsewhere.
 *
 * @param known places along the way, and whether they do
 * @param found the place that was found
 * @param present the place of the present car
 * @param does whether a place does
 */
record LastFrontFirst(SortedMap<Double, Boolean> known, double found, double present, DoublePredicate does) {
    /** Halvings that close in on it. */
    private static final int HALVINGS = 18;
    /** Steps back from it that are tried. */
    private static final int STEPS = 3;

    /** Whether the front goes first in every bend of a car, and all is kept. */
    static boolean does(Answers answers, List<Aim> keeps) {
        return answers.frontFirst() && Variation.keeps(answers, keeps);
    }

    /** Nothing where no known place does. */
    OptionalDouble value() {
        Optional<Edge> edge = edge();
        return edge.isPresent() ? OptionalDouble.of(edge.get().inside()) : OptionalDouble.empty();
    }

    /** The last whole step that does. */
    OptionalDouble step(Span span, double step) {
        Optional<Edge> edge = edge();
        if (edge.isEmpty()) {
            return OptionalDouble.empty();
        }
        double inside = edge.get().inside();
        boolean below = inside < found;
        double first = below ? Math.floor(inside / step) : Math.ceil(inside / step);
        for (int back = 0; back < STEPS; back++) {
            double count = below ? first - back : first + back;
            if (count >= span.firstStep(step) && count <= span.lastStep(step) && does.test(count * step)) {
                return OptionalDouble.of(count * step);
            }
        }
        return OptionalDouble.empty();
    }

    private Optional<Edge> edge() {
        Optional<Double> nearest = known.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .min(Comparator.<Double, Boolean>comparing(place -> !isOnTheWay(place))
                        .thenComparingDouble(place -> Math.abs(place - found)));
        return nearest.map(inside -> {
            double outside = known.keySet().stream()
                    .filter(place -> inside < found ? place > inside : place < inside)
                    .min(Comparator.comparingDouble(place -> Math.abs(place - inside)))
                    .orElse(found);
            return Edge.between(inside, outside, HALVINGS, does);
        });
    }

    private boolean isOnTheWay(double place) {
        return place >= Math.min(found, present) && place <= Math.max(found, present);
    }
}
