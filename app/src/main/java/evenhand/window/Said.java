package evenhand.window;

import evenhand.window.desk.Reply;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** All that is said besides the headline, each paragraph under its set-up. */
final class Said extends JPanel {
    /** Longer lines are hard to read, in sizes of type. */
    private static final double READABLE = 85;

    private record Part(JLabel heading, Words.Area sentences) {}

    private final transient List<Part> parts = new ArrayList<>();

    Said() {
        super(new MigLayout("insets 0, gap 0 4, fillx, wrap 1", "[grow,fill]", ""));
        setOpaque(false);
    }

    void show(List<Reply.Paragraph> wanted) {
        List<Reply.Paragraph> spoken =
                wanted.stream().filter(one -> !one.sentences().isEmpty()).toList();
        if (parts.size() != spoken.size()) {
            lay(spoken.size());
        }
        for (int i = 0; i < spoken.size(); i++) {
            parts.get(i).heading().setText(spoken.get(i).heading());
            Words.say(parts.get(i).sentences(), String.join("\n", spoken.get(i).sentences()));
        }
    }

    private void lay(int count) {
        removeAll();
        parts.clear();
        for (int i = 0; i < count; i++) {
            Part part = new Part(Words.head(""), Words.plain("more"));
            parts.add(part);
            add(part.heading(), "gaptop 8");
            add(part.sentences(), "wmin 60, wmax " + Looks.em(READABLE));
        }
        revalidate();
        repaint();
    }
}
