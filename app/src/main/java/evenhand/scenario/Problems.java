package evenhand.scenario;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The problems of one file as they are found, each once. Of very many only the first are kept. */
final class Problems {
    /** Nobody reads more. */
    static final int LISTED = 200;

    private static final int KEPT = 10_000;

    private final String file;
    private final Set<Problem> found = new LinkedHashSet<>();
    private boolean overflowed;

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
        if (isFull()) {
            overflowed = true;
        } else {
            found.add(new Problem(file, place.line(), place.column(), where, what));
        }
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** Whether no more are kept; then no work need go into their words. */
    boolean isFull() {
        return found.size() >= KEPT;
    }

    /** Whether so many are known that what is found now is hardly read; then a search for the nearest name is not worth its time. */
    boolean isMoreThanListed() {
        return found.size() > LISTED;
    }

    /** The first in the order of the file, and a last line that counts the others. */
    List<Problem> inOrder() {
        List<Problem> sorted = found.stream().sorted(Problem.BY_PLACE).toList();
        int more = sorted.size() - LISTED;
        if (more <= 0) {
            return sorted;
        }
        List<Problem> listed = new ArrayList<>(sorted.subList(0, LISTED));
        String count = (overflowed ? "more than " : "") + more + " more " + (more == 1 ? "problem" : "problems");
        listed.add(new Problem(file, 0, 0, "", "and " + count));
        return listed;
    }
}
