package evenhand.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import javax.swing.JComponent;

/**
 * Lays out the numbers and the pictures that belong to them: below one another; beside each other where half the width is enough for
 * the numbers and less is to be scrolled so, for a long table pushes the pictures out of sight.
 */
final class Beside implements LayoutManager {
    private static final double GAP = 1;

    /** A picture that has less is hard to read, in sizes of type. */
    private static final double LEAST_WIDTH = 40;

    private final JComponent table;
    private final Tiles tiles;

    /**
     * @param table of the numbers: what else there is wraps
     * @param tiles that lays out the pictures
     */
    Beside(JComponent table, Tiles tiles) {
        this.table = table;
        this.tiles = tiles;
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
        Container pictures = (Container) parent.getComponent(1);
        int gap = Looks.em(GAP);
        int width = parent.getWidth();
        int tall = numbers.getPreferredSize().height;
        if (!pictures.isVisible()) {
            numbers.setBounds(0, 0, width, tall);
            return tall;
        }
        int half = (width - gap) / 2;
        int below = tall == 0 ? 0 : tall + gap;
        int stacked = below + tiles.height(pictures, width);
        int narrow = tiles.height(pictures, half);
        boolean fit = half >= Looks.em(LEAST_WIDTH) && table.getPreferredSize().width <= half;
        if (fit && Math.max(tall, narrow) < stacked) {
            numbers.setBounds(0, 0, half, tall);
            pictures.setBounds(width - half, 0, half, narrow);
            return Math.max(tall, narrow);
        }
        numbers.setBounds(0, 0, width, tall);
        pictures.setBounds(0, below, width, stacked - below);
        return stacked;
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
