package evenhand.drawing.measuring;

import evenhand.drawing.Drawing;
import evenhand.drawing.Item;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * How a value is measured, as data: an outline, the dimension with its two ends, and a word at it.
 *
 * @param how in one line: where the tool goes
 * @param items in the order that they are drawn, m
 * @param world what is to be seen, m; z up
 */
public record Sketch(String how, List<Item> items, Rectangle2D world) {
    public Sketch {
        items = List.copyOf(items);
    }

    /** To be painted in a window or on paper; its words stand beside it. */
    public Drawing drawing() {
        return new Drawing("", items, List.of(), world, 0, 0, "");
    }
}
