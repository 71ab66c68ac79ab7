package evenhand.window;

import java.util.List;
import javax.swing.JLabel;

/** What an adjustment moves, in as many words as there is room for; the most of them beside the pointer, and read out. */
final class EffectLabel extends JLabel {
    /** Room for "−12.34 deg/g", in sizes of type. */
    static final double LEAST = 5.4;

    static final double MOST = 26;

    private transient List<String> wordings = List.of();

    EffectLabel() {
        say(List.of());
    }

    /** @param wordings the same in fewer and fewer words */
    void say(List<String> wordings) {
        this.wordings = List.copyOf(wordings);
        String whole = wordings.isEmpty() ? "" : wordings.get(0);
        setToolTipText(whole.isEmpty() ? null : whole);
        getAccessibleContext().setAccessibleName(whole);
        fit();
        repaint();
    }

    private void fit() {
        int room = getWidth();
        String words = wordings.stream()
                .filter(wording -> getFontMetrics(getFont()).stringWidth(wording) <= room)
                .findFirst()
                .orElse(wordings.isEmpty() ? " " : wordings.get(wordings.size() - 1));
        if (!words.equals(getText())) {
            setText(words);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(Looks.small());
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        if (wordings != null) {
            fit();
        }
    }
}
