package evenhand.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;

/** A picture of a component, laid out and painted without a screen. On the event thread. */
final class Snapshot {
    /** Text wraps at the width that the round before gave it. */
    private static final int ROUNDS = 4;

    private Snapshot() {}

    static BufferedImage of(Component component, Dimension size) {
        component.setSize(size);
        for (int round = 0; round < ROUNDS; round++) {
            layOut(component);
        }
        BufferedImage image = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        component.printAll(g);
        g.dispose();
        return image;
    }

    private static void layOut(Component component) {
        component.invalidate();
        component.doLayout();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                layOut(child);
            }
        }
    }
}
