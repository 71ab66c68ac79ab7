package evenhand.window;

import java.awt.Component;
import javax.swing.JDialog;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What the program is, and the cautions. */
final class About {
    static final String CAUTIONS = """
            Results are estimates from a simplified model. A change to steering, suspension or structure can hurt people.

            Have designs, welds and brackets checked by a licensed or suitably qualified engineer. Follow the local rules for \
            modified vehicles, and get the certification that they ask for. Keep to what the makers of components allow. Test at \
            the limit only on a closed course, alone, after a mechanical check.

            Load figures are for comparing designs; they are no proof of strength.""";

    private About() {}

    static JPanel panel() {
        JPanel panel = new JPanel(new MigLayout("insets 8, wrap 1, fillx, gap 0 8", "[" + Looks.em(38) + "!]", ""));
        Words.Area title = Words.headline("about Evenhand");
        String version = About.class.getPackage().getImplementationVersion();
        title.setText("Evenhand " + (version == null ? "in development" : version));
        Words.Area what = Words.plain("what it is");
        what.setText("Handling balance of a road car, worked out from what was measured on it. Open source, Apache-2.0."
                + " Demo cars and their data are invented.");
        Words.Area cautions = Words.plain("cautions");
        cautions.setText(CAUTIONS);
        panel.add(title, "growx");
        panel.add(what, "growx");
        panel.add(Words.head("Cautions"));
        panel.add(cautions, "growx");
        return panel;
    }

    static void show(Component owner) {
        JOptionPane pane = new JOptionPane(panel(), JOptionPane.PLAIN_MESSAGE);
        JDialog dialog = pane.createDialog(owner, "About Evenhand");
        dialog.setModal(false);
        dialog.setVisible(true);
    }
}
