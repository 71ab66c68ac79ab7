package evenhand.doubt;

import evenhand.answers.Judged;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * How far one number of a car may be off: the half-width that holds nineteen times in twenty, two standard deviations of a normal law.
 *
 * @param number as it is in the first car that has it
 * @param halfWidth there, SI
 */
public record Tolerance(Adjustable number, double halfWidth) {
    /** Where no tolerance is given. */
    public enum Unsaid {
        /** What a workshop's usual measurement leaves. */
        AS_A_WORKSHOP_MEASURES,
        EXACT
    }

    public String path() {
        return number.path();
    }

    /**
     * The half-width of a number, SI: what the person gave; else of an estimate its own, and of a measured value that of a
     * workshop's usual measurement, unless such values are to be taken as exact. Defaults are exact: nobody measured them.
     */
    public static double of(Adjustable number, Unsaid unsaid) {
        if (number.origin() == Adjustable.Origin.DEFAULT) {
            return 0;
        }
        if (number.tolerance() > 0 || number.origin() == Adjustable.Origin.ESTIMATED) {
            return number.tolerance();
        }
        return unsaid == Unsaid.EXACT ? 0 : number.usualTolerance();
    }

    /**
     * Every number of some cars that may be off, once each; without what their ride estimates, without threads of perches, and without
     * mounts where no figure asks what parts carry: they move nothing else.
     */
    static List<Tolerance> all(List<Entries> cars, Unsaid unsaid, List<Judged> figures) {
        return each(cars, unsaid, car -> Catalogue.adjustments(car).stream()).stream()
                .filter(one -> matters(one, figures))
                .toList();
    }

    private static boolean matters(Tolerance one, List<Judged> figures) {
        boolean counts = !Catalogue.isOfMounts(one.path())
                || figures.stream()
                        .anyMatch(judged -> judged.criterion().loads().isPresent());
        return counts && !Catalogue.isOfPerches(one.path());
    }

    /** The same with what their ride estimates for comfort. */
    public static List<Tolerance> withRide(List<Entries> cars, Unsaid unsaid) {
        return withRide(cars, unsaid, List.of());
    }

    /** Those that matter to some figures. */
    static List<Tolerance> withRide(List<Entries> cars, Unsaid unsaid, List<Judged> figures) {
        return each(
                        cars,
                        unsaid,
                        car -> Stream.concat(
                                Catalogue.adjustments(car).stream(),
                                Catalogue.build(car).value().stream()
                                        .flatMap(built -> Catalogue.estimatedForComfort(built).stream())))
                .stream()
                .filter(one -> matters(one, figures))
                .toList();
    }

    private static List<Tolerance> each(
            List<Entries> cars, Unsaid unsaid, Function<Entries, Stream<Adjustable>> numbers) {
        Map<String, Tolerance> all = new LinkedHashMap<>();
        for (Entries car : cars) {
            numbers.apply(car).forEach(number -> {
                double halfWidth = of(number, unsaid);
                if (halfWidth > 0) {
                    all.putIfAbsent(number.path(), new Tolerance(number, halfWidth));
                }
            });
        }
        return List.copyOf(all.values());
    }
}
