package evenhand.window;

import evenhand.scenario.Setup;
import evenhand.window.desk.Arrangement;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.SetupAct;
import evenhand.window.desk.SetupChange;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** What the set-up that is adjusted is made of, in a line: its name, what it builds on, and each change, which can be taken off. */
final class ActiveSetup extends JPanel implements Bench.View {
    /** Of a choice, beside its words, in sizes of type. */
    private static final double CHROME = 3.2;

    private static final String THE_CAR = "the car as measured";

    private final transient Bench bench;
    private final transient Consumer<Optional<String>> trouble;
    private final transient List<Chip> chips = new ArrayList<>();
    private final JLabel name = new JLabel() {
        @Override
        public void updateUI() {
            super.updateUI();
            setFont(Looks.strong());
        }
    };
    /** As wide as what is chosen, whatever the others are. */
    private final JComboBox<String> base = new JComboBox<>() {
        @Override
        public Dimension getPreferredSize() {
            int words = getFontMetrics(getFont()).stringWidth(String.valueOf(getSelectedItem()));
            return new Dimension(words + Looks.em(CHROME), super.getPreferredSize().height);
        }
    };

    private final JLabel with = new JLabel();
    private final JButton more = new JButton();
    private final transient Line line = new Line(more, this::sayMore);
    private transient List<SetupChange> shownChanges = List.of();
    private String shownSetup = "";
    private int left;

    /** @param trouble is told why something cannot be done, or that it was */
    ActiveSetup(Bench bench, Consumer<Optional<String>> trouble) {
        this.bench = bench;
        this.trouble = trouble;
        setLayout(line);
        setOpaque(false);
        base.setName("based on");
        base.setToolTipText("what this set-up builds on");
        base.getAccessibleContext().setAccessibleName("based on");
        base.addActionListener(event -> baseOn());
        more.setName("more changes");
        more.putClientProperty("JButton.buttonType", "borderless");
        more.addActionListener(event -> bench.act(new LookAct.Fold(Arrangement.MORE_CHANGES, isOpen())));
        lay();
    }

    private boolean isOpen() {
        return bench.desk().look().arrangement().isOpened(Arrangement.MORE_CHANGES);
    }

    /** What stands at the end of the line. */
    private void sayMore(int without) {
        left = without;
        String words = isOpen() ? "fewer" : without > 0 ? "and " + without + " more" : "more";
        if (!words.equals(more.getText())) {
            more.setText(words);
        }
    }

    private void lay() {
        removeAll();
        add(name);
        add(new JLabel("="));
        add(base);
        add(with);
        chips.forEach(this::add);
        more.setFont(Looks.small());
        add(more);
    }

    private void baseOn() {
        Object chosen = base.getSelectedItem();
        Setup active = bench.desk().work().activeSetup();
        if (chosen != null && !chosen.equals(active.basedOn().orElse(THE_CAR))) {
            Optional<String> name = chosen.equals(THE_CAR) ? Optional.empty() : Optional.of(chosen.toString());
            trouble.accept(bench.act(new SetupAct.BaseOn(active.name(), name)));
            base.setSelectedItem(bench.desk().work().activeSetup().basedOn().orElse(THE_CAR));
        }
    }

    @Override
    public void show(Desk before, Desk now) {
        line.open(now.look().arrangement().isOpened(Arrangement.MORE_CHANGES));
        sayMore(left);
        boolean same = before.work().scenario().equals(now.work().scenario())
                && before.work().active().equals(now.work().active())
                && before.look().units() == now.look().units()
                && before.look().arrangement().equals(now.look().arrangement());
        if (same && !before.is(now)) {
            return;
        }
        Setup active = now.work().activeSetup();
        bases(now, active);
        name.setText(active.name());
        List<SetupChange> list =
                SetupChange.of(now.work().scenario(), active, now.look().units());
        if (!paths(list).equals(paths(shownChanges)) || !active.name().equals(shownSetup) || before.is(now)) {
            chips.clear();
            for (SetupChange change : list) {
                chips.add(new Chip(
                        "take back " + change.path(),
                        () -> trouble.accept(
                                bench.act(new EditAct.TakeBack(Optional.of(active.name()), change.path())))));
            }
            with.setText(list.isEmpty() ? "unchanged" : "with");
            lay();
        }
        for (int i = 0; i < list.size(); i++) {
            chips.get(i).say(list.get(i).brief(), list.get(i).words());
        }
        if (!active.name().equals(shownSetup)) {
            trouble.accept(Optional.empty());
        }
        shownChanges = list;
        shownSetup = active.name();
        revalidate();
        repaint();
    }

    private static List<String> paths(List<SetupChange> changes) {
        return changes.stream().map(SetupChange::path).toList();
    }

    private void bases(Desk now, Setup active) {
        List<String> names = new ArrayList<>(List.of(THE_CAR));
        now.work().scenario().setups().stream()
                .map(Setup::name)
                .filter(other -> !other.equals(active.name()))
                .forEach(names::add);
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < base.getItemCount(); i++) {
            shown.add(base.getItemAt(i));
        }
        String own = active.basedOn().orElse(THE_CAR);
        if (!names.equals(shown)) {
            // the model knows what is chosen before it is shown: it would be taken for a choice
            DefaultComboBoxModel<String> model = new DefaultComboBoxModel<>(names.toArray(new String[0]));
            model.setSelectedItem(own);
            base.setModel(model);
        }
        if (!own.equals(base.getSelectedItem())) {
            base.setSelectedItem(own);
        }
    }
}
