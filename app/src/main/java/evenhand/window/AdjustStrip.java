package evenhand.window;

import evenhand.window.desk.Answering;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.TurnedSetup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What matters for the question, to be adjusted on the active set-up. */
final class AdjustStrip extends JPanel implements Bench.View {
    private static final int MOST = 6;

    private final transient Bench bench;
    private final transient List<Question> questions;
    private final JLabel whose = Words.head("");
    private final JPanel cells = new JPanel(new java.awt.GridLayout(0, 3, Looks.em(1.6), Looks.em(0.3)));
    private final transient List<KnobCell> knobs = new ArrayList<>();

    AdjustStrip(Bench bench, List<Question> questions) {
        super(new MigLayout("insets 8 16 8 16, fillx", "[grow,fill][pref!]", "[]4[]"));
        this.bench = bench;
        this.questions = questions;
        JButton all = new JButton("all adjustments …");
        all.setName("all adjustments");
        all.addActionListener(event -> bench.act(new LookAct.Ask(Question.FORM)));
        cells.setOpaque(false);
        add(whose, "growx");
        add(all, "wrap");
        add(cells, "span 2, growx");
    }

    List<KnobCell> knobs() {
        return List.copyOf(knobs);
    }

    /** Whether a hand is on one of them. */
    boolean isHeld() {
        return knobs.stream().anyMatch(knob -> knob.track().isHeld());
    }

    @Override
    public void show(Desk before, Desk now) {
        List<String> paths = paths(now);
        boolean others = !paths.equals(knobs.stream().map(KnobCell::path).toList());
        if (others) {
            knobs.clear();
            cells.removeAll();
            for (String path : paths) {
                KnobCell cell = new KnobCell(bench, path);
                knobs.add(cell);
                cells.add(cell);
            }
            setVisible(!paths.isEmpty());
            revalidate();
            repaint();
        }
        boolean otherSetup = !before.work().active().equals(now.work().active());
        if (others
                || otherSetup
                || !before.work().equals(now.work())
                || before.look().units() != now.look().units()
                || before.is(now)) {
            whose.setText("ADJUST  “" + now.work().active() + "”");
            knobs.forEach(cell -> cell.show(now));
        }
        if (otherSetup
                || before.look().units() != now.look().units()
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

    private List<String> paths(Desk desk) {
        List<String> paths = Answering.question(questions, desk.look().question())
                .adjustments(desk.work().activeSetup());
        return paths.subList(0, Math.min(MOST, paths.size()));
    }
}
