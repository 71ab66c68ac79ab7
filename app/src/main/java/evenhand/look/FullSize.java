package evenhand.look;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.geom.Path2D;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/**
 * The small button in the upper right corner of a picture that shows it at full size and back again; with the picture focused, the
 * keys F and Enter do the same, and Esc goes back. It only asks: who holds the picture has it made large.
 */
public final class FullSize {
    /** Side of the button, in sizes of type. */
    private static final double SIDE = 1.9;

    private static final int[] KEYS = {KeyEvent.VK_F, KeyEvent.VK_ENTER};

    private final JComponent picture;
    private final Supplier<Theme> theme;
    private final JButton button = new JButton();
    private Optional<Runnable> turn = Optional.empty();
    private boolean full;

    /** For a picture that lays nothing else out; it shows nothing before {@link #whenAsked} was told what to do. */
    public FullSize(JComponent picture, Supplier<Theme> theme) {
        this.picture = picture;
        this.theme = theme;
        button.setName("full size");
        button.setIcon(new Corners());
        button.setFocusable(false); // the picture has the keys
        button.setContentAreaFilled(false);
        button.setBorderPainted(false);
        button.setOpaque(false);
        button.addActionListener(event -> ask());
        for (int key : KEYS) {
            KeyStroke stroke = KeyStroke.getKeyStroke(key, 0);
            picture.getInputMap(JComponent.WHEN_FOCUSED).put(stroke, stroke.toString());
            picture.getActionMap().put(stroke.toString(), new AbstractAction() {
                @Override
                public void actionPerformed(ActionEvent e) {
                    ask();
                }
            });
        }
        say();
    }

    /** @param asked makes the picture large, or small again where it is large */
    public void whenAsked(Runnable asked) {
        if (turn.isEmpty()) {
            picture.add(button);
        }
        turn = Optional.of(asked);
        picture.revalidate();
        picture.repaint();
    }

    /** What it is the button of. */
    public JComponent picture() {
        return picture;
    }

    /** Says how it is shown now. */
    public void shown(boolean large) {
        full = large;
        say();
    }

    /** Asks for it to be small again; false where it is so. */
    public boolean back() {
        boolean was = full;
        if (was) {
            ask();
        }
        return was;
    }

    /** Room that the button takes from the picture's upper right corner, px. */
    public double room() {
        return turn.isPresent() ? SIDE * theme.get().size() : 0;
    }

    /** Puts the button in its corner. */
    public void layOut() {
        int side = (int) Math.round(SIDE * theme.get().size());
        int gap = (int) Math.round(0.25 * theme.get().size());
        button.setBounds(picture.getWidth() - side - gap, gap, side, side);
    }

    private void ask() {
        turn.ifPresent(Runnable::run);
    }

    private void say() {
        button.setToolTipText(full ? "back to its place (Esc)" : "full size (F)");
        button.getAccessibleContext().setAccessibleName(full ? "back to its place" : "full size");
        button.repaint();
    }

    /** Four corners that point outwards, inwards where it is large. */
    private final class Corners implements Icon {
        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            double size = theme.get().size();
            double middle = getIconWidth() / 2.0;
            double out = 0.42 * size;
            double in = 0.16 * size;
            Path2D path = new Path2D.Double();
            for (int i = 0; i < 4; i++) {
                int across = i % 2 == 0 ? -1 : 1;
                int down = i < 2 ? -1 : 1;
                double tip = full ? in : out;
                double end = full ? out : in;
                path.moveTo(x + middle + across * tip, y + middle + down * end);
                path.lineTo(x + middle + across * tip, y + middle + down * tip);
                path.lineTo(x + middle + across * end, y + middle + down * tip);
            }
            g.setColor(
                    button.getModel().isRollover()
                            ? theme.get().ink()
                            : theme.get().quiet());
            g.setStroke(new BasicStroke((float) (size / 9), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(path);
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return (int) Math.round(1.2 * theme.get().size());
        }

        @Override
        public int getIconHeight() {
            return getIconWidth();
        }
    }
}
