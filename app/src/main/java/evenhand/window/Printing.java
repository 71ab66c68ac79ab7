package evenhand.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;

/** Prints the answer that is shown, as wide as the paper; a page ends between two things, not in the middle of one. */
final class Printing {
    private Printing() {}

    /** Asks for a printer and prints; says why not where it cannot. */
    static Optional<String> print(JComponent shown) {
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setJobName("Evenhand");
        job.setPrintable(pages(shown));
        try {
            if (job.printDialog()) {
                job.print();
            }
            return Optional.empty();
        } catch (PrinterException cannot) {
            return Optional.of("Cannot print: " + cannot.getMessage() + ".");
        }
    }

    /** The pages of what is shown. */
    static Printable pages(JComponent shown) {
        return (graphics, format, page) -> {
            double scale = scale(shown, format);
            List<Integer> ends = ends(shown, (int) (format.getImageableHeight() / scale));
            if (page >= ends.size()) {
                return Printable.NO_SUCH_PAGE;
            }
            int top = page == 0 ? 0 : ends.get(page - 1);
            Graphics2D g = (Graphics2D) graphics;
            g.translate(format.getImageableX(), format.getImageableY());
            g.scale(scale, scale);
            g.clipRect(0, 0, shown.getWidth(), ends.get(page) - top);
            g.translate(0, -top);
            shown.printAll(g);
            return Printable.PAGE_EXISTS;
        };
    }

    private static double scale(JComponent shown, PageFormat format) {
        return format.getImageableWidth() / Math.max(1, shown.getWidth());
    }

    /** Where the pages end, from the top: as far down as there is room without a cut through anything that fits a page. */
    static List<Integer> ends(JComponent shown, int room) {
        List<int[]> pieces = pieces(shown);
        TreeSet<Integer> edges = new TreeSet<>();
        pieces.forEach(piece -> {
            edges.add(piece[0]);
            edges.add(piece[1]);
        });
        List<Integer> ends = new ArrayList<>();
        int top = 0;
        while (shown.getHeight() - top > room) {
            int end = top + room;
            for (int edge : edges.subSet(top, false, top + room, true).descendingSet()) {
                if (pieces.stream().noneMatch(piece -> piece[0] < edge && edge < piece[1])) {
                    end = edge;
                    break;
                }
            }
            ends.add(end);
            top = end;
        }
        ends.add(shown.getHeight());
        return ends;
    }

    /** From where to where each picture, control and line of text reaches. */
    static List<int[]> pieces(JComponent shown) {
        List<int[]> pieces = new ArrayList<>();
        collect(shown, shown, pieces);
        return pieces;
    }

    private static void lines(int from, int to, int height, List<int[]> pieces) {
        for (int y = from; y < to; y += Math.max(1, height)) {
            pieces.add(new int[] {y, Math.min(y + height, to)});
        }
    }

    private static void collect(Container in, JComponent whole, List<int[]> pieces) {
        for (Component component : in.getComponents()) {
            if (!component.isVisible() || component.getHeight() == 0) {
                continue;
            }
            Rectangle place = SwingUtilities.convertRectangle(in, component.getBounds(), whole);
            if (component instanceof JTextArea area) {
                int line = area.getFontMetrics(area.getFont()).getHeight();
                lines(place.y + area.getInsets().top, place.y + place.height, line, pieces);
            } else if (component instanceof JTable table) {
                lines(place.y, place.y + place.height, table.getRowHeight(), pieces);
            } else if (component instanceof Container container && container.getComponentCount() > 0) {
                collect(container, whole, pieces);
            } else {
                pieces.add(new int[] {place.y, place.y + place.height});
            }
        }
    }
}
