package evenhand.chart;

import evenhand.chart.Part.Bar;
import evenhand.look.LabelRoom;
import evenhand.look.SetupStyle;
import evenhand.look.Theme;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jfree.chart.ui.RectangleInsets;

/** Where title, keys, labels and notes of a chart stand around its plot. */
final class Layout {
    /** No column beside the plot is wider than this part of the picture. */
    private static final double WIDEST_COLUMN = 1.0 / 3;

    /** Names of rows alone may take more. */
    private static final double WIDEST_ALONE = 0.5;

    /** Narrower than this, in sizes of type, what is said beside rows is left to the cross-hair. */
    private static final double BOTH_COLUMNS = 52;

    /** The key above the plot takes no more than this part of the picture. */
    private static final double KEYS_AT_MOST = 0.3;

    private final Chart chart;
    private final Theme theme;
    private final FontRenderContext context;
    private final Rectangle2D area;
    private final double em;
    private final double line;

    private final List<String> title;
    private final List<String> notes;
    private final List<List<Key>> keys;
    private final LineLabels lineLabels;
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;
    private final Ruling across;
    private final Ruling up;

    /** One entry of the key above the plot. */
    record Key(
            String words, SetupStyle style, Part.Hatch hatch, Optional<Part.Weight> line, double sample, double width) {
        /** With a sample as wide as is usual, in sizes of type. */
        Key(String words, SetupStyle style, Part.Hatch hatch, Optional<Part.Weight> line, double width) {
            this(words, style, hatch, line, line.isPresent() ? 3 : 1.6, width);
        }
    }

    private Layout(Chart chart, Zoom zoom, Theme theme, FontRenderContext context, Rectangle2D area, double corner) {
        this.chart = chart;
        this.theme = theme;
        this.context = context;
        this.area = area;
        em = theme.size();
        line = 1.3 * em;
        double pad = 0.7 * em;
        double inner = area.getWidth() - 2 * pad;
        title = chart.title().isEmpty()
                ? List.of()
                : Wrapped.lines(chart.title(), theme.head(), context, inner - corner, 2);
        notes = chart.notes().stream()
                .flatMap(note -> Wrapped.lines(note, theme.small(), context, inner, 3).stream())
                .toList();
        bottom = pad + notes.size() * line + line + 0.2 * em;
        double heads =
                pad + 1.45 * em * title.size() + (chart.up() instanceof Axis.Measure ? line + 0.7 * em : 0.3 * em);

        boolean rows = chart.up() instanceof Axis.Rows;
        double room = area.getHeight() - heads - bottom - line;
        LineLabels labels = LineLabels.of(chart, zoom, theme, context, WIDEST_COLUMN * area.getWidth());
        boolean direct = !rows && labels.height() <= room && area.getWidth() > 26 * em;
        lineLabels = direct ? labels : LineLabels.NONE;
        int mostKeys = (int) Math.max(1, KEYS_AT_MOST * area.getHeight() / (1.5 * em));
        keys = keyRows(direct ? List.of() : lineKeys(), inner, mostKeys);
        top = heads + keys.size() * 1.5 * em;

        boolean wide = area.getWidth() > BOTH_COLUMNS * em;
        double besideWidth = 0;
        double nameWidth = 0;
        if (chart.up() instanceof Axis.Rows names) {
            for (Axis.Row row : names.rows()) {
                nameWidth = Math.max(nameWidth, width(row.words(), theme.plain()));
                besideWidth = wide ? Math.max(besideWidth, width(row.beside(), theme.small())) : 0;
            }
            nameWidth = Math.min(nameWidth, (wide ? WIDEST_COLUMN : WIDEST_ALONE) * area.getWidth());
            besideWidth = Math.min(besideWidth, WIDEST_COLUMN * area.getWidth());
        }
        left = rows ? pad + nameWidth + 0.6 * em : pad;
        right = rows
                ? pad + (besideWidth > 0 ? besideWidth + em : 0.5 * em)
                : direct ? pad + lineLabels.width() : pad + em;

        int stepsAcross = (int) Math.max(2, (area.getWidth() - left - right) / (4.5 * em));
        int stepsUp = (int) Math.max(2, (area.getHeight() - top - bottom) / (2.4 * em));
        across = Ruling.of(chart.across(), zoom.across(), stepsAcross, theme, true);
        up = chart.up() instanceof Axis.Measure measure
                ? Ruling.of(measure, zoom.up(), stepsUp, theme, false)
                : Ruling.ofRows((Axis.Rows) chart.up(), theme);
    }

