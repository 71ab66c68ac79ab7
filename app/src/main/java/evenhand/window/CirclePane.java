package evenhand.window;

import evenhand.answers.Progress;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.scenario.TestGiven;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Look;
import evenhand.window.desk.Noted;
import evenhand.window.desk.ReadingAct;
import evenhand.window.desk.ReadingCheck;
import evenhand.window.desk.Sheet;
import evenhand.window.desk.Worker;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Writing down what is read at the side of the circle: few large fields, and at once whether a reading fits the others. */
final class CirclePane extends JPanel implements Bench.View {
    /** Readings are set beside the file when nothing was typed for so long, ms. */
    private static final long CALM = 300;

    private static final String NEW = "a new test …";

    private final transient Bench bench;
    private final transient Worker<ReadingCheck.Question> checks;
    private final JComboBox<String> test = new JComboBox<>();
    private final JPanel begin = new JPanel(new MigLayout("insets 0, gap 8, hidemode 3", "", ""));
    private final JTextField name = new JTextField(14);
    private final JComboBox<String> setup = new JComboBox<>();
    private final JTextField radius = new JTextField(7);
    private final ReadingFields fields;
    private final JButton put = new JButton("put it down");
    private final Words.Area trouble = Words.warning("trouble with the reading");
    private final Words.Area noted = Words.plain("what is said of the reading");
    private final Words.Area whole = Words.plain("what is said of all readings");
    private final JPanel list = new Page();
    private transient Optional<ReadingCheck.Question> asked = Optional.empty();
    private transient Optional<ReadingCheck> check = Optional.empty();

