package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.forms.Table;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Look;
import evenhand.window.desk.Memory;
import evenhand.window.desk.Openings;
import evenhand.window.desk.Question;
import evenhand.window.question.Questions;
import evenhand.words.Units;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How the parts of the window share its room, without a screen. */
class RoomTest {
    private static Stream<Component> all(Component component) {
        return component instanceof Container container
                ? Stream.concat(
                        Stream.of(component),
                        Stream.of(container.getComponents()).flatMap(RoomTest::all))
                : Stream.of(component);
    }

    private static JComponent named(Component pane, String name) {
        return (JComponent) all(pane)
                .filter(component -> name.equals(component.getName()))
                .findFirst()
                .orElseThrow();
    }

    /** The demo car of a first start has eight set-ups; there were three to be seen. The group that is asked about is open. */
    @ParameterizedTest
    @CsvSource({
        "harbour-saloon, 1024, 700",
        "harbour-saloon, 1280, 800",
        "harbour-saloon, 2560, 1440",
        "slipper-coupe, 1024, 700"
    })
    void allQuestionsAndSetUpsAreInSight(String car, int width, int height, @TempDir Path folder) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Look look = Look.at(Questions.ALL.get(0).key(), Units.METRIC, false);
            Room room = Room.with(car, look, folder, new Rehearsal.NoOne(), new Rehearsal.NoOne());
            room.pane().bench().begin();
            Snapshot.of(room.pane(), new Dimension(width, height));
            for (String list : new String[] {"questions", "set-ups"}) {
                JComponent shown = named(room.pane(), list);
                Rectangle whole = new Rectangle(shown.getSize());
                assertThat(whole.height).as(list).isGreaterThan(4 * Looks.em(1.4));
                assertThat(shown.getVisibleRect()).as(list).isEqualTo(whole);
            }
            boolean roomy = height > 700;
            JList<?> questions = (JList<?>) named(room.pane(), "questions");
            assertThat(questions.getModel().getSize())
                    .isEqualTo(roomy ? Questions.ALL.size() + Question.Group.values().length : 12);
            JComponent strip = room.pane().adjust();
            assertThat(strip.getHeight()).isLessThanOrEqualTo(Looks.em(8.6)).isGreaterThan(Looks.em(4));
            assertThat(named(room.pane(), "based on").getVisibleRect().height).isGreaterThan(10);
            room.close();
        });
    }

    /** While the report was written, a click on the question that was asked before did not lead back to it. */
    @ParameterizedTest
    @EnumSource(
            value = Look.Page.class,
            names = {"START", "CUSTOMER", "MEASURING_UP", "REPORT"})
    void aPageThatAnswersNoQuestionIsLeftByAnyOfThem(Look.Page page, @TempDir Path folder) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Look look = Look.at(Questions.ALL.get(0).key(), Units.METRIC, false);
            Room room = Room.with("harbour-saloon", look, folder, new Rehearsal.NoOne(), new Rehearsal.NoOne());
            MainPane pane = room.pane();
            pane.bench().begin();
            JList<?> questions = (JList<?>) named(pane, "questions");
            assertThat(questions.getSelectedIndex()).isOne(); // below the head of its group
            pane.turnTo(page);
            assertThat(questions.isSelectionEmpty()).isTrue();
            questions.setSelectedIndex(0); // a head is no question
            assertThat(questions.isSelectionEmpty()).isTrue();
            questions.setSelectedIndex(1);
            assertThat(pane.bench().desk().look()).isEqualTo(look);
            room.close();
        });
    }

    /** While the first answer was awaited, the heads of two columns stood alone on the page. */
    @Test
    void aTableWithoutFiguresIsNotThere() {
        FiguresTable table = new FiguresTable();
        assertThat(table.isVisible()).isFalse();
        table.show(Table.NONE);
        assertThat(table.isVisible()).isFalse();
        table.show(new Table.Builder(List.of("Lowered")).heading("Of the car").build());
        assertThat(table.isVisible()).isTrue();
    }

    /** A table of fifty rows left two charts to be scrolled to; a table of four rows is no reason for small charts. */
    @ParameterizedTest
    @CsvSource({"985, 900, false", "1650, 900, true", "2290, 900, true", "2290, 120, false"})
    void chartsStandBesideALongTableWhereThereIsRoomForBoth(int width, int tall, boolean beside) {
        JComponent table = sized(600, tall);
        Tiles tiles = new Tiles(3);
        JPanel charts = new JPanel(tiles);
        for (int i = 0; i < 3; i++) {
            charts.add(sized(400, 300));
        }
        JPanel lower = new JPanel(new Beside(table, tiles));
        lower.add(table);
        lower.add(charts);
        lower.setSize(width, 10);
        lower.doLayout();
        assertThat(charts.getY() == 0).isEqualTo(beside);
        assertThat(table.getBounds().intersects(charts.getBounds())).isFalse();
        assertThat(charts.getX() + charts.getWidth()).isEqualTo(width);
        assertThat(lower.getPreferredSize().height).isEqualTo(Math.max(tall, charts.getY() + charts.getHeight()));
    }

    private static JComponent sized(int width, int height) {
        JComponent component = new JPanel();
        component.setPreferredSize(new Dimension(width, height));
        return component;
    }

    /** Without a file the window shows what there is to begin with; whatever is chosen there is then on the desk. */
    @Test
    void aFirstStartTellsTheFirstDemoCarsStoryAndWhatToDrag(@TempDir Path folder) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Room room = room(folder);
            MainPane pane = room.pane();
            pane.begin(Optional.empty());
            assertThat(pane.bench().desk().look().page()).isEqualTo(Look.Page.START);
            Snapshot.of(pane, new Dimension(1024, 700));
            assertThat(texts(pane, "demo harbour-saloon said"))
                    .hasSize(2)
                    .satisfies(said -> assertThat(said.get(0)).contains("choir scores", "invented"))
                    .satisfies(said -> assertThat(said.get(1)).contains("rear lateral locator height"));
            JButton coupe = (JButton) named(pane, "demo slipper-coupe");
            assertThat(coupe.getAccessibleContext().getAccessibleDescription()).contains("Low as a slipper");
            coupe.doClick();
            assertThat(pane.bench().desk().work().scenario().title()).startsWith("Slipper");
            assertThat(pane.bench().desk().look().page()).isEqualTo(Look.Page.ANSWER);
            room.close();
        });
    }

    @Test
    void recentFilesAreToldWithTheirVerdictAndThoseThatAreGone(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(
                folder.resolve("mine.json"),
                Demos.open("slipper-coupe").work().scenario().text());
        Path gone = folder.resolve("gone.json");
        Memory memory = new Memory(folder);
        memory.answered(gone, "A car that was sold", "it ran wide", Instant.EPOCH);
        memory.answered(file, "My coupe", "\"Short soft rubbers\": it runs wide", Instant.EPOCH);
        SwingUtilities.invokeAndWait(() -> {
            Room room = room(folder);
            MainPane pane = room.pane();
            pane.begin(Optional.empty());
            Snapshot.of(pane, new Dimension(1024, 700));
            assertThat(texts(pane, "recent mine.json said").get(1)).isEqualTo("\"Short soft rubbers\": it runs wide");
            assertThat(texts(pane, "recent gone.json said").get(1)).contains("no longer there");
            ((JButton) named(pane, "recent gone.json")).doClick();
            assertThat(texts(pane, "recent gone.json said")).isEmpty();
            ((JButton) named(pane, "recent mine.json")).doClick();
            assertThat(pane.bench().desk().filed().path()).contains(file);
            room.close();
        });
    }

    private static Room room(Path folder) {
        Look look = Look.at(Questions.ALL.get(0).key(), Units.METRIC, false);
        return Room.with("harbour-saloon", look, folder, new Rehearsal.NoOne(), new Rehearsal.NoOne());
    }

    private static List<String> texts(Component pane, String name) {
        return all(pane)
                .filter(component -> name.equals(component.getName()))
                .map(component -> ((JTextComponent) component).getText().replace('\u00a0', ' '))
                .toList();
    }

    @Test
    void whatNobodyCanOpenIsToldWhatCanBeDropped(@TempDir Path folder) throws Exception {
        Path picture = Files.writeString(folder.resolve("car.png"), "");
        SwingUtilities.invokeAndWait(() -> {
            Room room = room(folder);
            new Dropped(room.pane()).take(picture.toFile(), true);
            assertThat(room.pane().notice().text()).contains("“car.png”", ".json", ".csv");
            room.close();
        });
    }

    /** One line says since when another window has the file; whoever saves second is asked, so nothing is lost. */
    @Test
    void aFileThatAnotherWindowHasOpenIsToldSo(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(
                folder.resolve("mine.json"),
                Demos.open("slipper-coupe").work().scenario().text());
        new Openings(folder, 1).hold(Optional.of(file), Instant.now());
        SwingUtilities.invokeAndWait(() -> {
            Room room = room(folder);
            assertThat(room.pane().cabinet().open(file)).isTrue();
            assertThat(room.pane().notice().text()).contains("“mine.json”", "another window", "today");
            room.close();
        });
    }
}
