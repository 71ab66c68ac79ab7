package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.window.desk.Arrangement;
import evenhand.window.desk.Bench;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.KnobGroup;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.TrialAct;
import evenhand.window.question.Questions;
import evenhand.words.Units;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands around the answer, as a person arranges it; without a screen. */
class ArrangementTest {
    @TempDir
    Path folder;

    private void inARoom(Look look, Consumer<MainPane> test) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Room room = Room.with("harbour-saloon", look, folder, new Rehearsal.NoOne(), new Rehearsal.NoOne());
            try {
                room.pane().bench().show();
                test.accept(room.pane());
            } finally {
                room.close();
                Looks.set(false);
            }
        });
    }

    private static Look look() {
        return Look.at(Questions.ALL.get(0).key(), Units.METRIC, false);
    }

    private static Stream<JComponent> all(Component component) {
        Stream<JComponent> own = component instanceof JComponent one ? Stream.of(one) : Stream.of();
        return component instanceof Container container
                ? Stream.concat(own, Stream.of(container.getComponents()).flatMap(ArrangementTest::all))
                : own;
    }

    private static Optional<JComponent> named(Component pane, String name) {
        return all(pane).filter(one -> name.equals(one.getName())).findFirst();
    }

    private static List<String> rows(MainPane pane, String list) {
        JList<?> own = (JList<?>) named(pane, list).orElseThrow();
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < own.getModel().getSize(); i++) {
            rows.add(String.valueOf(own.getModel().getElementAt(i)));
        }
        return rows;
    }

    private static List<String> chips(MainPane pane) {
        return all(pane.adjust())
                .filter(Chip.class::isInstance)
                .map(chip -> ((JLabel) chip.getComponent(0)).getText())
                .toList();
    }

    @Test
    void aChangeIsSaidInBriefInTheChosenUnitsAndTakenOffByItsCross() throws Exception {
        inARoom(look(), pane -> {
            Bench bench = pane.bench();
            assertThat(chips(pane)).containsExactly("front −30 mm", "rear −30 mm");
            bench.act(new EditAct.SetValue(Optional.of("Lowered"), "rear.lateralLocator.height", "226 mm"));
            bench.act(new EditAct.SetValue(Optional.of("Lowered"), "front.spring.rate", "400 lbf/in"));
            assertThat(chips(pane)).contains("rear locator −20 mm", "front spring 70.05 N/mm");
            bench.act(new LookAct.ShowUnits(Units.IMPERIAL));
            assertThat(chips(pane)).contains("rear −1.18 in", "front spring 400 lbf/in");
            JButton off = (JButton) named(pane, "take back front.spring.rate").orElseThrow();
            assertThat(off.getAccessibleContext().getAccessibleName())
                    .isEqualTo("take off front spring rate: was 388.29 lbf/in, is 400 lbf/in");
            off.doClick();
            assertThat(chips(pane)).noneMatch(chip -> chip.startsWith("front spring"));
            assertThat(bench.undoable().orElseThrow().replace((char) 0xa0, (char) 0x20))
                    .contains("front spring rate 400 lbf/in → 68 N/mm");
        });
    }

    @Test
    void aSetUpThatIsHiddenIsLeftOutAndOneThatIsPinnedStaysOnTopAndShown() throws Exception {
        inARoom(look(), pane -> {
            Bench bench = pane.bench();
            List<String> all = rows(pane, "set-ups");
            assertThat(bench.act(new TrialAct.Hide("Lowered", true)))
                    .hasValueSatisfying(why -> assertThat(why).contains("is being adjusted"));
            assertThat(bench.act(new TrialAct.Hide("As bought", true)))
                    .hasValueSatisfying(why -> assertThat(why).contains("base of the comparison"));
            bench.act(new TrialAct.Hide("Pivot low", true));
            bench.act(new TrialAct.Pin("Pivot high", true));
            assertThat(rows(pane, "set-ups"))
                    .hasSize(all.size() - 1)
                    .startsWith("Pivot high", "As bought")
                    .doesNotContain("Pivot low");
            assertThat(bench.desk().work().chosen()).contains("Pivot high");
            JButton hidden = (JButton) named(pane, "hidden set-ups").orElseThrow();
            assertThat(hidden.getText()).isEqualTo("show 1 hidden");
            hidden.doClick();
            assertThat(rows(pane, "set-ups")).endsWith("Pivot low");
            bench.act(new TrialAct.Activate("Pivot low"));
            assertThat(bench.desk().work().shelf().hidden()).isEmpty();
            bench.act(new TrialAct.Show("Pivot high", false));
            assertThat(bench.desk().work().shelf().pinned()).isEmpty();
            // the button hides the one that is adjusted, and turns to its neighbour
            ((JButton) named(pane, "set-up hide").orElseThrow()).doClick();
            assertThat(bench.desk().work().active()).isEqualTo("Lowered, firmer springs");
            assertThat(bench.desk().work().shelf().hidden()).containsExactly("Pivot low");
        });
    }

    @Test
    void keysGoThroughAllQuestionsAndFromGroupToGroup() throws Exception {
        inARoom(look(), pane -> {
            Snapshot.of(pane, new Dimension(1024, 700));
            JList<?> list = (JList<?>) named(pane, "questions").orElseThrow();
            for (Question question : Questions.ALL) {
                assertThat(pane.bench().desk().look().question()).isEqualTo(question.key());
                assertThat(list.getSelectedValue()).hasToString(question.words());
                press(list, "selectNextRow");
            }
            press(list, "selectFirstRow");
            for (Question.Group group : Question.Group.values()) {
                assertThat(list.getModel().getElementAt(list.getSelectedIndex() - 1))
                        .hasToString(group.words());
                press(list, "scrollDown");
            }
        });
    }

    private static void press(JList<?> list, String action) {
        list.getActionMap().get(action).actionPerformed(new ActionEvent(list, 0, ""));
    }

    @Test
    void allAdjustmentsComeInGroupsThatFold() throws Exception {
        inARoom(look(), pane -> {
            Bench bench = pane.bench();
            int few = pane.adjust().knobs().size();
            bench.act(new LookAct.Fold(Arrangement.ALL_ADJUSTMENTS, false));
            int many = pane.adjust().knobs().size();
            assertThat(many).isGreaterThan(3 * few);
            ((JButton) named(pane, KnobGroup.SPRINGS.part()).orElseThrow()).doClick();
            assertThat(pane.adjust().knobs())
                    .hasSizeLessThan(many)
                    .noneMatch(knob -> knob.path().contains(".spring."));
            bench.act(new LookAct.Fold(Arrangement.ADJUSTMENTS, true));
            assertThat(pane.adjust().knobs()).isEmpty();
            Snapshot.of(pane, new Dimension(1024, 700));
            assertThat(pane.adjust().getHeight()).isLessThan(Looks.em(3.5));
        });
    }

    /** Nothing around the answer is cut, at any size of type, in both themes. */
    @ParameterizedTest
    @CsvSource({"1024, 700, 0, false", "1024, 700, 2, true", "1280, 800, 0, true", "2560, 1440, 5, false"})
    void noWordIsCut(int width, int height, int larger, boolean dark) throws Exception {
        inARoom(look(), pane -> {
            Bench bench = pane.bench();
            bench.act(new LookAct.ShowDark(dark));
            bench.act(new LookAct.ShowUnits(Units.IMPERIAL));
            double before = Looks.size();
            bench.act(new LookAct.Zoom(larger));
            assertThat(Looks.size())
                    .isEqualTo(before * bench.desk().look().arrangement().zoom() / 100.0);
            Snapshot.of(pane, new Dimension(width, height));
            for (Container part : new Container[] {pane.side(), pane.adjust()}) {
                all(part)
                        .filter(one -> one.getWidth() > 0)
                        .forEach(one -> words(one)
                                .filter(words -> !words.isBlank())
                                .ifPresent(words -> {
                                    FontMetrics metrics = one.getFontMetrics(one.getFont());
                                    assertThat(one.getFont().getSize2D())
                                            .as(words)
                                            .isGreaterThanOrEqualTo((float) (0.89 * Looks.size()));
                                    Rectangle room = SwingUtilities.calculateInnerArea(one, null);
                                    assertThat(metrics.stringWidth(words))
                                            .as(words)
                                            .isLessThanOrEqualTo(room.width);
                                }));
            }
        });
    }

    private static Optional<String> words(JComponent one) {
        return one instanceof JLabel label
                ? Optional.ofNullable(label.getText())
                : one instanceof AbstractButton button && !(one.getParent() instanceof JComboBox)
                        ? Optional.ofNullable(button.getText())
                        : one instanceof JTextField field ? Optional.of(field.getText()) : Optional.empty();
    }

    /** Buttons that are signs say what they do. */
    @Test
    void everySignHasANameAndATip() throws Exception {
        inARoom(
                look(),
                pane -> assertThat(all(pane)
                                .filter(AbstractButton.class::isInstance)
                                .map(AbstractButton.class::cast)
                                .filter(button -> button.getIcon() instanceof Glyph))
                        .hasSizeGreaterThan(15)
                        .allSatisfy(button -> {
                            assertThat(button.getAccessibleContext().getAccessibleName())
                                    .isNotBlank();
                            assertThat(
                                            button.getText() == null
                                                            || button.getText().isEmpty()
                                                    ? button.getToolTipText()
                                                    : "x")
                                    .isNotBlank();
                        }));
    }

    /** A number alone was refused, though its unit had stood there a moment before. */
    @Test
    void aNumberAloneIsMeantInTheUnitThatStoodThere() throws Exception {
        inARoom(look(), pane -> {
            JTextField field =
                    (JTextField) named(pane.adjust(), "front.spring.rate").orElseThrow();
            assertThat(field.getText().replace((char) 0xa0, ' ')).isEqualTo("68 N/mm");
            field.setText("75.5");
            field.postActionEvent();
            assertThat(pane.bench()
                            .desk()
                            .work()
                            .activeSetup()
                            .car()
                            .front()
                            .spring()
                            .rate())
                    .isCloseTo(75500, within(1e-6));
        });
    }

    /** A click on the tick made the set-up the active one, which then could not be taken out. */
    @Test
    void aTickIsForTheTickAlone() throws Exception {
        inARoom(look(), pane -> {
            Snapshot.of(pane, new Dimension(1280, 800));
            JList<?> list = (JList<?>) named(pane, "set-ups").orElseThrow();
            Rectangle base = list.getCellBounds(0, 0);
            assertThat(pane.bench().desk().work().chosen()).contains("As bought");
            for (int id : new int[] {MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED, MouseEvent.MOUSE_CLICKED}) {
                list.dispatchEvent(new MouseEvent(
                        list, id, 0, 0, base.x + 12, base.y + base.height / 2, 1, false, MouseEvent.BUTTON1));
            }
            assertThat(pane.bench().desk().work().active()).isEqualTo("Lowered");
            assertThat(pane.bench().desk().work().chosen()).doesNotContain("As bought");
        });
    }
}
