package evenhand.window;

import evenhand.answers.Progress;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.ReportWriter;
import evenhand.window.question.Questions;
import evenhand.words.Units;
import java.awt.Dimension;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** Opens the window without a screen and asks every question, so that whoever archives classes learns which it needs. */
public final class Rehearsal {
    private static final Dimension SIZE = new Dimension(1280, 800);
    private static final int PATIENCE = 400;

    private Rehearsal() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("evenhand");
        Room[] room = new Room[1];
        SwingUtilities.invokeAndWait(() -> {
            Look look = Look.at(Questions.ALL.get(0).key(), Units.METRIC, false);
            room[0] = Room.with(Demos.NAMES.get(0), look, folder, new NoOne(), new NoOne());
            Menus.bar(room[0].pane(), Questions.ALL, () -> {}, () -> {});
            room[0].pane().bench().begin();
        });
        for (Look.Page page : Look.Page.values()) {
            SwingUtilities.invokeAndWait(() -> room[0].pane().turnTo(page));
            SwingUtilities.invokeAndWait(() -> Snapshot.of(room[0].pane(), SIZE));
        }
        for (Question question : Questions.ALL) {
            SwingUtilities.invokeAndWait(() -> room[0].pane().bench().act(new LookAct.Ask(question.key())));
            Thread.sleep(PATIENCE);
            SwingUtilities.invokeAndWait(() -> Snapshot.of(room[0].pane(), SIZE));
        }
        room[0].close();
        Files.deleteIfExists(folder);
        System.exit(0);
    }

    /** Nobody sits at it. */
    static final class NoOne implements Asker, ReportWriter {
        @Override
        public List<String> readers() {
            return List.of("owner");
        }

        @Override
        public ReportWriter.Outcome write(Order order, Path to, Progress progress) {
            return new ReportWriter.Outcome.Failed("nobody reads it");
        }

        @Override
        public Preview preview(Order order, Progress progress) {
            return new Preview.Failed("nobody looks at it");
        }

        @Override
        public Verdict verdict(Order order, Progress progress) {
            return new Verdict(List.of(), "");
        }

        @Override
        public Unsaved unsaved(String title) {
            return Unsaved.DISCARD;
        }

        @Override
        public Changed changedOutside(String file) {
            return Changed.BACK;
        }

        @Override
        public Optional<Path> toOpen(Optional<Path> near) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> toSave(Path proposed) {
            return Optional.empty();
        }

        @Override
        public Optional<String> line(String question, String start) {
            return Optional.empty();
        }
    }
}
