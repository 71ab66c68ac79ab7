package evenhand.choice;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Range;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import java.util.Optional;

/**
 * An adjustment, and the range that a search may set it in, SI.
 *
 * @param adjustable as the car has it now
 */
public record Span(Adjustable adjustable, double from, double to) {
    private static final String STIFFNESS = ".rollStiffness";
    private static final String LONGER = ".longer";
    private static final String ROD_LONGER = ".lateralLocator" + LONGER;

    /** So much of a step an end of the range may miss a whole multiple by: rounding of its unit. */
    private static final double ROUNDING = 1e-9;

    /**
     * @throws InvalidValue if the car has no such number, or the range is empty or leaves what a car can have
     */
    public static Span of(Entries car, String path, double from, double to) {
        Catalogue.slot(car, path);
        require(
                !Catalogue.decidedByLinks(car).contains(path),
                path,
                "is what the links make it on this car; change their points or lengths instead");
        Adjustable now = Catalogue.adjustments(car).stream()
                .filter(value -> value.path().equals(path))
                .findFirst()
                .orElseThrow(() -> new InvalidValue(path, "has no value on this car; give it in the file first"));
        require(from < to, path, "has a range that ends before it begins; --from must be below --to");
        Range bounds = now.slot().bounds();
        for (double end : new double[] {from, to}) {
            require(
                    bounds.holds(end),
                    path,
                    "cannot be " + Quantity.of(end, now.unit()).text() + " on any car: it must be at "
                            + (end < bounds.low() ? "least " : "most ")
                            + Quantity.of(end < bounds.low() ? bounds.low() : bounds.high(), now.unit())
                                    .text());
        }
        return new Span(now, from, to);
    }

    /**
     * The car in which a number can be looked for: as it is, or with a bar of no stiffness where the path names the stiffness of a
     * bar that is not fitted. Such a bar is none, so that what is looked for begins at zero. A rod across the axle by points is as
     * long as it was measured where nothing else is said.
     *
     * @throws InvalidValue if the path names another number of a bar that is not fitted
     */
    public static Entries fitting(Entries car, String path) {
        String rod = path.endsWith(ROD_LONGER) ? path.substring(0, path.length() - LONGER.length()) : "";
        if (!rod.isEmpty()
                && Catalogue.entry(car, rod + ".body").isPresent()
                && Catalogue.entry(car, path).isEmpty()) {
            Entry asMeasured = new Entry.Measured(Quantity.of(0, Dimension.LENGTH.metric()));
            return Catalogue.with(car, new Catalogue.Difference(path, Optional.empty(), Optional.of(asMeasured)));
        }
        for (End end : End.values()) {
            String bar = end.key() + ".bar";
            if (path.startsWith(bar + ".")
                    && Catalogue.entry(car, end.key()).isPresent()
                    && Catalogue.entry(car, bar).isEmpty()) {
                require(
                        path.equals(bar + STIFFNESS),
                        path,
                        "belongs to a bar that is not fitted; such a bar is looked for by " + bar + STIFFNESS
                                + ", from zero");
                return Effect.refitted(car, new Effect.ByBar(path, 0));
            }
        }
        return car;
    }

    /** Whether it is the stiffness of a bar and there is none. */
    public boolean isOfNoBar() {
        return isOfBar() && adjustable.si() == 0;
    }

    /** Whether it is the stiffness of a bar: zero is no bar. */
    public boolean isOfBar() {
        return path().endsWith(".bar" + STIFFNESS);
    }

    public String path() {
        return adjustable.path();
    }

    /** Whether a value lies outside what is usual, and is not what the car has; no bar is usual too. */
    public boolean isUnusual(double value) {
        return !(isOfBar() && value == 0)
                && value != adjustable.si()
                && adjustable
                        .slot()
                        .usual()
                        .filter(usual -> !usual.nearlyHolds(value))
                        .isPresent();
    }

    public double width() {
        return to - from;
    }

    /** Whether a whole multiple of a step lies in the range. */
    public boolean holds(double step) {
        return firstStep(step) <= lastStep(step);
    }

    /** The first whole multiple of a step in the range, in steps. */
    double firstStep(double step) {
        return Math.ceil(from / step - ROUNDING);
    }

    /** The last one. */
    double lastStep(double step) {
        return Math.floor(to / step + ROUNDING);
    }

    /** The value that the car has, or the end of the range that is nearer to it. */
    double start() {
        return cut(adjustable.si());
    }

    double cut(double value) {
        return Math.max(from, Math.min(to, value));
    }
}
