package evenhand.window;

import evenhand.scenario.Setup;
import evenhand.window.desk.Act;
import evenhand.window.desk.Arrangement;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Names;
import evenhand.window.desk.Question;
import evenhand.window.desk.SetupAct;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.Work;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** The left edge: the questions, and the set-ups. */
final class SideBar extends JPanel implements Bench.View {
    /** Height of a row at least and at most, in sizes of type. */
    private static final double CLOSE = 1.46;

    private static final double EASY = 1.9;

    /** Rows that the heads and what stands between the lists are as high as. */
    private static final int BETWEEN = 3;

    private final transient Bench bench;
    private final transient Asker asker;
    private final transient Notice notice;
    private final QuestionList questions;
    private final SetupList setups;
    private final JButton pin;
    private final JButton hide;
    private final JButton hidden = new JButton();

    SideBar(Bench bench, List<Question> all, Asker asker, Notice notice) {
        super(new MigLayout(
                "insets 0, gap 0, fill, wrap 1, hidemode 3", "[grow,fill]", "[][][][fill,shrinkprio 200][][grow]"));
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
                SideBar.this.delete(name);
            }
        });
        JPopupMenu menu = new JPopupMenu();
        new SetupItems(this, setups::meant, false).into(menu);
        setups.setComponentPopupMenu(menu);
        pin = Glyph.PIN.button("set-up pin", "", "", this::pin);
        hide = Glyph.HIDE.button("set-up hide", "hide", "hide this set-up from the list", this::putAside);
        hidden.setName("hidden set-ups");
        hidden.putClientProperty("JButton.buttonType", "borderless");
        hidden.setHorizontalAlignment(SwingConstants.LEADING);
        hidden.addActionListener(event -> act(
                new LookAct.Fold(Arrangement.HIDDEN, desk().look().arrangement().isOpened(Arrangement.HIDDEN))));
        add(Words.head("Ask"), "gapleft 12, gaptop 6");
        add(questions, "growx");
        add(heads(), "growx, gaptop 8");
        // Where there is little room, the list is left whole as long as it can be.
        add(scrolled(setups), "growx, hmin 5em");
        add(hidden, "growx 0, gapleft 6");
        add(new JLabel(), "grow, hmin 0");
    }

    private static JScrollPane scrolled(JComponent view) {
        JScrollPane scroll = new JScrollPane(
                view, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(2));
        return scroll;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Looks.surface());
    }

    /** Rows are closer to each other where there is little room, and questions folded where there is less. */
    @Override
    public void doLayout() {
        int others = BETWEEN + setups.getModel().getSize() + (hidden.isVisible() ? 1 : 0);
        questions.roomy(getHeight() >= (others + questions.lines()) * Looks.em(CLOSE));
        int rows = others + questions.getModel().getSize();
        int row = Math.max(Looks.em(CLOSE), Math.min(Looks.em(EASY), getHeight() / rows));
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
        bench.add(this);
    }

    @Override
    public void show(Desk before, Desk now) {
        Work work = now.work();
        boolean pinned = work.shelf().pinned().contains(work.active());
        pin.setToolTipText(
                pinned ? "let this set-up go from the top of the list" : "keep this set-up at the top of the list");
        pin.getAccessibleContext().setAccessibleName(pinned ? "unpin" : "pin");
        int many = work.shelf().hidden().size();
        boolean shown = now.look().arrangement().isOpened(Arrangement.HIDDEN);
        hidden.setVisible(many > 0);
        hidden.setIcon(shown ? Glyph.UNFOLDED : Glyph.FOLDED);
        hidden.setFont(Looks.small());
        hidden.setText((shown ? "leave out " : "show ") + many + " hidden");
    }

    private JPanel heads() {
        JPanel row = new JPanel(new MigLayout("insets 0 12 0 6, gap 1, fillx", "[grow][][][][][][][]", ""));
        row.setOpaque(false);
        row.add(Words.head("Set-ups"), "growx");
        row.add(button(Glyph.ADD, "add", "a new set-up based on the active one", () -> add(name())));
        row.add(button(Glyph.COPY, "copy", "a copy of the active set-up", () -> copy(name())));
        row.add(button(Glyph.RENAME, "rename", "another name for the active set-up", () -> rename(name())));
        row.add(button(Glyph.DELETE, "delete", "delete the active set-up", () -> delete(name())));
        row.add(button(
                Glyph.BASE,
                "base",
                "compare the others with the active set-up",
                () -> act(new TrialAct.CompareWith(name()))));
        row.add(pin);
        row.add(hide);
        return row;
    }

    private static JButton button(Glyph glyph, String words, String tip, Runnable action) {
        return glyph.button("set-up " + words, words + ": " + tip, tip, action);
    }

    private void pin() {
        act(new TrialAct.Pin(name(), !desk().work().shelf().pinned().contains(name())));
    }

    /** The one that is adjusted cannot be hidden: the one before it, or after, is turned to. */
    private void putAside() {
        List<String> names = desk().work().listed().stream()
                .map(Setup::name)
                .filter(name -> !desk().work().shelf().hidden().contains(name))
                .toList();
        String own = name();
        int at = names.indexOf(own);
        if (own.equals(desk().work().base()) || names.size() < 2) {
            act(new TrialAct.Hide(own, true));
            return;
        }
        act(new TrialAct.Activate(names.get(at == 0 ? 1 : at - 1)));
        act(new TrialAct.Hide(own, true));
    }

    Desk desk() {
        return bench.desk();
    }

    /** Does something, and says why not where it cannot be done. */
    void act(Act act) {
        say(bench.act(act));
    }

    private String name() {
        return bench.desk().work().active();
    }

    void add(String name) {
        Optional<String> base = Optional.of(name);
        named(
                "Name of the new set-up, which builds on “" + name + "”",
                Names.free(bench.desk().work(), "New set-up"),
                next -> bench.act(new SetupAct.AddSetup(next, base, Optional.empty(), Map.of())));
    }

    void copy(String name) {
        act(new SetupAct.DuplicateSetup(name, Names.free(bench.desk().work(), name + ", copy")));
    }

    void delete(String name) {
        act(new SetupAct.DeleteSetup(name));
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
