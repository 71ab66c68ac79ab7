package evenhand.words.travel;

import java.util.Locale;
import java.util.regex.Pattern;

/** Names of parts as they are said. */
final class PartWords {
    private static final Pattern CAPITAL = Pattern.compile("(?=[A-Z])");

    private PartWords() {}

    /** {@code lowerLinkLeft} is "the left lower link", {@code panhardRod} "the Panhard rod". */
    static String of(String part) {
        String words = String.join(" ", CAPITAL.split(part)).toLowerCase(Locale.ROOT);
        for (String side : new String[] {"left", "right"}) {
            if (words.endsWith(" " + side)) {
                return "the " + side + " " + words.substring(0, words.length() - side.length() - 1);
            }
        }
        return "the " + words.replace("panhard", "Panhard");
    }
}
