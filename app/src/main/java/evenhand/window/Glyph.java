package evenhand.window;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.util.Scanner;
import javax.swing.AbstractButton;
import javax.swing.Icon;
import javax.swing.JButton;

/**
 * A sign that stands for an act: a few strokes in the ink of what it stands on, drawn at any size and scale. Each has a tip and
 * a name for those who do not see it.
 */
enum Glyph implements Icon {
    UNDO("M 6 2.5 L 2.5 6 L 6 9.5 M 2.5 6 L 10 6 A 3.75 R L 6 13.5"),
    REDO("M 10 2.5 L 13.5 6 L 10 9.5 M 13.5 6 L 6 6 A 3.75 L L 10 13.5"),
    /** A clock. */
    HISTORY("O 8 8 6.5 M 8 4 L 8 8 L 11 10"),
    /** A sun. */
    LIGHT("O 8 8 3 M 8 1 L 8 2.5 M 8 13.5 L 8 15 M 1 8 L 2.5 8 M 13.5 8 L 15 8"
            + " M 3 3 L 4 4 M 12 12 L 13 13 M 3 13 L 4 12 M 12 4 L 13 3"),
    /** A moon. */
    DARK("M 6.5 2.5 C 2.5 3.5 1 8.5 4 11.5 C 7 14.5 12 13.5 13.5 9.5 C 9.5 11 5 7.5 6.5 2.5 Z"),
    /** A sheet with lines. */
    REPORT("M 3.5 1.5 L 12.5 1.5 L 12.5 14.5 L 3.5 14.5 Z M 5.5 5 L 10.5 5 M 5.5 8 L 10.5 8 M 5.5 11 L 8.5 11"),
    /** Out of a tray. */
    EXPORT("M 2.5 9.5 L 2.5 13.5 L 13.5 13.5 L 13.5 9.5 M 8 10.5 L 8 2 M 4.5 5 L 8 1.5 L 11.5 5"),
    HELP("O 8 8 6.5 M 6 6.5 C 6 3.5 10 3.5 10 6.2 C 10 8 8 7.8 8 9.5 M 8 11.5 L 8 12"),
    ADD("M 8 2.5 L 8 13.5 M 2.5 8 L 13.5 8"),
    COPY("M 5.5 5.5 L 13.5 5.5 L 13.5 13.5 L 5.5 13.5 Z M 10.5 2.5 L 2.5 2.5 L 2.5 10.5"),
    /** A pencil. */
    RENAME("M 2.5 13.5 L 3.5 10 L 10.5 3 L 13 5.5 L 6 12.5 Z M 9 4.5 L 11.5 7"),
    /** A bin. */
    DELETE("M 2 4.5 L 14 4.5 M 6 4.5 L 6 2.5 L 10 2.5 L 10 4.5 M 3.5 4.5 L 4.5 14 L 11.5 14 L 12.5 4.5"
            + " M 6.5 7.5 L 6.5 11.5 M 9.5 7.5 L 9.5 11.5"),
    /** A flag: the others are measured from here. */
    BASE("M 3.5 14.5 L 3.5 1.5 M 3.5 2.5 L 13 2.5 L 10.5 5.5 L 13 8.5 L 3.5 8.5"),
    /** A pin. */
    PIN("M 5 1.5 L 11 1.5 M 6 1.5 L 6 6.5 L 3.5 9.5 L 12.5 9.5 L 10 6.5 L 10 1.5 M 8 9.5 L 8 15"),
    /** An eye. */
    SHOW("M 1 8 C 4 2.5 12 2.5 15 8 C 12 13.5 4 13.5 1 8 Z O 8 8 2"),
    /** An eye, struck out. */
    HIDE("M 1 8 C 4 2.5 12 2.5 15 8 C 12 13.5 4 13.5 1 8 Z M 3 14 L 13 2"),
    FULL_SIZE("M 2 6 L 2 2 L 6 2 M 10 2 L 14 2 L 14 6 M 14 10 L 14 14 L 10 14 M 6 14 L 2 14 L 2 10"),
    USUAL_SIZE("M 6 2 L 6 6 L 2 6 M 10 2 L 10 6 L 14 6 M 14 10 L 10 10 L 10 14 M 6 14 L 6 10 L 2 10"),
    CLOSE("M 3.5 3.5 L 12.5 12.5 M 12.5 3.5 L 3.5 12.5"),
    FOLDED("M 6 3.5 L 10.5 8 L 6 12.5"),
    UNFOLDED("M 3.5 6 L 8 10.5 L 12.5 6"),
    /** Back to where the base has it: to the tick of the track. */
    RESET("M 3 3 L 3 13 M 13 8 L 5.5 8 M 8.5 5 L 5.5 8 L 8.5 11"),
    MORE("O 3 8 0.6 O 8 8 0.6 O 13 8 0.6");

