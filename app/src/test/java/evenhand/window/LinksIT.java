package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.drawing.DrawingView;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.TrialAct;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A measured axle moved through its travel by the track of its question, as far as a damper that is too long lets it. */
@OnScreen
@Timeout(300)
class LinksIT {
    private static final String TRACK = "place rear bump and droop";

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
                            "In bump the left damper is closed at 40.9 mm")
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

    private static String said(Hands hands) {
        return Hands.see(() -> hands.pane().answer().said());
    }
}
