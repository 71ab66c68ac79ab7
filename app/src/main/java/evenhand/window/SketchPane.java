package evenhand.window;

import evenhand.drawing.DrawingPainter;
import evenhand.drawing.measuring.Sketch;
import evenhand.drawing.measuring.Sketches;
import evenhand.words.ChangeWords;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** How the value that has the keys is measured: a sketch, and what goes where in words. */
final class SketchPane extends JPanel {
    /** Wide enough that the sketch stands beside what it explains, in sizes of type; else it stands below. */
    private static final double WIDE = 56;

    private static final double COLUMN = 19;
    private static final double STRIP = 11;

    private final Canvas canvas = new Canvas();
    private final Words.Area name = new Words.Area(
            "what is measured", Looks::strong, () -> Looks.theme().ink());
    private final Words.Area how = Words.plain("how it is measured");
    private transient Optional<Sketch> shown = Optional.empty();
    private String path = "";

    SketchPane() {
        setLayout(new Within());
        setName("sketch");
        setOpaque(false);
        how.setName("how it is measured");
        add(canvas);
        add(name);
        add(how);
        setVisible(false);
    }

    /** Shows the sketch of a value; what was shown stays where it has none. */
    void show(String measured) {
        Sketches.of(measured).ifPresent(sketch -> {
            path = measured;
            shown = Optional.of(sketch);
            String words = ChangeWords.name(measured);
            Words.put(name, words);
            Words.put(how, sketch.how());
            canvas.getAccessibleContext().setAccessibleName("sketch of how the " + words + " is measured");
            canvas.getAccessibleContext().setAccessibleDescription(sketch.how());
            setVisible(true);
            revalidate();
            repaint();
        });
    }

    /** The value whose sketch is shown. */
    String path() {
        return path;
    }

    void clear() {
        path = "";
        shown = Optional.empty();
        setVisible(false);
    }

    private final class Canvas extends JComponent {
        @Override
        public javax.accessibility.AccessibleContext getAccessibleContext() {
            if (accessibleContext == null) {
                accessibleContext = new AccessibleJComponent() {
                    @Override
                    public javax.accessibility.AccessibleRole getAccessibleRole() {
                        return javax.accessibility.AccessibleRole.ICON;
                    }
                };
            }
            return accessibleContext;
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            shown.ifPresent(sketch -> {
                Graphics2D g = (Graphics2D) graphics.create();
                DrawingPainter.paint(
                        sketch.drawing(), Looks.theme(), g, new Rectangle2D.Double(0, 0, getWidth(), getHeight()));
                g.dispose();
            });
        }
    }

    /** Picture over words in a column, beside them in a strip. */
    private final class Within implements LayoutManager {
        @Override
        public void addLayoutComponent(String name, java.awt.Component component) {}

        @Override
        public void removeLayoutComponent(java.awt.Component component) {}

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            return new Dimension(Looks.em(COLUMN), Looks.em(STRIP));
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(0, 0);
        }

        @Override
        public void layoutContainer(Container parent) {
            int wide = getWidth();
            int high = getHeight();
            int gap = Looks.em(0.6);
            boolean strip = wide > 2 * high;
            int pictureWide = strip ? Math.min(wide / 2, 2 * high) : wide;
            int pictureHigh = strip ? high : Math.min(Looks.em(16), high * 2 / 3);
            canvas.setBounds(0, 0, pictureWide, pictureHigh);
            int x = strip ? pictureWide + gap : 0;
            int y = strip ? 0 : pictureHigh + gap;
            int words = wide - x;
            name.setSize(words, high);
            int nameHigh = name.getPreferredSize().height;
            name.setBounds(x, y, words, nameHigh);
            how.setBounds(x, y + nameHigh + gap / 2, words, Math.max(0, high - y - nameHigh - gap / 2));
        }
    }

    /** Puts a pane and its sketch beside one another where there is room, else one above the other. */
    static final class Beside implements LayoutManager {
        private final JComponent main;
        private final SketchPane sketch;

        Beside(JComponent main, SketchPane sketch) {
            this.main = main;
            this.sketch = sketch;
        }

        @Override
        public void addLayoutComponent(String name, java.awt.Component component) {}

        @Override
        public void removeLayoutComponent(java.awt.Component component) {}

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            return main.getPreferredSize();
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(0, 0);
        }

        @Override
        public void layoutContainer(Container parent) {
            int wide = parent.getWidth();
            int high = parent.getHeight();
            int gap = Looks.em(1.2);
            if (!sketch.isVisible()) {
                main.setBounds(0, 0, wide, high);
            } else if (wide >= Looks.em(WIDE)) {
                int column = Looks.em(COLUMN);
                main.setBounds(0, 0, wide - column - gap, high);
                sketch.setBounds(wide - column, 0, column - gap, high);
            } else {
                int strip = Math.min(Looks.em(STRIP), high / 3);
                main.setBounds(0, 0, wide, high - strip - gap / 2);
                sketch.setBounds(0, high - strip, wide - gap, strip);
            }
        }
    }
}
