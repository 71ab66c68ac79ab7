package evenhand.window;

import evenhand.chart.ChartView;
import evenhand.window.desk.Answering;
import evenhand.window.desk.Arrangement;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Memory;
import evenhand.window.desk.Openings;
import evenhand.window.desk.Question;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.Safekeeping;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Everything inside the window. It needs no screen: painted into a picture it looks as it does in a frame. */
final class MainPane extends JPanel {
    /** Of the window for its type, in sizes of it. */
    private static final double LEAST_WIDTH = 60;

    private static final String ANSWER = "answer";

    private final transient Bench bench;
    private final Notice notice = new Notice();

    /** Where a notice stands; the owner of the car does not see it. */
    private final JPanel told = new JPanel(new BorderLayout());

    private final SideBar side;
    private final AnswerPane answer;
    private final FormPane form;
    private final AdjustStrip adjust;
    private final PaceStrip pace;
    private final transient Cabinet cabinet;
    private final MeasurePane measure;
    private final ReportPane report;
    private final CirclePane circle;
    private final StartPane start;
    private final CustomerPane customer;
    private final JPanel top;
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final JScrollPane scroll;

    /** What a question has its room for: the answer, or the form of the car. */
    private final CardLayout rooms = new CardLayout();

    private final JPanel room = new JPanel(rooms);

