package evenhand.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Which look each set-up has. One that is written down stays with its set-up; the others get the first that are free, in the order
 * of the file, so that a file which says nothing of looks has them in its order.
 */
final class SetupLooks {
    private SetupLooks() {}

    /**
     * The look of each set-up, counted from 0.
     *
     * @param given as written down, in the order of the file
     */
    static List<Integer> of(List<OptionalInt> given) {
        List<Integer> taken = new ArrayList<>();
        given.forEach(look -> look.ifPresent(taken::add));
        List<Integer> looks = new ArrayList<>();
        int next = 0;
        for (OptionalInt look : given) {
            if (look.isPresent()) {
                looks.add(look.getAsInt());
                continue;
            }
            while (taken.contains(next)) {
                next++;
            }
            looks.add(next);
            next++;
        }
        return looks;
    }
}