    /** @param leave goes back to the desk */
    CirclePane(Bench bench, Runnable leave) {
        super(new MigLayout("insets 16, gap 8 10, fill, wrap 1, hidemode 3", "[grow,fill]", ""));
        this.bench = bench;
        setName("at the circle");
        checks = new Worker<>("readings", CALM, this::check, share -> {});
        fields = new ReadingFields(this::typed, this::putDown);
        Words.Area title = Words.headline("at the circle");
        title.setText("At the side of the circle");
        Words.Area advice = Words.plain("how to read");
        advice.setText(
                "Gentle first, then brisker, both ways round, the first pace once more at the end. Enter goes on to"
                        + " the next field and puts the reading down behind the last; a tolerance may stand behind a value: 94 ± 2.");
        JPanel which = new JPanel(new MigLayout("insets 0, gap 8", "", ""));
        which.setOpaque(false);
        named(test, "road test");
        test.addActionListener(event -> show(bench.desk()));
        which.add(new JLabel("road test"));
        which.add(test, "wmin 100");
        begin.setOpaque(false);
        named(name, "name of the test");
        named(setup, "set-up driven");
        named(radius, "radius of the circle driven");
        radius.setText("30 m");
        JButton start = new JButton("begin");
        start.setName("begin the test");
        start.addActionListener(event -> begin());
        begin.add(new JLabel("name"));
        begin.add(name);
        begin.add(new JLabel("set-up driven"));
        begin.add(setup, "wmax " + Looks.em(16));
        begin.add(new JLabel("circle"));
        begin.add(radius);
        begin.add(start);
        put.setName("put it down");
        put.setFont(Looks.headline());
        put.addActionListener(event -> putDown());
        JButton undo = new JButton("undo");
        undo.setName("undo the reading");
        undo.addActionListener(event -> bench.undo());
        JButton out = new JButton("back to the desk");
        out.setName("circle leave");
        out.addActionListener(event -> leave.run());
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8", "[][][grow][]", ""));
        buttons.setOpaque(false);
        buttons.add(put);
        buttons.add(undo);
        buttons.add(out, "skip 1");
        list.setLayout(new MigLayout("insets 0, gap 8 2, fillx, wrap 3", "[grow,fill][pref!][pref!]", ""));
        JScrollPane scroll = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(3));
        add(title, "wmin 60");
        add(advice, "wmin 60, wmax " + Looks.em(60));
        add(which);
        add(begin);
        add(fields, "wmin 60");
        add(trouble, "wmin 60");
        add(noted, "wmin 60");
        add(buttons);
        add(whole, "wmin 60");
        add(scroll, "grow, push, hmin 60, h 60:60:");
        trouble.setVisible(false);
    }

    private static void named(JComponent input, String words) {
        input.setName(words);
        input.getAccessibleContext().setAccessibleName(words);
    }

    /** The keys go where the next value is typed. */
    void focusFirst() {
        if (begin.isVisible()) {
            name.requestFocusInWindow();
        } else {
            fields.focusFirst();
        }
    }

    @Override
    public void show(Desk before, Desk now) {
        if (now.look().page() != Look.Page.CIRCLE) {
            return;
        }
        boolean came = before.is(now) || before.look().page() != Look.Page.CIRCLE;
        if (came || !before.work().equals(now.work())) {
            tests(now.work().scenario());
            show(now);
        }
    }

    private void tests(Scenario scenario) {
        List<String> names = new ArrayList<>(
                scenario.roadTests().stream().map(TestGiven::name).toList());
        names.add(NEW);
        int before = test.getItemCount();
        Object chosen = test.getSelectedItem();
        DefaultComboBoxModel<String> model = new DefaultComboBoxModel<>(names.toArray(new String[0]));
        boolean begun = before > 0 && names.size() == before + 1;
        boolean stays = !begun && names.contains(String.valueOf(chosen));
        model.setSelectedItem(stays ? chosen : names.get(Math.max(0, names.size() - 2)));
        test.setModel(model);
        setup.setModel(new DefaultComboBoxModel<>(
                scenario.setups().stream().map(Setup::name).toArray(String[]::new)));
        setup.setSelectedItem(bench.desk().work().active());
    }

    private Optional<Sheet> sheet(Desk desk) {
        int place = test.getSelectedIndex();
        return place >= 0 && place < desk.work().scenario().roadTests().size()
                ? Optional.of(Sheet.of(desk.work().scenario(), place))
                : Optional.empty();
    }

    private void show(Desk desk) {
        Optional<Sheet> sheet = sheet(desk);
        begin.setVisible(sheet.isEmpty());
        fields.setVisible(sheet.isPresent());
        put.setEnabled(sheet.isPresent() && fields.noted().isWhole());
        list(sheet.map(Sheet::rows).orElse(List.of()));
        ask(sheet);
        revalidate();
        repaint();
    }

    private void list(List<Sheet.Row> rows) {
        list.removeAll();
        for (Sheet.Row row : rows) {
            Words.Area words = Words.plain("reading " + row.path());
            words.setText(row.words());
            JLabel fits = new JLabel();
            fits.setName("fits " + row.path());
            JButton out = new JButton("take out");
            out.setName("take out " + row.path());
            out.setFont(Looks.small());
            out.getAccessibleContext().setAccessibleName("take out: " + row.words());
            out.addActionListener(event -> say(bench.act(new ReadingAct.TakeOut(row.path()))));
            list.add(words, "wmin 60");
            list.add(fits);
            list.add(out);
        }
        verdicts();
        list.revalidate();
        list.repaint();
    }

    /** Beside each reading whether it fits; nothing while that is not known. */
    private void verdicts() {
        for (Component component : list.getComponents()) {
            if (component instanceof JLabel label && label.getName() != null) {
                boolean misfits = check.isPresent()
                        && check.get().misfits().contains(label.getName().substring("fits ".length()));
                label.setText(check.isEmpty() ? "" : misfits ? "does not fit the others" : "fits");
                label.setForeground(
                        misfits ? Looks.theme().warning() : Looks.theme().quiet());
            }
        }
    }

    private void typed() {
        Optional<Sheet> sheet = sheet(bench.desk());
        put.setEnabled(sheet.isPresent() && fields.noted().isWhole());
        say(fields.trouble());
        ask(sheet);
    }

    private void ask(Optional<Sheet> sheet) {
        Optional<ReadingCheck.Question> next = sheet.map(own -> new ReadingCheck.Question(
                bench.desk().work().scenario(), own, Optional.of(fields.noted()).filter(Noted::isWhole)));
        if (!next.equals(asked)) {
            asked = next;
            check = Optional.empty();
            Words.say(noted, "");
            verdicts();
            Words.say(whole, next.isPresent() ? "Being set beside the file …" : "");
            next.ifPresent(checks::ask);
        }
    }

    private void check(ReadingCheck.Question question, Progress progress) {
        ReadingCheck come = ReadingCheck.of(question, progress);
        SwingUtilities.invokeLater(() -> {
            if (asked.equals(Optional.of(question))) {
                check = Optional.of(come);
                Words.say(noted, String.join("\n", come.noted()));
                Words.say(whole, come.whole());
                verdicts();
            }
        });
    }

    private void begin() {
        String wanted = name.getText().isBlank() ? "Circle " + test.getItemCount() : name.getText();
        String bare = radius.getText().strip();
        say(bench.act(new ReadingAct.Begin(
                wanted, String.valueOf(setup.getSelectedItem()), bare.matches("[\\d.]+") ? bare + " m" : bare)));
        focusFirst();
    }

    private void putDown() {
        Optional<Sheet> sheet = sheet(bench.desk());
        if (sheet.isEmpty() || !fields.noted().isWhole()) {
            return;
        }
        Optional<String> refused = bench.act(new ReadingAct.PutDown(sheet.get(), fields.noted()));
        if (refused.isEmpty()) {
            fields.show(fields.noted().next());
            fields.focusFirst();
        }
        say(refused);
    }

    private void say(Optional<String> why) {
        Words.say(trouble, why.orElse(""));
        trouble.setVisible(why.isPresent());
    }
}
