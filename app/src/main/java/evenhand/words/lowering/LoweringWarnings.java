package evenhand.words.lowering;

import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Stance;
import evenhand.turn.TurnAnswer;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What nobody may miss of a car let down step by step. */
public final class LoweringWarnings {
    private LoweringWarnings() {}

    /**
     * What is to be said before all else: that at a height the front goes first one way round and the rear the other way.
     * Heights with it are counted, the first is told; on each circle by itself where there are several.
     */
    public static List<String> of(LoweringStudy study, Units units) {
        double[] radii = study.rows().stream()
                .flatMap(row -> row instanceof Stance.Stands stands ? stands.bends().stream() : Stream.empty())
                .mapToDouble(Stance.Bend::radius)
                .distinct()
                .toArray();
        List<String> warnings = new ArrayList<>();
        for (double radius : radii) {
            warnings.addAll(warnings(study, radius, radii.length > 1 ? " on " + units.radius(radius) : "", units));
        }
        return warnings;
    }

    /** On one circle, which is named where there are more. */
    private static List<String> warnings(LoweringStudy study, double radius, String on, Units units) {
        List<String> split = new ArrayList<>();
        for (Stance stance : study.rows()) {
            split(stance, radius)
                    .ifPresent(told -> split.add(
                            (stance.lowered() == 0 ? "As it stands" : "At " + LowestWords.down(stance.lowered(), units))
                                    + on + ", "
                                    + Character.toLowerCase(told.charAt(0))
                                    + told.substring(1)));
        }
        return split.size() < 2
                ? split
                : List.of(split.get(0)
                        + (split.size() == 2
                                ? " So it is at one more of these heights."
                                : " So it is at " + (split.size() - 1) + " more of these heights."));
    }

    private static Optional<String> split(Stance stance, double radius) {
        if (!(stance instanceof Stance.Stands stands)) {
            return Optional.empty();
        }
        for (Stance.Bend one : stands.bends()) {
            for (Stance.Bend other : stands.bends()) {
                if (one.radius() == radius
                        && other.radius() == radius
                        && one.direction() != other.direction()
                        && one.turn() instanceof TurnAnswer.Turns turn) {
                    Optional<String> told = LimitWords.split(turn, other.turn());
                    if (told.isPresent()) {
                        return told;
                    }
                }
            }
        }
        return Optional.empty();
    }
}
