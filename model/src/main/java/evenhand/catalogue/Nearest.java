package evenhand.catalogue;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.ToIntBiFunction;

/** Finds the word that was probably meant. */
public final class Nearest {
    private Nearest() {}

    /** The nearest of some words by Levenshtein's distance, small and capital letters alike; empty where there are none. */
    public static String to(String written, Collection<String> known) {
        return to(written, known, Nearest::distance);
    }

    /** The same of texts that people leave off too early: each letter that both begin with brings them nearer by one. */
    static String toBeginning(String written, Collection<String> known) {
        return to(written, known, (one, other) -> distance(one, other) - alike(one, other));
    }

    private static String to(String written, Collection<String> known, ToIntBiFunction<String, String> distance) {
        String nearest = "";
        int least = Integer.MAX_VALUE;
        // A key of more than 60 letters is no slip of the pen; the cut keeps the work small.
        String cut = written.substring(0, Math.min(written.length(), 60)).toLowerCase(Locale.ROOT);
        for (String word : known) {
            int apart = distance.applyAsInt(cut, word.toLowerCase(Locale.ROOT));
            if (apart < least) {
                least = apart;
                nearest = word;
            }
        }
        return nearest;
    }

    private static int alike(String one, String other) {
        int letters = 0;
        while (letters < Math.min(one.length(), other.length()) && one.charAt(letters) == other.charAt(letters)) {
            letters++;
        }
        return letters;
    }

    /**
     * The key that was probably meant: by the trade's other words first, such as "sway bar" for {@code bar}, then by the letters.
     *
     * @return one of the known keys, or a path down from one of them; empty where there are none
     */
    public static String key(String written, Collection<String> known) {
        return TradeWords.key(written, known).orElseGet(() -> to(written, known));
    }

    /** Whether a key stands for another by a slip of the pen, or as another word of the trade. */
    public static boolean standsFor(String written, String key) {
        return isSlip(written, key)
                || TradeWords.key(written, List.of(key)).filter(key::equals).isPresent();
    }

    /** Other words that the trade has for what a path leads to, in small letters and without spaces: "swaybar". */
    public static List<String> otherWords(String path) {
        return TradeWords.others(path);
    }

    /** Whether one word is the other with a slip of the pen: two letters wrong, or a third of them. */
    public static boolean isSlip(String written, String meant) {
        return written.length() <= 60
                && distance(written.toLowerCase(Locale.ROOT), meant.toLowerCase(Locale.ROOT))
                        <= Math.max(2, meant.length() / 3);
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
