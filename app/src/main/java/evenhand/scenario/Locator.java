package evenhand.scenario;

import evenhand.catalogue.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Finds where a path of the catalogue stands in a file. */
final class Locator {
    private Locator() {}

    /**
     * The place of the value at a path, or of the deepest object round it. What was removed by null is there. The place's
     * {@code where} goes on to the path's end.
     */
    static Place place(Json root, String path) {
        if (path.isEmpty()) {
            return root.place();
        }
        Json here = root;
        Place place = root.place();
        List<Path.Step> steps = Path.of("car." + path).steps(); // Path.of takes one "car." off
        for (int i = 0; i < steps.size(); i++) {
            Path.Step step = steps.get(i);
            Optional<Json> named = byPath(here, steps.subList(i, steps.size()));
            if (named.isPresent()) {
                return named.get().place();
            }
            Json below = here instanceof Json.Obj object ? below(object, step.key()) : null;
            if (below instanceof Json.Arr list
                    && step.index() >= 0
                    && step.index() < list.items().size()) {
                below = list.items().get(step.index());
            }
            if (below == null) {
                String where = place.where().isEmpty() ? step.toString() : place.where() + "." + step;
                place = new Place(where, place.line(), place.column(), place.start(), place.end());
                here = new Json.Null(place);
            } else {
                here = below;
                place = below.place();
            }
        }
        return place;
    }

    /** What stands under a path that is itself a key, as tolerances do. */
    private static Optional<Json> byPath(Json here, List<Path.Step> rest) {
        return rest.size() > 1 && here instanceof Json.Obj object
                ? Optional.ofNullable(object.members()
                        .get(rest.stream().map(Path.Step::toString).collect(Collectors.joining("."))))
                : Optional.empty();
    }

    private static @Nullable Json below(Json.Obj object, String key) {
        Json value = object.members().get(key);
        return value == null ? object.removed().get(key) : value;
    }
}
