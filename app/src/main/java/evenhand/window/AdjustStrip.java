package evenhand.window;

import evenhand.scenario.Setup;
import evenhand.window.desk.Answering;
import evenhand.window.desk.Arrangement;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.KnobGroup;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.SetupAct;
import evenhand.window.desk.TurnedSetup;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;

/**
 * The set-up that is adjusted: in its head what it is made of, below what matters for the question, a row each. On demand all that
 * can be adjusted, in groups, and the note.
 */
final class AdjustStrip extends JPanel implements Bench.View {
    private static final int MOST = 6;
    private static final int LEFT = 12;
    private static final int RIGHT = 16;

    /** Least width of a row, in sizes of type. */
    private static final double ROW = 27;

    /** The most of the window's height that it takes. */
    private static final double SHARE = 0.42;

    private final transient Bench bench;
    private final transient List<Question> questions;
    private final JButton fold;
    private final ActiveSetup setup;
    private final JToggleButton noted = new JToggleButton();
    private final JToggleButton all = new JToggleButton("all adjustments");
    private final JTextArea note = new JTextArea(2, 10);
    private final Words.Area trouble = Words.warning("what is wrong with the set-up");
    private final JPanel rows = new Page();
    private final JScrollPane scroll;
    private final JScrollPane writing;
    private final transient List<KnobCell> knobs = new ArrayList<>();
    private transient Map<String, List<String>> shown = Map.of();
    private String shownNote = "";

