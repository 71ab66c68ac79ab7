package evenhand.validation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How often the truth of drawn cars had each rank among what a road test left possible, as the model's calibration has counted it: even
 * bars are right ones. Talts et al. 2018.
 */
record Calibration(List<Ranks> all) {
    private static final Path COUNTED = Path.of("..", "model", "target", "calibration.csv");
    private static final int BAR = 16;
    private static final int HEIGHT = 70;

    /** How often each bin was met. */
    record Ranks(String what, List<Integer> bins) {
        Ranks {
            bins = List.copyOf(bins);
        }
    }

    Calibration {
        all = List.copyOf(all);
    }

    /** What was counted last; nothing where it was not. */
    static Calibration counted() throws IOException {
        List<Ranks> all = new ArrayList<>();
        if (Files.exists(COUNTED)) {
            for (String line : Files.readAllLines(COUNTED)) {
                String[] cells = line.split(",", -1);
                all.add(new Ranks(
                        cells[0],
                        Arrays.stream(cells).skip(1).map(Integer::valueOf).toList()));
            }
        }
        return new Calibration(all);
    }

    String page() {
        StringBuilder page = new StringBuilder("<h2>Road tests of drawn cars</h2>\n");
        if (all.isEmpty()) {
            return page.append("<p>Not counted; mvn verify does.</p>\n").toString();
        }
        page.append(
                "<p>Each bar: of how many drawn cars the truth lay there among what their readings left possible. Even bars"
                        + " (the line) mean that intervals are neither too wide nor too narrow.</p>\n");
        for (Ranks ranks : all) {
            int worlds = ranks.bins().stream().mapToInt(Integer::intValue).sum();
            double even = (double) worlds / ranks.bins().size();
            int highest =
                    ranks.bins().stream().mapToInt(Integer::intValue).max().orElse(1);
            int width = BAR * ranks.bins().size();
            page.append(String.format(
                    Locale.ROOT,
                    "<p><b>%s</b>, %d cars<br><svg role=\"img\" aria-label=\"%s\" width=\"%d\" height=\"%d\">",
                    ranks.what(),
                    worlds,
                    ranks.bins(),
                    width,
                    HEIGHT));
            for (int bin = 0; bin < ranks.bins().size(); bin++) {
                double high = HEIGHT * 0.95 * ranks.bins().get(bin) / highest;
                page.append(String.format(
                        Locale.ROOT,
                        "<rect x=\"%d\" y=\"%.1f\" width=\"%d\" height=\"%.1f\" fill=\"#9db8d9\"/>",
                        bin * BAR,
                        HEIGHT - high,
                        BAR - 2,
                        high));
            }
            double line = HEIGHT - HEIGHT * 0.95 * even / highest;
            page.append(String.format(
                    Locale.ROOT,
                    "<line x1=\"0\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#222\"/></svg></p>%n",
                    width,
                    line,
                    line));
        }
        return page.toString();
    }
}
