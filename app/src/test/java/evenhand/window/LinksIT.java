package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.catalogue.Catalogue;
import evenhand.drawing.DrawingView;
import evenhand.drawing.Handle;
import evenhand.drawing.Scaling;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.TrialAct;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A measured axle moved through its travel by the track of its question, as far as a damper that is too long lets it. */
@OnScreen
@Timeout(300)
class LinksIT {
    private static final String TRACK = "place rear bump and droop";
    private static final String PIVOT = "rear.lateralLocator.pivot";

    @TempDir
    Path folder;

    @Test
    void theAxleFollowsTheTrackAndWhatEndsItsTravelIsSaid() throws Exception {
        String tourer = Files.readString(Path.of("..", "scenarios", "sluice-tourer.json"))
                .replace("\"closedLength\": \"290 mm\"", "\"closedLength\": \"325 mm\"");
        Path file = Files.writeString(folder.resolve("tourer.json"), tourer);
        try (Hands hands = new Hands(folder.resolve("state"), Optional.of(file))) {
            hands.act(new TrialAct.Activate("As measured"));
            hands.act(new LookAct.Ask("links"));
            hands.answered();
            assertThat(said(hands)).contains("The rear roll centre stands 295.4 mm", "At rest, the roll centre");
            Optional<String> before = Hands.see(() -> hands.pane().bench().undoable());
            DrawingView behind = hands.find(DrawingView.class, "drawing 0");
            String world = Hands.see(() -> behind.drawing().world().toString());

            Track track = hands.find(Track.class, TRACK);
            Hands.see(track::requestFocusInWindow);
            Hands.until("focus", track::isFocusOwner);
            for (int i = 0; i < 3; i++) {
                hands.key(KeyEvent.VK_SHIFT, KeyEvent.VK_RIGHT);
            }
            hands.answered();
            JLabel place = hands.find(JLabel.class, TRACK + " place");
            assertThat(Hands.see(place::getText)).isEqualTo("+30.0 mm");
            assertThat(said(hands))
                    .contains(
                            "At 30 mm of bump, the roll centre stands 256",
                            "In bump the left damper is closed at 39.7 mm")
                    .doesNotContain("Beyond");
            assertThat(Hands.see(() -> behind.drawing().title())).endsWith("at 30 mm of bump");

            hands.drag(track, track.xOf(30), track.getHeight() / 2, track.xOf(60), track.getHeight() / 2);
            hands.answered();
            assertThat(Hands.see(track::value)).isBetween(57.0, 63.0);
            assertThat(said(hands)).contains("Beyond a limit here: both dampers closed");
            assertThat(Hands.see(() -> behind.drawing().world().toString())).isEqualTo(world);
            // Looking is no work: nothing more is to be undone, and nothing to be saved.
            assertThat(Hands.see(() -> hands.pane().bench().undoable())).isEqualTo(before);
            assertThat(hands.desk().unsaved()).isFalse();
        }
    }

    @Test
    void aPointIsPulledByMouseAndKeysAndSaysWhatItMoves() throws Exception {
        String tourer = Files.readString(Path.of("..", "scenarios", "sluice-tourer.json"));
        Path file = Files.writeString(folder.resolve("tourer.json"), tourer);
        try (Hands hands = new Hands(folder.resolve("state"), Optional.of(file))) {
            hands.act(new TrialAct.Activate("As measured"));
            hands.act(new LookAct.Ask("links"));
            hands.answered();
            DrawingView behind = hands.find(DrawingView.class, "drawing 0");
            Hands.until("the drawing is painted", () -> behind.scaling().isPresent());
            Scaling scaling = Hands.see(() -> behind.scaling().orElseThrow());
            Handle pivot = Hands.see(() -> behind.drawing().handle(PIVOT).orElseThrow());
            int x = (int) Math.round(scaling.px(pivot.x()));
            int y = (int) Math.round(scaling.py(pivot.z()));
            hands.drag(behind, x, y, x, y - 10);
            hands.answered();
            double up = value(hands, PIVOT + ".up");
            assertThat(up).isCloseTo(0.29 + 10 / scaling.scale(), within(2 / scaling.scale()));
            assertThat(hands.desk().work().scenario().text())
                    .as("of this set-up, and only what was pulled")
                    .contains("\"changes\": {\"rear\": {\"lateralLocator\": {\"pivot\": {\"up\": \"");
            String told = told(behind);
            assertThat(told)
                    .contains("rear lateral locator pivot: left 0 mm, up " + Math.round(1000 * up) + " mm")
                    .contains("rear roll centre 295.4 → ", "roll steer −3.86 → ")
                    .doesNotContain("pinion slope");
            assertThat(said(hands)).doesNotContain("roll centre stands 295.4");

            hands.key(KeyEvent.VK_UP);
            hands.key(KeyEvent.VK_SHIFT, KeyEvent.VK_DOWN);
            hands.answered();
            assertThat(value(hands, PIVOT + ".up")).isCloseTo(up - 0.009, within(1e-9));
            for (int i = 0; i < 3; i++) {
                hands.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
            }
            hands.answered();
            assertThat(hands.desk().work().scenario().text()).isEqualTo(tourer);
        }
    }

