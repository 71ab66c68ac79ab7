package evenhand.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager2;
import java.util.IdentityHashMap;
import java.util.function.IntSupplier;

/**
 * What is shown stands one below the other, as wide as there is room and as high as it wants to be. Each is asked once how high that
 * is: where hundreds of rows stand in each other, a layout that asks for the least and the most too multiplies them from place to
 * place.
 */
final class Stack implements LayoutManager2 {
    /** A constraint: more room above. */
    record Above(int pixels) {}

    /** A constraint: as high as what is above it leaves of a height, and not lower than it wants to be. */
    record Filling(IntSupplier height) {}

    private final int gap;
    private final IdentityHashMap<Component, Integer> above = new IdentityHashMap<>();
    private final IdentityHashMap<Component, Filling> filling = new IdentityHashMap<>();

    /** @param gap between two of them, pixels */
    Stack(int gap) {
        this.gap = gap;
    }

    @Override
    public void addLayoutComponent(Component component, Object constraint) {
        if (constraint instanceof Above room) {
            above.put(component, room.pixels());
        } else if (constraint instanceof Filling room) {
            filling.put(component, room);
        }
    }

    @Override
    public void addLayoutComponent(String name, Component component) {}

    @Override
    public void removeLayoutComponent(Component component) {
        above.remove(component);
        filling.remove(component);
    }

    @Override
    public Dimension preferredLayoutSize(Container stack) {
        Insets in = stack.getInsets();
        int width = 0;
        int height = in.top + in.bottom;
        boolean first = true;
        for (Component each : stack.getComponents()) {
            if (each.isVisible()) {
                width = Math.max(width, each.getPreferredSize().width);
                height += above(each, first);
                height += high(each, height);
                first = false;
            }
        }
        return new Dimension(width + in.left + in.right, height);
    }

    /** How high something is that begins at a place. */
    private int high(Component component, int y) {
        int wanted = component.getPreferredSize().height;
        Filling room = filling.get(component);
        return room == null ? wanted : Math.max(wanted, room.height().getAsInt() - y);
    }

    private int above(Component component, boolean first) {
        return above.getOrDefault(component, 0) + (first ? 0 : gap);
    }

    /** Anything may be narrow, nothing lower than it wants to be. */
    @Override
    public Dimension minimumLayoutSize(Container stack) {
        return new Dimension(0, preferredLayoutSize(stack).height);
    }

    @Override
    public Dimension maximumLayoutSize(Container stack) {
        return new Dimension(Integer.MAX_VALUE, Integer.MAX_VALUE);
    }

    @Override
    public void layoutContainer(Container stack) {
        Insets in = stack.getInsets();
        int width = Math.max(0, stack.getWidth() - in.left - in.right);
        int y = in.top;
        boolean first = true;
        for (Component each : stack.getComponents()) {
            if (each.isVisible()) {
                if (each.getWidth() != width) {
                    each.setSize(width, each.getHeight()); // text wraps at its width
                    each.doLayout();
                }
                y += above(each, first);
                first = false;
                int height = high(each, y);
                each.setBounds(in.left, y, width, height);
                y += height;
            }
        }
    }

    @Override
    public float getLayoutAlignmentX(Container stack) {
        return 0;
    }

    @Override
    public float getLayoutAlignmentY(Container stack) {
        return 0;
    }

    @Override
    public void invalidateLayout(Container stack) {}
}
