package evenhand.window;

import evenhand.window.desk.Bench;
import evenhand.window.desk.Names;
import evenhand.window.desk.Question;
import evenhand.window.desk.SetupAct;
import evenhand.window.desk.TrialAct;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;

/** The left edge: the questions, the set-ups, and the one that is adjusted. */
final class SideBar extends JPanel {
    /** Height of a row at least and at most, in sizes of type. */
    private static final double CLOSE = 1.46;

    private static final double EASY = 1.9;

    /** So many rows would fill its height. */
    private static final int ROWS = 39;

    private final transient Bench bench;
    private final transient Asker asker;
    private final transient Notice notice;
    private final QuestionList questions;
    private final SetupList setups;
    private final ActiveSetup active;

    SideBar(Bench bench, List<Question> all, Asker asker, Notice notice) {
        super(new MigLayout(
                "insets 0, gap 0, fill, wrap 1",
                "[grow,fill]",
                "[][][][][fill,shrinkprio 50][grow,fill,shrinkprio 200]"));
        this.bench = bench;
        this.asker = asker;
        this.notice = notice;
        questions = new QuestionList(bench, all);
        setups = new SetupList(bench, new SetupList.Wishes() {
            @Override
            public void rename(String name) {
                SideBar.this.rename(name);
            }

            @Override
            public void delete(String name) {
                say(bench.act(new SetupAct.DeleteSetup(name)));
            }
        });
        active = new ActiveSetup(bench);
        add(Words.head("ASK"), "gapleft 12, gaptop 2");
        add(questions, "growx");
        add(Words.head("SET-UPS"), "gapleft 12, gaptop 2");
        add(buttons(), "growx, gapleft 8");
        // Where there is little room, the list is left whole as long as it can be: what is said of one of them is
        // scrolled.
        add(scrolled(setups), "growx, hmin " + Looks.em(5));
        Page lower = new Page();
        lower.add(active);
        add(scrolled(lower), "grow, hmin " + Looks.em(2.5));
    }

    private static JScrollPane scrolled(JComponent view) {
        JScrollPane scroll = new JScrollPane(
                view, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(2));
        return scroll;
    }

    /** Rows are closer to each other where there is little room. */
    @Override
    public void doLayout() {
        int row = Math.max(Looks.em(CLOSE), Math.min(Looks.em(EASY), getHeight() / ROWS));
        questions.setFixedCellHeight(row);
        setups.setFixedCellHeight(row);
        super.doLayout();
    }

    /** The keys go to the question that is asked. */
    void focusQuestions() {
        questions.requestFocusInWindow();
    }

    void addViews() {
        bench.add(questions);
        bench.add(setups);
        bench.add(active);
    }

    /** Takes over a note that is still being typed. */
    void commit() {
        active.commit();
    }

    private JPanel buttons() {
        JPanel row = new JPanel(new MigLayout("insets 0 0 0 0, gap 4", "", ""));
        row.setOpaque(false);
        button(row, "add", "a new set-up based on the active one", this::add);
        button(row, "copy", "a copy of the active set-up", this::copy);
        button(row, "rename", "another name for the active set-up", () -> rename(name()));
        button(row, "delete", "delete the active set-up", () -> say(bench.act(new SetupAct.DeleteSetup(name()))));
        button(
                row,
                "base",
                "compare the others with the active set-up",
                () -> bench.act(new TrialAct.CompareWith(name())));
        return row;
    }

    private static void button(JPanel row, String words, String tip, Runnable action) {
        JButton button = new JButton(words);
        button.setName("set-up " + words);
        button.setFont(Looks.small());
        button.setMargin(new java.awt.Insets(2, 4, 2, 4));
        button.setToolTipText(tip);
        button.getAccessibleContext().setAccessibleName(words + ": " + tip);
        button.addActionListener(event -> action.run());
        row.add(button);
    }

    private String name() {
        return bench.desk().work().active();
    }

    void add() {
        Optional<String> base = Optional.of(name());
        named(
                "Name of the new set-up, which builds on “" + name() + "”",
                Names.free(bench.desk().work(), "New set-up"),
                name -> bench.act(new SetupAct.AddSetup(name, base, Optional.empty(), Map.of())));
    }

    void copy() {
        say(bench.act(
                new SetupAct.DuplicateSetup(name(), Names.free(bench.desk().work(), name() + ", copy"))));
    }

    void rename(String name) {
        named("Name of the set-up", name, next -> bench.act(new SetupAct.RenameSetup(name, next)));
    }

    /** Asks for a name until it can be taken or nobody wants it any more; what was typed stays. */
    private void named(String question, String start, Function<String, Optional<String>> take) {
        Optional<String> typed = asker.line(question, start);
        while (typed.isPresent()) {
            Optional<String> why = take.apply(typed.get());
            if (why.isEmpty()) {
                return;
            }
            typed = asker.line(sentence(why.get()) + "\n" + question, typed.get());
        }
    }

    private void say(Optional<String> why) {
        why.ifPresent(words -> notice.say(sentence(words)));
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }
}
