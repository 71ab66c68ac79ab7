package evenhand.words;

import evenhand.scenario.AsTested;
import evenhand.scenario.Scenario;
import java.util.List;

/** That an answer is of the car as road tests have corrected it. */
public final class TestedWords {
    private TestedWords() {}

    /** In one line. */
    public static String inALine(Scenario.Tested tested) {
        return "Asked of the car as the road " + (tested.tests().size() == 1 ? "test " : "tests ")
                + names(tested.tests())
                + (tested.tests().size() == 1 ? " has" : " have") + " corrected it"
                + (tested.agrees() ? "." : ", although the file and the road do not agree.");
    }

    /** Why there is no corrected car, in one line; what forces it is the caller's to say. */
    public static String why(AsTested none) {
        if (none instanceof AsTested.Silent silent) {
            return "the file has no road test with a reading"
                    + (silent.why().isEmpty() ? "" : ": " + String.join("; ", silent.why()));
        } else if (none instanceof AsTested.Disagrees disagrees) {
            return "the file and the road do not agree by " + names(disagrees.tests()) + " (probability "
                    + Numbers.significant(disagrees.probability(), 2) + ")";
        } else if (none instanceof AsTested.NoCar) {
            return "what the road says of the numbers makes no car of one of the set-ups";
        } else if (none instanceof AsTested.Unreadable unreadable) {
            return unreadable.problems().get(0).toString();
        }
        return "a set-up that was driven does not turn by the file";
    }

    /** Names in quotation marks. */
    public static String names(List<String> names) {
        return "\"" + String.join("\", \"", names) + "\"";
    }
}
