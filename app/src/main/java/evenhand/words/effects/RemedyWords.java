package evenhand.words.effects;

import evenhand.answers.Ways;
import evenhand.choice.Effect;
import evenhand.choice.Remedy;
import evenhand.words.BothWays;
import evenhand.words.JudgedWords;
import evenhand.words.Units;
import java.util.List;

/** What helps against a complaint, of a car that was asked both ways round. */
public final class RemedyWords {
    private RemedyWords() {}

    /**
     * What helps most, and what comes with it.
     *
     * @param alike whether both ways are one and its mirror image
     */
    public static List<String> help(Complaint complaint, List<Remedy> remedies, Ways ways, boolean alike, Units units) {
        boolean apart =
                ways.isBoth() && !alike && !complaint.judged().criterion().ofRide(); // which knows no turn
        if (remedies.isEmpty() && apart) {
            return List.of("No single usual step moves the " + JudgedWords.figure(complaint.judged())
                    + " that way without harm the other way round.");
        }
        String turning = remedies.isEmpty() || !apart
                ? ""
                : BothWays.turning(ways.directions().get(remedies.get(0).worst()));
        List<Effect> helping = remedies.stream().map(Remedy::whereWorst).toList();
        return EffectWords.help(complaint, helping, turning, units);
    }
}
