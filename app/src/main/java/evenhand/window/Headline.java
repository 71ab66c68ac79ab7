package evenhand.window;

import java.awt.FontMetrics;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What is answered first: large as far as it can be read at a glance, and in plain type what is said besides. */
final class Headline extends JPanel {
    /** Lines of large type at most, and where lines are short. */
    private static final int MOST = 3;

    private static final int MOST_SHORT = 4;

    /** Lines shorter than so many sizes of type are short. */
    private static final double SHORT = 65;

    /** Longer lines are hard to read, in sizes of type. */
    private static final double READABLE = 85;

    private static final double LARGER = 1.35;

    private final Words.Area large = Words.headline("answer");
    private final Words.Area besides = Words.plain("answer, besides");
    private transient List<String> sentences = List.of();
    private int width;

    Headline() {
        super(new MigLayout("insets 0, gap 0 4, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
        setOpaque(false);
        String widest = "wmin 100, wmax " + Looks.em(LARGER * READABLE);
        add(large, widest);
        add(besides, widest);
        besides.setVisible(false);
    }

    void say(List<String> spoken) {
        sentences = List.copyOf(spoken);
        part();
        large.setForeground(Looks.theme().ink());
        besides.setForeground(Looks.theme().ink());
    }

    void showLate() {
        large.setForeground(Looks.theme().quiet());
        besides.setForeground(Looks.theme().quiet());
    }

    /** All that is said, for tests. */
    String said() {
        return String.join("\n", sentences);
    }

    @Override
    public void doLayout() {
        if (getWidth() != width) {
            width = getWidth();
            part();
        }
        super.doLayout();
    }

    private void part() {
        int most = width < Looks.em(SHORT) ? MOST_SHORT : MOST;
        int lines = 0;
        int first = 0;
        for (String sentence : sentences) {
            lines += lines(sentence);
            if (first > 0 && lines > most) {
                break;
            }
            first++;
        }
        Words.say(large, String.join("\n", sentences.subList(0, first)));
        Words.say(besides, String.join("\n", sentences.subList(first, sentences.size())));
        besides.setVisible(first < sentences.size());
    }

    /** Lines of large type that a sentence takes; one while it is not known how wide it may be. */
    private int lines(String sentence) {
        int room = Math.min(width, Looks.em(LARGER * READABLE));
        if (room == 0) {
            return 1;
        }
        FontMetrics metrics = large.getFontMetrics(large.getFont());
        int space = metrics.charWidth(' ');
        int lines = 1;
        int used = 0;
        for (String word : Words.unbroken(sentence).split(" ", -1)) {
            int own = metrics.stringWidth(word);
            if (used > 0 && used + own > room) {
                lines++;
                used = 0;
            }
            used += own + space;
        }
        return lines;
    }
}