    /** @param corner width of what else stands in the upper right corner, px */
    static Layout of(Chart chart, Zoom zoom, Theme theme, FontRenderContext context, Rectangle2D area, double corner) {
        return new Layout(chart, zoom, theme, context, area, corner);
    }

    Ruling across() {
        return across;
    }

    Ruling up() {
        return up;
    }

    LineLabels lineLabels() {
        return lineLabels;
    }

    /** Around plot and numbers of the axes. */
    RectangleInsets insets() {
        return new RectangleInsets(top, left, bottom, right);
    }

    private double width(String words, Font font) {
        return words.isEmpty()
                ? 0
                : Math.ceil(font.getStringBounds(words, context).getWidth());
    }

    /** Every line by its name; of set-ups with several lines, each set-up once, and which of its lines is which by their weight. */
    private List<Key> lineKeys() {
        Map<String, Part.Weight> parts = new LinkedHashMap<>();
        boolean told = true;
        for (Part.Line one : chart.lines()) {
            if (one.style().ofSetup()) {
                Part.Weight before = parts.putIfAbsent(one.part(), one.weight());
                told &= before == null || before == one.weight();
            }
        }
        told &= parts.size() > 1 && Set.copyOf(parts.values()).size() == parts.size();
        Map<String, Key> all = new LinkedHashMap<>();
        for (Part.Line one : chart.lines()) {
            boolean once = told && one.style().ofSetup();
            String words = once ? one.name() : one.label();
            all.putIfAbsent(words, key(words, one.style(), once ? Part.Weight.HEAVY : one.weight()));
        }
        if (told) {
            parts.forEach((words, weight) -> all.putIfAbsent(words, key(words, SetupStyle.PLAIN, weight)));
        }
        return List.copyOf(all.values());
    }

    private Key key(String words, SetupStyle style, Part.Weight weight) {
        return new Key(words, style, Part.Hatch.FULL, Optional.of(weight), width(words, theme.plain()) + 4.6 * em);
    }

