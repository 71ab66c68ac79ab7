package evenhand.window;

import evenhand.window.desk.Bench;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.question.Questions;
import evenhand.words.Units;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import javax.swing.SwingUtilities;

/**
 * Writes pictures of the window, each question at three sizes and in both themes, without a screen:
 * {@code mvn -q -Ppictures -DskipTests package}. Arguments: the folder, then names of demo cars; the first of all where none is
 * named.
 */
public final class WindowPictures {
    private static final List<Dimension> SIZES =
            List.of(new Dimension(1024, 700), new Dimension(1280, 800), new Dimension(2560, 1440));
    private static final int PATIENCE = 60_000;
    private static final int PATIENCE_AT_THE_CIRCLE = 4_000;

    private WindowPictures() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        List<String> cars =
                arguments.length > 1 ? List.of(arguments).subList(1, arguments.length) : Demos.NAMES.subList(0, 1);
        for (String car : cars) {
            for (boolean dark : new boolean[] {false, true}) {
                for (Dimension size : SIZES) {
                    Shot shot = new Shot(car, dark, size, folder);
                    for (Question question : Questions.ALL) {
                        shot.take(question);
                    }
                    shot.measureUp();
                }
            }
        }
        System.exit(0);
    }

    private static final class Shot {
        private final String car;
        private final boolean dark;
        private final Dimension size;
        private final Path folder;
        private final Bench bench;
        private final MainPane pane;

        Shot(String car, boolean dark, Dimension size, Path folder) throws Exception {
            this.car = car;
            this.dark = dark;
            this.size = size;
            this.folder = folder;
            Path state = Files.createDirectories(folder.resolveSibling("pictures-state"));
            Room[] made = new Room[1];
            SwingUtilities.invokeAndWait(() -> {
                Look look = Look.at(Questions.ALL.get(0).key(), Units.METRIC, dark);
                made[0] = Room.with(car, look, state, new Rehearsal.NoOne(), new Rehearsal.NoOne());
                made[0].pane().bench().begin();
            });
            pane = made[0].pane();
            bench = pane.bench();
        }

        void take(Question question) throws Exception {
            SwingUtilities.invokeAndWait(() -> bench.act(new LookAct.Ask(question.key())));
            long until = System.currentTimeMillis() + PATIENCE;
            boolean[] late = {true};
            while (late[0] && System.currentTimeMillis() < until) {
                Thread.sleep(20);
                SwingUtilities.invokeAndWait(() ->
                        late[0] = bench.desk().replies().replyLate(bench.desk().asking()));
            }
            Thread.sleep(700); // what to do next comes last
            write(question.key());
        }

        void measureUp() throws Exception {
            SwingUtilities.invokeAndWait(() -> pane.turnTo(Look.Page.MEASURING_UP));
            write("measure-up");
            SwingUtilities.invokeAndWait(() -> pane.turnTo(Look.Page.CIRCLE));
            Thread.sleep(PATIENCE_AT_THE_CIRCLE);
            write("at-the-circle");
            SwingUtilities.invokeAndWait(() -> pane.turnTo(Look.Page.REPORT));
            write("report");
            SwingUtilities.invokeAndWait(() -> pane.turnTo(Look.Page.ANSWER));
        }

        private void write(String name) throws Exception {
            BufferedImage[] image = new BufferedImage[1];
            SwingUtilities.invokeAndWait(() -> image[0] = Snapshot.of(pane, size));
            Path file = folder.resolve(
                    car + "." + name + "." + size.width + "x" + size.height + (dark ? ".dark" : ".light") + ".png");
            ImageIO.write(image[0], "png", file.toFile());
        }
    }
}
