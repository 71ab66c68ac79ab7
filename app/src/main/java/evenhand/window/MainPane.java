package evenhand.window;

import evenhand.chart.ChartView;
import evenhand.window.desk.Answering;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Memory;
import evenhand.window.desk.Question;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.Safekeeping;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSeparator;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;

/** Everything inside the window. It needs no screen: painted into a picture it looks as it does in a frame. */
final class MainPane extends JPanel {
    private static final String DESK = "desk";
    private static final String MEASURE = "measure";
    private static final String REPORT = "report";

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
        answer = new AnswerPane(bench, questions, answering, keeping);
        form = new FormPane(bench);
        adjust = new AdjustStrip(bench, questions);
        pace = new PaceStrip(bench);
        cabinet = new Cabinet(bench, memory, kept, asker, notice, this::finishTyping);
        measure = new MeasurePane(this::openMeasured, () -> showMeasureUp(false));
        report = new ReportPane(bench, cabinet, asker, writer, () -> cards.show(middle, DESK));

        JPanel page = new Page();
        page.add(answer, "growx");
        page.add(form, "growx");
        scroll = new JScrollPane(
                page, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(3));

        JPanel desk = new JPanel(new BorderLayout());
        desk.add(scroll, BorderLayout.CENTER);
        desk.add(adjust, BorderLayout.SOUTH);
        middle.add(desk, DESK);
        middle.add(measure, MEASURE);
        middle.add(report, REPORT);
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

        // The theme first: what the others make is then of the right one.
        bench.add(this::theme);
        bench.add(top);
        side.addViews();
        bench.add(answer);
        bench.add(form);
        bench.add(adjust);
        bench.add(pace);
        bench.add(report);
        bench.add(cabinet);
    }

    private void theme(Desk before, Desk now) {
        if (before.look().dark() != now.look().dark()) {
            Looks.set(now.look().dark());
            javax.swing.SwingUtilities.updateComponentTreeUI(this);
        }
        if (!before.look().question().equals(now.look().question())) {
            scroll.getVerticalScrollBar().setValue(0);
            cards.show(middle, DESK);
        }
    }

    /** Takes over what is still being typed. */
    private void finishTyping() {
        side.commit();
        if (java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()
                instanceof javax.swing.JTextField field) {
            field.postActionEvent();
        }
    }

    void showMeasureUp(boolean shown) {
        measure.units(bench.desk().look().units());
        cards.show(middle, shown ? MEASURE : DESK);
    }

    void showReport() {
        finishTyping();
        cards.show(middle, REPORT);
    }

    private void openMeasured(String text) {
        cabinet.openNew(text);
        showMeasureUp(false);
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
