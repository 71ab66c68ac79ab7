package evenhand.window;

import evenhand.chart.ChartView;
import evenhand.window.desk.Answering;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Memory;
import evenhand.window.desk.Question;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.Safekeeping;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSeparator;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Everything inside the window. It needs no screen: painted into a picture it looks as it does in a frame. */
final class MainPane extends JPanel {
    private final transient Bench bench;
    private final Notice notice = new Notice();
    private final SideBar side;
    private final AnswerPane answer;
    private final FormPane form;
    private final AdjustStrip adjust;
    private final PaceStrip pace;
    private final transient Cabinet cabinet;
    private final MeasurePane measure;
    private final ReportPane report;
    private final CirclePane circle;
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final JScrollPane scroll;

    MainPane(
            Bench bench,
            List<Question> questions,
            Answering answering,
            Memory memory,
            Safekeeping kept,
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
        cabinet = new Cabinet(bench, memory, kept, asker, notice, this::finishTyping);
        measure = new MeasurePane(this::openMeasured, () -> turnTo(Look.Page.ANSWER));
        circle = new CirclePane(bench, () -> turnTo(Look.Page.ANSWER));
        report = new ReportPane(bench, cabinet, asker, writer, () -> turnTo(Look.Page.ANSWER));

        JPanel page = new Page();
        page.add(answer);
        page.add(form);
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
        desk.add(scroll, BorderLayout.CENTER);
        desk.add(adjust, BorderLayout.SOUTH);
        middle.add(desk, Look.Page.ANSWER.name());
        middle.add(measure, Look.Page.MEASURING_UP.name());
        middle.add(circle, Look.Page.CIRCLE.name());
        middle.add(report, Look.Page.REPORT.name());
        JPanel right = new JPanel(new BorderLayout());
        right.add(notice, BorderLayout.NORTH);
        right.add(middle, BorderLayout.CENTER);

        JPanel centre = new JPanel(new MigLayout(
                "insets 0, gap 0, fill", "[" + Looks.em(19) + "!,fill][pref!][grow,fill]", "[grow,fill]"));
        centre.add(side, "grow");
        centre.add(new JSeparator(JSeparator.VERTICAL), "growy");
        centre.add(right, "grow, wmin 200");
        TopBar top = new TopBar(bench, () -> About.show(this));
        add(top, BorderLayout.NORTH);
        add(centre, BorderLayout.CENTER);
        add(pace, BorderLayout.SOUTH);

        answer.steadyWhile(() -> adjust.isHeld()
                || pace.track().isHeld()
                || answer.isHeld()
                || answer.drawing().isHeld());

        // The theme first: what the others make is then of the right one.
        bench.add(this::show);
        bench.add(top);
        side.addViews();
        bench.add(answer);
        bench.add(form);
        bench.add(adjust);
        bench.add(pace);
        bench.add(circle);
        bench.add(report);
        bench.add(cabinet);
    }

    private void show(Desk before, Desk now) {
        if (before.look().dark() != now.look().dark()) {
            Looks.set(now.look().dark());
            SwingUtilities.updateComponentTreeUI(this);
        }
        boolean other = !before.look().question().equals(now.look().question());
        if (other) {
            scroll.getVerticalScrollBar().setValue(0);
        }
        if (other || before.look().page() != now.look().page()) {
            keepTheKeys();
        }
        if (before.look().page() != now.look().page()) {
            measure.units(now.look().units());
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
        side.commit();
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

    ReportPane report() {
        return report;
    }

    /** The charts that are shown. */
    List<ChartView> charts() {
        return answer.charts();
    }
}
