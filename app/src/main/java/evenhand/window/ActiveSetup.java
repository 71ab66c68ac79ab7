package evenhand.window;

import evenhand.scenario.Setup;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.SetupAct;
import evenhand.window.desk.SetupChange;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The set-up that is adjusted: what it is based on, its changes as changes, and its note. */
final class ActiveSetup extends JPanel implements Bench.View {
    private static final String THE_CAR = "the car as measured";

    private record Row(Words.Area words, JButton back) {}

    private final transient Bench bench;
    private final transient List<Row> rows = new ArrayList<>();
    private final JComboBox<String> base = new JComboBox<>();
    private final JPanel changes =
            new JPanel(new MigLayout("insets 0, gap 4 2, fillx, wrap 2", "[grow,fill][pref!]", ""));
    private final JTextArea note = new JTextArea(2, 10);
    private final Words.Area trouble = Words.warning("what is wrong with the set-up");
    private String shownNote = "";
    private transient List<SetupChange> shownChanges = List.of();
    private String shownSetup = "";

    ActiveSetup(Bench bench) {
        super(new MigLayout("insets 4 12 12 8, gap 4 4, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
        this.bench = bench;
        setOpaque(false);
        changes.setOpaque(false);
        base.setName("based on");
        base.getAccessibleContext().setAccessibleName("based on");
        base.addActionListener(event -> baseOn());
        note.setName("note");
        note.getAccessibleContext().setAccessibleName("note");
        note.setLineWrap(true);
        note.setCaret(Words.still());
        note.setWrapStyleWord(true);
        note.setFont(Looks.small());
        note.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                commit();
            }
        });
        JLabel label = new JLabel("builds on");
        label.setFont(Looks.small());
        label.setLabelFor(base);
        add(label);
        add(base, "wmin 40");
        add(changes);
        JLabel noted = new JLabel("note");
        noted.setFont(Looks.small());
        noted.setLabelFor(note);
        add(noted);
        add(note, "wmin 40");
        add(trouble);
        trouble.setVisible(false);
    }

    /** Takes over a note that is still being typed. */
    void commit() {
        if (!note.getText().equals(shownNote)) {
            say(bench.act(new SetupAct.SetNote(bench.desk().work().active(), note.getText())));
        }
    }

    private void say(Optional<String> why) {
        trouble.setText(why.orElse(""));
        trouble.setVisible(why.isPresent());
        revalidate();
    }

    private void baseOn() {
        Object chosen = base.getSelectedItem();
        Setup active = bench.desk().work().activeSetup();
        if (chosen != null && !chosen.equals(active.basedOn().orElse(THE_CAR))) {
            Optional<String> name = chosen.equals(THE_CAR) ? Optional.empty() : Optional.of(chosen.toString());
            say(bench.act(new SetupAct.BaseOn(active.name(), name)));
            base.setSelectedItem(bench.desk().work().activeSetup().basedOn().orElse(THE_CAR));
        }
    }

    @Override
    public void show(Desk before, Desk now) {
        boolean same = before.work().scenario().equals(now.work().scenario())
                && before.work().active().equals(now.work().active());
        if (same && !before.is(now)) {
            return;
        }
        Setup active = now.work().activeSetup();
        bases(now, active);
        List<SetupChange> list = SetupChange.of(now.work().scenario(), active);
        boolean sameRows =
                paths(list).equals(paths(shownChanges)) && active.name().equals(shownSetup);
        if (!sameRows || before.is(now)) {
            changes(active, list);
        } else {
            for (int i = 0; i < list.size(); i++) {
                say(rows.get(i), list.get(i));
            }
        }
        shownChanges = list;
        shownSetup = active.name();
        String text = active.note().orElse("");
        if (!note.isFocusOwner() || !before.work().active().equals(now.work().active())) {
            if (!note.getText().equals(text)) {
                note.setText(text);
            }
        }
        shownNote = text;
    }

    private void changes(Setup active, List<SetupChange> list) {
        changes.removeAll();
        rows.clear();
        for (SetupChange change : list) {
            Words.Area words = Words.quiet("change");
            JButton back = new JButton("undo");
            back.setFont(Looks.small());
            back.putClientProperty("JButton.buttonType", "borderless");
            back.setName("take back " + change.path());
            back.setToolTipText("take this change back");
            back.addActionListener(
                    event -> say(bench.act(new EditAct.TakeBack(Optional.of(active.name()), change.path()))));
            rows.add(new Row(words, back));
            say(rows.get(rows.size() - 1), change);
            changes.add(words, "wmin 40");
            changes.add(back, "aligny top");
        }
        if (list.isEmpty()) {
            Words.Area none = Words.quiet("no change");
            none.setText("no change of its own");
            changes.add(none, "span 2");
        }
        revalidate();
        repaint();
    }

    private static List<String> paths(List<SetupChange> changes) {
        return changes.stream().map(SetupChange::path).toList();
    }

    private static void say(Row row, SetupChange change) {
        Words.say(row.words(), change.words());
        row.back().getAccessibleContext().setAccessibleName("take back " + change.words());
    }

    private void bases(Desk now, Setup active) {
        List<String> names = new ArrayList<>(List.of(THE_CAR));
        now.work().scenario().setups().stream()
                .map(Setup::name)
                .filter(name -> !name.equals(active.name()))
                .forEach(names::add);
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < base.getItemCount(); i++) {
            shown.add(base.getItemAt(i));
        }
        String own = active.basedOn().orElse(THE_CAR);
        if (!names.equals(shown)) {
            base.setModel(new javax.swing.DefaultComboBoxModel<>(names.toArray(new String[0])));
        }
        if (!own.equals(base.getSelectedItem())) {
            base.setSelectedItem(own);
        }
    }
}
