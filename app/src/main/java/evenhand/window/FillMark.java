package evenhand.window;

import evenhand.window.desk.FormField;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import javax.swing.Icon;

/** A small mark before words that say the same: a full disc for what is given, a half one for an estimate, a ring for what is missing. */
record FillMark(FormField.Standing standing) implements Icon {
    @Override
    public int getIconWidth() {
        return Looks.em(0.75);
    }

    @Override
    public int getIconHeight() {
        return getIconWidth();
    }

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(on.getForeground());
        double line = getIconWidth() / 8.0;
        double size = getIconWidth() - 2 * line;
        g.setStroke(new BasicStroke((float) (1.4 * line)));
        Ellipse2D ring = new Ellipse2D.Double(x + line, y + line, size, size);
        g.draw(ring);
        if (standing == FormField.Standing.GIVEN) {
            g.fill(ring);
        } else if (standing == FormField.Standing.ESTIMATED) {
            g.fill(new Arc2D.Double(x + line, y + line, size, size, 180, 180, Arc2D.CHORD));
        }
        g.dispose();
    }
}
