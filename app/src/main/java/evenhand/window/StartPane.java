package evenhand.window;

import evenhand.quantity.Unseen;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Look;
import evenhand.window.desk.Memory;
import evenhand.window.desk.When;
import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** What there is to begin with: cars that were open before, demo cars with their stories, a car to measure up, a file. */
final class StartPane extends JPanel implements Bench.View {
    /** What somebody may do who has never seen the program. */
    static final String TO_DRAG =
            "Drag the handle of \"rear lateral locator height\" under the answer, and watch which end lets go first.";

    /** Longer lines are hard to read, in sizes of type. */
    private static final double READABLE = 70;

    private final transient Cabinet cabinet;
    private final transient Runnable measure;
    private final transient Runnable leave;
    private final JPanel page = new Page();
    private final transient List<JButton> buttons = new ArrayList<>();

    /**
     * @param measure turns to measuring up
     * @param leave goes to the car that is on the desk
     */
    StartPane(Cabinet cabinet, Runnable measure, Runnable leave) {
        super(new BorderLayout());
        this.cabinet = cabinet;
        this.measure = measure;
        this.leave = leave;
        setName("start");
        page.setLayout(new MigLayout("insets 12 16 16 16, gap 0 4, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
        JScrollPane scroll = new JScrollPane(
                page, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(3));
        add(scroll, BorderLayout.CENTER);
        Keys.bind(this, "ESCAPE", leave);
    }

    @Override
    public void show(Desk before, Desk now) {
        boolean turnedTo = now.look().page() == Look.Page.START
                && (before.is(now) || before.look().page() != Look.Page.START);
        if (turnedTo) {
            fill(now);
        }
    }

    /** The keys go to what is first. */
    void focusFirst() {
        buttons.stream().findFirst().ifPresent(JButton::requestFocusInWindow);
    }

    private void fill(Desk desk) {
        page.removeAll();
        buttons.clear();
        Words.Area title = Words.headline("where to begin");
        title.setText("Where to begin?");
        page.add(title, "wmin 60");
        List<Memory.Recent> recent = cabinet.remembered();
        if (recent.isEmpty()) {
            String name = Demos.NAMES.get(0);
            Demos.Story story = Demos.story(name);
            head("To try");
            entry(story.title(), "demo " + name, () -> cabinet.openDemo(name), story.whole(), TO_DRAG);
        } else {
            head("Open before");
            recent.forEach(this::recent);
        }
        head("Begin a car");
        entry(
                "Measure up a new car",
                "start measure",
                measure,
                "With scales, a tape and a trolley jack, step by step; what nobody knows is estimated and called so.");
        entry("Open a file …", "start open", cabinet::openChosen, "Or drop it anywhere on this window.");
        entry(
                "Go on with “" + Unseen.shown(desk.work().scenario().title()) + "”",
                "start leave",
                leave,
                "It lies on the desk; Escape goes there too.");
        head("Demo cars, invented");
        for (String name : recent.isEmpty() ? Demos.NAMES.subList(1, Demos.NAMES.size()) : Demos.NAMES) {
            Demos.Story story = Demos.story(name);
            entry(story.title(), "demo " + name, () -> cabinet.openDemo(name), story.first());
        }
        page.revalidate();
        page.repaint();
    }

    private void recent(Memory.Recent recent) {
        String file = Unseen.shown(String.valueOf(recent.file().getFileName()));
        String title = recent.title().isBlank() ? file : Unseen.shown(recent.title());
        String where = Unseen.shown(recent.file().toString())
                + recent.when().map(when -> ", open last " + When.words(when)).orElse("");
        switch (recent.since()) {
            case GONE -> {
                entry(
                        title,
                        "recent " + file,
                        () -> {
                            cabinet.forget(recent.file());
                            fill(cabinet.desk());
                        },
                        where,
                        "The file is no longer there; a click takes it off this list.");
            }
            case CHANGED ->
                entry(
                        title,
                        "recent " + file,
                        () -> cabinet.open(recent.file()),
                        where,
                        "Changed by another program since. "
                                + (recent.verdict().isEmpty() ? "" : "Before: " + recent.verdict()));
            case SAME -> entry(title, "recent " + file, () -> cabinet.open(recent.file()), where, recent.verdict());
        }
    }

    /** Arrows go from one to the next; Tab reaches what is said of them too. */
    private void focus(int place) {
        if (place >= 0 && place < buttons.size()) {
            buttons.get(place).requestFocusInWindow();
        }
    }

    private void head(String words) {
        page.add(Words.head(words), "gaptop 12");
    }

    /** Something to choose, with what is said of it below. */
    private void entry(String words, String name, Runnable action, String... said) {
        JButton button = new JButton(words);
        button.setName(name);
        button.setHorizontalAlignment(SwingConstants.LEADING);
        button.setFont(Looks.strong());
        button.getAccessibleContext().setAccessibleName(words);
        button.getAccessibleContext().setAccessibleDescription(String.join(" ", said));
        button.addActionListener(event -> action.run());
        button.addFocusListener(new java.awt.event.FocusAdapter() {
            @Override
            public void focusGained(java.awt.event.FocusEvent e) {
                ((JPanel) button.getParent()).scrollRectToVisible(button.getBounds());
            }
        });
        int place = buttons.size();
        buttons.add(button);
        Keys.bind(button, "DOWN", () -> focus(place + 1));
        Keys.bind(button, "UP", () -> focus(place - 1));
        page.add(button, "growx 0, alignx left, wmin 60, gaptop 6");
        for (String text : said) {
            if (!text.isBlank()) {
                Words.Area area = Words.plain(name + " said");
                Words.say(area, text);
                page.add((Component) area, "wmin 60, wmax " + Looks.em(READABLE) + ", gapleft 8, alignx left");
            }
        }
    }
}
