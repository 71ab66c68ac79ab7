package evenhand.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/** Lays pictures out in as many columns as there is room for, all as wide as one another. */
final class Tiles implements LayoutManager {
    private static final double LEAST_WIDTH = 31;
    private static final double GREATEST_HEIGHT = 34;
    private static final double LEAST_HEIGHT = 17;
    private static final double GAP = 1;

    /** Part of a picture's width that its height is at most. */
    private static final double SHAPE = 0.56;

    private final int most;

    /** @param most columns at most */
    Tiles(int most) {
        this.most = most;
    }

    /** Height of all pictures in a width, px. */
    int height(Container parent, int width) {
        return lay(parent, width, false);
    }

    private int columns(int width, int count) {
        int room = (width + Looks.em(GAP)) / Looks.em(LEAST_WIDTH + GAP);
        return Math.max(1, Math.min(Math.min(most, count), room));
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        int width = parent.getWidth() > 0 ? parent.getWidth() : Looks.em(2 * LEAST_WIDTH + GAP);
        return new Dimension(width, lay(parent, width, false));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(Looks.em(LEAST_WIDTH / 2), Looks.em(LEAST_HEIGHT));
    }

    @Override
    public void layoutContainer(Container parent) {
        lay(parent, parent.getWidth(), true);
    }

    private int lay(Container parent, int width, boolean place) {
        int count = parent.getComponentCount();
        if (count == 0) {
            return 0;
        }
        int columns = columns(width, count);
        int gap = Looks.em(GAP);
        int each = (width - gap * (columns - 1)) / columns;
        int y = 0;
        for (int first = 0; first < count; first += columns) {
            int height = Looks.em(LEAST_HEIGHT);
            for (int i = first; i < Math.min(count, first + columns); i++) {
                height = Math.max(height, height(parent.getComponent(i), each));
            }
            for (int i = first; place && i < Math.min(count, first + columns); i++) {
                parent.getComponent(i).setBounds((i - first) * (each + gap), y, each, height);
            }
            y += height + gap;
        }
        return y - gap;
    }

    private static int height(Component tile, int width) {
        int wished = tile.getPreferredSize().height;
        int shaped = (int) (SHAPE * width);
        int least = Math.max(tile.getMinimumSize().height, Looks.em(LEAST_HEIGHT));
        return Math.max(least, Math.min(wished, Math.min(shaped, Looks.em(GREATEST_HEIGHT))));
    }

    @Override
    public void addLayoutComponent(String name, Component component) {
        // It lays out whatever there is.
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // It lays out whatever there is.
    }
}
