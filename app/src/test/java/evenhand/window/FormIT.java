package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.scenario.Setup;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Form;
import evenhand.window.desk.FormField;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.TrialAct;
import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** The form under mouse and keys: lists, nonsense in every field; and set-ups that are dragged to another place. */
class FormIT extends AtTheWindow {
    private void form(String demo) {
        Hands.see(() -> {
            hands.pane().cabinet().openDemo(demo);
            return true;
        });
        hands.act(new LookAct.Ask(Question.FORM));
        hands.answered();
    }

    private String scenario() {
        return hands.desk().work().scenario().text();
    }

    /** Turns to the chapter in which a value, or what can be added, stands. */
    private void turnTo(String path) {
        Hands.see(() -> {
            hands.pane().form().turnToValue(path);
            return true;
        });
    }

    private JTextField cell(String name) {
        return hands.find(JTextField.class, "field " + name);
    }

    private static void commit(JTextField field, String text) {
        Hands.see(() -> {
            field.setText(text);
            field.postActionEvent();
            return true;
        });
    }

    private String trouble(String path) {
        Words.Area area = hands.find(Words.Area.class, "trouble " + path);
        return Hands.see(area::getText);
    }

    private static String text(JTextField field) {
        return Hands.see(() -> field.getText());
    }

    @Test
    void aCarIsMeasuredUpFromFieldToFieldByTab() {
        Hands.see(() -> {
            hands.pane().turnTo(Look.Page.MEASURING_UP);
            return true;
        });
        JButton next = hands.find(JButton.class, "measure next");
        Rectangle place =
                Hands.see(() -> SwingUtilities.convertRectangle(next.getParent(), next.getBounds(), hands.pane()));
        hands.click(next);
        for (String wheel : List.of("frontLeft", "frontRight", "rearLeft", "rearRight")) {
            JTextField field = cell("cornerWeights." + wheel);
            Hands.until("focus in " + wheel, field::isFocusOwner);
            hands.key(KeyEvent.VK_3);
            hands.key(KeyEvent.VK_0);
            hands.key(KeyEvent.VK_0);
            hands.key(KeyEvent.VK_K);
            hands.key(KeyEvent.VK_G);
            hands.key(KeyEvent.VK_TAB);
        }
        Hands.until(
                "the weight",
                () -> hands.pane().measure().measured().text().contains("\"rearRight\": \"300 kg\"")
                        || hands.pane().measure().measured().text().contains("\"rearRight\": \"300kg\""));
        hands.click(next);
        assertThat(Hands.see(() -> SwingUtilities.convertRectangle(next.getParent(), next.getBounds(), hands.pane())))
                .as("what is pressed again and again stays where it is")
                .isEqualTo(place);
    }

    @Test
    void aSearchThatFindsNothingSaysSo() {
        form("harbour-saloon");
        JTextField search = hands.find(JTextField.class, "search");
        commit(search, "bush");
        assertThat(hands.find(JTextField.class, "field front.bar.bushFactor").isShowing())
                .isTrue();
        commit(search, "flux capacitor");
        Words.Area nothing = hands.find(Words.Area.class, "found nothing");
        String said = Hands.see(nothing::getText);
        assertThat(said).contains("flux capacitor");
    }

