package evenhand.window;

import evenhand.answers.Progress;
import evenhand.car.End;
import evenhand.drawing.Detail;
import evenhand.drawing.Drawing;
import evenhand.drawing.DrawingView;
import evenhand.drawing.RearView;
import evenhand.drawing.SideView;
import evenhand.drawing.Stance;
import evenhand.look.Typeface;
import evenhand.quantity.Unseen;
import evenhand.scenario.Setup;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Look;
import evenhand.window.desk.Replies;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.ReportWriter.Order;
import evenhand.window.desk.ReportWriter.Verdict;
import evenhand.window.desk.Work;
import evenhand.window.desk.Worker;
import evenhand.words.Units;
import java.awt.Font;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * What the owner of the car is shown: what he got in plain words, the car large, before and after by one switch. Nothing in it
 * can be changed.
 */
final class CustomerPane extends JPanel implements Bench.View {
    /** The words wait until the hands were still for so long, ms. */
    private static final long CALM = 150;

    /** Sizes of type, and so many lines would fill its height. */
    private static final double LARGER = 1.35;

    private static final double LINES = 42;

    private final transient Bench bench;
    private final transient ReportWriter writer;
    private final transient Worker<Wanted> worker;
    private final Words.Area title = Words.headline("car");
    private final JToggleButton before = new JToggleButton();
    private final JToggleButton after = new JToggleButton();
    private final DrawingView side;
    private final DrawingView behind;
    private final Words.Area state = Words.quiet("state of the words");
    private final JPanel said = new Page();
    private transient Optional<Wanted> wanted = Optional.empty();
    private transient Optional<Told> told = Optional.empty();
    private boolean showsBefore;

    /** Both are asked for at once, so that the switch never waits. */
    private record Wanted(Order before, Order after) {}

    private record Told(Wanted of, Verdict before, Verdict after) {}

