package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.scenario.Scenario;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Drawer;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Replies;
import evenhand.words.Units;
import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop's book and the entry that is put down in it, without a screen. */
class BookPaneTest {
    @BeforeAll
    static void look() {
        Looks.set(false);
    }

    private static final class Shown {
        private final Bench bench;
        private final BookPane pane;

        private Shown(Drawer.Opened.Sound car) {
            Look look = Look.at("shop", Units.METRIC, false);
            bench = new Bench(new Desk(car.work(), look, Replies.NONE, car.filed()), asking -> {});
            pane = new BookPane(bench);
            bench.add((before, now) -> pane.show(true, before, now));
            bench.show();
        }

        private Scenario scenario() {
            return bench.desk().work().scenario();
        }

        private static Stream<Component> all(Component component) {
            return component instanceof Container container
                    ? Stream.concat(
                            Stream.of(component),
                            Stream.of(container.getComponents()).flatMap(Shown::all))
                    : Stream.of(component);
        }

        private <C> C named(Class<C> kind, String name) {
            return kind.cast(Stream.concat(all(pane), all(pane.due()))
                    .filter(component -> kind.isInstance(component) && name.equals(component.getName()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(name)));
        }

        private void type(String field, String text) {
            named(JTextField.class, field).setText(text);
        }

        private String trouble(String part) {
            Words.Area area = named(Words.Area.class, "trouble with entry " + part);
            return area.isVisible() ? area.getText().replace('\u00a0', ' ') : "";
        }
    }

    private static void shown(String car, java.util.function.Consumer<Shown> look) throws Exception {
        SwingUtilities.invokeAndWait(() -> look.accept(new Shown(Demos.open(car))));
    }

    @Test
    void whatIsTypedStaysUntilAllOfItIsSound() throws Exception {
        shown("quarry-special", shown -> {
            shown.type("entry text", "Links again");
            shown.type("entry date", "2026-10-05");
            shown.type("entry distance", "61159");
            shown.named(JCheckBox.class, "torqued rear upper links").setSelected(true);
            shown.type("paper 1", "insurance");
            shown.named(JButton.class, "put the entry down").doClick();
            assertThat(shown.trouble("date")).startsWith("The date is before 2026-10-06");
            assertThat(shown.trouble("papers")).startsWith("The papers: \"insurance\" needs its last day");
            assertThat(shown.named(JTextField.class, "paper 2").getText()).isEmpty();
            assertThat(shown.trouble("distance")).startsWith("The distance is less than 61160 km");
            assertThat(shown.scenario().record().book().entries()).hasSize(5);
            assertThat(shown.named(JTextField.class, "entry text").getText()).isEqualTo("Links again");
            assertThat(shown.named(JTextField.class, "entry date")
                            .getAccessibleContext()
                            .getAccessibleDescription())
                    .startsWith("is before");

            shown.type("entry date", "2026-12-11");
            shown.type("entry distance", "61600");
            shown.type("paper 1 until", "2027-01-31");
            shown.named(JButton.class, "put the entry down").doClick();
            assertThat(shown.scenario().text())
                    .contains("{\"date\": \"2026-12-11\", \"distance\": \"61600 km\", \"text\": \"Links again\","
                            + " \"setup\": \"Open differential\", \"torqued\": [\"rear upper links\"],"
                            + " \"papers\": [{\"what\": \"insurance\"");
            assertThat(shown.trouble("date")).isEmpty();
            assertThat(shown.named(JTextField.class, "entry text").getText()).isEmpty();
            assertThat(shown.named(Words.Area.class, "entry 6").getText()).startsWith("Links again");
        });
    }

    @Test
    void correctBeginsAnEntryThatNamesTheOneItCorrects() throws Exception {
        shown("quarry-special", shown -> {
            shown.named(JButton.class, "correct 1").doClick();
            assertThat(shown.named(JTextField.class, "entry text").getText()).startsWith("Four scales");
            assertThat(shown.named(JTextField.class, "entry distance").getText())
                    .isEqualTo("61020 km");
            assertThat(shown.named(JComboBox.class, "entry setup").getSelectedItem())
                    .isEqualTo("Tight differential");
            JCheckBox measured = shown.named(JCheckBox.class, "entry measured");
            assertThat(measured.isVisible()).isTrue();
            shown.type("entry date", "2026-12-11");
            shown.named(JButton.class, "put the entry down").doClick();
            assertThat(shown.scenario().record().book().correctedBy(1)).hasValue(6);
            assertThat(measured.isVisible()).isFalse();

            shown.named(JButton.class, "correct 6").doClick();
            shown.bench.undo();
            assertThat(shown.named(JTextField.class, "entry text").getText())
                    .as("the entry that was to be corrected is gone")
                    .isEmpty();
            shown.named(JButton.class, "correct 2").doClick();
            shown.named(JButton.class, "correct nothing").doClick();
            assertThat(shown.named(JCheckBox.class, "torqued wheel nuts").isSelected())
                    .isFalse();
        });
    }

    @Test
    void whatIsOverdueStandsOutOnTheDayThatIsAskedFor() throws Exception {
        shown("sluice-tourer", shown -> {
            shown.bench.act(new LookAct.Wish("on", "2026-12-25"));
            Words.Area due = shown.named(Words.Area.class, "due");
            assertThat(due.getText().replace('\u00a0', ' ')).startsWith("Overdue: road licence");
            assertThat(due.getForeground()).isEqualTo(Looks.theme().warning());
            shown.bench.act(new LookAct.Wish("on", "2026-12-01"));
            assertThat(shown.named(Words.Area.class, "due").getForeground())
                    .isEqualTo(Looks.theme().ink());
        });
    }

    @Test
    void aLongBookShowsItsNewestEntriesFirst(@TempDir Path folder) throws Exception {
        Drawer.Opened.Sound car = (Drawer.Opened.Sound) Drawer.open(longBook(folder, 3_000));
        SwingUtilities.invokeAndWait(() -> {
            Shown shown = new Shown(car);
            JButton older = shown.named(JButton.class, "older entries");
            assertThat(older.getText()).isEqualTo("older … (2955)");
            assertThat(shown.named(Words.Area.class, "entry 3005").getText()).startsWith("Nuts");
            older.doClick();
            assertThat(shown.named(Words.Area.class, "entry 2906")).isNotNull();
            shown.type("entry text", "x");
            shown.type("entry date", "2027-12-01");
            shown.named(JButton.class, "put the entry down").doClick();
            assertThat(shown.scenario().record().book().entries()).hasSize(3_006);
        });
    }

    private static Path longBook(Path folder, int entries) throws IOException {
        String text = Demos.open("quarry-special").work().scenario().text();
        int last = text.indexOf('}', text.lastIndexOf("Wheel nuts checked again.")) + 1;
        String more = IntStream.range(0, entries)
                .mapToObj(i -> ",\n    {\"date\": \"2026-11-01\", \"distance\": \"" + (61_200 + i)
                        + " km\", \"text\": \"Nuts\", \"torqued\": [\"wheel nuts\"]}")
                .collect(Collectors.joining());
        return Files.writeString(folder.resolve("long.json"), text.substring(0, last) + more + text.substring(last));
    }
}
