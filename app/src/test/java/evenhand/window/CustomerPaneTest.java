package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.start.JobReport;
import evenhand.window.desk.Look;
import evenhand.window.desk.TrialAct;
import evenhand.window.question.Questions;
import evenhand.words.Units;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page that the owner of the car is shown. */
class CustomerPaneTest {
    private static final long PATIENCE = 60;

    private static Stream<Component> all(Component component) {
        return component instanceof Container container
                ? Stream.concat(
                        Stream.of(component),
                        Stream.of(container.getComponents()).flatMap(CustomerPaneTest::all))
                : Stream.of(component);
    }

    private static List<String> told(MainPane pane) {
        return all(pane.customer())
                .filter(component -> "told".equals(component.getName()))
                .map(component -> ((JTextComponent) component).getText().replace('\u00a0', ' '))
                .toList();
    }

    private static void until(BooleanSupplier condition) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
        boolean[] is = new boolean[1];
        while (!is[0]) {
            assertThat(System.nanoTime()).as("the words have not come").isLessThan(end);
            SwingUtilities.invokeAndWait(() -> is[0] = condition.getAsBoolean());
            Thread.onSpinWait();
        }
    }

    private static void press(JComponent on, String stroke) {
        Object action =
                on.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(KeyStroke.getKeyStroke(stroke));
        on.getActionMap().get(action).actionPerformed(null);
    }

    /** Space flips before and after; Escape leads back; there is nothing to edit. */
    @Test
    void theOwnerIsToldInPlainWordsWhatHeGotAndWhatThereWas(@TempDir Path folder) throws Exception {
        Room[] made = new Room[1];
        SwingUtilities.invokeAndWait(() -> {
            Look look = Look.at(Questions.ALL.get(0).key(), Units.METRIC, false);
            made[0] = Room.with("slipper-coupe", look, folder, new Rehearsal.NoOne(), new JobReport());
            made[0].pane().bench().act(new TrialAct.Activate("Short soft rubbers"));
            made[0].pane().turnTo(Look.Page.CUSTOMER);
            Snapshot.of(made[0].pane(), new Dimension(1024, 700));
        });
        MainPane pane = made[0].pane();
        until(() -> !told(pane).isEmpty());
        SwingUtilities.invokeAndWait(() -> {
            List<String> after = told(pane);
            assertThat(after).contains("Round a bend", "Ride", "Travel");
            assertThat(after.get(after.indexOf("Round a bend") + 1)).contains("the front", "first");
            assertThat(pane.side().isVisible()).isFalse();
            assertThat(all(pane.customer()).filter(JTextComponent.class::isInstance))
                    .noneMatch(text -> ((JTextComponent) text).isEditable());
            JToggleButton before = (JToggleButton) all(pane.customer())
                    .filter(component -> "customer before".equals(component.getName()))
                    .findFirst()
                    .orElseThrow();
            assertThat(before.isSelected()).isFalse();
            press(pane.customer(), "SPACE");
            assertThat(before.isSelected()).isTrue();
            assertThat(told(pane)).isNotEqualTo(after);
            assertThat(String.join(" ", told(pane))).contains("Turning left").doesNotContain("roll centre", "before");
            press(pane.customer(), "SPACE");
            assertThat(told(pane)).isEqualTo(after);
            press(pane.customer(), "ESCAPE");
            assertThat(pane.bench().desk().look().page()).isEqualTo(Look.Page.ANSWER);
            assertThat(pane.side().isVisible()).isTrue();
            made[0].close();
        });
    }
}
