package evenhand.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import javax.swing.JComponent;

/**
 * Lays out the numbers and the pictures that belong to them: below one another; beside each other where half the width is enough for
 * the numbers, so that a long table does not push the pictures out of sight.
 */
final class Beside implements LayoutManager {
    private static final double GAP = 1;

    /** A picture that has less is hard to read, in sizes of type. */
    private static final double LEAST_WIDTH = 40;

    private final JComponent table;

    /** @param table of the numbers: what else there is wraps */
    Beside(JComponent table) {
        this.table = table;
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        return new Dimension(parent.getWidth(), lay(parent));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    @Override
    public void layoutContainer(Container parent) {
        lay(parent);
    }

    /** Gives both their places; how high they stand is what their widths make of it. */
    private int lay(Container parent) {
        Component numbers = parent.getComponent(0);
        Component pictures = parent.getComponent(1);
        int gap = Looks.em(GAP);
        int width = parent.getWidth();
        int half = (width - gap) / 2;
        boolean beside =
                pictures.isVisible() && half >= Looks.em(LEAST_WIDTH) && table.getPreferredSize().width <= half;
        int left = beside ? half : width;
        int tall = place(numbers, 0, 0, left);
        if (!pictures.isVisible()) {
            return tall;
        }
        if (beside) {
            return Math.max(tall, place(pictures, left + gap, 0, width - left - gap));
        }
        int below = tall == 0 ? 0 : tall + gap;
        return below + place(pictures, 0, below, width);
    }

    private static int place(Component component, int x, int y, int width) {
        component.setSize(width, component.getHeight());
        int height = component.getPreferredSize().height;
        component.setBounds(x, y, width, height);
        return height;
    }

    @Override
    public void addLayoutComponent(String name, Component component) {
        // It lays out the two that there are.
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // It lays out the two that there are.
    }
}
