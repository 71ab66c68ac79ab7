package evenhand.window;

import evenhand.window.desk.ReportWriter.Pages;
import evenhand.window.desk.Worker;
import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;

/** Pages below one another, as wide as there is room. Each is drawn when it is first seen, in the background. */
final class PagesView extends JComponent implements Scrollable, Accessible {
    private static final int GAP = 8;

    /** So many pictures are kept: those in sight and a few around them. */
    private static final int KEPT = 6;

    private final transient Worker<Wanted> painter;
    private final transient Map<Integer, BufferedImage> pictures = new LinkedHashMap<>(KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Integer, BufferedImage> eldest) {
            return size() > KEPT;
        }
    };
    private transient Optional<Pages> pages = Optional.empty();
    private boolean late;

    /** Pages that are in sight, so many pixels wide. */
    private record Wanted(Pages pages, int first, int last, int width) {}

    PagesView() {
        painter = new Worker<>("pages", 0, (wanted, progress) -> draw(wanted), share -> {});
        setName("report pages");
        setFocusable(true);
    }

    void show(Pages next) {
        pages = Optional.of(next);
        pictures.clear();
        late = false;
        revalidate();
        repaint();
    }

    /** What is shown is of the job as it was. */
    void showLate() {
        late = true;
        repaint();
    }

    int count() {
        return pages.map(Pages::count).orElse(0);
    }

    void close() {
        painter.close();
    }

    private int pageHeight(int width) {
        return (int) Math.round(width * pages.map(Pages::heightByWidth).orElse(1.0));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = Math.max(1, getWidth());
        return new Dimension(width, count() * (pageHeight(width) + GAP));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (pages.isEmpty() || pages.get().count() == 0) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        int height = pageHeight(getWidth());
        int pitch = height + GAP;
        Rectangle seen = g.getClipBounds();
        int first = Math.max(0, seen.y / pitch);
        int last = Math.min(count() - 1, (seen.y + seen.height) / pitch);
        int width = (int) Math.round(getWidth() * g.getTransform().getScaleX());
        boolean missing = false;
        for (int page = first; page <= last; page++) {
            int y = page * pitch;
            BufferedImage picture = pictures.get(page);
            g.setColor(Color.WHITE);
            g.fillRect(0, y, getWidth(), height);
            if (picture != null) {
                g.drawImage(picture, 0, y, getWidth(), height, null);
            }
            missing |= picture == null || picture.getWidth() != width;
            if (late) {
                g.setComposite(AlphaComposite.SrcOver.derive(0.6f));
                g.setColor(Looks.theme().background());
                g.fillRect(0, y, getWidth(), height);
                g.setComposite(AlphaComposite.SrcOver);
            }
            g.setColor(Looks.theme().grid());
            g.drawRect(0, y, getWidth() - 1, height - 1);
        }
        if (missing) {
            painter.ask(new Wanted(pages.get(), first, last, width));
        }
        g.dispose();
    }

    private void draw(Wanted wanted) {
        for (int page = wanted.first(); page <= wanted.last(); page++) {
            BufferedImage picture = wanted.pages().picture(page, wanted.width());
            int at = page;
            SwingUtilities.invokeLater(() -> {
                if (pages.filter(wanted.pages()::equals).isPresent()) {
                    pictures.put(at, picture);
                    repaint();
                }
            });
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Looks.em(3);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height - Looks.em(3);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Described();
        }
        return accessibleContext;
    }

    /** Says what is shown to who does not see it. */
    private final class Described extends AccessibleJComponent {
        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }

        @Override
        public String getAccessibleName() {
            return count() == 0
                    ? "the report's pages, not there yet"
                    : "the report's " + count() + " pages" + (late ? ", of the job as it was before" : "");
        }
    }
}
