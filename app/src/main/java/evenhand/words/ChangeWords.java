package evenhand.words;

import evenhand.choice.Change;
import java.util.Locale;
import java.util.regex.Pattern;

/** Changes in words. */
public final class ChangeWords {
    /** A longer text, of a curve or of several values, is not read out. */
    private static final int LONGEST = 30;

    /** All four together are one change, and short enough to be read. */
    private static final String CORNER_WEIGHTS = "cornerWeights";

    private static final String MOUNTS = "mounts.";

    private static final String LOWERED = ".lowered";

    /** What a unit beside it says as well. */
    private static final Pattern TAIL = Pattern.compile("(?<=\\w) (height|rate|roll stiffness)$");

    /** What stands for a value that was not given. */
    public static final String NONE = "none";

    private ChangeWords() {}

    /** What is changed: "rear lateral locator height". */
    public static String name(Change change) {
        return name(change.path());
    }

    /** What is changed as the subject of a sentence: "the rear lateral locator height", "the front lowering". */
    public static String subject(Change change) {
        String path = change.path();
        return path.endsWith(LOWERED)
                ? "the " + name(path.substring(0, path.length() - LOWERED.length())) + " lowering"
                : withArticle(change);
    }

    private static String withArticle(Change change) {
        return change.path().isEmpty() ? name(change) : "the " + name(change);
    }

    /** A path as it is said; what has a name of its own is called by that alone. */
    public static String name(String path) {
        if (path.startsWith(MOUNTS)) {
            return name(path.substring(MOUNTS.length()));
        }
        if (path.isEmpty()) {
            return "the whole car";
        }
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < path.length(); i++) {
            char c = path.charAt(i);
            if (c == '[') { // the second of a list: "front damper settings 2"
                int end = path.indexOf(']', i);
                words.append(' ').append(Integer.parseInt(path.substring(i + 1, end)) + 1);
                i = end;
                continue;
            }
            words.append(
                    c == '.' ? " " : Character.isUpperCase(c) ? " " + Character.toLowerCase(c) : String.valueOf(c));
        }
        return words.toString().toLowerCase(Locale.ROOT);
    }

    /** What is changed, as short as it can be said beside a number with its unit: "rear locator", "front spring". */
    public static String inShort(String path) {
        String name = name(path).replace("lateral locator", "locator");
        return TAIL.matcher(name).replaceFirst("");
    }

    /** What is done: "the rear lateral locator height goes from 255 mm to 275 mm". */
    public static String sentence(Change change) {
        String from = nominal(change.from());
        String to = nominal(change.to());
        if (change.differences().size() > 1 || from.length() > LONGEST || to.length() > LONGEST) {
            return change.differences().size() > 1
                    ? "several values of " + withArticle(change) + " change"
                    : withArticle(change) + " is another";
        }
        if (change.path().endsWith(LOWERED) && from.equals(NONE)) {
            boolean up = to.startsWith(Numbers.MINUS);
            return "the " + name(change.path().substring(0, change.path().length() - LOWERED.length()))
                    + (up ? " is raised by " + to.substring(Numbers.MINUS.length()) : " is let down by " + to);
        }
        return withArticle(change) + " goes from " + from + " to " + to;
    }

    /** From and to in short, for a table: "255 mm → 275 mm". */
    public static String fromTo(Change change) {
        String from = nominal(change.from());
        String to = nominal(change.to());
        if (change.path().equals(CORNER_WEIGHTS)) {
            return each(change.from()) + " → " + each(change.to());
        }
        return change.differences().size() > 1 || from.length() > LONGEST || to.length() > LONGEST
                ? change.differences().size() + (change.differences().size() == 1 ? " value" : " values")
                : from + " → " + to;
    }

    /** Several values, each without its tolerance. */
    private static String each(String texts) {
        return texts.replaceAll(" *(±|\\+/-)[^;]*", "");
    }

    /** Without its tolerance, with a minus that is one. */
    private static String nominal(String text) {
        return text.split(" *(±|\\+/-)", -1)[0].strip().replaceAll("(^| )-(?=[0-9.])", "$1" + Numbers.MINUS);
    }
}