    AdjustStrip(Bench bench, List<Question> questions) {
        super(new MigLayout(
                "insets 3 " + LEFT + " 4 " + RIGHT + ", gap 6 2, fillx, hidemode 3",
                "[pref!][grow,fill][pref!][pref!]",
                "[][][]0[grow]"));
        this.bench = bench;
        this.questions = questions;
        fold = new JButton("Adjust");
        fold.setName("adjustments");
        fold.putClientProperty("JButton.buttonType", "borderless");
        fold.setMargin(new Insets(2, 0, 2, 4));
        fold.addActionListener(event -> bench.act(new LookAct.Fold(Arrangement.ADJUSTMENTS, isOpen(bench.desk()))));
        setup = new ActiveSetup(bench, this::say);
        noted.setName("note of the set-up");
        noted.addActionListener(event -> bench.act(new LookAct.Fold(Arrangement.NOTE, !noted.isSelected())));
        all.setName("all adjustments");
        all.addActionListener(event -> all());
        for (JToggleButton button : new JToggleButton[] {noted, all}) {
            button.putClientProperty("JButton.buttonType", "borderless");
        }
        note.setName("note");
        note.getAccessibleContext().setAccessibleName("note");
        note.setLineWrap(true);
        note.setWrapStyleWord(true);
        note.setCaret(Words.still());
        note.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                commit();
            }
        });
        writing = new JScrollPane(
                note, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        rows.setOpaque(false);
        scroll = new JScrollPane(
                rows, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        add(fold);
        add(setup, "wmin 40");
        add(noted);
        add(all, "wrap");
        add(trouble, "span 4, growx, wmin 40, wrap");
        add(writing, "span 4, growx, wmin 40, hmax 4.5em, wrap");
        add(scroll, "span 4, grow, wmin 40, hmin 0");
        trouble.setVisible(false);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Looks.surface());
    }

    /**
     * As high as its rows are at the width that it has, but never so high that there is no room for the answer: what does not fit
     * is scrolled.
     */
    @Override
    public Dimension getPreferredSize() {
        Insets in = getInsets();
        int width = getWidth() - in.left - in.right - LEFT - RIGHT;
        int height = 0;
        for (Component each : rows.getComponents()) {
            height += each instanceof JPanel cells && cells.getLayout() instanceof Columns columns
                    ? columns.height(cells, width)
                    : each.getPreferredSize().height;
        }
        scroll.setPreferredSize(new Dimension(0, height));
        Dimension wanted = super.getPreferredSize();
        Container desk = getParent();
        return desk == null || desk.getHeight() == 0
                ? wanted
                : new Dimension(wanted.width, Math.min(wanted.height, (int) (SHARE * desk.getHeight())));
    }

    List<KnobCell> knobs() {
        return List.copyOf(knobs);
    }

    /** Whether a hand is on one of them. */
    boolean isHeld() {
        return knobs.stream().anyMatch(knob -> knob.track().isHeld());
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

    private void all() {
        bench.act(new LookAct.Fold(Arrangement.ALL_ADJUSTMENTS, !all.isSelected()));
        if (all.isSelected()) {
            bench.act(new LookAct.Fold(Arrangement.ADJUSTMENTS, false));
        }
    }

    private static boolean isOpen(Desk desk) {
        return !desk.look().arrangement().folded(Arrangement.ADJUSTMENTS).orElse(false);
    }

    @Override
    public void show(Desk before, Desk now) {
        setup.show(before, now);
        boolean otherDress = !before.look().isDressedAs(now.look());
        boolean others = rows(now);
        if (before.is(now)
                || !before.work().equals(now.work())
                || !before.look().arrangement().equals(now.look().arrangement())
                || otherDress) {
            head(now);
        }
        boolean otherSetup = !before.work().active().equals(now.work().active());
        boolean otherUnits = before.look().units() != now.look().units();
        if (others || otherSetup || otherUnits || !before.work().equals(now.work()) || before.is(now)) {
            knobs.forEach(cell -> cell.show(now));
        }
        if (others || otherDress || otherUnits || before.is(now)) {
            KnobCell.align(knobs);
        }
        if (otherSetup
                || otherUnits
                || !before.look().question().equals(now.look().question())) {
            knobs.forEach(KnobCell::clearEffect);
        }
        if (!before.replies().turns().equals(now.replies().turns())) {
            Optional<TurnedSetup> turned = now.replies()
                    .turns()
                    .flatMap(turns ->
                            Optional.ofNullable(turns.setups().get(now.work().active())));
            turned.ifPresent(own -> knobs.forEach(cell -> cell.showTurn(now, own)));
        }
    }

    private void head(Desk now) {
        boolean open = isOpen(now);
        fold.setIcon(open ? Glyph.UNFOLDED : Glyph.FOLDED);
        fold.setToolTipText(open ? "fold the adjustments" : "unfold the adjustments");
        fold.getAccessibleContext().setAccessibleName("adjust, " + (open ? "unfolded" : "folded"));
        fold.setFont(Looks.strong());
        scroll.setVisible(!shown.isEmpty());
        all.setFont(Looks.small());
        all.setSelected(now.look().arrangement().isOpened(Arrangement.ALL_ADJUSTMENTS));
        all.setToolTipText("every adjustment of the car, in groups");
        String own = now.work().activeSetup().note().orElse("");
        boolean written = now.look().arrangement().isOpened(Arrangement.NOTE);
        Glyph.RENAME.on(noted, "note on the set-up", own.isEmpty() ? "write a note on this set-up" : own);
        noted.setText(own.isEmpty() ? "note …" : "note");
        noted.setFont(
                own.isEmpty()
                        ? Looks.small()
                        : Looks.strong().deriveFont(Looks.small().getSize2D()));
        noted.setSelected(written);
        writing.setVisible(written);
        if (!own.equals(shownNote)) {
            shownNote = own;
            note.setText(own);
        }
        revalidate();
    }

    /** Lays the rows that there are to be; whether they are others than before. */
    private boolean rows(Desk now) {
        Map<String, List<String>> wanted = paths(now);
        if (wanted.equals(shown)) {
            return false;
        }
        shown = wanted;
        knobs.clear();
        rows.removeAll();
        shown.forEach((head, paths) -> {
            if (!head.isEmpty()) {
                rows.add(head(head, !paths.isEmpty()));
            }
            JPanel cells = new JPanel(new Columns(ROW));
            cells.setOpaque(false);
            for (String path : paths) {
                KnobCell cell = new KnobCell(bench, path);
                knobs.add(cell);
                cells.add(cell);
            }
            rows.add(cells);
        });
        revalidate();
        repaint();
        return true;
    }

    private JButton head(String part, boolean open) {
        JButton head = new JButton(part.substring(part.lastIndexOf(" of ") + " of ".length()));
        head.setName(part);
        head.setIcon(open ? Glyph.UNFOLDED : Glyph.FOLDED);
        head.setFont(Looks.small());
        head.setForeground(Looks.theme().quiet());
        head.setHorizontalAlignment(javax.swing.SwingConstants.LEADING);
        head.putClientProperty("JButton.buttonType", "borderless");
        head.getAccessibleContext().setAccessibleName(head.getText() + (open ? ", unfolded" : ", folded"));
        head.addActionListener(event -> bench.act(new LookAct.Fold(part, open)));
        return head;
    }

    /** The paths of what is shown, under its head; a group that is folded has none. */
    private Map<String, List<String>> paths(Desk desk) {
        Setup active = desk.work().activeSetup();
        Arrangement arrangement = desk.look().arrangement();
        Map<String, List<String>> paths = new LinkedHashMap<>();
        if (!isOpen(desk)) {
            return paths;
        }
        if (!arrangement.isOpened(Arrangement.ALL_ADJUSTMENTS)) {
            List<String> own =
                    Answering.question(questions, desk.look().question()).adjustments(active);
            if (!own.isEmpty()) {
                paths.put("", own.subList(0, Math.min(MOST, own.size())));
            }
            return paths;
        }
        for (KnobGroup group : KnobGroup.values()) {
            List<String> own = group.paths(active);
            if (!own.isEmpty()) {
                boolean open = !arrangement.folded(group.part()).orElse(!group.isUsual());
                paths.put(group.part(), open ? own : List.of());
            }
        }
        return paths;
    }
}
