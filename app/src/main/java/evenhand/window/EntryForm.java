package evenhand.window;

import evenhand.quantity.Dimension;
import evenhand.scenario.BookEntry;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.scenario.Torque;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.EntryAct;
import evenhand.window.desk.Jotting;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.AbstractAction;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** Puts an entry down in the book: a few fields, Enter in any of them, what is wrong below the one that it is about. */
final class EntryForm extends JPanel {
    private static final String NOT_SAID = "not said";

    /** Columns of what is ticked, in sizes of type. */
    private static final double TICKED = 12;

    private static final int DAY_LETTERS = 10;

    private final transient Bench bench;
    private final JTextField text = new JTextField();
    private final JTextField date = new JTextField(DAY_LETTERS);
    private final JTextField distance = new JTextField(9);
    private final JLabel distanceLabel = new JLabel();
    private final JComboBox<String> setup = new JComboBox<>();
    private final Columns columns = new Columns(TICKED);
    private final JPanel torques = new JPanel(columns);
    private final JLabel torquesLabel = label("tightened to its torque", torques);
    private final PaperFields papers = new PaperFields();
    private final JCheckBox measured = new JCheckBox();
    private final JButton put = new JButton("put it down");
    private final JButton leave = new JButton("correct nothing");
    private final JLabel head = Words.head("");
    private final transient Map<Jotting.Part, Words.Area> troubles = new EnumMap<>(Jotting.Part.class);
    private final transient Map<Jotting.Part, JComponent> inputs = new EnumMap<>(Jotting.Part.class);
    private transient BookEntry.Measured standing = BookEntry.Measured.NOTHING;
    private transient OptionalInt corrects = OptionalInt.empty();