    MainPane(
            Bench bench,
            List<Question> questions,
            Answering answering,
            Memory memory,
            Safekeeping kept,
            Openings openings,
            Asker asker,
            ReportWriter writer) {
        super(new BorderLayout());
        this.bench = bench;
        side = new SideBar(bench, questions, asker, notice);
        Keeping keeping = new Keeping(asker, notice);
        answer = new AnswerPane(bench, questions, answering, keeping, this::screen);
        form = new FormPane(bench);
        adjust = new AdjustStrip(bench, questions);
        pace = new PaceStrip(bench);
        cabinet = new Cabinet(bench, memory, kept, openings, asker, notice, this::finishTyping);
        measure = new MeasurePane(this::openMeasured, () -> turnTo(Look.Page.ANSWER));
        circle = new CirclePane(bench, () -> turnTo(Look.Page.ANSWER));
        start = new StartPane(cabinet, () -> turnTo(Look.Page.MEASURING_UP), () -> turnTo(Look.Page.ANSWER));
        customer = new CustomerPane(bench, writer, () -> turnTo(Look.Page.ANSWER));
        report = new ReportPane(bench, cabinet, asker, writer, () -> turnTo(Look.Page.ANSWER));

        JPanel page = new Page();
        page.add(answer);
        scroll = new JScrollPane(
                page, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                answer.revalidate(); // its pictures take the height that there is
            }
        });
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(3));

        JPanel desk = new JPanel(new BorderLayout());
        room.add(scroll, ANSWER);
        room.add(form, Question.FORM);
        desk.add(room, BorderLayout.CENTER);
        desk.add(adjust, BorderLayout.SOUTH);
        middle.add(desk, Look.Page.ANSWER.name());
        middle.add(measure, Look.Page.MEASURING_UP.name());
        middle.add(circle, Look.Page.CIRCLE.name());
        middle.add(start, Look.Page.START.name());
        middle.add(customer, Look.Page.CUSTOMER.name());
        middle.add(report, Look.Page.REPORT.name());
        JPanel right = new JPanel(new BorderLayout());
        told.add(notice, BorderLayout.CENTER);
        right.add(told, BorderLayout.NORTH);
        right.add(middle, BorderLayout.CENTER);

        JPanel centre = new JPanel(new MigLayout("insets 0, gap 0, fill, hidemode 2", "[][grow,fill]", "[grow,fill]"));
        centre.add(side, "grow, w 19.4em!");
        centre.add(right, "grow, wmin 200");
        TopBar bar = new TopBar(bench, () -> About.show(this));
        top = bar;
        add(top, BorderLayout.NORTH);
        add(centre, BorderLayout.CENTER);
        add(pace, BorderLayout.SOUTH);

        answer.steadyWhile(() -> adjust.isHeld()
                || pace.track().isHeld()
                || answer.isHeld()
                || answer.drawing().isHeld());

        // The theme first: what the others make is then of the right one.
        bench.add(this::show);
        bench.add(bar);
        side.addViews();
        bench.add(answer);
        bench.add(form);
        bench.add(adjust);
        bench.add(pace);
        bench.add(circle);
        bench.add(report);
        bench.add(start);
        bench.add(customer);
        bench.add(cabinet);
    }

    private void show(Desk before, Desk now) {
        if (!before.look().isDressedAs(now.look())) {
            int zoom = now.look().arrangement().zoom();
            Looks.rescale(this, zoom / (double) before.look().arrangement().zoom());
            Looks.set(now.look().dark(), zoom);
            SwingUtilities.updateComponentTreeUI(this);
        }
        boolean other = !before.look().question().equals(now.look().question());
        if (other) {
            scroll.getVerticalScrollBar().setValue(0);
        }
        boolean formed = now.look().question().equals(Question.FORM);
        if (form.isVisible() != formed) {
            rooms.show(room, formed ? Question.FORM : ANSWER);
        }
        if (other || before.look().page() != now.look().page()) {
            keepTheKeys();
        }
        if (before.look().page() != now.look().page()) {
            measure.units(now.look().units());
            boolean forTheOwner = now.look().page() == Look.Page.CUSTOMER;
            for (JComponent part : List.of(top, side, pace, told)) {
                part.setVisible(!forTheOwner);
            }
            cards.show(middle, now.look().page().name());
        }
    }

    /**
     * Where what has the keys goes away with the question that was answered, they go to the questions: by themselves they would
     * go on to whatever comes next, and a space would press it.
     */
    private void keepTheKeys() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (owner != null && SwingUtilities.isDescendingFrom(owner, middle)) {
            SwingUtilities.invokeLater(() -> {
                Component now =
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
                boolean meant = now != null && now != owner && SwingUtilities.isDescendingFrom(now, middle);
                if (!owner.isShowing() && !meant) {
                    side.focusQuestions();
                }
            });
        }
    }

    /** Height of an answer that is seen without scrolling; of none where the form of the car stands below it. */
    private int screen() {
        return form.isVisible() ? 0 : scroll.getViewport().getHeight();
    }

    /** Takes over what is still being typed. */
    private void finishTyping() {
        adjust.commit();
        if (KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()
                instanceof javax.swing.JTextField field) {
            field.postActionEvent();
        }
    }

    /** Takes over what is still being typed, and turns to a page. */
    void turnTo(Look.Page page) {
        finishTyping();
        bench.act(new LookAct.TurnTo(page));
        // after what keeps the keys where something goes away
        if (page == Look.Page.MEASURING_UP) {
            SwingUtilities.invokeLater(measure::focusFirst);
        } else if (page == Look.Page.CIRCLE) {
            SwingUtilities.invokeLater(circle::focusFirst);
        } else if (page == Look.Page.START) {
            SwingUtilities.invokeLater(start::focusFirst);
        } else if (page == Look.Page.CUSTOMER) {
            SwingUtilities.invokeLater(customer::requestFocusInWindow);
        }
    }

    /** Begins with a file, or with what there is to begin with; the answers are not yet asked for. */
    void begin(Optional<Path> file) {
        boolean open = file.isPresent() && cabinet.readFirst(file.get());
        bench.show();
        if (!open) {
            turnTo(Look.Page.START);
        }
        cabinet.offerLeft();
    }

    /** Makes all type larger by a step where the window is wide enough for it: numbers that are cut read as others. */
    void largerText() {
        Arrangement now = bench.desk().look().arrangement();
        double em = Looks.size() * now.zoomed(1).zoom() / now.zoom();
        if (getWidth() < LEAST_WIDTH * em) {
            notice.say("This window is too narrow for larger text: make it wider first.");
        } else {
            bench.act(new LookAct.Zoom(1));
        }
    }

    private void openMeasured(String text) {
        cabinet.openNew(text);
        bench.act(new LookAct.TurnTo(Look.Page.ANSWER));
    }

    Bench bench() {
        return bench;
    }

    Cabinet cabinet() {
        return cabinet;
    }

    Notice notice() {
        return notice;
    }

    SideBar side() {
        return side;
    }

    AnswerPane answer() {
        return answer;
    }

    FormPane form() {
        return form;
    }

    AdjustStrip adjust() {
        return adjust;
    }

    PaceStrip pace() {
        return pace;
    }

    MeasurePane measure() {
        return measure;
    }

    CustomerPane customer() {
        return customer;
    }

    ReportPane report() {
        return report;
    }

    /** The charts that are shown. */
    List<ChartView> charts() {
        return answer.charts();
    }
}
