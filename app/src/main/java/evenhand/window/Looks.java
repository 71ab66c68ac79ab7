package evenhand.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.ui.FlatLabelUI;
import com.formdev.flatlaf.ui.FlatToolTipUI;
import evenhand.look.Theme;
import evenhand.look.Typeface;
import java.awt.Color;
import java.awt.Font;
import java.util.HashMap;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.UIManager;
import javax.swing.plaf.ComponentUI;
import javax.swing.plaf.FontUIResource;

/** The look of the window: the theme of the charts, carried into every control; sizes follow the system's font. */
final class Looks {
    private static final String NO_HTML = "html.disable";
    private static final String SIZE = "evenhand.size";
    private static final double LEAST_SIZE = 11;
    private static final double GREATEST_SIZE = 40;

    private Looks() {}

    /** Sets the look for all windows, those that stand included. */
    static void set(boolean dark) {
        // The size of the system's font, read before ours takes its place.
        if (UIManager.get(SIZE) == null) {
            FlatLightLaf.setup();
            UIManager.put(SIZE, systemSize());
        }
        Theme theme = theme(dark);
        Map<String, String> defaults = new HashMap<>();
        defaults.put("@background", hex(theme.background()));
        defaults.put("@foreground", hex(theme.ink()));
        defaults.put("@accentColor", hex(theme.setups().get(0)));
        defaults.put("@componentBackground", hex(dark ? theme.mixed(Color.WHITE, 0.05) : Color.WHITE));
        for (String field : new String[] {"TextField", "FormattedTextField", "ComboBox"}) {
            defaults.put(field + ".placeholderForeground", hex(theme.quiet()));
        }
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
        return UIManager.get(SIZE) instanceof Double size ? size : 13;
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

    static Font large() {
        return Typeface.plain(1.35 * size());
    }

    static Font strong() {
        return Typeface.strong(size());
    }

    static Font small() {
        return Typeface.plain(0.92 * size());
    }

    private static String hex(Color colour) {
        return String.format("#%06x", colour.getRGB() & 0xffffff);
    }
}
