package evenhand.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.ui.FlatLabelUI;
import com.formdev.flatlaf.ui.FlatToolTipUI;
import evenhand.look.Theme;
import evenhand.look.Typeface;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.Map;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import javax.swing.plaf.ComponentUI;
import javax.swing.plaf.FontUIResource;
import javax.swing.plaf.UIResource;
import net.miginfocom.layout.ComponentWrapper;
import net.miginfocom.layout.ContainerWrapper;
import net.miginfocom.layout.UnitConverter;
import net.miginfocom.layout.UnitValue;

/**
 * The look of the window: the theme of the charts, carried into every control; sizes follow the system's font and the person's zoom.
 *
 * <p>There are four kinds of type, {@link #small}, {@link #body}, {@link #strong} and {@link #headline}, and two grounds: answers
 * stand on the theme's background, what they are asked with on its {@link #surface}.
 */
final class Looks {
    private static final String NO_HTML = "html.disable";
    private static final String SIZE = "evenhand.size";
    private static final String ZOOM = "evenhand.zoom";
    private static final double LEAST_SIZE = 11;
    private static final double GREATEST_SIZE = 40;

    static {
        UnitValue.addGlobalUnitConverter(new Ems());
    }

    private Looks() {}

    /** Sizes of type in the layouts of the window: "13em". They follow when the type changes. */
    private static final class Ems extends UnitConverter {
        @Override
        public int convertToPixels(
                float value, String unit, boolean across, float reference, ContainerWrapper in, ComponentWrapper of) {
            return unit.equals("em") ? em(value) : UNABLE;
        }
    }

    /** Type that was given to a component by itself grows with the rest. */
    static void rescale(Component component, double times) {
        if (component.isFontSet() && !(component.getFont() instanceof UIResource)) {
            component.setFont(component.getFont().deriveFont((float)
                    (times * component.getFont().getSize2D())));
        }
        if (component instanceof Container container) {
            for (Component inside : container.getComponents()) {
                rescale(inside, times);
            }
        }
    }

    /** Sets the look for all windows, those that stand included; type as large as the system's. */
    static void set(boolean dark) {
        set(dark, 100);
    }

    /** @param zoom of type, per cent of the system's */
    static void set(boolean dark, int zoom) {
        // The size of the system's font, read before ours takes its place.
        if (UIManager.get(SIZE) == null) {
            FlatLightLaf.setup();
            UIManager.put(SIZE, systemSize());
        }
        UIManager.put(ZOOM, zoom / 100.0);
        Theme theme = theme(dark);
        Map<String, String> defaults = new HashMap<>();
        defaults.put("@background", hex(theme.background()));
        defaults.put("@foreground", hex(theme.ink()));
        defaults.put("@accentColor", hex(theme.setups().get(0)));
        defaults.put("@componentBackground", hex(dark ? theme.mixed(Color.WHITE, 0.05) : Color.WHITE));
        for (String field : new String[] {"TextField", "FormattedTextField", "ComboBox"}) {
            defaults.put(field + ".placeholderForeground", hex(theme.quiet()));
        }
        // heads stand on the same ground as what is below them
        defaults.put("TableHeader.background", hex(theme.background()));
        defaults.put("TableHeader.bottomSeparatorColor", hex(theme.grid()));
        defaults.put("Table.background", hex(theme.background()));
        defaults.put("Table.gridColor", hex(theme.grid()));
        defaults.put("Component.focusWidth", "2");
        defaults.put("Component.arc", "6");
        defaults.put("Button.arc", "6");
        defaults.put("ScrollBar.width", "12");
        defaults.put("ScrollBar.track", hex(theme.background()));
        defaults.put("ScrollBar.thumb", hex(theme.mixed(theme.quiet(), 0.35)));
        FlatLaf.setGlobalExtraDefaults(defaults);
        UIManager.put("defaultFont", new FontUIResource(Typeface.plain(size())));
        if (dark) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        UIManager.put("LabelUI", PlainLabelUI.class.getName());
        UIManager.put("ToolTipUI", PlainToolTipUI.class.getName());
        // Swing takes Ctrl+H for the key that rubs out; here it is the history's, wherever the keys are.
        for (String field : new String[] {"TextField", "FormattedTextField", "TextArea"}) {
            if (UIManager.get(field + ".focusInputMap") instanceof InputMap keys) {
                keys.remove(KeyStroke.getKeyStroke(KeyEvent.VK_H, InputEvent.CTRL_DOWN_MASK));
            }
        }
        FlatLaf.updateUI();
    }

    /** A label that shows its text as it is: a name of a file that comes from anywhere may look like HTML, which fetches pictures. */
    public static final class PlainLabelUI extends FlatLabelUI {
        PlainLabelUI() {
            super(false);
        }

        /** How Swing asks for it. */
        public static ComponentUI createUI(JComponent label) {
            return new PlainLabelUI();
        }

        @Override
        public void installUI(JComponent label) {
            label.putClientProperty(NO_HTML, true);
            super.installUI(label);
        }
    }

    /** The same for what is shown beside the pointer. */
    public static final class PlainToolTipUI extends FlatToolTipUI {
        /** How Swing asks for it. */
        public static ComponentUI createUI(JComponent tip) {
            return new PlainToolTipUI();
        }

        @Override
        public void installUI(JComponent tip) {
            tip.putClientProperty(NO_HTML, true);
            super.installUI(tip);
        }
    }

    private static double systemSize() {
        Font font = UIManager.getFont("Label.font");
        double size = font == null ? 13 : font.getSize2D();
        return Math.max(LEAST_SIZE, Math.min(GREATEST_SIZE, size));
    }

    /** Size of plain type, px. */
    static double size() {
        double system = UIManager.get(SIZE) instanceof Double size ? size : 13;
        return UIManager.get(ZOOM) instanceof Double zoom ? zoom * system : system;
    }

    /** So many sizes of type, px. */
    static int em(double sizes) {
        return (int) Math.round(sizes * size());
    }

    static Theme theme(boolean dark) {
        return dark ? Theme.dark(size()) : Theme.light(size());
    }

    /** The theme that is set. */
    static Theme theme() {
        return theme(FlatLaf.isLafDark());
    }

    /** What the answer is asked with stands on it: a shade away from the background. */
    static Color surface() {
        return theme().mixed(theme().ink(), 0.04);
    }

    /** Of what is said first. */
    static Font headline() {
        return Typeface.plain(1.35 * size());
    }

    /** Of heads and of what is chosen. */
    static Font strong() {
        return Typeface.strong(size());
    }

    /** Of everything else. */
    static Font body() {
        return Typeface.plain(size());
    }

    /** Of what stands beside. */
    static Font small() {
        return Typeface.plain(0.9 * size());
    }

    private static String hex(Color colour) {
        return String.format("#%06x", colour.getRGB() & 0xffffff);
    }
}