    /** @param leave goes back to the desk */
    CustomerPane(Bench bench, ReportWriter writer, Runnable leave) {
        super(new MigLayout(
                "insets 16 24 16 24, gap 16 8, fill, hidemode 2",
                "[grow 62,fill][grow 38,fill]",
                "[][grow,fill][][shrinkprio 200,fill]"));
        this.bench = bench;
        this.writer = writer;
        worker = new Worker<>("customer", CALM, this::work, share -> {});
        setName("customer");
        setFocusable(true);
        Detail detail = detail(bench.desk());
        side = new DrawingView(fromTheSide(bench.desk()), Looks.theme(), detail, pull -> Optional.empty());
        behind = new DrawingView(fromBehind(bench.desk()), Looks.theme(), detail, pull -> Optional.empty());
        for (DrawingView view : List.of(side, behind)) {
            view.setFocusable(false);
        }
        side.setName("customer side");
        behind.setName("customer behind");
        JButton out = new JButton("back to the desk");
        out.setName("customer leave");
        out.addActionListener(event -> leave.run());
        choice(before, "before", true);
        choice(after, "after", false);
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8, hidemode 3", "", ""));
        buttons.setOpaque(false);
        buttons.add(before);
        buttons.add(after);
        buttons.add(out, "gapleft 16");
        JScrollPane scroll = new JScrollPane(
                said, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        said.setLayout(new MigLayout("insets 0, gap 16 10, fillx", "[pref!,fill][grow,fill]", ""));
        add(title, "span 2, split 2, growx, wmin 60");
        add(buttons, "growx 0, wrap");
        add(side, "w 62%, hmin " + Looks.em(11));
        add(behind, "w 38%, hmin " + Looks.em(11) + ", wrap");
        add(state, "span 2, wmin 60, wrap");
        add(scroll, "span 2, hmin " + Looks.em(8));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                fill(CustomerPane.this.bench.desk());
            }
        });
        Keys.bind(this, "ESCAPE", leave);
        Keys.bind(this, "F11", leave);
        Keys.bind(this, "SPACE", () -> choose(!showsBefore));
    }

    /** Type that is read from a step back: the taller the window, the larger. */
    private Font large() {
        return Typeface.plain(Math.max(LARGER * Looks.size(), getHeight() / LINES));
    }

    /** A space flips between both, whichever of them has the keys. */
    private void choice(JToggleButton button, String word, boolean shows) {
        button.setText(word);
        button.setName("customer " + word);
        for (String stroke : new String[] {"SPACE", "released SPACE"}) {
            button.getInputMap().put(KeyStroke.getKeyStroke(stroke), "none");
        }
        button.addActionListener(event -> choose(shows));
    }

    private void choose(boolean shows) {
        if (hasBefore(bench.desk())) {
            showsBefore = shows;
            fill(bench.desk());
        }
    }

    private static boolean hasBefore(Desk desk) {
        return !desk.work().handedOver().equals(desk.work().base());
    }

    @Override
    public void show(Desk was, Desk now) {
        if (now.look().page() != Look.Page.CUSTOMER) {
            return;
        }
        boolean turnedTo = was.look().page() != Look.Page.CUSTOMER;
        showsBefore &= hasBefore(now) && !turnedTo;
        Wanted next =
                new Wanted(order(now, now.work().base()), order(now, now.work().handedOver()));
        boolean other = wanted.filter(next::equals).isEmpty();
        if (other) {
            wanted = Optional.of(next);
            worker.ask(next);
        }
        if (other
                || turnedTo
                || was.look().dark() != now.look().dark()
                || !was.replies().turns().equals(now.replies().turns())) {
            fill(now);
        }
    }

    private static Order order(Desk desk, String setup) {
        return Order.of(desk, setup, desk.work().base(), List.of(), ReportWriter.Paper.A4, Optional.empty());
    }

    private void work(Wanted asked, Progress progress) {
        Verdict now = writer.verdict(asked.after(), progress);
        Verdict was = asked.before().equals(asked.after()) ? now : writer.verdict(asked.before(), progress);
        SwingUtilities.invokeLater(() -> {
            told = Optional.of(new Told(asked, was, now));
            fill(bench.desk());
        });
    }

    private void fill(Desk desk) {
        title.setText(desk.work().scenario().title());
        for (JToggleButton one : List.of(before, after)) {
            one.setFont(large());
        }
        before.setToolTipText("“" + desk.work().base() + "”; the space bar flips");
        after.setToolTipText("“" + desk.work().handedOver() + "”; the space bar flips");
        before.setSelected(showsBefore);
        after.setSelected(!showsBefore);
        before.setVisible(hasBefore(desk));
        after.setVisible(hasBefore(desk));
        side.show(fromTheSide(desk), Looks.theme(), detail(desk));
        behind.show(fromBehind(desk), Looks.theme(), detail(desk));
        words(!told.map(Told::of).equals(wanted));
        revalidate();
        repaint();
    }

    /** What is told; dimmed where it is of the job as it was. */
    private void words(boolean late) {
        said.removeAll();
        Words.say(state, late ? "Being worked out …" : "");
        state.setVisible(late);
        if (told.isEmpty()) {
            return;
        }
        Verdict verdict = showsBefore ? told.get().before() : told.get().after();
        whatItIs(late);
        String above = "";
        for (Verdict.Said one : verdict.said()) {
            Words.Area head = area(one.head().equals(above) ? "" : one.head(), late, false);
            above = one.head();
            head.setFont(Typeface.strong(head.getFont().getSize2D()));
            head.setLineWrap(false);
            said.add(head, "aligny top");
            said.add(area(one.words(), late, one.warning()), "wmin 60, aligny top, wrap");
        }
        Words.Area foot = Words.quiet("what the figures are of");
        Words.say(foot, verdict.foot());
        said.add(foot, "skip 1, wmin 60");
    }

    /** Which set-up stands there, and what was done to the car by the workshop's own note. */
    private void whatItIs(boolean late) {
        Work work = bench.desk().work();
        String name = showsBefore ? work.base() : work.handedOver();
        Words.Area head = area(showsBefore ? "Before" : hasBefore(bench.desk()) ? "After" : "The car", late, false);
        head.setFont(Typeface.strong(head.getFont().getSize2D()));
        said.add(head, "aligny top");
        String note = work.scenario()
                .setup(name)
                .flatMap(Setup::note)
                .filter(text -> !text.isBlank())
                .map(text -> ": " + text.strip())
                .orElse("");
        said.add(area(Unseen.shown(name + note), late, false), "wmin 60, aligny top, wrap");
    }

    private Words.Area area(String words, boolean late, boolean warning) {
        Words.Area area = new Words.Area(
                "told",
                this::large,
                () -> late
                        ? Looks.theme().quiet()
                        : warning ? Looks.theme().warning() : Looks.theme().ink());
        Words.say(area, words);
        return area;
    }

    private Drawing fromTheSide(Desk desk) {
        Detail detail = detail(desk);
        return drawing("From the side, standing", desk, stands -> SideView.of(stands.rest(), detail, List.of()));
    }

    private Drawing fromBehind(Desk desk) {
        Detail detail = detail(desk);
        return drawing(
                "From behind, in a bend at " + Units.exactPace(desk.work().pace()),
                desk,
                stands -> RearView.of(stands.leaning(), End.REAR, detail, List.of()));
    }

    /** How a set-up stands, and how it leans where that is known. */
    private record Stands(Stance rest, Stance leaning) {}

    private Drawing drawing(String called, Desk desk, Function<Stands, Drawing> seen) {
        Setup base = desk.work().baseSetup();
        Setup handed = desk.work().scenario().setup(desk.work().handedOver()).orElseThrow();
        Drawing was = seen.apply(stands(desk, base));
        Drawing is = seen.apply(stands(desk, handed));
        return (showsBefore ? was : is).plain(called, Optional.of(showsBefore ? is : was));
    }

    private static Stands stands(Desk desk, Setup setup) {
        Stance rest = Stance.laden(
                setup.name(), setup.look(), setup.car(), desk.work().trial().load(), setup.entries());
        Optional<Replies.Turns> turns = desk.replies().turns();
        return new Stands(
                rest,
                turns.flatMap(known -> Optional.ofNullable(known.setups().get(setup.name()))
                                .flatMap(own ->
                                        own.row(known.of().pace()).map(row -> rest.turning(row, own.standing()))))
                        .orElse(rest));
    }

    private static Detail detail(Desk desk) {
        return Detail.usual(desk.look().units());
    }

    void close() {
        worker.close();
    }
}
