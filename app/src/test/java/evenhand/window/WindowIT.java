package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Chart;
import evenhand.chart.ChartView;
import evenhand.chart.Part;
import evenhand.drawing.DrawingView;
import evenhand.drawing.Handle;
import evenhand.drawing.Scaling;
import evenhand.scenario.Setup;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.SetupAct;
import evenhand.window.question.Questions;
import evenhand.words.Units;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** The real window under mouse and keys. */
class WindowIT extends AtTheWindow {
    private static final String PIVOT = "rear.lateralLocator.height";

    private double height() {
        return hands.desk().work().activeSetup().car().rear().geometry().rollCentreHeight();
    }

    private static String text(JTextField field) {
        return Hands.see(() -> field.getText());
    }

    private static String text(JLabel label) {
        return Hands.see(label::getText);
    }

    private Chart chart(int index) {
        hands.answered();
        return Hands.see(() -> hands.pane().charts().get(index).chart());
    }

    private static double lastOf(Chart chart, String setup) {
        List<Part.Point> points = chart.lines().stream()
                .filter(line -> line.name().equals(setup) && line.part().startsWith("rear"))
                .findFirst()
                .orElseThrow()
                .points();
        return points.get(points.size() - 1).y();
    }

    @Test
    void aFirstStartOpensADemoCarAndSaysWhatToDrag() {
        assertThat(hands.desk().work().scenario().title()).contains("Harbour saloon");
        assertThat(Hands.see(() -> hands.pane().notice().text()))
                .contains("Drag the handle of \"rear lateral locator height\"");
        assertThat(Hands.see(() -> hands.pane().answer().said())).contains("goes first");
    }

    @Test
    void aPivotDraggedInTheDrawingMovesTheCurvesAndIsOneUndo() {
        DrawingView drawing = hands.find(DrawingView.class, "drawing");
        Hands.until("the drawing is painted", () -> drawing.scaling().isPresent());
        Hands.until("its handle", () -> drawing.drawing().handle(PIVOT).isPresent());
        Handle handle = Hands.see(() -> drawing.drawing().handle(PIVOT).orElseThrow());
        Scaling scaling = Hands.see(() -> drawing.scaling().orElseThrow());
        double before = height();
        double grip = lastOf(chart(0), "Lowered");
        int x = (int) scaling.px(handle.x());
        int y = (int) scaling.py(handle.z());
        hands.drag(drawing, x, y, x, y - (int) Math.max(8, 0.04 * scaling.scale()));
        hands.answered();
        assertThat(height()).isGreaterThan(before + 0.015);
        assertThat(lastOf(chart(0), "Lowered")).isNotEqualTo(grip);
        hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        hands.answered();
        assertThat(height()).isEqualTo(before);
        assertThat(lastOf(chart(0), "Lowered")).isEqualTo(grip);
        assertThat(Hands.see(() -> hands.pane().bench().undoable())).isEmpty();
    }

    @Test
    void aTrackMovesByKeysWithShiftForTenAndAltForATenth() {
        Track track = hands.find(Track.class, "rear lateral locator height, track");
        Hands.see(track::requestFocusInWindow);
        Hands.until("focus", track::isFocusOwner);
        double before = height();
        hands.key(KeyEvent.VK_RIGHT);
        assertThat(height()).isEqualTo(before + 0.001, org.assertj.core.api.Assertions.within(1e-12));
        hands.key(KeyEvent.VK_SHIFT, KeyEvent.VK_RIGHT);
        assertThat(height()).isEqualTo(before + 0.011, org.assertj.core.api.Assertions.within(1e-12));
        hands.key(KeyEvent.VK_ALT, KeyEvent.VK_LEFT);
        assertThat(height()).isEqualTo(before + 0.0109, org.assertj.core.api.Assertions.within(1e-12));
        hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        assertThat(height()).isEqualTo(before);
    }

    @Test
    void aWrongEntryStaysInItsFieldWithItsMessageAndChangesNothing() {
        JTextField field = hands.find(JTextField.class, "rear.spring.rate");
        String before = hands.desk().work().scenario().text();
        hands.type(field, "137 lb/in");
        assertThat(hands.desk().work().scenario().text()).isEqualTo(before);
        assertThat(text(field)).isEqualTo("137 lb/in");
        assertThat(hands.find(Words.Area.class, "what is wrong").getText()).contains("lbf/in");
        hands.type(field, "137 lbf/in");
        assertThat(hands.desk().work().scenario().text()).contains("\"137 lbf/in\"");
        String page = "a page of text\t".repeat(200);
        Hands.see(() -> {
            field.setText(page);
            field.postActionEvent();
            return true;
        });
        assertThat(text(field)).isEqualTo(page);
        assertThat(hands.desk().work().scenario().text()).contains("\"137 lbf/in\"");
    }

    @Test
    void aSetupIsAddedNamedSavedAndReadAgain() throws Exception {
        hands.lines.add("Wish");
        hands.click(hands.find(JButton.class, "set-up add"));
        hands.lines.add("Customer's wish");
        hands.click(hands.find(JButton.class, "set-up rename"));
        hands.type(hands.find(JTextField.class, "rear.spring.rate"), "30 N/mm");
        Path file = folder.resolve("wish.json");
        hands.files.add(file);
        hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
        Hands.until("saved", () -> !hands.pane().bench().desk().unsaved());
        String saved = Files.readString(file);
        assertThat(saved).contains("\"Customer's wish\"", "\"30 N/mm\"");
        hands.act(new SetupAct.DeleteSetup("Customer's wish"));
        Hands.see(() -> {
            hands.pane().cabinet().open(file);
            return true;
        });
        assertThat(hands.desk().work().scenario().setup("Customer's wish")).isPresent();
        assertThat(hands.desk().work().scenario().text()).isEqualTo(saved);
        assertThat(text(hands.find(JLabel.class, "kept"))).isEqualTo("wish.json, saved");
    }

