package evenhand.window;

import evenhand.chart.Chart;
import evenhand.chart.ChartView;
import evenhand.chart.ChartWish;
import evenhand.drawing.DrawingView;
import evenhand.look.FullSize;
import evenhand.quantity.Dimension;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Replies;
import evenhand.window.desk.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The pictures of an answer: the most telling beside each other in the room that the words leave, the others below. */
final class Pictures {
    private static final int MOST_COLUMNS = 3;

    /** So many pictures stand above the numbers. */
    private static final int FOREMOST = 2;

    private final transient Consumer<ChartWish> wishes;
    private final JPanel foremost = new JPanel(new Abreast());
    private final transient Tiles below = new Tiles(MOST_COLUMNS);
    private final JPanel others = new JPanel(below);
    private final List<ChartView> charts = new ArrayList<>();
    private final List<DrawingView> drawings = new ArrayList<>();
    private final DrawingTile drawing;
    private final Pulls pulls;

    /** All that are shown, the most telling first. */
    private final List<JComponent> all = new ArrayList<>();

    /** The one that has all the room of the answer. */
    private Optional<JComponent> large = Optional.empty();

    private Consumer<Boolean> whenLarge = alone -> {};

    Pictures(Bench bench, Consumer<ChartWish> wishes) {
        this.wishes = wishes;
        drawing = new DrawingTile(bench);
        pulls = new Pulls(bench);
        foremost.setOpaque(false);
        others.setOpaque(false);
        FullSize ofCar = drawing.view().fullSize();
        ofCar.whenAsked(() -> turn(drawing, ofCar));
    }

    /** @param told whether one picture now has all the room */
    void whenLarge(Consumer<Boolean> told) {
        whenLarge = told;
    }

    /** Whether one picture has all the room. */
    boolean isLarge() {
        return large.isPresent();
    }

    private void turn(JComponent picture, FullSize size) {
        large = large.isPresent() ? Optional.empty() : Optional.of(picture);
        size.shown(large.isPresent());
        place();
        whenLarge.accept(large.isPresent());
        size.picture().requestFocusInWindow();
    }

    /** Those that are seen first. */
    JPanel foremost() {
        return foremost;
    }

    /** Those that are scrolled to. */
    JPanel others() {
        return others;
    }

    Tiles layoutOfOthers() {
        return below;
    }

    List<ChartView> charts() {
        return List.copyOf(charts);
    }

    List<DrawingView> drawings() {
        return List.copyOf(drawings);
    }

    DrawingTile drawing() {
        return drawing;
    }

    /** Whether a hand is on a handle of a drawing that belongs to the answer. */
    boolean isHeld() {
        return pulls.isHeld();
    }

    void showLate() {
        charts.forEach(ChartView::showLate);
    }

    /**
     * @param drawn whether the car is among them
     * @param held whether a hand moves the answer: axes are then not drawn in
     */
    void show(Replies.Replied replied, boolean drawn, BooleanSupplier held) {
        Reply reply = replied.reply();
        List<Chart> wanted = reply.charts();
        boolean same = wanted.size() == charts.size()
                && reply.drawings().size() == drawings.size()
                && drawn == all.contains(drawing);
        if (!same) {
            lay(reply, drawn);
        }
        for (int i = 0; i < drawings.size(); i++) {
            Reply.Drawn one = reply.drawings().get(i);
            drawings.get(i).show(one.drawing(), Looks.theme(), one.detail());
        }
        foremost.setVisible(foremost.getComponentCount() > 0);
        double g = Dimension.ACCELERATION.metric().fromSi(replied.of().work().pace());
        for (int i = 0; i < wanted.size(); i++) {
            Chart chart = wanted.get(i);
            if (held.getAsBoolean()) {
                charts.get(i).showSteady(chart, Looks.theme());
            } else {
                charts.get(i).show(chart, Looks.theme());
            }
            boolean overAcceleration = chart.across().words().equals("lateral acceleration");
            charts.get(i).mark(overAcceleration ? OptionalDouble.of(g) : OptionalDouble.empty());
        }
    }

    /** The first drawing, or that of the car, stands beside the first chart; the other drawings come before the other charts. */
    private void lay(Reply reply, boolean drawn) {
        if (large.isPresent()) {
            large = Optional.empty();
            drawing.view().fullSize().shown(false);
            whenLarge.accept(false);
        }
        charts.clear();
        drawings.clear();
        all.clear();
        for (Reply.Drawn one : reply.drawings()) {
            DrawingView view = new DrawingView(one.drawing(), Looks.theme(), one.detail(), pulls::take);
            view.setName("drawing " + drawings.size());
            view.fullSize().whenAsked(() -> turn(view, view.fullSize()));
            drawings.add(view);
            all.add(view);
        }
        for (Chart chart : reply.charts()) {
            ChartView view = new ChartView(chart, Looks.theme(), wishes);
            view.setName("chart " + charts.size());
            view.fullSize().whenAsked(() -> turn(view, view.fullSize()));
            charts.add(view);
            all.add(view);
        }
        if (!charts.isEmpty()) {
            all.remove(charts.get(0));
            all.add(0, charts.get(0));
        }
        if (drawn) {
            all.add(Math.min(1, all.size()), drawing);
        }
        place();
    }

    private void place() {
        foremost.removeAll();
        others.removeAll();
        if (large.isPresent()) {
            foremost.add(large.get());
        } else {
            for (JComponent view : all) {
                (foremost.getComponentCount() < FOREMOST ? foremost : others).add(view);
            }
        }
        others.setVisible(others.getComponentCount() > 0);
        foremost.revalidate();
        foremost.repaint();
    }
}