    /** Keys of bars, and of lines that find no room at their ends; in as many rows as they need. */
    private List<List<Key>> keyRows(List<Key> lines, double width, int most) {
        List<Key> all = new ArrayList<>(lines);
        List<Chart.Setup> setups = chart.setups();
        boolean bars = !chart.bars().isEmpty() || !chart.whiskers().isEmpty();
        if (bars && setups.size() > 1) {
            for (Chart.Setup setup : setups) {
                all.add(new Key(
                        setup.name(),
                        setup.style(),
                        Part.Hatch.FULL,
                        Optional.empty(),
                        width(setup.name(), theme.plain()) + 3.2 * em));
            }
        }
        chart.bars().stream()
                .filter(bar -> !bar.part().isEmpty())
                .map(bar -> new Key(
                        bar.part(),
                        SetupStyle.NONE,
                        bar.hatch(),
                        Optional.empty(),
                        width(bar.part(), theme.plain()) + 3.2 * em))
                .distinct()
                .forEach(all::add);
        List<List<Key>> rows = new ArrayList<>();
        double used = Double.POSITIVE_INFINITY;
        for (int i = 0; i < all.size(); i++) {
            Key key = all.get(i);
            double needed = Math.min(key.width(), width);
            if (used + needed > width) {
                if (rows.size() == most) {
                    left(rows, all.size() - i, width);
                    return rows;
                }
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(key);
            used += needed;
        }
        return rows;
    }

    /** Says how many find no room; they are read off by the cross-hair. */
    private void left(List<List<Key>> rows, int count, double width) {
        List<Key> last = rows.get(rows.size() - 1);
        int without = count;
        Key more = more(without);
        while (last.size() > 1 && last.stream().mapToDouble(Key::width).sum() + more.width() > width) {
            last.remove(last.size() - 1);
            without++;
            more = more(without);
        }
        if (last.get(0).width() + more.width() > width) {
            rows.add(List.of(more)); // a name as wide as the chart
        } else {
            last.add(more);
        }
    }

    private Key more(int count) {
        String words = "and " + count + " more";
        return new Key(words, SetupStyle.NONE, Part.Hatch.FULL, Optional.empty(), 0, width(words, theme.plain()) + em);
    }

    /** Title, keys, titles of the axes, names of rows and notes. */
    void heads(Sheet sheet) {
        double pad = 0.7 * em;
        double x = area.getX() + pad;
        double y = area.getY() + pad;
        for (String words : title) {
            write(sheet, words, theme.head(), theme.ink(), x, y);
            y += 1.45 * em;
        }
        for (List<Key> row : keys) {
            double keyX = x;
            for (Key key : row) {
                key(sheet, key, keyX, y);
                keyX += key.width();
            }
            y += 1.5 * em;
        }
        if (chart.up() instanceof Axis.Measure measure) {
            write(sheet, measure.title(), theme.plain(), theme.quiet(), x, y);
        }
        rowNames(sheet);
        String below = chart.across().title();
        double wide = width(below, theme.plain());
        double fromRight = sheet.plot.getMaxX() - wide;
        double start = Math.max(x, Math.min(fromRight, area.getMaxX() - pad - wide));
        double bottomLine = area.getMaxY() - bottom;
        write(sheet, below, theme.plain(), theme.quiet(), start, bottomLine + 0.1 * em);
        double noteY = bottomLine + line + 0.3 * em;
        for (String note : notes) {
            write(sheet, note, theme.small(), theme.quiet(), x, noteY);
            noteY += line;
        }
    }

    private void write(Sheet sheet, String words, Font font, java.awt.Color colour, double x, double y) {
        Rectangle2D size = sheet.size(words, font);
        Rectangle2D place = new Rectangle2D.Double(x, y, size.getWidth(), size.getHeight());
        sheet.room.take(place);
        sheet.write(words, font, colour, place);
    }

    private void rowNames(Sheet sheet) {
        if (!(chart.up() instanceof Axis.Rows names)) {
            return;
        }
        double rowHeight = sheet.plot.getHeight() / Math.max(1, names.rows().size());
        for (int i = 0; i < names.rows().size(); i++) {
            double middle = sheet.y(i);
            column(sheet, names.rows().get(i).words(), theme.plain(), true, middle, rowHeight);
            if (area.getWidth() > BOTH_COLUMNS * em) {
                column(sheet, names.rows().get(i).beside(), theme.small(), false, middle, rowHeight);
            }
        }
    }

    /** Words of a row, left or right of the plot, in as many lines as the row has room for. */
    private void column(Sheet sheet, String words, Font font, boolean before, double middle, double rowHeight) {
        if (words.isEmpty()) {
            return;
        }
        double pad = 0.7 * em;
        double room = before ? left - pad - 0.6 * em : right - pad - em;
        double lineHeight = 1.2 * font.getSize2D();
        int most = (int) Math.max(1, rowHeight / lineHeight);
        List<String> lines = Wrapped.lines(words, font, context, room + 1, Math.min(3, most));
        double y = middle - lines.size() * lineHeight / 2;
        for (String one : lines) {
            Rectangle2D size = sheet.size(one, font);
            double x = before ? sheet.plot.getX() - 0.6 * em - size.getWidth() : sheet.plot.getMaxX() + em;
            Rectangle2D place = new Rectangle2D.Double(x, y, size.getWidth(), lineHeight);
            sheet.room.take(place);
            sheet.write(one, font, before ? theme.ink() : theme.quiet(), place);
            y += lineHeight;
        }
    }

    private void key(Sheet sheet, Key key, double x, double y) {
        Rectangle2D size = sheet.size(key.words(), theme.plain());
        double middle = y + size.getHeight() / 2;
        double sample = key.sample() * em;
        if (sample == 0) {
            write(sheet, key.words(), theme.plain(), theme.quiet(), x, y);
            return;
        }
        if (key.line().isPresent()) {
            LineLabels.sample(sheet, key.style(), key.line().get(), x, x + sample, middle);
        } else {
            Bar bar = new Bar(0, 0, 1, "", "", key.style(), key.hatch(), 0, 1, "");
            BarPainter.fill(
                    sheet,
                    bar,
                    new Rectangle2D.Double(x, middle - 0.45 * em, sample, 0.9 * em),
                    key.style().ofSetup());
        }
        double start = x + sample + 0.4 * em;
        double room = area.getMaxX() - 0.7 * em - start;
        write(sheet, LabelRoom.cut(key.words(), theme.plain(), context, room), theme.plain(), theme.ink(), start, y);
    }
}
