package evenhand.window;

import evenhand.look.Typeface;
import evenhand.window.desk.Verdict;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Function;
import javax.swing.JComponent;

/**
 * Paints one thing that a verdict says: words, their doubt, and a bar with its words. All bars of a verdict begin below one another
 * and share a scale. Where there is little room the doubt gives way first, then the bar; both are said under the pointer.
 */
final class VerdictCell extends JComponent {
    private static final double LEAST_BAR = 3;
    private static final double MOST_BAR = 16;
    private static final double THICK = 0.62;
    private static final int PAD = 8;
    private static final int GAP = 8;

    /** Bars are drawn against a whole number of so large parts. */
    private static final double STEP = 0.1;

    private transient Verdict.Cell cell = Verdict.Cell.of("");
    private Verdict.Kind kind = Verdict.Kind.WORDS;
    private Color ink = Color.BLACK;
    private Color behind = Color.WHITE;
    private boolean late;
    private int textWidth;
    private int doubtWidth;
    private int wordsWidth;
    private double scale = STEP;

    /** What stands below one another is as wide in all lines. */
    void measure(Verdict verdict, FontMetrics plain, FontMetrics small) {
        textWidth = widest(verdict, cell -> plain.stringWidth(cell.text()));
        doubtWidth =
                widest(verdict, cell -> cell.doubt().map(small::stringWidth).orElse(0));
        wordsWidth = widest(
                verdict,
                cell -> cell.left().map(bar -> small.stringWidth(bar.words())).orElse(0));
        scale = STEP * Math.max(1, Math.ceil(verdict.largestBar() / STEP - 1e-9));
    }

    private static int widest(Verdict verdict, Function<Verdict.Cell, Integer> width) {
        int widest = 0;
        for (Verdict.Line line : verdict.lines()) {
            for (int i = 0; i < line.cells().size(); i++) {
                if (verdict.columns().get(i).kind() == Verdict.Kind.WORDS) {
                    widest = Math.max(widest, width.apply(line.cells().get(i)));
                }
            }
        }
        return widest;
    }

    Component of(Verdict.Cell shown, Verdict.Kind kindOfColumn, boolean isLate, Color background, Color foreground) {
        cell = shown;
        kind = kindOfColumn;
        late = isLate;
        behind = background;
        ink = foreground;
        getAccessibleContext().setAccessibleName(said());
        return this;
    }

    private String said() {
        return cell.text()
                + cell.doubt().map(doubt -> " " + doubt).orElse("")
                + cell.left().map(bar -> ", " + bar.words()).orElse("");
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setColor(behind);
        g.fillRect(0, 0, getWidth(), getHeight());
        Color words =
                late ? Looks.theme().quiet() : cell.warning() ? Looks.theme().warning() : ink;
        Color quiet = Looks.theme().quiet();
        Font plain = cell.warning() ? Looks.strong() : Typeface.plain(Looks.size());
        FontMetrics metrics = g.getFontMetrics(plain);
        int baseline = (getHeight() + metrics.getAscent() - metrics.getDescent()) / 2;
        if (kind != Verdict.Kind.WORDS) {
            // The doubt stands right, so that the numbers do not move when it comes.
            int room = kind == Verdict.Kind.NUMBER
                    ? -GAP
                    : g.getFontMetrics(Looks.small()).stringWidth("± 88.8");
            write(g, cell.doubt().orElse(""), Looks.small(), quiet, getWidth() - PAD - room, baseline);
            int x = getWidth() - PAD - room - GAP - metrics.stringWidth(cell.text());
            write(g, cell.text(), plain, words, x, baseline);
        } else {
            write(g, cell.text(), plain, words, PAD, baseline);
            beside(g, quiet, baseline);
        }
        g.dispose();
    }

    private void beside(Graphics2D g, Color quiet, int baseline) {
        int x = PAD + textWidth + GAP;
        int room = getWidth() - PAD - x;
        int bar = Looks.em(LEAST_BAR);
        boolean doubts = doubtWidth > 0 && room >= doubtWidth + GAP + bar + GAP + wordsWidth;
        if (doubts) {
            write(g, cell.doubt().orElse(""), Looks.small(), quiet, x, baseline);
            x += doubtWidth + GAP;
        }
        if (cell.left().isEmpty()) {
            return;
        }
        Verdict.Bar left = cell.left().get();
        int free = getWidth() - PAD - x - GAP - wordsWidth;
        if (free >= bar) {
            int width = Math.min(free, Looks.em(MOST_BAR));
            bar(g, left, x, width);
            x += width + GAP;
        }
        write(g, left.words(), Looks.small(), late ? quiet : ink, x, baseline);
    }

    private void bar(Graphics2D g, Verdict.Bar left, int x, int width) {
        double high = Looks.em(THICK);
        double y = (getHeight() - high) / 2;
        g.setColor(Looks.theme().grid());
        g.fill(new Rectangle2D.Double(x, y, width, high));
        g.setColor(cell.warning() ? Looks.theme().warning() : Looks.theme().quiet());
        double end = width * Math.min(1, left.part() / scale);
        g.fill(new Rectangle2D.Double(x, y, end, high));
        left.doubt().ifPresent(half -> {
            double from = x + width * Math.max(0, left.part() - half) / scale;
            double to = x + width * Math.min(scale, left.part() + half) / scale;
            double middle = getHeight() / 2.0;
            g.setColor(ink);
            g.setStroke(new BasicStroke(1.2f));
            g.draw(new Line2D.Double(from, middle, to, middle));
            g.draw(new Line2D.Double(from, middle - 3, from, middle + 3));
            g.draw(new Line2D.Double(to, middle - 3, to, middle + 3));
        });
    }

    private static void write(Graphics2D g, String text, Font font, Color colour, int x, int baseline) {
        g.setFont(font);
        g.setColor(colour);
        g.drawString(text, x, baseline);
    }

    @Override
    public javax.accessibility.AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public javax.accessibility.AccessibleRole getAccessibleRole() {
                    return javax.accessibility.AccessibleRole.LABEL;
                }
            };
        }
        return accessibleContext;
    }
}
