package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.question.Questions;
import evenhand.words.Units;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** In the smallest window each question shows its verdict and whole pictures without scrolling. Without a screen. */
@Timeout(120)
class FirstScreenTest {
    private static final Dimension SMALLEST = new Dimension(1024, 700);

    @TempDir
    Path folder;

    @Test
    void everyQuestionHasWholePicturesInSight() throws Exception {
        Room[] room = new Room[1];
        List<String> cut = new ArrayList<>();
        SwingUtilities.invokeAndWait(() -> {
            Look look = Look.at(Questions.ALL.get(0).key(), Units.METRIC, false);
            room[0] = Room.with("harbour-saloon", look, folder, new Rehearsal.NoOne(), new Rehearsal.NoOne());
            room[0].pane().bench().begin();
        });
        MainPane pane = room[0].pane();
        for (Question question : Questions.ALL) {
            SwingUtilities.invokeAndWait(() -> pane.bench().act(new LookAct.Ask(question.key())));
            boolean[] late = {true};
            while (late[0]) {
                SwingUtilities.invokeAndWait(() -> late[0] = pane.bench()
                        .desk()
                        .replies()
                        .replyLate(pane.bench().desk().asking()));
            }
            SwingUtilities.invokeAndWait(() -> {
                Snapshot.of(pane, SMALLEST);
                JPanel pictures = pane.answer().foremost();
                if (pictures.isShowing() || isInSight(pictures)) {
                    Rectangle place = place(pictures);
                    int seen = viewport(pictures).getHeight();
                    if (place.y + place.height > seen) {
                        cut.add(question.key() + ": " + place + " of " + seen);
                    }
                    assertThat(place.height).as(question.words()).isGreaterThanOrEqualTo(Abreast.LEAST_HEIGHT);
                }
            });
        }
        SwingUtilities.invokeAndWait(room[0]::close);
        assertThat(cut).isEmpty();
    }

    private static boolean isInSight(Component component) {
        for (Component own = component; own != null; own = own.getParent()) {
            if (!own.isVisible()) {
                return false;
            }
        }
        return component instanceof Container container && container.getComponentCount() > 0;
    }

    private static Rectangle place(Component component) {
        return SwingUtilities.convertRectangle(
                component.getParent(),
                component.getBounds(),
                viewport(component).getView());
    }

    private static JViewport viewport(Component component) {
        return (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, component);
    }
}
