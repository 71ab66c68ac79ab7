package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Chart;
import evenhand.chart.ChartView;
import evenhand.chart.Span;
import evenhand.drawing.DrawingView;
import evenhand.drawing.Scaling;
import evenhand.window.desk.Look;
import evenhand.window.question.Questions;
import evenhand.words.Units;
import java.awt.Dimension;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What stays and what follows while a hand moves a value, without a screen. */
@Timeout(120)
class GestureTest {
    private static final String PIVOT = "rear.lateralLocator.height";

    @TempDir
    Path folder;

    private Room room;

    @BeforeEach
    void open() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Look look = Look.at(Questions.ALL.get(0).key(), Units.METRIC, false);
            room = Room.with("harbour-saloon", look, folder, new Rehearsal.NoOne(), new Rehearsal.NoOne());
            room.pane().bench().begin();
        });
        answered();
    }

    @AfterEach
    void close() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Snapshot.of(room.pane(), new Dimension(1280, 800));
            room.close();
        });
    }

    private static <T> T see(Callable<T> look) throws Exception {
        java.util.concurrent.FutureTask<T> seen = new java.util.concurrent.FutureTask<>(look);
        SwingUtilities.invokeAndWait(seen);
        return seen.get();
    }

    private void until(BooleanSupplier seen) throws Exception {
        while (!see(seen::getAsBoolean)) {
            Thread.sleep(5);
        }
    }

    private void answered() throws Exception {
        until(() -> {
            var desk = room.pane().bench().desk();
            return !desk.replies().replyLate(desk.asking());
        });
        see(() -> Snapshot.of(room.pane(), new Dimension(1280, 800)));
    }

    private static void mouse(JComponent at, int id, int x, int y) throws Exception {
        see(() -> {
            at.dispatchEvent(
                    new MouseEvent(at, id, 0, InputEvent.BUTTON1_DOWN_MASK, x, y, 1, false, MouseEvent.BUTTON1));
            return true;
        });
    }

    private List<Chart> charts() throws Exception {
        return see(() -> room.pane().charts().stream().map(ChartView::chart).toList());
    }

    private static List<Span> up(List<Chart> charts) {
        return charts.stream().map(chart -> chart.up().span()).toList();
    }

    /** The axis up shrank with the curve, and its numbers jumped. */
    @Test
    void noAxisIsDrawnInWhileATrackIsDragged() throws Exception {
        Track track = see(() -> room.pane().adjust().knobs().stream()
                .filter(knob -> knob.path().equals(PIVOT))
                .findFirst()
                .orElseThrow()
                .track());
        int from = see(() -> track.xOf(track.value()));
        mouse(track, MouseEvent.MOUSE_PRESSED, from, 8);
        List<Span> before = up(charts());
        boolean wouldShrink = false;
        for (int to : new int[] {track.getWidth(), 0, from}) {
            mouse(track, MouseEvent.MOUSE_DRAGGED, to, 8);
            answered();
            List<Span> now = up(charts());
            List<Span> own = up(see(() -> room.pane()
                    .bench()
                    .desk()
                    .replies()
                    .reply()
                    .orElseThrow()
                    .reply()
                    .charts()));
            for (int i = 0; i < now.size(); i++) {
                assertThat(now.get(i).including(before.get(i))).isEqualTo(now.get(i));
                wouldShrink |= own.get(i).width() < now.get(i).width();
            }
            before = now;
        }
        assertThat(wouldShrink).as("an axis of its own would have been smaller").isTrue();
        mouse(track, MouseEvent.MOUSE_RELEASED, from, 8);
    }

    /** The handle stood still until the turn was worked out. */
    @Test
    void aHandleInTheDrawingIsUnderTheHandBeforeTheAnswerComes() throws Exception {
        DrawingView view = see(() -> room.pane().answer().drawing().view());
        Scaling scaling = see(() -> view.scaling().orElseThrow());
        var handle = see(() -> view.drawing().handle(PIVOT).orElseThrow());
        int x = (int) scaling.px(handle.x());
        int y = (int) scaling.py(handle.z());
        int pulled = y - 12;
        mouse(view, MouseEvent.MOUSE_PRESSED, x, y);
        double z = see(() -> {
            view.dispatchEvent(new MouseEvent(
                    view,
                    MouseEvent.MOUSE_DRAGGED,
                    0,
                    InputEvent.BUTTON1_DOWN_MASK,
                    x,
                    pulled,
                    1,
                    false,
                    MouseEvent.BUTTON1));
            // still in the same event: no answer can have come
            assertThat(room.pane()
                            .bench()
                            .desk()
                            .replies()
                            .turnsLate(room.pane().bench().desk().work()))
                    .isTrue();
            return view.drawing().handle(PIVOT).orElseThrow().z();
        });
        assertThat(scaling.py(z)).isBetween(pulled - 1.5, pulled + 1.5);
        mouse(view, MouseEvent.MOUSE_RELEASED, x, pulled);
    }
}
