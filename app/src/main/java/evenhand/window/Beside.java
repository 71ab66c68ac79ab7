package evenhand.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
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
    private boolean picturesFirst;

    /**
     * @param table of the numbers: what else there is wraps
     * @param tiles that lays out the pictures
     */
    Beside(JComponent table, Tiles tiles) {
        this.table = table;
        this.tiles = tiles;
    }

    /** Whether the pictures come before the numbers where they are below one another. */
    void picturesFirst(boolean first) {
        picturesFirst = first;
    }

    /** Where the numbers and the pictures are, and how high both stand together. */
    private record Places(Rectangle numbers, Rectangle pictures, int height) {}

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        return new Dimension(parent.getWidth(), places(parent).height());
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, places(parent).height());
    }

    @Override
    public void layoutContainer(Container parent) {
        Places places = places(parent);
        parent.getComponent(0).setBounds(places.numbers());
        parent.getComponent(1).setBounds(places.pictures());
    }

    private Places places(Container parent) {
        Component numbers = parent.getComponent(0);
        Container pictures = (Container) parent.getComponent(1);
        int gap = Looks.em(GAP);
        int width = parent.getWidth();
        int tall = numbers.getPreferredSize().height;
        if (!pictures.isVisible()) {
            return new Places(new Rectangle(0, 0, width, tall), new Rectangle(), tall);
        }
        int half = (width - gap) / 2;
        int below = tall == 0 ? 0 : tall + gap;
        int stacked = below + tiles.height(pictures, width);
        int narrow = tiles.height(pictures, half);
        boolean fit = half >= Looks.em(LEAST_WIDTH) && table.getPreferredSize().width <= half;
        if (fit && Math.max(tall, narrow) < stacked) {
            return new Places(
                    new Rectangle(0, 0, half, tall),
                    new Rectangle(width - half, 0, half, narrow),
                    Math.max(tall, narrow));
        }
        int high = stacked - below;
        return picturesFirst
                ? new Places(new Rectangle(0, stacked - tall, width, tall), new Rectangle(0, 0, width, high), stacked)
                : new Places(new Rectangle(0, 0, width, tall), new Rectangle(0, below, width, high), stacked);
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
