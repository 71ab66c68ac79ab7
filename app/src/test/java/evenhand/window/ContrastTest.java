package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.look.SetupStyle;
import evenhand.look.Theme;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything that is written can be read on what it is written on, in both themes. */
class ContrastTest {
    /** What is pressed or chosen has its own ground; what cannot be used now need not be read (WCAG 2.2, 1.4.3). */
    private static final Map<String, List<String>> GROUNDS = Map.ofEntries(
            Map.entry("Label.foreground", List.of("Panel.background", "List.background")),
            Map.entry("TextField.foreground", List.of("TextField.background")),
            Map.entry("TextField.placeholderForeground", List.of("TextField.background")),
            Map.entry("TextField.selectionForeground", List.of("TextField.selectionBackground")),
            Map.entry("TextArea.foreground", List.of("TextArea.background", "Panel.background")),
            Map.entry("TextArea.selectionForeground", List.of("TextArea.selectionBackground")),
            Map.entry(
                    "Button.foreground",
                    List.of(
                            "Button.background",
                            "Button.hoverBackground",
                            "Button.pressedBackground",
                            "Panel.background")),
            Map.entry("Button.default.foreground", List.of("Button.default.background")),
            Map.entry("ToggleButton.foreground", List.of("ToggleButton.background", "Button.hoverBackground")),
            Map.entry("ToggleButton.selectedForeground", List.of("ToggleButton.selectedBackground")),
            Map.entry("RadioButton.foreground", List.of("Panel.background")),
            Map.entry("CheckBox.foreground", List.of("Panel.background")),
            Map.entry("ComboBox.foreground", List.of("ComboBox.background")),
            Map.entry("ComboBox.selectionForeground", List.of("ComboBox.selectionBackground")),
            Map.entry("List.foreground", List.of("List.background")),
            Map.entry("List.selectionForeground", List.of("List.selectionBackground")),
            Map.entry("List.selectionInactiveForeground", List.of("List.selectionInactiveBackground")),
            Map.entry("Table.foreground", List.of("Table.background")),
            Map.entry("Table.selectionForeground", List.of("Table.selectionBackground")),
            Map.entry("Table.selectionInactiveForeground", List.of("Table.selectionInactiveBackground")),
            Map.entry("TableHeader.foreground", List.of("TableHeader.background")),
            Map.entry("Menu.foreground", List.of("Menu.background", "MenuBar.background", "MenuBar.hoverBackground")),
            Map.entry("MenuItem.foreground", List.of("MenuItem.background")),
            Map.entry("MenuItem.acceleratorForeground", List.of("MenuItem.background")),
            Map.entry("MenuItem.selectionForeground", List.of("MenuItem.selectionBackground")),
            Map.entry("MenuItem.acceleratorSelectionForeground", List.of("MenuItem.selectionBackground")),
            Map.entry("ToolTip.foreground", List.of("ToolTip.background")),
            Map.entry("OptionPane.foreground", List.of("OptionPane.background")),
            Map.entry("ProgressBar.selectionForeground", List.of("ProgressBar.foreground")),
            Map.entry("ProgressBar.selectionBackground", List.of("ProgressBar.background")));

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyControlCanBeRead(boolean dark) throws Exception {
        Map<String, Double> weak = new TreeMap<>();
        SwingUtilities.invokeAndWait(() -> {
            Looks.set(dark);
            GROUNDS.forEach((ink, grounds) -> grounds.forEach(ground -> {
                Color on = UIManager.getColor(ground);
                Color words = UIManager.getColor(ink);
                assertThat(words).as(ink).isNotNull();
                assertThat(on).as(ground).isNotNull();
                check(weak, ink + " on " + ground, words, on);
            }));
        });
        assertThat(weak).isEmpty();
    }

    /** The inks that the window writes with itself, on every ground that it writes them on. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void soCanItsOwnWordsWhateverTheyStandOn(boolean dark) throws Exception {
        Map<String, Double> weak = new TreeMap<>();
        SwingUtilities.invokeAndWait(() -> {
            Looks.set(dark);
            Theme theme = Looks.theme();
            Map<String, Color> inks = Map.of("ink", theme.ink(), "quiet", theme.quiet(), "warning", theme.warning());
            List<String> grounds = new ArrayList<>(List.of("Panel.background", "List.background", "Table.background"));
            inks.forEach((name, ink) -> {
                for (String ground : grounds) {
                    check(weak, name + " on " + ground, ink, UIManager.getColor(ground));
                }
                check(weak, name + " on the theme's ground", ink, theme.background());
            });
            for (String ground : List.of("TableHeader.background", "TextField.background")) {
                check(weak, "quiet on " + ground, theme.quiet(), UIManager.getColor(ground));
            }
            for (int i = 0; i < SetupStyle.DISTINCT; i++) {
                // Numbers of a bar stand on its soft colour.
                check(weak, "ink on bar " + i, theme.ink(), theme.bar(new SetupStyle(i)));
            }
        });
        assertThat(weak).isEmpty();
    }

    private static void check(Map<String, Double> weak, String what, Color ink, Color ground) {
        double contrast = Theme.contrast(over(ink, ground), ground);
        if (contrast < Theme.LEAST_CONTRAST) {
            weak.put(what, contrast);
        }
    }

    /** An ink that lets the ground shine through, as it is seen. */
    private static Color over(Color ink, Color ground) {
        double part = ink.getAlpha() / 255.0;
        return new Color(
                (int) Math.round(part * ink.getRed() + (1 - part) * ground.getRed()),
                (int) Math.round(part * ink.getGreen() + (1 - part) * ground.getGreen()),
                (int) Math.round(part * ink.getBlue() + (1 - part) * ground.getBlue()));
    }
}
