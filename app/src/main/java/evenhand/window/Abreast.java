package evenhand.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/** Lays pictures out beside each other, each as high as there is room; below one another where they would be too narrow. */
final class Abreast implements LayoutManager {
    /** A picture is not lower than this, px, whatever the type. */
    static final int LEAST_HEIGHT = 260;

    private static final double LEAST_WIDTH = 25;
    private static final double GAP = 1;

    private static boolean beside(Container parent, int width) {
        int count = parent.getComponentCount();
        return width >= count * Looks.em(LEAST_WIDTH) + (count - 1) * Looks.em(GAP);
    }

    /** What is needed at least, in a width. */
    static int height(Container parent, int width) {
        int count = parent.getComponentCount();
        return beside(parent, width) || count == 0 ? LEAST_HEIGHT : count * LEAST_HEIGHT + (count - 1) * Looks.em(GAP);
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        return new Dimension(parent.getWidth(), height(parent, parent.getWidth()));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(Looks.em(LEAST_WIDTH), LEAST_HEIGHT);
    }

    @Override
    public void layoutContainer(Container parent) {
        int count = parent.getComponentCount();
        int gap = Looks.em(GAP);
        boolean beside = beside(parent, parent.getWidth());
        int all = (beside ? parent.getWidth() : parent.getHeight()) - gap * (count - 1);
        for (int i = 0; i < count; i++) {
            Component picture = parent.getComponent(i);
            int from = i * all / count + i * gap;
            int size = (i + 1) * all / count - i * all / count;
            if (beside) {
                picture.setBounds(from, 0, size, parent.getHeight());
            } else {
                picture.setBounds(0, from, parent.getWidth(), size);
            }
        }
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