    EntryForm(Bench bench) {
        super(new MigLayout("insets 0, gap 12 2, fillx, hidemode 3", "[pref!][pref!][grow,fill]", ""));
        this.bench = bench;
        setName("an entry");
        setOpaque(false);
        torques.setOpaque(false);
        named(text, "entry text", "what was done");
        named(date, "entry date", "day of the entry");
        named(distance, "entry distance", "distance that the car had run");
        named(setup, "entry setup", "set-up that the car was left in");
        named(put, "put the entry down", "put the entry down");
        named(leave, "correct nothing", "correct nothing: a new entry instead");
        named(measured, "entry measured", "what was measured stands on");
        measured.setOpaque(false);
        inputs.put(Jotting.Part.TEXT, text);
        inputs.put(Jotting.Part.DATE, date);
        inputs.put(Jotting.Part.DISTANCE, distance);
        inputs.put(Jotting.Part.PAPERS, papers);
        for (Jotting.Part part : Jotting.Part.values()) {
            Words.Area trouble =
                    Words.warning("trouble with entry " + part.name().toLowerCase(java.util.Locale.ROOT));
            trouble.setVisible(false);
            troubles.put(part, trouble);
        }
        put.addActionListener(event -> putDown());
        leave.addActionListener(event -> clear());
        add(head, "span 3, wrap");
        add(label("what was done", text), "span 3, wrap");
        add(text, "span 3, growx, wmin 60, wrap");
        add(trouble(Jotting.Part.TEXT), "span 3, growx, wmin 60, wrap");
        add(label("date", date), "gaptop 4");
        add(distanceLabel);
        distanceLabel.setLabelFor(distance);
        add(label("left in the set-up", setup), "wrap");
        add(date);
        add(distance);
        add(setup, "wmin 60, wmax " + Looks.em(24) + ", wrap");
        add(trouble(Jotting.Part.DATE), "span 3, growx, wmin 60, wrap");
        add(trouble(Jotting.Part.DISTANCE), "span 3, growx, wmin 60, wrap");
        add(torquesLabel, "span 3, gaptop 4, wrap");
        add(torques, "span 3, growx, wmin 60, wrap");
        add(label("papers given or renewed", papers), "span 3, gaptop 4, wrap");
        add(papers, "span 3, growx, wmin 60, wrap");
        add(trouble(Jotting.Part.PAPERS), "span 3, growx, wmin 60, wrap");
        add(measured, "span 3, growx, wmin 60, wrap");
        add(put, "span 3, split 2, gaptop 4");
        add(leave);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "put down");
        getActionMap().put("put down", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                putDown();
            }
        });
    }

    private static JLabel label(String words, JComponent of) {
        JLabel label = new JLabel(words);
        label.setLabelFor(of);
        return label;
    }

    private static void named(JComponent input, String name, String words) {
        input.setName(name);
        input.getAccessibleContext().setAccessibleName(words);
    }

    private Words.Area trouble(Jotting.Part part) {
        return java.util.Objects.requireNonNull(troubles.get(part));
    }

    /** Another job is on the desk, or another version of it. What was typed stays, as long as it is the same job's. */
    void show(Desk now, boolean otherJob) {
        Scenario scenario = now.work().scenario();
        torques(scenario);
        distanceLabel.setText(
                "distance, " + now.look().units().of(Dimension.DISTANCE).symbol());
        date.putClientProperty("JTextField.placeholderText", today().toString());
        boolean standsIn = setup.getSelectedIndex() < 0 || otherJob || isEmpty();
        Object chosen = setup.getSelectedItem();
        DefaultComboBoxModel<String> setups = new DefaultComboBoxModel<>(
                scenario.setups().stream().map(Setup::name).toArray(String[]::new));
        setups.addElement(NOT_SAID);
        boolean there = !standsIn && setups.getIndexOf(chosen) >= 0;
        setups.setSelectedItem(there ? chosen : now.work().active());
        setup.setModel(setups);
        boolean gone = corrects.isPresent()
                && corrects.getAsInt() > scenario.record().book().entries().size();
        if (otherJob || gone) {
            clear();
        }
        head();
    }

    private boolean isEmpty() {
        return text.getText().isBlank() && corrects.isEmpty();
    }

    private void torques(Scenario scenario) {
        List<String> wanted =
                scenario.record().torques().stream().map(Torque::what).toList();
        List<String> shown = ticks().stream().map(JCheckBox::getText).toList();
        if (wanted.equals(shown)) {
            return;
        }
        List<String> ticked = torqued();
        torques.removeAll();
        for (String what : wanted) {
            JCheckBox tick = new JCheckBox(what, ticked.contains(what));
            tick.setOpaque(false);
            named(tick, "torqued " + what, "tightened to its torque: " + what);
            torques.add(tick);
        }
        torquesLabel.setVisible(!wanted.isEmpty());
        torques.setVisible(!wanted.isEmpty());
        revalidate();
    }

    private List<JCheckBox> ticks() {
        return Arrays.stream(torques.getComponents()).map(JCheckBox.class::cast).toList();
    }

    private List<String> torqued() {
        return ticks().stream()
                .filter(JCheckBox::isSelected)
                .map(JCheckBox::getText)
                .toList();
    }

    /** An entry is begun that stands in the place of another, with all that this one says. */
    void correct(int number) {
        Desk desk = bench.desk();
        Jotting all = Jotting.correcting(
                desk.work().scenario().record().book(), number, desk.look().units());
        fill(all);
        scrollRectToVisible(getVisibleRect().isEmpty() ? new java.awt.Rectangle(getSize()) : getVisibleRect());
        text.requestFocusInWindow();
        text.selectAll();
    }

    private void fill(Jotting jotting) {
        corrects = jotting.corrects();
        standing = jotting.measured();
        text.setText(jotting.text());
        date.setText(jotting.date());
        distance.setText(jotting.distance());
        setup.setSelectedItem(jotting.setup().orElse(NOT_SAID));
        ticks().forEach(tick -> tick.setSelected(jotting.torqued().contains(tick.getText())));
        papers.fill(jotting.papers());
        measured.setSelected(true);
        say(Map.of());
        head();
    }

    private void clear() {
        fill(Jotting.empty(bench.desk().work().active()));
    }

    private void head() {
        head.setText(
                corrects.isPresent()
                        ? "An entry that corrects entry " + corrects.getAsInt() + " and stands in its place"
                        : "Put an entry down");
        leave.setVisible(corrects.isPresent());
        measured.setVisible(!standing.equals(BookEntry.Measured.NOTHING));
        measured.setText("what was measured in entry " + corrects.orElse(0) + " stands on");
        revalidate();
    }

    private Jotting jotted() {
        String left = String.valueOf(setup.getSelectedItem());
        return new Jotting(
                text.getText(),
                date.getText(),
                distance.getText(),
                setup.getSelectedIndex() == setup.getItemCount() - 1 ? Optional.empty() : Optional.of(left),
                torqued(),
                papers.papers(),
                measured.isSelected() ? standing : BookEntry.Measured.NOTHING,
                corrects);
    }

    private void putDown() {
        Desk desk = bench.desk();
        Jotting.Checked checked = jotted().checked(
                        desk.work().scenario().record().book(), desk.look().units(), today());
        Map<Jotting.Part, String> wrong = new EnumMap<>(Jotting.Part.class);
        if (checked instanceof Jotting.Checked.Wrong troubled) {
            wrong.putAll(troubled.by());
        } else if (checked instanceof Jotting.Checked.Sound sound) {
            bench.act(new EntryAct(sound.entry())).ifPresent(why -> wrong.put(Jotting.Part.TEXT, why));
        }
        if (wrong.isEmpty()) {
            clear();
            text.requestFocusInWindow();
        } else {
            say(wrong);
            wrong.keySet().stream().findFirst().map(inputs::get).ifPresent(Component::requestFocusInWindow);
        }
    }

    /** Says below each field what is wrong with it. */
    private void say(Map<Jotting.Part, String> wrong) {
        inputs.forEach((part, input) -> {
            Optional<String> why = Optional.ofNullable(wrong.get(part));
            Words.say(trouble(part), why.map(what -> name(part) + " " + what).orElse(""));
            trouble(part).setVisible(why.isPresent());
            input.putClientProperty("JComponent.outline", why.isPresent() ? "error" : null);
            input.getAccessibleContext().setAccessibleDescription(why.orElse(""));
        });
        revalidate();
        repaint();
    }

    private static String name(Jotting.Part part) {
        return switch (part) {
            case TEXT -> "What was done";
            case DATE -> "The date";
            case DISTANCE -> "The distance";
            case PAPERS -> "The papers:";
        };
    }

    private static LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }
}
