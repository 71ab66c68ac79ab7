package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.terminal.Runs;
import evenhand.window.desk.Demos;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.SetupAct;
import evenhand.window.desk.TrialAct;
import evenhand.words.Units;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JRadioButton;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Files of a job: dropped on the window, gone, not to be written; and the report. */
@OnScreen
@Timeout(300)
class JobFilesIT {
    @TempDir
    Path folder;

    private Path file;
    private Hands hands;

    @BeforeEach
    void open() throws Exception {
        file = car("saloon.json", "harbour-saloon");
        hands = new Hands(folder.resolve("state"), Optional.of(file));
    }

    @AfterEach
    void close() {
        hands.close();
    }

    private Path car(String name, String demo) throws Exception {
        return Files.writeString(
                folder.resolve(name), Demos.open(demo).work().scenario().text());
    }

    private String notice() {
        return Hands.see(() -> hands.pane().notice().text());
    }

    private String title() {
        return hands.desk().work().scenario().title();
    }

    /** Files as a file browser hands them over. */
    private record Dragged(List<File> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return files;
        }
    }

    private boolean drop(Path... dropped) {
        List<File> files = List.of(dropped).stream().map(Path::toFile).toList();
        return Hands.see(() -> {
            TransferHandler handler = hands.window().frame().getTransferHandler();
            TransferHandler.TransferSupport support =
                    new TransferHandler.TransferSupport(hands.window().frame().getRootPane(), new Dragged(files));
            return handler.canImport(support) && handler.importData(support);
        });
    }

    @Test
    void aFileDroppedOnTheWindowIsOpenedAndOfTwoTheFirst() throws Exception {
        Path coupe = car("coupe.json", "slipper-coupe");
        assertThat(drop(coupe)).isTrue();
        Hands.until(
                "the coupe",
                () -> hands.pane().bench().desk().work().scenario().title().contains("Slipper"));
        assertThat(drop(file, coupe)).isTrue();
        Hands.until(
                "the saloon",
                () -> hands.pane().bench().desk().work().scenario().title().contains("Harbour"));
        assertThat(notice()).contains("saloon.json", "one by one");
    }

    @Test
    void aBrokenFileDroppedOnTheWindowIsToldAndTheWorkStays() throws Exception {
        String before = title();
        Path broken = Files.writeString(folder.resolve("broken.json"), "{\"evenhand\": 1, \"car\": ");
        drop(broken);
        Hands.until("a line about it", () -> hands.pane().notice().text().contains("cannot be opened"));
        drop(Files.write(folder.resolve("picture.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 0}));
        Hands.until("a line about it", () -> hands.pane().notice().text().contains("picture.png"));
        drop(folder);
        Hands.until(
                "a line about it",
                () -> hands.pane().notice().text().contains(folder.getFileName().toString()));
        assertThat(title()).isEqualTo(before);
    }

    /** Nowhere was to be seen which file it is, and whether it is saved. */
    @Test
    void theFileAndWhetherItIsSavedStandInBothBars() throws Exception {
        javax.swing.JLabel kept = hands.find(javax.swing.JLabel.class, "kept");
        String title = title();
        assertThat(Hands.see(() -> kept.getText())).isEqualTo("saloon.json, saved");
        assertThat(Hands.see(() -> hands.window().frame().getTitle()))
                .isEqualTo("saloon.json – " + title + " – Evenhand");
        hands.act(new SetupAct.SetNote("Lowered", "precious"));
        assertThat(Hands.see(() -> kept.getText())).isEqualTo("* saloon.json, not saved");
        assertThat(Hands.see(() -> hands.window().frame().getTitle()))
                .isEqualTo("* saloon.json – " + title + " – Evenhand");
        assertThat(Hands.see(() -> kept.getVisibleRect().width)).isEqualTo(Hands.see(() -> kept.getWidth()));
        Hands.see(() -> hands.pane().cabinet().save());
        assertThat(Hands.see(() -> kept.getText())).isEqualTo("saloon.json, saved");
        Hands.see(() -> {
            hands.pane().cabinet().openDemo("slipper-coupe");
            return true;
        });
        assertThat(Hands.see(() -> kept.getText())).isEqualTo("no file yet");
    }

    /** The demo car was shown as if it had been asked for. */
    @Test
    void aBrokenFileAtTheStartIsToldWithItsPlaceAndWhatIsShownInstead() throws Exception {
        hands.close();
        Files.writeString(file, "{\"evenhand\": 1,\n \"car\": {\"mass\": \"10\"}}");
        hands = new Hands(folder.resolve("state"), Optional.of(file));
        assertThat(notice())
                .contains("“saloon.json” cannot be opened", "saloon.json:2:18: car.mass: needs a unit")
                .contains("Choose another, or go on with the demo car “" + title() + "”");
        Path other = Files.writeString(folder.resolve("other.json"), "{");
        Hands.see(() -> hands.pane().cabinet().open(other));
        assertThat(notice()).contains("“other.json” cannot be opened", "other.json:1:", "still shown, as it was");
    }

    private static final String MINE = "typed here";
    private static final String THEIRS = "typed elsewhere";

    /** Changes the job here, and its file by another program. */
    private void changeBoth() throws Exception {
        hands.act(new SetupAct.SetNote("Lowered", MINE));
        Files.writeString(file, Files.readString(file).replaceFirst("\"title\": \"", "\"title\": \"" + THEIRS + ", "));
    }

    private boolean save() {
        return Hands.see(() -> hands.pane().cabinet().save());
    }

    private String in(String name) throws Exception {
        return Files.readString(folder.resolve(name));
    }

    /** A save replaced what another program had written. */
    @Test
    void ofTwoVersionsMineStaysAndTheirsIsKept() throws Exception {
        changeBoth();
        assertThat(save()).as("nobody has decided").isFalse();
        assertThat(in("saloon.json")).contains(THEIRS).doesNotContain(MINE);
        assertThat(hands.desk().unsaved()).isTrue();
        hands.changed = Asker.Changed.MINE;
        assertThat(save()).isTrue();
        assertThat(in("saloon.json")).contains(MINE).doesNotContain(THEIRS);
        assertThat(in("saloon.theirs.json")).contains(THEIRS).doesNotContain(MINE);
        assertThat(notice()).contains("“saloon.theirs.json”");
        hands.act(new SetupAct.SetNote("Lowered", MINE + " again"));
        hands.changed = Asker.Changed.BACK;
        assertThat(save()).as("what was saved here is no change by others").isTrue();
    }

    @Test
    void ofTwoVersionsTheirsIsTakenAndMineIsKept() throws Exception {
        changeBoth();
        hands.changed = Asker.Changed.THEIRS;
        assertThat(save()).isTrue();
        assertThat(title()).startsWith(THEIRS);
        assertThat(in("saloon.mine.json")).contains(MINE).doesNotContain(THEIRS);
        assertThat(notice()).contains("“saloon.mine.json”");
        assertThat(hands.desk().unsaved()).isFalse();
        changeBoth();
        save();
        assertThat(in("saloon.mine-2.json")).contains(MINE);
    }

    @Test
    void ofTwoVersionsMineGoesElsewhereAndTheirsStays() throws Exception {
        changeBoth();
        hands.changed = Asker.Changed.ELSEWHERE;
        hands.files.add(folder.resolve("elsewhere.json"));
        assertThat(save()).isTrue();
        assertThat(in("saloon.json")).contains(THEIRS);
        assertThat(in("elsewhere.json")).contains(MINE);
        assertThat(hands.desk().filed().path()).contains(folder.resolve("elsewhere.json"));
    }

    @Test
    void theirsThatCannotBeReadTakesNothingAway() throws Exception {
        hands.act(new SetupAct.SetNote("Lowered", MINE));
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, '{', 0});
        hands.changed = Asker.Changed.THEIRS;
        assertThat(save()).isFalse();
        assertThat(in("saloon.mine.json")).contains(MINE);
        assertThat(notice()).contains("“saloon.json” cannot be opened", "saloon.mine.json");
        assertThat(hands.desk().unsaved()).isTrue();
    }

    @Test
    void aFileThatIsGoneIsSaidSoAndCanBeWrittenAgain() throws Exception {
        Files.delete(file);
        Hands.see(() -> {
            hands.pane().cabinet().lookOutside();
            return true;
        });
        assertThat(notice()).contains("no longer there");
        hands.click(hands.find(JButton.class, "notice save"));
        assertThat(file).exists();
    }

    @Test
    void workThatCannotBeSavedIsSaidSoAndStaysUnsaved() throws Exception {
        Path noFolder = Files.writeString(folder.resolve("a-file"), "").resolve("saloon.json");
        hands.act(new SetupAct.SetNote("Lowered", "precious"));
        hands.files.add(noFolder);
        Hands.see(() -> hands.pane().cabinet().saveAs());
        assertThat(notice()).startsWith("cannot save " + noFolder).contains("Nothing is lost");
        assertThat(hands.desk().unsaved()).isTrue();
        assertThat(hands.desk().filed().path()).contains(file);
    }

    @Test
    void whereNothingCanBeKeptSafeItIsSaidOnce() throws Exception {
        hands.close();
        Path state = Files.writeString(folder.resolve("state-file"), "in the way");
        hands = new Hands(state, Optional.of(file));
        hands.act(new SetupAct.SetNote("Lowered", "precious"));
        Hands.until("a line about it", () -> hands.pane().notice().text().contains("cannot be kept safe"));
        assertThat(hands.desk().work().scenario().setup("Lowered").orElseThrow().note())
                .contains("precious");
    }

    private String report(Path out) {
        hands.key(java.awt.event.KeyEvent.VK_CONTROL, java.awt.event.KeyEvent.VK_R);
        Words.Area told = hands.find(Words.Area.class, "what became of the report");
        hands.files.add(out);
        hands.click(hands.find(JButton.class, "report write"));
        Hands.until(
                "the report", () -> !told.getText().isEmpty() && !told.getText().startsWith("Writing"));
        return Hands.see(told::getText);
    }

    /** Without a screen, and for all of them one process: most of the work of each would be starting it. */
    private void byTerminal(List<Path> outs) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Runs.class.getName()));
        for (Path out : outs) {
            List<String> asked =
                    new ArrayList<>(List.of("report", file.toString(), "-o", out.toString(), "--setup", "Lowered"));
            if (!out.toString().endsWith(".csv")) {
                asked.addAll(List.of("--for", "owner,workshop"));
            }
            command.add(Runs.argument(asked));
        }
        assertThat(new ProcessBuilder(command).inheritIO().start().waitFor()).isZero();
    }

    @Test
    void theReportOfTheWindowIsTheTerminalsByteForByte() throws Exception {
        hands.click(hands.find(JButton.class, "set-up base")); // a detour: Lowered is the base for a moment
        hands.act(new TrialAct.CompareWith("As bought"));
        hands.act(new TrialAct.Show("As bought", false));
        hands.act(new TrialAct.Activate("Lowered"));
        hands.key(java.awt.event.KeyEvent.VK_CONTROL, java.awt.event.KeyEvent.VK_R);
        JCheckBox dated = hands.find(JCheckBox.class, "report dated");
        hands.click(dated);
        hands.click(hands.find(JCheckBox.class, "report for workshop"));
        List<String> kinds = List.of("pdf", "html", "csv");
        for (String kind : kinds) {
            Path out = folder.resolve("window." + kind);
            assertThat(report(out)).startsWith("Written to " + out);
        }
        byTerminal(
                kinds.stream().map(kind -> folder.resolve("terminal." + kind)).toList());
        for (String kind : kinds) {
            assertThat(Files.readAllBytes(folder.resolve("window." + kind)))
                    .isEqualTo(Files.readAllBytes(folder.resolve("terminal." + kind)));
        }
        byte[] pdf = Files.readAllBytes(folder.resolve("window.pdf"));
        assertThat(new String(pdf, 0, 5, StandardCharsets.ISO_8859_1)).isEqualTo("%PDF-");
        hands.act(new LookAct.ShowUnits(Units.IMPERIAL));
        JRadioButton letter = hands.find(JRadioButton.class, "report Letter");
        assertThat(Hands.see(letter::isSelected)).isTrue();
    }

    @Test
    void theReportIsOfTheJobAsItStandsThoughItIsNotSaved() throws Exception {
        hands.act(new EditAct.SetInFile("title", Optional.of("\"Not saved yet\"")));
        Path html = folder.resolve("now.html");
        assertThat(report(html)).startsWith("Written to");
        assertThat(Files.readString(html)).contains("Not saved yet");
        assertThat(hands.desk().unsaved()).isTrue();
        assertThat(Files.readString(file)).doesNotContain("Not saved yet");
    }

    @Test
    void aReportThatCannotBeWrittenIsSaidSoAndLeavesNothing() throws Exception {
        assertThat(report(folder.resolve("report.doc"))).contains(".pdf, .html or .csv");
        assertThat(report(folder.resolve("missing").resolve("report.pdf"))).contains("there is no folder");
        Path nobodys = Path.of("/proc/self/report.csv"); // where even root may make no file
        assertThat(report(nobodys)).contains("cannot be written");
        assertThat(nobodys).doesNotExist();
    }
}
