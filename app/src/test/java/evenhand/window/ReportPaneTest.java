package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Progress;
import evenhand.window.desk.Look;
import evenhand.window.desk.ReportWriter;
import evenhand.window.question.Questions;
import evenhand.words.Units;
import java.awt.Component;
import java.awt.Container;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of the report: whom it is for, and the pages as they will be written. */
class ReportPaneTest {
    private static final long PATIENCE = 20;

    /** Gives every order two blank pages, and keeps the order. */
    private static final class Blank implements ReportWriter {
        private final BlockingQueue<Order> previewed = new LinkedBlockingQueue<>();

        @Override
        public List<String> readers() {
            return List.of("owner", "workshop", "handover");
        }

        @Override
        public Outcome write(Order order, Path to, Progress progress) {
            return new Outcome.Written(List.of());
        }

        @Override
        public Preview preview(Order order, Progress progress) {
            previewed.add(order);
            return new Preview.Ready(new TwoPages());
        }

        @Override
        public Verdict verdict(Order order, Progress progress) {
            return new Verdict(List.of(), "");
        }

        private List<String> next() throws InterruptedException {
            Order order = previewed.poll(PATIENCE, TimeUnit.SECONDS);
            assertThat(order).isNotNull();
            return order.readers();
        }
    }

    private record TwoPages() implements ReportWriter.Pages {
        @Override
        public int count() {
            return 2;
        }

        @Override
        public double heightByWidth() {
            return 1.4;
        }

        @Override
        public BufferedImage picture(int page, int width) {
            return new BufferedImage(width, 1, BufferedImage.TYPE_INT_RGB);
        }
    }

    private static AbstractButton button(Component pane, String name) {
        return (AbstractButton) all(pane)
                .filter(component -> name.equals(component.getName()))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<Component> all(Component component) {
        return component instanceof Container container
                ? Stream.concat(
                        Stream.of(component),
                        Stream.of(container.getComponents()).flatMap(ReportPaneTest::all))
                : Stream.of(component);
    }

    /** The handover's paper was out of the window's reach, and nothing was seen before it was written. */
    @Test
    void thePreviewFollowsWhomThePaperIsFor(@TempDir Path folder) throws Exception {
        Blank writer = new Blank();
        Room[] made = new Room[1];
        SwingUtilities.invokeAndWait(() -> {
            Look look = Look.at(Questions.ALL.get(0).key(), Units.METRIC, false);
            made[0] = Room.with("slipper-coupe", look, folder, new Rehearsal.NoOne(), writer);
            made[0].pane().turnTo(Look.Page.REPORT);
        });
        MainPane pane = made[0].pane();
        assertThat(writer.next()).containsExactly("owner");
        SwingUtilities.invokeAndWait(() -> button(pane, "report for handover").doClick());
        assertThat(writer.next()).containsExactly("owner", "handover");
        SwingUtilities.invokeAndWait(() -> {
            button(pane, "report for owner").doClick();
            button(pane, "report for handover").doClick();
            assertThat(button(pane, "report write").isEnabled()).isFalse();
            button(pane, "report for workshop").doClick();
            assertThat(button(pane, "report write").isEnabled()).isTrue();
        });
        assertThat(writer.next()).containsExactly("workshop");
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
        String[] said = new String[1];
        do {
            SwingUtilities.invokeAndWait(() -> said[0] =
                    pane.report().preview().pages().getAccessibleContext().getAccessibleName());
        } while (!said[0].equals("the report's 2 pages") && System.nanoTime() < end);
        assertThat(said[0]).isEqualTo("the report's 2 pages");
        SwingUtilities.invokeAndWait(made[0]::close);
    }
}