    /** A link can be made as long as it takes; the rods of a bell-crank on one side of the car hold no axle. */
    @Test
    void aPointThatCannotBeThereStaysAndIsToldAtTheHand() throws Exception {
        String tourer = Files.readString(Path.of("..", "scenarios", "sluice-tourer.json"));
        Path file = Files.writeString(folder.resolve("tourer.json"), tourer);
        try (Hands hands = new Hands(folder.resolve("state"), Optional.of(file))) {
            hands.act(new TrialAct.Activate("As measured"));
            hands.act(new LookAct.Ask("links"));
            hands.answered();
            DrawingView behind = hands.find(DrawingView.class, "drawing 0");
            Hands.until("the drawing is painted", () -> behind.scaling().isPresent());
            Scaling scaling = Hands.see(() -> behind.scaling().orElseThrow());
            Handle end = Hands.see(() ->
                    behind.drawing().handle("rear.lateralLocator.upperRod.end").orElseThrow());
            int x = (int) Math.round(scaling.px(end.x()));
            int y = (int) Math.round(scaling.py(end.z()));
            hands.drag(behind, x, y, x + (int) (0.9 * scaling.scale()), y);
            hands.answered();
            assertThat(told(behind)).contains("side");
            assertThat(value(hands, "rear.lateralLocator.upperRod.end.left")).isPositive();
        }
    }

    @Test
    void aBracketIsFoundByChoiceAndTakenOver() throws Exception {
        String tourer = Files.readString(Path.of("..", "scenarios", "sluice-tourer.json"));
        Path file = Files.writeString(folder.resolve("tourer.json"), tourer);
        try (Hands hands = new Hands(folder.resolve("state"), Optional.of(file))) {
            hands.act(new TrialAct.Activate("As measured"));
            hands.act(new LookAct.Ask("brackets"));
            hands.answered();
            assertThat(said(hands)).contains("rear links lower link axle up", "which gives −0.07 %");
            choose(hands, "figure", "pinion slope");
            hands.type(hands.find(JTextField.class, "value pinion slope, deg"), "2");
            hands.answered();
            assertThat(said(hands)).contains("The aim, 2 deg, is at", "rear links torque arm longer");
            hands.click(hands.find(JButton.class, "do it"));
            hands.answered();
            assertThat(value(hands, "rear.links.torqueArm.longer")).isBetween(-0.018, -0.014);
        }
    }

    private static void choose(Hands hands, String field, String choice) {
        JComboBox<?> combo = hands.find(JComboBox.class, field);
        Hands.see(() -> {
            combo.setSelectedItem(choice);
            return true;
        });
        hands.answered();
    }

    private static double value(Hands hands, String path) {
        return Catalogue.number(hands.desk().work().activeSetup().entries(), path)
                .orElseThrow();
    }

    /** What stands at the hand. */
    private static String told(DrawingView view) {
        return Hands.see(() -> view.getAccessibleContext().getAccessibleDescription());
    }

    private static String said(Hands hands) {
        return Hands.see(() -> hands.pane().answer().said());
    }
}
