package evenhand.window;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** A few words on a ground of their own, with a cross that takes off what they say. */
final class Chip extends JPanel {
    private final JLabel words = new JLabel("", SwingConstants.LEADING);
    private final JButton off;

    Chip(String name, Runnable takeOff) {
        super(new MigLayout("insets 0 6 0 0, gap 2", "[pref][pref!]", "[]"));
        setOpaque(false);
        off = Glyph.CLOSE.button(name, "", "take this change off", takeOff);
        off.setMargin(new java.awt.Insets(1, 1, 1, 1));
        words.setFont(Looks.small());
        setBorder(BorderFactory.createEmptyBorder());
        add(words);
        add(off);
    }

    /**
     * @param brief that stands there
     * @param whole beside the pointer, and read out
     */
    void say(String brief, String whole) {
        words.setText(brief);
        words.setToolTipText(whole);
        off.getAccessibleContext().setAccessibleName("take off " + whole);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Looks.theme().mixed(Looks.theme().ink(), 0.1));
        g.fillRoundRect(0, 0, getWidth(), getHeight(), getHeight() / 2, getHeight() / 2);
        g.dispose();
    }
}
