package evenhand.window.desk;

import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Path;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.scenario.EntryJson;
import evenhand.scenario.FileCatalogue;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A place among the shapes, and what was given there. */
public record FormPlace(Shape<?> shape, Optional<Entries> given) {
    static final Shape<?> JOB = new Shape.Plain<>("job", FileCatalogue.besideTheCar(), values -> values);
    private static final Entries NOTHING = new Entries(Optional.empty(), Map.of());

    Shape.Plain<?> plain() {
        return shape instanceof Shape.ByName<?> byName
                ? byName.plain(given.orElse(NOTHING))
                : plain(shape, given.flatMap(Entries::kind));
    }

    FormPlace below(Path.Step step) {
        if (shape instanceof Shape.ByName<?> byName) {
            return new FormPlace(byName.each(), entries(given.flatMap(own -> own.get(step.key()))));
        }
        Content<?> content = plain().slot(step.key()).orElseThrow().content();
        Optional<Entry> entry = given.flatMap(own -> own.get(step.key()));
        if (content instanceof Content.Group<?> group) {
            return new FormPlace(group.shape(), entries(entry));
        } else if (content instanceof Content.Groups<?> groups) {
            boolean there = entry.orElse(null) instanceof Entry.Listed listed
                    && step.index() < listed.items().size();
            return new FormPlace(
                    groups.shape(),
                    there
                            ? Optional.of(
                                    ((Entry.Listed) entry.orElseThrow()).items().get(step.index()))
                            : Optional.empty());
        }
        throw new IllegalArgumentException("no object: " + step);
    }

    /** What an object of a car or job is, in the words of the trade. */
    public static String meaning(Form.Home home, Entries given, String path) {
        List<Path.Step> steps = Path.of(path).steps();
        int last = steps.size() - 1;
        return of(home, given, steps.subList(0, last))
                .plain()
                .slot(steps.get(last).key())
                .map(Slot::meaning)
                .orElse("");
    }

    static Optional<Entries> entries(Optional<Entry> entry) {
        return entry.filter(Entries.class::isInstance).map(Entries.class::cast);
    }

    static FormPlace of(Form.Home home, Entries given, List<Path.Step> steps) {
        FormPlace place = new FormPlace(home == Form.Home.CAR ? Catalogue.CAR : JOB, Optional.of(given));
        for (Path.Step step : steps) {
            place = place.below(step);
        }
        return place;
    }

    /** What was given under a path of the car, as JSON. */
    static Optional<String> given(Entries car, String path) {
        List<Path.Step> steps = Path.of(path).steps();
        String key = steps.get(steps.size() - 1).key();
        FormPlace place = of(Form.Home.CAR, car, steps.subList(0, steps.size() - 1));
        return place.given()
                .flatMap(own -> own.get(key))
                .map(entry -> EntryJson.write(place.plain().slot(key).orElseThrow(), entry));
    }

    /** Paths of what is given on a car and cannot stand beside something else there. */
    public static List<String> insteadOf(Entries car, String path) {
        List<Path.Step> steps = Path.of(path).steps();
        List<Path.Step> above = steps.subList(0, steps.size() - 1);
        String key = steps.get(above.size()).key();
        FormPlace place = of(Form.Home.CAR, car, above);
        return place.plain().slots().stream()
                .filter(other ->
                        place.given().flatMap(own -> own.get(other.key())).isPresent())
                .filter(other -> excludes(place.plain(), key, other.key()) || excludes(place.plain(), other.key(), key))
                .map(other -> Path.join(new Path(above).toString(), other.key()))
                .toList();
    }

    private static boolean excludes(Shape.Plain<?> shape, String one, String other) {
        return shape.slot(one).stream()
                .flatMap(slot -> slot.instead().stream())
                .anyMatch(instead -> !instead.both() && instead.slot().key().equals(other));
    }

    /** The object proper of a kind; the first where none is said. */
    static Shape.Plain<?> plain(Shape<?> shape, Optional<String> kind) {
        if (shape instanceof Shape.ByName<?> byName) {
            return byName.plain(NOTHING);
        }
        if (shape instanceof Shape.Kinds<?> kinds) {
            Shape.Plain<?> known = kind.isPresent() ? kinds.kinds().get(kind.get()) : null;
            return known == null ? kinds.kinds().values().iterator().next() : known;
        }
        return (Shape.Plain<?>) shape;
    }
}
