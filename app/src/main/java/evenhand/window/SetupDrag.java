package evenhand.window;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import javax.swing.JList;

/** Moves an item of a list by the mouse; a mark between two items shows where it would come to stand. */
final class SetupDrag extends MouseAdapter {
    /** Less is a click of an unsteady hand, px. */
    private static final int STEADY = 5;

    private final JList<String> list;
    private final BiConsumer<String, Integer> move;
    private int held = -1;
    private int from;
    private OptionalInt gap = OptionalInt.empty();

    /** @param move is told what moves, and its place in the list without it */
    SetupDrag(JList<String> list, BiConsumer<String, Integer> move) {
        this.list = list;
        this.move = move;
    }

    /** It is taken hold of; unless it is let go at once, it moves with the mouse. */
    void hold(int index, MouseEvent e) {
        held = e.getButton() == MouseEvent.BUTTON1 ? index : -1;
        from = e.getY();
        gap = OptionalInt.empty();
    }

    /** Lets go without moving anything; whether something was being moved. */
    boolean cancel() {
        boolean moving = gap.isPresent();
        held = -1;
        gap = OptionalInt.empty();
        list.repaint();
        return moving;
    }

    @Override
    public void mouseDragged(MouseEvent e) {
        if (held < 0 || (gap.isEmpty() && Math.abs(e.getY() - from) < STEADY)) {
            return;
        }
        gap = OptionalInt.of(gapAt(e.getY()));
        list.scrollRectToVisible(new Rectangle(0, e.getY() - Looks.em(1), 1, Looks.em(2)));
        list.repaint();
    }

    @Override
    public void mouseReleased(MouseEvent e) {
        int index = held;
        OptionalInt where = gap;
        cancel();
        if (where.isPresent() && index < list.getModel().getSize()) {
            int to = where.getAsInt() > index ? where.getAsInt() - 1 : where.getAsInt();
            if (to != index) {
                move.accept(list.getModel().getElementAt(index), to);
            }
        }
    }

    /** The gap nearest to a height: before the first is 0. */
    private int gapAt(int y) {
        int items = list.getModel().getSize();
        for (int i = 0; i < items; i++) {
            Rectangle cell = list.getCellBounds(i, i);
            if (y < cell.getCenterY()) {
                return i;
            }
        }
        return items;
    }

    /** Paints the mark, over the list. */
    void paint(Graphics2D graphics) {
        if (gap.isEmpty()) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        int at = gap.getAsInt();
        Rectangle cell = list.getCellBounds(Math.max(0, at - 1), Math.max(0, at - 1));
        double y = Math.max(1.5, Math.min(list.getHeight() - 1.5, at == 0 ? cell.getY() : cell.getMaxY()));
        double tip = Looks.em(0.4);
        g.setColor(Looks.theme().ink());
        g.setStroke(new BasicStroke(2.5f));
        g.draw(new Line2D.Double(0, y, list.getWidth(), y));
        Path2D arrow = new Path2D.Double();
        arrow.moveTo(0, y - tip);
        arrow.lineTo(1.5 * tip, y);
        arrow.lineTo(0, y + tip);
        arrow.closePath();
        g.fill(arrow);
        g.dispose();
    }
}
