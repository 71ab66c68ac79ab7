package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.scenario.ScenarioFile;
import evenhand.words.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilesTest {
    private static final Instant NOON = Instant.parse("2026-11-30T12:00:00Z");

    @TempDir
    Path folder;

    private Path copy() throws IOException {
        Path file = folder.resolve("car.json");
        Files.copy(Desks.SCENARIOS.resolve("harbour-saloon.json"), file);
        return file;
    }

    private static Bench open(Path file) {
        Drawer.Opened.Sound sound = (Drawer.Opened.Sound) Drawer.open(file);
        Bench bench = new Bench(Desks.demo("harbour-saloon"), asking -> {});
        bench.open(sound.work(), sound.filed());
        return bench;
    }

    @Test
    void theFolderFollowsTheCustomOfTheSystem() {
        Path home = Path.of("/home/sam");
        assertThat(StateFolder.of(Map.of(), home, "Linux")).isEqualTo(Path.of("/home/sam/.local/state/evenhand"));
        assertThat(StateFolder.of(Map.of("XDG_STATE_HOME", "/x"), home, "Linux"))
                .isEqualTo(Path.of("/x/evenhand"));
        assertThat(StateFolder.of(Map.of("XDG_STATE_HOME", "relative"), home, "Linux"))
                .isEqualTo(Path.of("/home/sam/.local/state/evenhand"));
        assertThat(StateFolder.of(Map.of(), home, "Mac OS X"))
                .isEqualTo(Path.of("/home/sam/Library/Application Support/evenhand"));
        assertThat(StateFolder.of(Map.of("LOCALAPPDATA", "/local"), home, "Windows 11"))
                .isEqualTo(Path.of("/local/evenhand"));
        assertThat(StateFolder.of(Map.of("EVENHAND_STATE", "/own"), home, "Linux"))
                .isEqualTo(Path.of("/own"));
    }

    @Test
    void recentFilesComeLatestFirstEachOnceAndOnlyWhileTheyAreThere() throws IOException {
        Memory memory = new Memory(folder.resolve("state"));
        Path one = Files.writeString(folder.resolve("one.json"), "{}");
        Path two = Files.writeString(folder.resolve("two.json"), "{}");
        memory.opened(one, "One", NOON);
        memory.opened(two, "Two", NOON);
        memory.opened(one, "One", NOON);
        assertThat(memory.recent()).containsExactly(one.toAbsolutePath(), two.toAbsolutePath());
        Files.delete(two);
        assertThat(memory.recent()).containsExactly(one.toAbsolutePath());
    }

    /** The start page tells what was last answered of a file, and that it is another file now. */
    @Test
    void ofARecentFileItsVerdictStandsUntilAnotherProgramHasChangedIt() throws IOException {
        Memory memory = new Memory(folder.resolve("state"));
        Path file = Files.writeString(folder.resolve("one.json"), "{}");
        memory.answered(file, "One", "it runs wide", NOON);
        memory.opened(file, "One", NOON.plusSeconds(60));
        Memory.Recent recent = new Memory(folder.resolve("state")).remembered().get(0);
        assertThat(recent.title()).isEqualTo("One");
        assertThat(recent.verdict()).isEqualTo("it runs wide");
        assertThat(recent.when()).contains(NOON.plusSeconds(60));
        assertThat(recent.since()).isEqualTo(Memory.Since.SAME);
        Files.writeString(file, "{ }");
        assertThat(recent.since()).isEqualTo(Memory.Since.CHANGED);
        Files.delete(file);
        assertThat(recent.since()).isEqualTo(Memory.Since.GONE);
        memory.forget(file);
        assertThat(memory.remembered()).isEmpty();
    }

    @Test
    void recentFilesOfTheVersionBeforeAreStillThere() throws IOException {
        Path file = Files.writeString(folder.resolve("one.json"), "{}");
        Files.writeString(folder.resolve("recent.txt"), file + "\n");
        Memory memory = new Memory(folder);
        assertThat(memory.recent()).containsExactly(file);
        assertThat(memory.remembered().get(0).since()).isEqualTo(Memory.Since.SAME);
    }

    @Test
    void aMomentIsToldAsOnTheWall() {
        Instant then = Instant.parse("2026-11-30T14:05:00Z");
        assertThat(When.words(then, then.plusSeconds(60), ZoneOffset.UTC)).isEqualTo("at 14:05 today");
        assertThat(When.words(then, then.plusSeconds(86_400), ZoneOffset.UTC)).isEqualTo("at 14:05 yesterday");
        assertThat(When.words(then, then.plusSeconds(3 * 86_400), ZoneOffset.UTC))
                .isEqualTo("at 14:05 on 30 November");
        assertThat(When.words(then, then.plusSeconds(60 * 86_400), ZoneOffset.UTC))
                .isEqualTo("at 14:05 on 30 November 2026");
    }

    @Test
    void unitsAndThemeAreRemembered() {
        Memory memory = new Memory(folder);
        assertThat(memory.look("q", Optional.empty()).units()).isEqualTo(Units.METRIC);
        memory.remember(Look.at("q", Units.IMPERIAL, true));
        assertThat(memory.look("q", Optional.empty())).isEqualTo(Look.at("q", Units.IMPERIAL, true));
        assertThat(memory.look("q", Optional.of(Units.METRIC))).isEqualTo(Look.at("q", Units.METRIC, true));
    }

    @Test
    void howTheWindowIsArrangedIsRememberedAndWhatIsHiddenInEachFile() {
        Memory memory = new Memory(folder);
        assertThat(memory.look("q", Optional.empty()).arrangement()).isEqualTo(Arrangement.USUAL);
        Arrangement arranged = Arrangement.USUAL
                .zoomed(2)
                .folding(Arrangement.ADJUSTMENTS, true)
                .folding(Arrangement.HIDDEN, false)
                .withDifferences(true);
        assertThat(arranged.zoom()).isEqualTo(125);
        memory.remember(Look.at("q", Units.METRIC, true).with(arranged));
        assertThat(memory.look("q", Optional.empty()).arrangement()).isEqualTo(arranged);
        assertThat(arranged.zoomed(99).zoom()).isEqualTo(200);
        assertThat(arranged.zoomed(-99).zoom()).isEqualTo(80);

        Shelf one = new Shelf(Set.of("Low", "Tall"), Set.of("As bought"));
        Shelf other = new Shelf(Set.of("Low"), Set.of());
        memory.remember(folder.resolve("one.json"), one);
        memory.remember(folder.resolve("other.json"), other);
        assertThat(memory.shelf(folder.resolve("one.json"))).isEqualTo(one);
        assertThat(memory.shelf(folder.resolve("other.json"))).isEqualTo(other);
        memory.remember(folder.resolve("one.json"), Shelf.EMPTY);
        assertThat(memory.shelf(folder.resolve("one.json"))).isEqualTo(Shelf.EMPTY);
        assertThat(memory.shelf(folder.resolve("other.json"))).isEqualTo(other);
    }

    @Test
    void aFolderThatCannotBeWrittenIsNoError() throws IOException {
        Path file = Files.writeString(folder.resolve("no-folder"), "a file");
        Memory memory = new Memory(file);
        memory.opened(file, "A file", NOON);
        assertThat(memory.recent()).isEmpty();
        assertThat(new Safekeeping(file, 1).keep(Desks.demo("harbour-saloon")))
                .hasValueSatisfying(why -> assertThat(why).contains("save the file soon"));
    }

    @Test
    void whatWasSavedReadsBackAndTheOldFileIsKept() throws IOException {
        Path file = copy();
        String before = Files.readString(file);
        Bench bench = open(file);
        Desks.done(bench, new EditAct.SetValue(Optional.of("Lowered"), "rear.spring.rate", "137 lbf/in"));
        assertThat(Drawer.save(bench.desk(), file)).isEmpty();
        assertThat(((Drawer.Opened.Sound) Drawer.open(file)).work().scenario().text())
                .isEqualTo(bench.desk().work().scenario().text())
                .contains("\"137 lbf/in\"");
        assertThat(folder.resolve("car.previous.json")).hasContent(before);
    }

    @Test
    void savingWhereNothingCanBeWrittenSaysSoAndLosesNothing() throws IOException {
        Path file = copy();
        Bench bench = open(file);
        Path nowhere = folder.resolve("gone").resolve("car.json");
        assertThat(Drawer.save(bench.desk(), nowhere))
                .hasValueSatisfying(
                        why -> assertThat(why).contains("the folder is not there any more", "Nothing is lost"));
        assertThat(Drawer.save(bench.desk(), file.resolve("below-a-file.json"))).isPresent();
    }

    @Test
    void aFileChangedOrDeletedByAnotherProgramIsNoticed() throws IOException {
        Path file = copy();
        Bench bench = open(file);
        assertThat(Drawer.outside(bench.desk().filed())).isEqualTo(ScenarioFile.Since.SAME);
        Files.writeString(file, Files.readString(file).replace("1065 kg", "1070 kg"));
        assertThat(Drawer.outside(bench.desk().filed())).isEqualTo(ScenarioFile.Since.CHANGED);
        Files.delete(file);
        assertThat(Drawer.outside(bench.desk().filed())).isEqualTo(ScenarioFile.Since.GONE);
    }

    @Test
    void brokenAndForeignFilesSayWhatIsWrong() throws IOException {
        for (String text : List.of("", "{", "<html>", "\u0000\u0001", "{\"evenhand\": 2}")) {
            Path file = Files.writeString(folder.resolve("broken.json"), text);
            Drawer.Opened.Broken broken = (Drawer.Opened.Broken) Drawer.open(file);
            assertThat(broken.problems()).isNotEmpty().first().asString().startsWith(file.toString());
        }
        assertThat(((Drawer.Opened.Broken) Drawer.open(folder)).problems())
                .first()
                .asString()
                .contains("is a folder");
    }

    @Test
    void unsavedWorkSurvivesACrashAndIsOfferedOnce() throws IOException {
        Path file = copy();
        Bench bench = open(file);
        Desks.done(bench, new SetupAct.SetNote("Lowered", "typed just before the power went"));
        long gone = goneProcess();
        assertThat(new Safekeeping(folder, gone).keep(bench.desk())).isEmpty();

        Safekeeping next = new Safekeeping(folder, ProcessHandle.current().pid());
        assertThat(next.left()).hasSize(1);
        Safekeeping.Left left = next.left().get(0);
        assertThat(left.file()).contains(file.toAbsolutePath());
        assertThat(left.title()).startsWith("Harbour saloon");
        Drawer.Opened.Sound sound = (Drawer.Opened.Sound) Drawer.open(left.text(), left.file());
        Desk recovered = new Desk(sound.work(), bench.desk().look(), Replies.NONE, sound.filed());
        assertThat(recovered.work().scenario().text())
                .isEqualTo(bench.desk().work().scenario().text());
        assertThat(recovered.unsaved()).isTrue();
        next.drop(left);
        assertThat(next.left()).isEmpty();
    }

    @Test
    void unsavedWorkThatTheVersionBeforeKeptIsStillOffered() throws IOException {
        Files.writeString(folder.resolve(goneProcess() + ".unsaved"), "-\n{\"evenhand\": 1}\n");
        Files.writeString(folder.resolve((goneProcess() - 1) + ".unsaved"), "{\"cut off");
        List<Safekeeping.Left> left =
                new Safekeeping(folder, ProcessHandle.current().pid()).left();
        assertThat(left).hasSize(1);
        assertThat(left.get(0).file()).isEmpty();
        assertThat(left.get(0).text()).isEqualTo("{\"evenhand\": 1}\n");
    }

    @Test
    void workOfAWindowThatStillLivesIsNotOfferedToAnother() {
        assertThat(new Safekeeping(folder, ProcessHandle.current().pid()).keep(Desks.demo("harbour-saloon")))
                .isEmpty();
        assertThat(new Safekeeping(folder, 1).left()).isEmpty();
    }

    /** Two windows on one file knew nothing of each other before one of them saved. */
    @Test
    void anotherWindowThatHasTheFileOpenIsKnownWithTheTime() throws IOException {
        Path file = copy();
        Openings here = new Openings(folder, ProcessHandle.current().pid());
        here.hold(Optional.of(file), NOON);
        assertThat(here.elsewhere(file)).isEmpty();
        Openings there = new Openings(folder, 1);
        there.hold(Optional.of(file), NOON.plusSeconds(60));
        assertThat(here.elsewhere(file)).contains(NOON.plusSeconds(60));
        assertThat(here.elsewhere(folder.resolve("another.json"))).isEmpty();
        there.hold(Optional.empty(), NOON);
        assertThat(here.elsewhere(file)).isEmpty();
        Openings crashed = new Openings(folder, goneProcess());
        crashed.hold(Optional.of(file), NOON);
        assertThat(here.elsewhere(file)).isEmpty();
        here.close();
        assertThat(there.elsewhere(file)).isEmpty();
    }

    @Test
    void aLogThatIsDroppedJoinsTheLastRoadTestAndIsOneUndo() throws IOException {
        Path file = copy();
        Path log = folder.resolve("sunday.csv");
        Bench bench = open(file);
        Work before = bench.desk().work();
        int last = before.scenario().roadTests().size() - 1;
        assertThat(new LogDrop(log).on(bench)).isInstanceOf(LogDrop.Outcome.Joined.class);
        assertThat(bench.desk().work().scenario().roadTests().get(last).logs())
                .extracting(one -> one.file())
                .endsWith("sunday.csv");
        assertThat(bench.desk().look().question()).isEqualTo(Question.ROAD);
        bench.undo();
        assertThat(bench.desk().work()).isEqualTo(before);

        bench.open(before, Filed.NOWHERE);
        assertThat(((LogDrop.Outcome.Refused) new LogDrop(log).on(bench)).why()).contains("save the car");
        Drawer.Opened.Sound coupe = (Drawer.Opened.Sound) Drawer.open(Desks.SCENARIOS.resolve("slipper-coupe.json"));
        bench.open(coupe.work(), coupe.filed());
        assertThat(((LogDrop.Outcome.Refused) new LogDrop(log).on(bench)).why()).contains("no road test");
    }

    private static long goneProcess() {
        long process = 4_000_000;
        while (ProcessHandle.of(process).isPresent()) {
            process--;
        }
        return process;
    }
}
