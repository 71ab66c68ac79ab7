package evenhand.words;

import evenhand.answers.Judged;

/** Names of what is judged. */
public final class JudgedWords {
    private JudgedWords() {}

    /** Where it is judged: "at 0.5 g", "at the limit". */
    public static String pace(Judged judged) {
        return judged.pace().isPresent() ? "at " + Units.pace(judged.pace().getAsDouble()) : "at the limit";
    }
}
