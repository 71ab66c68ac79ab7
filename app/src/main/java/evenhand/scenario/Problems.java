package evenhand.scenario;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The problems of one file as they are found, each once. */
final class Problems {
    private final String file;
    private final Set<Problem> found = new LinkedHashSet<>();

    Problems(String file) {
        this.file = file;
    }

    String file() {
        return file;
    }

    void at(Place place, String what) {
        at(place, place.where(), what);
    }

    void at(Place place, String where, String what) {
        found.add(new Problem(file, place.line(), place.column(), where, what));
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    List<Problem> inOrder() {
        return found.stream().sorted(Problem.BY_PLACE).toList();
    }
}
