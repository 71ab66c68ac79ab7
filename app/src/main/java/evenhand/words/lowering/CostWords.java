package evenhand.words.lowering;

import evenhand.choice.Change;
import evenhand.lowering.Need;
import evenhand.quantity.Dimension;
import evenhand.words.ChangeWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What standing low costs a car, and which change put that right or is to blame. The sentences follow the numbers. */
public final class CostWords {
    /** How many of the sentences that tell what is kept are worth reading. */
    private static final int KEPT = 3;

    private CostWords() {}

    /**
     * What a low car must have, of two set-ups of it.
     *
     * @param before SI; none where it has no such thing, or no stop is touched and no steering let back up to the limit
     * @param now the same of the set-up that is handed over
     * @param without of that set-up without one of its changes each
     */
    public record Cost(Need need, OptionalDouble before, OptionalDouble now, List<Without> without) {
        public Cost {
            without = List.copyOf(without);
        }

        /** The same without a car before it. */
        public Cost alone() {
            return new Cost(need, OptionalDouble.empty(), now, List.of());
        }

        public boolean wasShort() {
            return falls(before);
        }

        public boolean isShort() {
            return falls(now);
        }

        private boolean falls(OptionalDouble value) {
            return value.isPresent()
                    && (need.atLeast() ? value.getAsDouble() < need.bound() : value.getAsDouble() > need.bound());
        }

        /** How good a value is: more is better. */
        private double good(OptionalDouble value) {
            return value.isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : need.atLeast() ? value.getAsDouble() : -value.getAsDouble();
        }

        /** The change that helps most: without it the car is worst off, and worse than with it. */
        private Optional<Without> helps() {
            return without.stream()
                    .filter(one -> good(one.value()) < good(now))
                    .min(Comparator.comparingDouble(one -> good(one.value())));
        }

        /** The change that costs most. */
        private Optional<Without> harms() {
            return without.stream()
                    .filter(one -> good(one.value()) > good(now))
                    .max(Comparator.comparingDouble(one -> good(one.value())));
        }
    }

    /** What a cost would be without a change, SI. */
    public record Without(Change change, OptionalDouble value) {}

    /** A value of a need: "46 mm", "beyond the limit". */
    public static String value(Need need, OptionalDouble value, Units units) {
        if (value.isEmpty()) {
            return need.dimension() == Dimension.ACCELERATION ? "beyond the limit" : "none";
        }
        return LowestWords.value(need, value.getAsDouble(), units);
    }

    /** What became worse and better, and by which change; what falls short first. */
    public static List<String> of(List<Cost> costs, Units units) {
        List<String> sentences = new ArrayList<>();
        costs.stream().filter(Cost::isShort).forEach(cost -> sentences.add(falls(cost, units)));
        costs.stream()
                .filter(cost -> cost.wasShort() && !cost.isShort())
                .forEach(cost -> sentences.add(mended(cost, units)));
        costs.stream()
                .filter(cost -> !cost.wasShort() && !cost.isShort())
                .flatMap(cost -> kept(cost, units).stream())
                .limit(KEPT)
                .forEach(sentences::add);
        return sentences;
    }

    private static String falls(Cost cost, Units units) {
        String wanted = ", and " + LowestWords.bound(cost.need(), units) + " is wanted, or "
                + cost.need().why();
        String now = "The " + cost.need().words();
        if (cost.wasShort()) {
            return value(cost.need(), cost.before(), units).equals(value(cost.need(), cost.now(), units))
                    ? now + " is " + value(cost.need(), cost.now(), units) + " as before" + wanted + "."
                    : now + " is still short, " + value(cost.need(), cost.now(), units) + " after "
                            + value(cost.need(), cost.before(), units) + wanted + ".";
        }
        return now + " is " + value(cost.need(), cost.now(), units) + wanted
                + cost.harms()
                        .map(one -> "; that is the price of the change of " + ChangeWords.subject(one.change())
                                + ": without it, it would be " + value(cost.need(), one.value(), units) + ".")
                        .orElse(".");
    }

    private static String mended(Cost cost, Units units) {
        return "The " + cost.need().words() + " was " + value(cost.need(), cost.before(), units) + ", where "
                + LowestWords.bound(cost.need(), units) + " is wanted; now it is "
                + value(cost.need(), cost.now(), units)
                + cost.helps()
                        .map(one -> ", by the change of " + ChangeWords.subject(one.change())
                                + " above all: without it, it would be " + value(cost.need(), one.value(), units)
                                + ".")
                        .orElse(".");
    }

    /** Only what one of the changes keeps from falling short. */
    private static Optional<String> kept(Cost cost, Units units) {
        return cost.helps()
                .filter(one -> cost.falls(one.value()))
                .map(one -> "The change of " + ChangeWords.subject(one.change()) + " keeps the "
                        + cost.need().words() + " at " + value(cost.need(), cost.now(), units)
                        + ": without it, it would be " + value(cost.need(), one.value(), units) + ", where "
                        + LowestWords.bound(cost.need(), units) + " is wanted.");
    }
}
