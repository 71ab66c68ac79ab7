package evenhand.forms;

import java.util.ArrayList;
import java.util.List;

/** The answers about several files as one table: the file in the first column, and the columns' names once. */
public final class CsvOfFiles {
    private String head = "";

    /** What the answer about a file adds. Where its columns are others than those before, their names stand there anew. */
    public String with(String file, String answer) {
        List<String> lines = lines(answer);
        StringBuilder added = new StringBuilder();
        String own = "file," + lines.get(0);
        if (!own.equals(head)) {
            added.append(own).append('\n');
            head = own;
        }
        for (String row : lines.subList(1, lines.size())) {
            added.append(CsvForm.quoted(file)).append(',').append(row).append('\n');
        }
        return added.toString();
    }

    /** A line may go on behind an end of line that stands in quotes. */
    private static List<String> lines(String csv) {
        List<String> lines = new ArrayList<>();
        boolean quoted = false;
        int start = 0;
        for (int i = 0; i < csv.length(); i++) {
            char c = csv.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == '\n' && !quoted) {
                lines.add(csv.substring(start, i));
                start = i + 1;
            }
        }
        return lines;
    }
}