    /** The strokes are laid out on a square of so many. */
    private static final double GRID = 16;

    private static final float STROKE = 1.4f;

    @SuppressWarnings("ImmutableEnumChecker") // read once, and then only drawn
    private final Path2D strokes;

    /**
     * @param strokes M x y moves, L x y draws a line, C draws a curve to the third of its points, A r R and A r L half a circle
     *     down on the right or left, O x y r a circle, Z closes
     */
    Glyph(String strokes) {
        this.strokes = Strokes.read(strokes);
    }

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        // straight strokes on whole pixels of the screen, whatever its scale
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_NORMALIZE);
        g.setColor(
                c.isEnabled()
                        ? c.getForeground()
                        : Looks.theme().mixed(Looks.theme().quiet(), 0.5));
        g.translate(x, y);
        double scale = getIconWidth() / GRID;
        g.scale(scale, scale);
        g.setStroke(new BasicStroke(STROKE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(strokes);
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return Looks.em(1.2);
    }

    @Override
    public int getIconHeight() {
        return getIconWidth();
    }

    /** A button of this sign alone. */
    JButton button(String name, String words, String tip, Runnable action) {
        JButton button = on(new JButton(), words, tip);
        button.setName(name);
        button.addActionListener(event -> action.run());
        return button;
    }

    /**
     * The same button with this sign and nothing else.
     *
     * @param words what it does, as it is read out
     * @param tip beside the pointer
     */
    <B extends AbstractButton> B on(B button, String words, String tip) {
        button.setIcon(this);
        button.setText(null);
        button.setMargin(new Insets(3, 3, 3, 3));
        button.putClientProperty("JButton.buttonType", "borderless");
        button.setToolTipText(tip);
        button.getAccessibleContext().setAccessibleName(words);
        return button;
    }

    /** Reads strokes that are written down. */
    private static final class Strokes {
        private static final double ROUND = 0.5523;

        private Strokes() {}

        static Path2D read(String words) {
            Path2D path = new Path2D.Double();
            try (Scanner in = new Scanner(words).useLocale(java.util.Locale.ROOT)) {
                while (in.hasNext()) {
                    switch (in.next()) {
                        case "M" -> path.moveTo(in.nextDouble(), in.nextDouble());
                        case "L" -> path.lineTo(in.nextDouble(), in.nextDouble());
                        case "C" ->
                            path.curveTo(
                                    in.nextDouble(),
                                    in.nextDouble(),
                                    in.nextDouble(),
                                    in.nextDouble(),
                                    in.nextDouble(),
                                    in.nextDouble());
                        case "A" -> half(path, in.nextDouble(), in.next().equals("R") ? 1 : -1);
                        case "O" -> {
                            double x = in.nextDouble();
                            double y = in.nextDouble();
                            double r = in.nextDouble();
                            path.append(new java.awt.geom.Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r), false);
                        }
                        default -> path.closePath();
                    }
                }
            }
            return path;
        }

        /** Half a circle from where the pen is, down. */
        private static void half(Path2D path, double r, double side) {
            double x = path.getCurrentPoint().getX();
            double y = path.getCurrentPoint().getY();
            path.curveTo(x + side * ROUND * r, y, x + side * r, y + (1 - ROUND) * r, x + side * r, y + r);
            path.curveTo(x + side * r, y + (1 + ROUND) * r, x + side * ROUND * r, y + 2 * r, x, y + 2 * r);
        }
    }
}