    /** A set-up was added under a name that nobody had given, and a name that was refused was lost. */
    @Test
    void aNameIsAskedForUntilItCanBeTakenAndWhatWasTypedStays() {
        List<Setup> before = hands.desk().work().scenario().setups();
        hands.click(hands.find(JButton.class, "set-up add"));
        assertThat(hands.askedLines).containsExactly("Name of the new set-up, which builds on “Lowered”: New set-up");
        assertThat(hands.desk().work().scenario().setups()).hasSameSizeAs(before);
        hands.askedLines.clear();
        hands.lines.addAll(List.of("As bought", " ", "Customer's wish"));
        hands.click(hands.find(JButton.class, "set-up add"));
        assertThat(hands.desk().work().active()).isEqualTo("Customer's wish");
        assertThat(hands.askedLines.get(1))
                .startsWith("There is a set-up of this name already")
                .endsWith(": As bought");
        assertThat(hands.askedLines.get(2)).startsWith("A set-up needs a name");
        hands.askedLines.clear();
        String tooLong = "a name that is long ".repeat(8);
        hands.lines.addAll(List.of(tooLong, "Short"));
        hands.click(hands.find(JButton.class, "set-up rename"));
        assertThat(hands.askedLines.get(1)).contains("at most 80").endsWith(": " + tooLong);
        assertThat(hands.desk().work().active()).isEqualTo("Short");
    }

    @Test
    void everyQuestionIsAnsweredOnEveryThirdDemoCarAndEveryCarAnswersEveryThirdQuestion() {
        for (String demo : evenhand.window.desk.Demos.NAMES) {
            int car = evenhand.window.desk.Demos.NAMES.indexOf(demo);
            Hands.see(() -> {
                hands.pane().cabinet().openDemo(demo);
                return true;
            });
            for (Question question : Questions.ALL) {
                if ((Questions.ALL.indexOf(question) + car) % 3 != 0) {
                    continue;
                }
                hands.act(new LookAct.Ask(question.key()));
                hands.answered();
                String said = Hands.see(() -> hands.pane().answer().said());
                assertThat(said)
                        .as(demo + ": " + question.words())
                        .isNotBlank()
                        .doesNotContain("defect", "NaN", "null");
                for (ChartView view : Hands.see(() -> hands.pane().charts())) {
                    assertThat(view.chart().title()).isNotBlank();
                }
            }
        }
    }

    @Test
    void unitsAndThemeChangeAtAnyTime() {
        hands.click(hands.find(javax.swing.JToggleButton.class, "inches"));
        hands.answered();
        assertThat(hands.desk().look().units()).isEqualTo(Units.IMPERIAL);
        assertThat(text(hands.find(JTextField.class, "rear.spring.rate"))).contains("lbf/in");
        hands.click(hands.find(javax.swing.JToggleButton.class, "dark"));
        hands.answered();
        assertThat(hands.desk().look().dark()).isTrue();
        assertThat(Hands.see(() -> hands.pane().getBackground().getRed())).isLessThan(80);
    }

    @Test
    void unitsWantedAtTheStartAreThoseShownAndTheButtonSaysSo() throws Exception {
        hands.close();
        hands = new Hands(folder.resolve("state"), Optional.empty(), Optional.of(Units.IMPERIAL));
        assertThat(text(hands.find(JTextField.class, "rear.spring.rate"))).contains("lbf/in");
        javax.swing.JToggleButton inches = hands.find(javax.swing.JToggleButton.class, "inches");
        assertThat(Hands.see(inches::isSelected)).isTrue();
        assertThat(text(hands.find(JTextField.class, "circle"))).endsWith(" ft");
    }

    @Test
    void closingWhileAnAnswerIsWorkedOutEndsQuietly() {
        hands.act(new LookAct.Ask("effects"));
        for (int mm = 200; mm < 212; mm++) {
            hands.act(new EditAct.SetValue(Optional.empty(), PIVOT, mm + " mm", true));
        }
        hands.close();
        assertThat(hands.window().frame().isDisplayable()).isFalse();
    }

    @Test
    void aBrokenFileIsToldAndTheWorkStays() throws Exception {
        Path file = Files.writeString(folder.resolve("broken.json"), "{\"evenhand\": 1, \"car\": {\"mass\": \"10\"}}");
        String before = hands.desk().work().scenario().text();
        Hands.see(() -> {
            hands.pane().cabinet().open(file);
            return true;
        });
        assertThat(Hands.see(() -> hands.pane().notice().text())).contains("cannot be opened", "needs a unit");
        assertThat(hands.desk().work().scenario().text()).isEqualTo(before);
    }

    @Test
    void aFieldIsFoundByItsNameInTheForm() {
        hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_F);
        JTextField search = hands.find(JTextField.class, "search");
        hands.type(search, "front spring rate");
        JTextField rate = hands.find(JTextField.class, "field front.spring.rate");
        hands.type(rate, "70 N/mm");
        assertThat(hands.desk().work().scenario().text()).contains("\"70 N/mm\"");
        hands.type(rate, "soft");
        assertThat(text(rate)).isEqualTo("soft");
        assertThat(hands.find(Words.Area.class, "trouble front.spring.rate").getText())
                .isNotBlank();
    }
}
