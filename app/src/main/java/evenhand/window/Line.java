package evenhand.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JComponent;

/**
 * Lays things out side by side in one line, as far as they go into it; for what does not, a button stands at its end. Opened, they
 * go on in further lines, and the button stands at the end of the last.
 */
final class Line implements LayoutManager {
    private static final double GAP = 0.4;

    private final JComponent more;
    private final IntConsumer left;
    private boolean open;

    /**
     * @param more the button, the last of the things
     * @param left is told how many chips do not go into the line
     */
    Line(JComponent more, IntConsumer left) {
        this.more = more;
        this.left = left;
    }

    void open(boolean all) {
        open = all;
    }

    private static List<Component> things(Container line) {
        List<Component> things = new ArrayList<>(List.of(line.getComponents()));
        things.remove(things.size() - 1);
        return things;
    }

    /** How many go into the first line of this width. */
    private int fit(Container line, int width) {
        List<Component> things = things(line);
        int gap = Looks.em(GAP);
        int x = 0;
        int fit = 0;
        int room = width;
        for (Component thing : things) {
            x += thing.getPreferredSize().width;
            boolean last = fit == things.size() - 1;
            if (x > room - (last ? 0 : gap + more.getPreferredSize().width)) {
                break;
            }
            x += gap;
            fit++;
        }
        return Math.max(1, fit);
    }

    @Override
    public Dimension preferredLayoutSize(Container line) {
        return new Dimension(line.getWidth(), lay(line, false));
    }

    @Override
    public Dimension minimumLayoutSize(Container line) {
        return new Dimension(0, lay(line, false));
    }

    @Override
    public void layoutContainer(Container line) {
        lay(line, true);
    }

    /** How high it all is. */
    private int lay(Container line, boolean put) {
        List<Component> things = things(line);
        int width = line.getWidth();
        int fit = fit(line, width);
        int without = things.size() - fit;
        if (put) {
            left.accept((int) things.subList(fit, things.size()).stream()
                    .filter(Chip.class::isInstance)
                    .count());
        }
        int gap = Looks.em(GAP);
        List<Component> shown = new ArrayList<>(open ? things : things.subList(0, fit));
        if (without > 0) {
            shown.add(more);
        }
        int row = shown.stream()
                .mapToInt(each -> each.getPreferredSize().height)
                .max()
                .orElse(0);
        int x = 0;
        int y = 0;
        for (Component each : shown) {
            Dimension wanted = each.getPreferredSize();
            int own = Math.min(wanted.width, width);
            if (x > 0 && x + own > width) {
                x = 0;
                y += row + gap / 2;
            }
            if (put) {
                each.setBounds(x, y + (row - wanted.height) / 2, own, wanted.height);
            }
            x += own + gap;
        }
        if (put) {
            for (Component each : line.getComponents()) {
                if (!shown.contains(each)) {
                    each.setBounds(0, 0, 0, 0);
                }
            }
        }
        return y + row;
    }

    @Override
    public void addLayoutComponent(String name, Component component) {}

    @Override
    public void removeLayoutComponent(Component component) {}
}
