package evenhand.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/** Rows of one kind in as many columns, all of one width, as there is room for. */
final class Columns implements LayoutManager {
    /** Between two columns, in sizes of type. */
    private static final double GAP = 1.2;

    /** More of them are no easier to find one's way in. */
    private static final int MOST = 3;

    private final double least;

    /** @param least width of a column, in sizes of type; each is at least as wide as what stands in it needs */
    Columns(double least) {
        this.least = least;
    }

    private int count(Container rows, int width) {
        int needed = Looks.em(least);
        for (Component each : rows.getComponents()) {
            needed = Math.max(needed, each.getMinimumSize().width);
        }
        int gap = Looks.em(GAP);
        return Math.max(1, Math.min(MOST, (width + gap) / (needed + gap)));
    }

    private int height(Container rows, int first, int columns) {
        int height = 0;
        for (int i = first; i < Math.min(first + columns, rows.getComponentCount()); i++) {
            height = Math.max(height, rows.getComponent(i).getPreferredSize().height);
        }
        return height;
    }

    /** How high all of them are at a width, without what is around them. */
    int height(Container rows, int width) {
        int columns = count(rows, width);
        int height = 0;
        for (int i = 0; i < rows.getComponentCount(); i += columns) {
            height += height(rows, i, columns);
        }
        return height;
    }

    /** As high as it is at the width that it has. */
    @Override
    public Dimension preferredLayoutSize(Container rows) {
        return new Dimension(rows.getWidth(), height(rows, rows.getWidth()));
    }

    @Override
    public Dimension minimumLayoutSize(Container rows) {
        return new Dimension(0, preferredLayoutSize(rows).height);
    }

    @Override
    public void layoutContainer(Container rows) {
        int room = rows.getWidth();
        int columns = count(rows, room);
        int gap = Looks.em(GAP);
        int width = (room - (columns - 1) * gap) / columns;
        int y = 0;
        for (int i = 0; i < rows.getComponentCount(); i += columns) {
            int height = height(rows, i, columns);
            for (int j = i; j < Math.min(i + columns, rows.getComponentCount()); j++) {
                rows.getComponent(j).setBounds((j - i) * (width + gap), y, width, height);
            }
            y += height;
        }
    }

    @Override
    public void addLayoutComponent(String name, Component component) {}

    @Override
    public void removeLayoutComponent(Component component) {}
}
