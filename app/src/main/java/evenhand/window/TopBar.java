package evenhand.window;

import evenhand.quantity.Unseen;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.LookAct;
import evenhand.words.Units;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The job's title and file, undo and redo, units, theme and help. */
final class TopBar extends JPanel implements Bench.View {
    private final transient Bench bench;
    private final JLabel title = new JLabel() {
        @Override
        public void updateUI() {
            super.updateUI();
            setFont(Looks.strong());
        }
    };
    private final JLabel kept = new JLabel() {
        @Override
        public void updateUI() {
            super.updateUI();
            setFont(Looks.small());
            setForeground(Looks.theme().quiet());
        }
    };
    private final JButton undo;
    private final JButton redo;
    private final JToggleButton metric = new JToggleButton("metric");
    private final JToggleButton imperial = new JToggleButton("inches");
    private final JToggleButton dark = new JToggleButton();

    TopBar(Bench bench, Runnable about) {
        super(new MigLayout("insets 6 12 6 12, gap 4, fillx", "[pref][grow,fill,pref]16[][][]8[][]8[][]", ""));
        this.bench = bench;
        title.setName("title");
        undo = Glyph.UNDO.button("undo", "undo", "", bench::undo);
        redo = Glyph.REDO.button("redo", "redo", "", bench::redo);
        pair(metric, imperial, "units");
        dark.setName("dark");
        JButton history = Glyph.HISTORY.button(
                "history of acts", "history", "what was done, to go back to any of it (Ctrl+H)", () -> {});
        history.addActionListener(event -> HistoryList.show(bench, history, 0, history.getHeight()));
        metric.addActionListener(event -> bench.act(new LookAct.ShowUnits(Units.METRIC)));
        imperial.addActionListener(event -> bench.act(new LookAct.ShowUnits(Units.IMPERIAL)));
        dark.addActionListener(event -> bench.act(new LookAct.ShowDark(dark.isSelected())));
        JButton cautions = Glyph.HELP.button("about", "help and cautions", "help and cautions (F1)", about);
        kept.setName("kept");
        add(title, "wmin 60, shrinkprio 200");
        add(kept, "wmin 60, wmax 26em, shrinkprio 50, gapleft 8");
        for (AbstractButton button : new AbstractButton[] {undo, redo, history, metric, imperial, dark, cautions}) {
            add(button);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Looks.surface());
    }

    /** Two of which one is chosen; no group, of which Tab would reach the chosen one alone. */
    private static void pair(JToggleButton one, JToggleButton other, String what) {
        for (JToggleButton button : new JToggleButton[] {one, other}) {
            button.setName(button.getText());
            button.getAccessibleContext().setAccessibleName(what + ": " + button.getText());
        }
    }

    @Override
    public void show(Desk before, Desk now) {
        String text = now.work().scenario().title();
        title.setText(text.isBlank() ? "a car without a title" : text);
        title.setToolTipText(title.getText());
        kept.setText(now.kept());
        kept.setForeground(now.unsaved() ? Looks.theme().ink() : Looks.theme().quiet());
        kept.setToolTipText(
                now.filed().path().map(path -> Unseen.shown(path.toString())).orElse("not saved in a file yet"));
        button(undo, "undo", bench.undoable());
        button(redo, "redo", bench.redoable());
        metric.setSelected(now.look().units() == Units.METRIC);
        imperial.setSelected(now.look().units() == Units.IMPERIAL);
        boolean night = now.look().dark();
        dark.setSelected(night);
        (night ? Glyph.LIGHT : Glyph.DARK).on(dark, "dark theme", night ? "light theme" : "dark theme");
    }

    private static void button(JButton button, String verb, Optional<String> what) {
        button.setEnabled(what.isPresent());
        button.setToolTipText(what.map(words -> verb + ": " + words).orElse("nothing to " + verb));
        button.getAccessibleContext()
                .setAccessibleName(what.map(words -> verb + " " + words).orElse(verb));
    }
}
