package evenhand.window;

import evenhand.words.Edition;
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

    static final String BY_HAND = """
            A question on the left is answered on the right. What stands under the answer can be adjusted: type a value with \
            its unit, or pull its handle; the arrow keys move it by a little, with Shift by ten times that, with Alt by a tenth. \
            Escape takes back what was typed. Rings in the drawing of the car can be pulled as well, and every joint in the drawings of measured links; \
            Page Up and Page Down choose which of them the keys move.

            In a chart the mouse reads off the values. A rectangle drawn with the mouse, or + and −, looks closer; a double \
            click or Home shows all again; the right button copies it or keeps it as a file.

            In the list of set-ups Space shows or hides one, F2 renames it, Delete deletes it, and a drag moves it. \
            Ctrl+Z undoes anything, Ctrl+H lists what was done and goes back to any of it, Ctrl+F finds a field of the car, Ctrl+1 to Ctrl+9 ask the \
            questions, Ctrl+B leads to where one begins, F11 shows the owner his car, before and after by the space bar.""";

    private About() {}

    static JPanel panel() {
        JPanel panel = new JPanel(new MigLayout("insets 8, wrap 1, fillx, gap 0 8", "[" + Looks.em(46) + "!]", ""));
        Words.Area title = Words.headline("about Evenhand");
        title.setText("Evenhand " + Edition.words());
        Words.Area what = Words.plain("what it is");
        what.setText("Handling balance of a road car, worked out from what was measured on it. Open source, Apache-2.0."
                + " Demo cars and their data are invented.");
        Words.Area cautions = Words.plain("cautions");
        cautions.setText(CAUTIONS);
        panel.add(title, "growx");
        panel.add(what, "growx");
        Words.Area hands = Words.plain("mouse and keys");
        hands.setText(BY_HAND);
        panel.add(Words.head("Mouse and keys"));
        panel.add(hands, "growx");
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