    @Test
    void nonsenseInAnyFieldChangesNothingStaysWhereItIsAndIsToldThere() {
        form("tinkers-lane-roadster");
        String before = scenario();
        Form form = Form.of(hands.desk().work().scenario());
        ChapterList chapters = hands.find(ChapterList.class, "chapters");
        String page = "a page of text, \"quoted\" {[ ".repeat(100);
        List<String> kinds = List.of("soft", "{", "[[\"", "12 lb/in/g", "1e999 mm", "-", page);
        int tried = 0;
        for (int i = 0; i < chapters.getModel().getSize(); i++) {
            int chapter = i;
            List<JTextField> fields = new ArrayList<>();
            Hands.see(() -> {
                chapters.setSelectedIndex(chapter);
                hands.pane().validate();
                collect(hands.pane().form(), fields);
                return true;
            });
            for (JTextField field : fields) {
                String name = String.valueOf(field.getName());
                String path = name.replaceFirst("field ", "");
                boolean quantity = form.field(path).map(FormField::isQuantity).orElse(name.endsWith("].force"));
                if (!name.startsWith("field ") || !quantity || !Hands.see(field::isShowing)) {
                    continue;
                }
                String given = text(field);
                // One reader reads them all: each kind of nonsense comes to one field in seven.
                String nonsense = kinds.get(tried % kinds.size());
                commit(field, nonsense);
                assertThat(text(field)).as(name).isEqualTo(nonsense);
                assertThat(scenario()).as(name).isEqualTo(before);
                commit(field, given);
                assertThat(scenario()).as(name).isEqualTo(before);
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(100);
        turnTo("mass");
        JTextField mass = cell("mass");
        commit(mass, page);
        assertThat(trouble("mass")).isNotBlank().doesNotContain("Exception");
    }

    private static void collect(Container in, List<JTextField> fields) {
        for (Component component : in.getComponents()) {
            if (component instanceof JTextField field) {
                fields.add(field);
            } else if (component instanceof Container container) {
                collect(container, fields);
            }
        }
    }

    @Test
    void aPointIsAddedByTypingGoesToItsPlaceAndIsOneUndo() {
        form("tinkers-lane-roadster");
        String before = scenario();
        turnTo("front.damper.bump");
        hands.type(cell("front.damper.bump[5].speed"), "8");
        assertThat(scenario()).isEqualTo(before);
        hands.type(cell("front.damper.bump[5].force"), "82");
        assertThat(scenario()).contains("[\"4 in/s\", \"58 lbf\"], [\"8 in/s\", \"82 lbf\"], [\"12 in/s\"");
        assertThat(text(cell("front.damper.bump[3].speed"))).isEqualTo("8 in/s");
        JTextField empty = cell("front.damper.bump[6].speed");
        Hands.until("the next empty row", empty::isFocusOwner);
        hands.click(hands.find(JButton.class, "remove front.damper.bump[3]"));
        assertThat(text(cell("front.damper.bump[3].speed"))).isEqualTo("12 in/s");
        Hands.see(() -> {
            hands.pane().bench().undo();
            hands.pane().bench().undo();
            return true;
        });
        assertThat(scenario()).isEqualTo(before);
        assertThat(text(cell("front.damper.bump[3].speed"))).isEqualTo("12 in/s");
    }

    @Test
    void whatIsWrongInACellStaysThereWithItsReasonThoughOtherThingsChange() {
        form("quarry-special");
        JTextField rise = cell("axleLift.readings[1].rise");
        commit(rise, "45 kg");
        assertThat(trouble("axleLift.readings[1]")).startsWith("rise ").contains("length");
        hands.act(new EditAct.SetInFile("title", Optional.of("\"Another title\"")));
        JTextField gain = cell("axleLift.readings[3].otherAxleGain");
        commit(gain, "31 kg");
        JTextField next = cell("axleLift.readings[3].rise");
        commit(next, "700 mm");
        assertThat(scenario()).contains("{\"rise\": \"700 mm\", \"otherAxleGain\": \"31 kg\"}");
        assertThat(text(cell("axleLift.readings[1].rise"))).isEqualTo("45 kg");
        String absent = "front.sideView";
        turnTo(absent);
        hands.click(hands.find(JButton.class, "add " + absent));
        hands.find(JButton.class, "leave " + absent);
        turnTo("axleLift.readings");
        assertThat(text(cell("axleLift.readings[1].rise"))).isEqualTo("45 kg");
        commit(cell("axleLift.readings[1].rise"), "455");
        assertThat(scenario()).contains("\"rise\": \"455 mm\"");
    }

    @Test
    void aLoadCaseIsAddedAndComesAboard() {
        form("harbour-saloon");
        turnTo("loadCases[0]");
        hands.click(hands.find(JButton.class, "add loadCases[0]"));
        hands.type(cell("loadCases[0].name"), "two up");
        hands.type(cell("loadCases[0].added[0].mass"), "75");
        hands.type(cell("loadCases[0].added[0].behindFrontAxle"), "1300");
        hands.type(cell("loadCases[0].added[0].height"), "600");
        Hands.until(
                "the load case",
                () -> hands.pane()
                        .bench()
                        .desk()
                        .work()
                        .scenario()
                        .loadCase("two up")
                        .isPresent());
        JComboBox<?> load = hands.find(JComboBox.class, "load");
        Hands.see(() -> {
            load.setSelectedItem("two up");
            return true;
        });
        assertThat(hands.desk().work().load()).contains("two up");
        assertThat(scenario()).contains("\"mass\": \"75 kg\"");
        hands.answered();
    }

    @Test
    void wordsForTheSheetAreTypedForOneSetupAlone() {
        form("harbour-saloon");
        JComboBox<?> edit = hands.find(JComboBox.class, "edit");
        Hands.see(() -> {
            edit.setSelectedIndex(1);
            return true;
        });
        String setup = hands.desk().work().active();
        int rows = hands.desk().work().activeSetup().sheet().size();
        turnTo("sheet");
        hands.type(cell("sheet[" + rows + "].what"), "castor");
        hands.type(cell("sheet[" + rows + "].words"), "4 deg");
        assertThat(hands.desk().work().scenario().setup(setup).orElseThrow().sheet())
                .containsEntry("castor", "4 deg");
    }

    @Test
    void pointsOfALinkStandInOneTableAndTheRightSideOnlyWhereItDiffers() {
        form("sluice-tourer");
        String before = scenario();
        String up = "rear.links.lowerLink.body.up";
        turnTo(up);
        hands.type(cell(up), "251");
        assertThat(text(cell(up))).isEqualTo("251 mm");
        assertThat(scenario()).contains("\"up\": \"251 mm\"");
        hands.type(cell(up), "12 kg");
        assertThat(trouble("rear.links.lowerLink.body")).startsWith("up ").contains("length");
        assertThat(text(cell(up))).isEqualTo("12 kg");
        assertThat(scenario()).contains("\"up\": \"251 mm\"");
        hands.click(hands.find(JCheckBox.class, "right rear.links.lowerLink"));
        assertThat(text(cell(up))).as("nothing typed is lost").isEqualTo("12 kg");
        String right = "rear.links.lowerLink.right.axle.up";
        assertThat(text(cell(right))).isEmpty();
        JTextField onTheRight = cell(right);
        assertThat(Hands.see(() -> onTheRight.getClientProperty("JTextField.placeholderText")))
                .isEqualTo("230 mm");
        hands.type(cell(right), "243");
        assertThat(scenario()).contains("\"right\": {\"axle\": {\"up\": \"243 mm\"}}");
        hands.click(hands.find(JCheckBox.class, "right rear.links.lowerLink"));
        assertThat(text(cell(right))).as("what differs is always shown").isEqualTo("243 mm");
        commit(cell(right), "");
        assertThat(scenario()).doesNotContain("\"right\": {\"axle\"");
        Hands.see(() -> {
            hands.pane().bench().undo();
            hands.pane().bench().undo();
            hands.pane().bench().undo();
            return true;
        });
        assertThat(scenario()).isEqualTo(before);
        assertThat(text(cell("rear.lateralLocator.upperRod.end.left")))
                .as("a Watt's linkage has one table")
                .isEqualTo("420 mm ± 2 mm");
        List<String> asked = Form.of(hands.desk().work().scenario()).fields().stream()
                .map(FormField::path)
                .toList();
        assertThat(asked)
                .contains("steering.ratio", "rear.lateralForceSteer")
                .as("what the links decide is not asked for")
                .doesNotContain(
                        "steering.ackermannShare", "rear.rollSteer", "front.rollCamber", "rear.spring.motionRatio");
    }

    private List<String> setups() {
        return hands.desk().work().scenario().setups().stream().map(Setup::name).toList();
    }

    @Test
    void aSetupDraggedDownTheListIsMovedThereAndUndone() {
        List<String> before = setups();
        assertThat(before).hasSizeGreaterThan(2);
        // Turning to another set-up while it is dragged would move the list under the mouse.
        hands.act(new TrialAct.Activate(before.get(0)));
        hands.answered();
        SetupList list = hands.find(SetupList.class, "set-ups");
        Rectangle first = Hands.see(() -> list.getCellBounds(0, 0));
        Rectangle third = Hands.see(() -> list.getCellBounds(2, 2));
        int x = first.width / 2;
        hands.drag(list, x, (int) first.getCenterY(), x, (int) third.getMaxY() - 2);
        List<String> moved = new ArrayList<>(before);
        moved.add(2, moved.remove(0));
        assertThat(setups()).isEqualTo(moved);
        hands.drag(list, x, (int) third.getCenterY(), x, 2);
        assertThat(setups()).isEqualTo(before);
        Hands.see(() -> {
            hands.pane().bench().undo();
            return true;
        });
        assertThat(setups()).isEqualTo(moved);
    }

    @Test
    void aClickOfAnUnsteadyHandMovesNoSetup() {
        List<String> before = setups();
        SetupList list = hands.find(SetupList.class, "set-ups");
        Rectangle second = Hands.see(() -> list.getCellBounds(1, 1));
        int y = (int) second.getCenterY();
        hands.drag(list, second.width / 2, y, second.width / 2 + 9, y + 3);
        assertThat(setups()).isEqualTo(before);
        assertThat(hands.desk().work().active()).isEqualTo(before.get(1));
    }
}
