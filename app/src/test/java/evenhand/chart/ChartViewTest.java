package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.look.Theme;
import evenhand.turn.Direction;
import evenhand.words.Units;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

class ChartViewTest {
    private final List<ChartWish> wishes = new ArrayList<>();
    private final List<Shown> cars = DemoCharts.shown("harbour-saloon", Direction.LEFT);
    private final ChartView view = view(TurnCharts.roll(cars, Units.METRIC));

    private ChartView view(Chart chart) {
        ChartView made = new ChartView(chart, Theme.light(12), wishes::add);
        made.setSize(800, 400);
        paint(made);
        return made;
    }

    private static BufferedImage paint(ChartView view) {
        BufferedImage image = new BufferedImage(view.getWidth(), view.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        view.paint(g);
        g.dispose();
        return image;
    }

    private void mouse(int id, int x, int y, int clicks) {
        view.dispatchEvent(
                new MouseEvent(view, id, 0, InputEvent.BUTTON1_DOWN_MASK, x, y, clicks, false, MouseEvent.BUTTON1));
    }

    private void key(int code, int modifiers) {
        Object name = view.getInputMap(JComponent.WHEN_FOCUSED).get(KeyStroke.getKeyStroke(code, modifiers));
        Action action = view.getActionMap().get(name);
        action.actionPerformed(new ActionEvent(view, ActionEvent.ACTION_PERFORMED, ""));
    }

    @Test
    void theMouseReadsTheValuesOfAllSetups() {
        assertThat(view.crossHair()).isNull();
        mouse(MouseEvent.MOUSE_MOVED, 300, 200, 0);
        CrossHair hair = view.crossHair();
        assertThat(hair.values()).hasSize(cars.size());
        assertThat(hair.values().get(0).words()).contains(" deg");
        BufferedImage with = paint(view);
        mouse(MouseEvent.MOUSE_EXITED, 900, 200, 0);
        assertThat(view.crossHair()).isNull();
        assertThat(differ(with, paint(view))).isTrue();
    }

    @Test
    void itAsksForFullSizeByItsKeysAndGoesBackByEscape() {
        List<String> asked = new ArrayList<>();
        view.fullSize().whenAsked(() -> asked.add("turn"));
        view.doLayout();
        assertThat(view.getComponents()).singleElement().satisfies(button -> {
            assertThat(button.getAccessibleContext().getAccessibleName()).isEqualTo("full size");
            assertThat(view.getBounds().contains(button.getBounds())).isTrue();
            assertThat(((javax.swing.AbstractButton) button).getToolTipText()).isEqualTo("full size (F)");
        });
        key(KeyEvent.VK_ESCAPE, 0);
        assertThat(asked).isEmpty();
        key(KeyEvent.VK_F, 0);
        view.fullSize().shown(true);
        key(KeyEvent.VK_ESCAPE, 0);
        key(KeyEvent.VK_ENTER, 0);
        assertThat(asked).hasSize(3);
        assertThat(view.getComponent(0).getAccessibleContext().getAccessibleName())
                .isEqualTo("back to its place");
    }

    @Test
    void axesAreNotDrawnInUnderAHandAndAreAfterwards() {
        Chart wide = TurnCharts.roll(cars, Units.METRIC);
        Chart narrow = wide.over(new Span(0, 0.4), new Span(0, 1));
        Chart high = wide.over(new Span(0, 0.4), new Span(-1, 20));
        view.showSteady(narrow, Theme.light(12));
        assertThat(view.zoom()).isEqualTo(Zoom.all(wide));
        view.showSteady(high, Theme.light(12));
        assertThat(view.zoom()).isEqualTo(new Zoom(wide.across().span(), new Span(-1, 20)));
        view.show(narrow, Theme.light(12));
        assertThat(view.zoom()).isEqualTo(Zoom.all(narrow));
        view.showSteady(TurnCharts.steer(cars, Units.METRIC), Theme.light(12));
        assertThat(view.zoom()).isEqualTo(Zoom.all(TurnCharts.steer(cars, Units.METRIC)));
    }

    @Test
    void keysMoveTheCrossHairAndSayItAloud() {
        key(KeyEvent.VK_RIGHT, 0);
        double start = view.crossHair().x();
        key(KeyEvent.VK_RIGHT, 0);
        double step = view.crossHair().x() - start;
        assertThat(step).isPositive();
        key(KeyEvent.VK_LEFT, InputEvent.SHIFT_DOWN_MASK);
        assertThat(view.crossHair().x())
                .isCloseTo(start + step - 10 * step, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(view.getAccessibleContext().getAccessibleDescription())
                .startsWith(view.crossHair().place() + ": ")
                .contains("Lowered ");
        key(KeyEvent.VK_ESCAPE, 0);
        assertThat(view.crossHair()).isNull();
        assertThat(view.getAccessibleContext().getAccessibleName()).isEqualTo("Chart: Roll of the body");
    }

    @Test
    void draggingARectangleLooksCloserAndADoubleClickShowsAllAgain() {
        Zoom all = view.zoom();
        mouse(MouseEvent.MOUSE_PRESSED, 200, 100, 1);
        mouse(MouseEvent.MOUSE_DRAGGED, 300, 200, 0);
        mouse(MouseEvent.MOUSE_RELEASED, 300, 200, 1);
        Zoom near = view.zoom();
        assertThat(near.isPart(view.chart())).isTrue();
        assertThat(near.across().width()).isLessThan(0.3 * all.across().width());
        paint(view);
        mouse(MouseEvent.MOUSE_PRESSED, 200, 100, 2);
        assertThat(view.zoom()).isEqualTo(all);
    }

    @Test
    void theWheelZoomsWithCtrlAndScrollsWithout() {
        Zoom all = view.zoom();
        view.dispatchEvent(new MouseWheelEvent(
                view, MouseEvent.MOUSE_WHEEL, 0, 0, 300, 200, 0, false, MouseWheelEvent.WHEEL_UNIT_SCROLL, 1, -2));
        assertThat(view.zoom()).isEqualTo(all);
        view.dispatchEvent(new MouseWheelEvent(
                view,
                MouseEvent.MOUSE_WHEEL,
                0,
                InputEvent.CTRL_DOWN_MASK,
                300,
                200,
                0,
                false,
                MouseWheelEvent.WHEEL_UNIT_SCROLL,
                1,
                -2));
        assertThat(view.zoom().isPart(view.chart())).isTrue();
        key(KeyEvent.VK_HOME, 0);
        assertThat(view.zoom()).isEqualTo(all);
    }

    @Test
    void whatIsLookedAtStaysWhenNumbersChangeAndIsLeftForAnotherQuestion() {
        key(KeyEvent.VK_PLUS, 0);
        Zoom near = view.zoom();
        view.show(TurnCharts.roll(cars.subList(0, 2), Units.METRIC), Theme.dark(12));
        assertThat(view.zoom()).isEqualTo(near);
        view.show(TurnCharts.sideslip(cars, Units.METRIC), Theme.dark(12));
        assertThat(view.zoom()).isEqualTo(Zoom.all(view.chart()));
    }

    @Test
    void everyWishIsInTheMenuAndToldWithTheChart() {
        for (int i = 0; i < ChartWish.Kind.values().length; i++) {
            ((javax.swing.JMenuItem) view.menu().getComponent(i)).doClick(0);
        }
        assertThat(wishes).extracting(ChartWish::kind).containsExactly(ChartWish.Kind.values());
        assertThat(wishes).allMatch(wish -> wish.chart().equals(view.chart()));
    }

    @Test
    void lateNumbersAreDimmedAndAMarkedPaceIsDrawn() {
        BufferedImage before = paint(view);
        view.mark(OptionalDouble.of(0.4));
        BufferedImage marked = paint(view);
        assertThat(differ(before, marked)).isTrue();
        view.showLate();
        assertThat(differ(marked, paint(view))).isTrue();
        view.mark(OptionalDouble.empty());
        view.show(view.chart(), Theme.light(12));
        assertThat(differ(before, paint(view))).isFalse();
    }

    private static boolean differ(BufferedImage one, BufferedImage other) {
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                if (one.getRGB(x, y) != other.getRGB(x, y)) {
                    return true;
                }
            }
        }
        return false;
    }
}
