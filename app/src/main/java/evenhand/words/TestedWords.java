package evenhand.words;

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

    /** Names in quotation marks. */
    public static String names(List<String> names) {
        return "\"" + String.join("\", \"", names) + "\"";
    }
}
