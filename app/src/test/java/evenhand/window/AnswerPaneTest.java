package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Progress;
import evenhand.scenario.Setup;
import evenhand.window.desk.Answering;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Drawer;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Replies;
import evenhand.window.desk.Reply;
import evenhand.words.Units;
import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The answer without a screen. */
@Timeout(120)
class AnswerPaneTest {
    /** Takes until it is let through, or stopped. */
    private static final class Slow implements Question {
        private final CountDownLatch door = new CountDownLatch(1);

        @Override
        public String key() {
            return "slow";
        }

        @Override
        public String words() {
            return "How long does it take?";
        }

        @Override
        public List<String> adjustments(Setup active) {
            return List.of();
        }

        @Override
        public Reply answer(Asked asked, Progress progress) {
            progress.at(0.3);
            while (door.getCount() > 0) {
                progress.goOn();
                Thread.onSpinWait();
            }
            return Reply.only("Long enough.");
        }
    }

    /** Answered at once. */
    private static final class Quick implements Question {
        @Override
        public String key() {
            return "quick";
        }

        @Override
        public String words() {
            return "How quick is it?";
        }

        @Override
        public List<String> adjustments(Setup active) {
            return List.of();
        }

        @Override
        public Reply answer(Asked asked, Progress progress) {
            return Reply.only("As quick as that.");
        }
    }

    private static String title(AnswerPane pane) {
        return areas(pane)
                .filter(area -> "question".equals(area.getName()))
                .findFirst()
                .orElseThrow()
                .getText();
    }

    private static Stream<Words.Area> areas(Component in) {
        Stream<Words.Area> own = in instanceof Words.Area area ? Stream.of(area) : Stream.empty();
        return in instanceof Container container
                ? Stream.concat(own, Stream.of(container.getComponents()).flatMap(AnswerPaneTest::areas))
                : own;
    }

    /** The new question's words stood over the last one's answer. */
    @Test
    void noQuestionStandsOverTheAnswerToAnother() throws Exception {
        Slow slow = new Slow();
        Quick quick = new Quick();
        List<Question> questions = List.of(quick, slow);
        try (Answering answering = new Answering(questions, SwingUtilities::invokeLater)) {
            Bench[] bench = new Bench[1];
            AnswerPane[] made = new AnswerPane[1];
            SwingUtilities.invokeAndWait(() -> {
                Looks.set(false);
                Drawer.Opened.Sound demo = Demos.open(Demos.NAMES.get(0));
                Look look = Look.at("quick", Units.METRIC, false);
                bench[0] = new Bench(new Desk(demo.work(), look, Replies.NONE, demo.filed()), answering::ask);
                answering.deliverTo(bench[0]::act);
                made[0] = new AnswerPane(bench[0], questions, answering, wish -> {}, () -> 0);
                bench[0].add(made[0]);
                bench[0].begin();
            });
            AnswerPane pane = made[0];
            until(() -> pane.said().equals("As quick as that."));
            SwingUtilities.invokeAndWait(() -> bench[0].act(new LookAct.Ask("slow")));
            until(() -> {
                assertThat(title(pane) + " " + pane.said())
                        .isIn("How quick is it? As quick as that.", "How long does it take? Being worked out …");
                return title(pane).equals(slow.words());
            });
            SwingUtilities.invokeAndWait(() -> {
                bench[0].act(new LookAct.Ask("quick"));
                assertThat(title(pane) + " " + pane.said()).isEqualTo("How quick is it? As quick as that.");
                bench[0].act(new LookAct.Ask("slow"));
            });
            slow.door.countDown();
            until(() -> {
                assertThat(title(pane) + " " + pane.said())
                        .isIn(
                                "How quick is it? As quick as that.",
                                "How long does it take? Being worked out …",
                                "How long does it take? Long enough.");
                return pane.said().equals("Long enough.");
            });
        }
    }

    @Test
    void aStoppedAnswerSaysSoAndCanBeAskedAgain() throws Exception {
        Slow slow = new Slow();
        List<Question> questions = List.of(slow);
        try (Answering answering = new Answering(questions, SwingUtilities::invokeLater)) {
            AnswerPane[] made = new AnswerPane[1];
            SwingUtilities.invokeAndWait(() -> {
                Looks.set(false);
                Drawer.Opened.Sound demo = Demos.open(Demos.NAMES.get(0));
                Look look = Look.at("slow", Units.METRIC, false);
                Bench bench = new Bench(new Desk(demo.work(), look, Replies.NONE, demo.filed()), answering::ask);
                answering.deliverTo(bench::act);
                made[0] = new AnswerPane(bench, questions, answering, wish -> {}, () -> 0);
                bench.add(made[0]);
                bench.begin();
            });
            AnswerPane pane = made[0];
            until(() -> isShown(pane, "stop"));
            click(pane, "stop");
            until(() -> isShown(pane, "ask again") && !isShown(pane, "stop"));
            assertThat(pane.said()).isEmpty();

            click(pane, "ask again");
            until(() -> isShown(pane, "stop") && !isShown(pane, "ask again"));
            slow.door.countDown();
            until(() -> pane.said().equals("Long enough."));
            until(() -> !isShown(pane, "ask again") && !isShown(pane, "stop"));
        }
    }

    private static void until(BooleanSupplier seen) throws Exception {
        boolean[] done = {false};
        while (!done[0]) {
            SwingUtilities.invokeAndWait(() -> done[0] = seen.getAsBoolean());
        }
    }

    private static void click(AnswerPane pane, String name) throws Exception {
        SwingUtilities.invokeAndWait(() -> button(pane, name).doClick(0));
    }

    private static boolean isShown(AnswerPane pane, String name) {
        JButton button = button(pane, name);
        return button.isVisible() && button.getParent().isVisible();
    }

    private static JButton button(Container in, String name) {
        return buttons(in)
                .filter(button -> name.equals(button.getName()))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<JButton> buttons(Component in) {
        Stream<JButton> own = in instanceof JButton button ? Stream.of(button) : Stream.empty();
        return in instanceof Container container
                ? Stream.concat(own, Stream.of(container.getComponents()).flatMap(AnswerPaneTest::buttons))
                : own;
    }
}
