package evenhand.choice;

import evenhand.answers.Aim;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What stands in the way of an aim that is not met: things to be kept, found by searching again without them.
 *
 * @param leftOut of the things to be kept: one that blocks the aim by itself, all where they do it only together, or where
 *     without any of them the aim is not met either
 * @param without what is found then
 * @param stand how what was left out stands there
 */
public record Obstacle(List<Aim> leftOut, Finding.Found without, List<Finding.Kept> stand) {
    public Obstacle {
        leftOut = List.copyOf(leftOut);
        stand = List.copyOf(stand);
    }

    private static Obstacle of(List<Aim> leftOut, Finding.Found without) {
        return new Obstacle(
                leftOut, without, Variation.kept(leftOut, without.allRound().answers()));
    }

    /** Whether the aim is met without what was left out. */
    public boolean blocks() {
        return without.met();
    }

    /**
     * What blocks a finding.
     *
     * @param search the same search with other things to be kept
     * @return nothing where the aim is met or there is nothing to be kept
     */
    public static List<Obstacle> of(Finding finding, List<Aim> keeps, Function<List<Aim>, Finding> search) {
        if (keeps.isEmpty()
                || !(finding instanceof Finding.Found found)
                || found.met()
                || !(search.apply(List.of()) instanceof Finding.Found free)) {
            return List.of();
        }
        List<Obstacle> alone = new ArrayList<>();
        if (free.met() && keeps.size() > 1) {
            for (Aim keep : keeps) {
                List<Aim> rest = keeps.stream().filter(one -> !one.equals(keep)).toList();
                if (search.apply(rest) instanceof Finding.Found without && without.met()) {
                    alone.add(of(List.of(keep), without));
                }
            }
        }
        return alone.isEmpty() ? List.of(of(keeps, free)) : List.copyOf(alone);
    }
}
