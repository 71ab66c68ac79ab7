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

/** The job's title, undo and redo, units and theme. */
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
    private final JButton undo = new JButton("undo");
    private final JButton redo = new JButton("redo");
    private final JToggleButton metric = new JToggleButton("metric");
    private final JToggleButton imperial = new JToggleButton("inches");
    private final JToggleButton light = new JToggleButton("light");
    private final JToggleButton dark = new JToggleButton("dark");

    TopBar(Bench bench, Runnable about) {
        super(new MigLayout("insets 6 16 6 16, gap 6, fillx", "[pref][grow,fill,pref]16[][][]16[][]16[][]16[]", ""));
        this.bench = bench;
        title.setName("title");
        pair(metric, imperial, "units");
        pair(light, dark, "theme");
        undo.setName("undo");
        redo.setName("redo");
        undo.addActionListener(event -> bench.undo());
        redo.addActionListener(event -> bench.redo());
        JButton history = new JButton("history");
        history.setName("history of acts");
        history.setToolTipText("what was done, to go back to any of it");
        history.addActionListener(event -> HistoryList.show(bench, history, 0, history.getHeight()));
        metric.addActionListener(event -> bench.act(new LookAct.ShowUnits(Units.METRIC)));
        imperial.addActionListener(event -> bench.act(new LookAct.ShowUnits(Units.IMPERIAL)));
        light.addActionListener(event -> bench.act(new LookAct.ShowDark(false)));
        dark.addActionListener(event -> bench.act(new LookAct.ShowDark(true)));
        JButton cautions = new JButton("help and cautions");
        cautions.setName("about");
        cautions.addActionListener(event -> about.run());
        kept.setName("kept");
        add(title, "wmin 60, shrinkprio 200");
        add(kept, "wmin 60, wmax " + Looks.em(26) + ", shrinkprio 50, gapleft 8");
        for (AbstractButton button :
                new AbstractButton[] {undo, redo, history, metric, imperial, light, dark, cautions}) {
            add(button);
        }
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
        dark.setSelected(now.look().dark());
        light.setSelected(!now.look().dark());
    }

    private static void button(JButton button, String verb, Optional<String> what) {
        button.setEnabled(what.isPresent());
        button.setToolTipText(what.map(words -> verb + ": " + words).orElse("nothing to " + verb));
        button.getAccessibleContext()
                .setAccessibleName(what.map(words -> verb + " " + words).orElse(verb));
    }
}
