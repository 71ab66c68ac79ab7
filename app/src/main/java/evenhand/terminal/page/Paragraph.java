package evenhand.terminal.page;

import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Text broken into lines at its blanks, but not between a number and its unit. */
final class Paragraph {
    /** What may stand after a unit in a sentence; an inertia's unit has its own bracket. */
    private static final Pattern MARKS = Pattern.compile("[.,;:!?\"…]*(?:\\)[.,;:!?\"…]*)?$");

    private Paragraph() {}

    /** Lines no longer than a width, unless a single word is. */
    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int start = 0;
        while (start <= text.length()) {
            int end = endOfWord(text, start);
            while (end < text.length() && isUnitOf(text.substring(start, end), text, end + 1)) {
                end = endOfWord(text, end + 1);
            }
            String word = text.substring(start, end);
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
            start = end + 1;
        }
        lines.add(line.toString());
        return lines;
    }

    private static int endOfWord(String text, int start) {
        int end = text.indexOf(' ', start);
        return end < 0 ? text.length() : end;
    }

    /** Whether a word ends in a number and what follows is its unit, marks after it or not. */
    private static boolean isUnitOf(String word, String text, int start) {
        if (word.isEmpty() || !Character.isDigit(word.charAt(word.length() - 1))) {
            return false;
        }
        String next = text.substring(start, endOfWord(text, start));
        String bare = MARKS.matcher(next).replaceFirst("");
        return !bare.isEmpty() && Unit.find(bare).isPresent();
    }

    /** The first line after one indent, the others after another of the same length in blanks. */
    static void append(StringBuilder text, String indent, String words, int width) {
        String before = indent;
        for (String line : lines(Console.oneLine(words), width - indent.length())) {
            text.append(before).append(line).append('\n');
            before = " ".repeat(indent.length());
        }
    }
}
