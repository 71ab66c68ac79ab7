package evenhand.validation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** What was expected, what came out and how the expected value is known, as a page and as a table of commas. */
record Report(List<Check.Comparison> comparisons, Calibration calibration) {
    private static final String HEAD = """
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8"><title>Evenhand: validation report</title>
            <style>
            body { font: 15px/1.4 sans-serif; margin: 2em auto; max-width: 80em; padding: 0 1em; color: #222 }
            table { border-collapse: collapse; width: 100% } td, th { border-bottom: 1px solid #ddd; padding: .25em .6em;
            text-align: left; vertical-align: top } td.n { text-align: right; font-variant-numeric: tabular-nums }
            tr.check td { background: #f3f3ee } tr.off td { background: #fbdcdc } small { color: #666 }
            </style></head><body>
            <h1>Validation report</h1>
            """;

    private static final String EXPLANATION = """
            <p>Each figure is computed by the model itself and set beside a figure from outside. <b>read</b>: seen in the
            source; <b>derived</b>: computed by another route from the formula of the source; <b>from memory</b>: recalled
            from the source, not seen again.</p>
            <table><tr><th>figure</th><th>expected</th><th>computed</th><th>error</th><th>allowed</th></tr>
            """;

    void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("validation-report.html"), page());
        Files.writeString(folder.resolve("validation-report.csv"), table());
    }

    private String page() {
        StringBuilder page = new StringBuilder(HEAD);
        long checks =
                comparisons.stream().map(Check.Comparison::check).distinct().count();
        long off = comparisons.stream().filter(c -> !c.holds()).count();
        page.append(String.format(
                Locale.ROOT,
                "<p>%d checks, %d figures, %d outside their tolerance.</p>%n",
                checks,
                comparisons.size(),
                off));
        for (String known : Check.WAYS_OF_KNOWING) {
            long count = comparisons.stream()
                    .map(Check.Comparison::check)
                    .distinct()
                    .filter(check -> check.known().equals(known))
                    .count();
            page.append(String.format(Locale.ROOT, "<p>%s: %d checks</p>%n", known, count));
        }
        page.append(EXPLANATION);
        String last = "";
        for (Check.Comparison comparison : comparisons) {
            Check check = comparison.check();
            if (!check.id().equals(last)) {
                last = check.id();
                page.append("<tr class=\"check\"><td colspan=\"5\"><b>")
                        .append(escaped(check.id()))
                        .append("</b> ")
                        .append(escaped(check.what()))
                        .append("<br><small>")
                        .append(escaped(check.source()))
                        .append(". Known: ")
                        .append(escaped(check.known()))
                        .append(". Tolerance: ")
                        .append(escaped(check.reasonOfTolerance()))
                        .append(check.note().isEmpty() ? "" : ". " + escaped(check.note()))
                        .append("</small></td></tr>\n");
            }
            page.append(comparison.holds() ? "<tr>" : "<tr class=\"off\">")
                    .append(String.format(
                            Locale.ROOT,
                            "<td>%s</td><td class=\"n\">%s</td><td class=\"n\">%.10g</td><td class=\"n\">%.2g</td>"
                                    + "<td class=\"n\">%.2g</td></tr>%n",
                            escaped(comparison.name()),
                            comparison.expected(),
                            comparison.computed(),
                            comparison.error(),
                            comparison.allowed()));
        }
        return page.append("</table>\n")
                .append(calibration.page())
                .append("</body></html>\n")
                .toString();
    }

    private String table() {
        StringBuilder table = new StringBuilder("id,figure,expected,computed,error,allowed,known,source\n");
        for (Check.Comparison comparison : comparisons) {
            Check check = comparison.check();
            table.append(String.format(
                    Locale.ROOT,
                    "%s,%s,%s,%s,%.3g,%.3g,%s,\"%s\"%n",
                    check.id(),
                    comparison.name(),
                    comparison.expected(),
                    comparison.computed(),
                    comparison.error(),
                    comparison.allowed(),
                    check.known(),
                    check.source().replace("\"", "\"\"")));
        }
        return table.toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
