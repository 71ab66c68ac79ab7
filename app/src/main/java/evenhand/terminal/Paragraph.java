package evenhand.terminal;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines at its blanks. */
final class Paragraph {
    private Paragraph() {}

    /** Lines no longer than a width, unless a single word is. */
    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int start = 0;
        while (start <= text.length()) {
            int end = text.indexOf(' ', start);
            end = end < 0 ? text.length() : end;
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

    /** The first line after one indent, the others after another of the same length in blanks. */
    static void append(StringBuilder text, String indent, String words, int width) {
        String before = indent;
        for (String line : lines(Console.oneLine(words), width - indent.length())) {
            text.append(before).append(line).append('\n');
            before = " ".repeat(indent.length());
        }
    }
}
