package evenhand.window;

import evenhand.window.desk.FormField;
import evenhand.window.desk.MeasureUp;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import net.miginfocom.swing.MigLayout;

/** Measuring a car up, step by step; it can be left at any step, and what was typed stays. */
final class MeasurePane extends JPanel {
    private final JPanel steps = new JPanel(new MigLayout("insets 0, gap 6 2, wrap 1", "[fill]", ""));
    private final JPanel page =
            new JPanel(new MigLayout("insets 0, gap 0 6, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
    private final Words.Area status = Words.quiet("what is still missing");
    private final JButton back = new JButton("back");
    private final JButton next = new JButton("next");
    private final JButton done = new JButton("open the car");
    private final transient Consumer<String> open;
    private transient MeasureUp measured = MeasureUp.NEW;
    private transient List<FormRow> rows = new ArrayList<>();
    private transient Units units = Units.METRIC;
    private int step;

    /**
     * @param open is given the scenario when it is sound
     * @param leave goes back to the desk
     */
    MeasurePane(Consumer<String> open, Runnable leave) {
        super(new MigLayout("insets 16, gap 24 8, fill", "[pref!][grow,fill]", "[][grow,top][]"));
        this.open = open;
        setName("measure up");
        Words.Area title = Words.headline("measure up");
        title.setText("Measure a car up");
        back.addActionListener(event -> turnTo(step - 1));
        next.addActionListener(event -> turnTo(step + 1));
        next.setName("measure next");
        done.setName("measure done");
        done.addActionListener(event -> this.open.accept(measured.text()));
        JButton out = new JButton("leave, keep what was typed");
        out.setName("measure leave");
        out.addActionListener(event -> leave.run());
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8", "[][][][grow][]", ""));
        buttons.add(back);
        buttons.add(next);
        buttons.add(done);
        buttons.add(out, "skip 1");
        add(title, "span 2, growx, wmin 60, wrap");
        add(steps, "aligny top");
        add(page, "grow, wrap");
        // Under both columns, so that they stay under the mouse whatever the steps above are called.
        add(status, "span 2, growx, wmin 60, wrap");
        add(buttons, "span 2, growx");
        go(0);
    }

    MeasureUp measured() {
        return measured;
    }

    void units(Units now) {
        units = now;
        refresh();
    }

    private void go(int to) {
        List<MeasureUp.Step> all = measured.steps();
        step = Math.max(0, Math.min(all.size() - 1, to));
        build(all);
    }

    private void turnTo(int to) {
        go(to);
        focusFirst();
    }

    /** The keys go where the next value is typed. */
    void focusFirst() {
        rows.stream().findFirst().ifPresent(FormRow::focus);
    }

    private void build(List<MeasureUp.Step> all) {
        steps.removeAll();
        for (int i = 0; i < all.size(); i++) {
            int index = i;
            boolean whole = all.get(i).fields().stream()
                    .noneMatch(field -> field.given().isEmpty());
            JButton button = new JButton((i + 1) + "  " + all.get(i).title() + (whole ? "  – done" : ""));
            button.putClientProperty("JButton.buttonType", "borderless");
            button.setHorizontalAlignment(javax.swing.SwingConstants.LEFT);
            button.setFont(i == step ? Looks.strong() : evenhand.look.Typeface.plain(Looks.size()));
            button.addActionListener(event -> turnTo(index));
            steps.add(button);
        }
        page.removeAll();
        rows = new ArrayList<>();
        MeasureUp.Step here = all.get(step);
        page.add(Words.head(here.title()));
        Words.Area advice = Words.plain("advice");
        advice.setText(here.advice());
        page.add(advice, "wmin 60, gapbottom 8");
        ways(here);
        for (FormField field : here.fields()) {
            FormRow row = new FormRow(field, field.labelOfAxle(), this::take);
            rows.add(row);
            page.add(row);
        }
        refresh();
        back.setEnabled(step > 0);
        next.setEnabled(step < all.size() - 1);
        revalidate();
        repaint();
    }

    private void ways(MeasureUp.Step here) {
        if (here.title().equals("Weight")) {
            ButtonGroup group = new ButtonGroup();
            for (MeasureUp.Weighing way : MeasureUp.Weighing.values()) {
                radio(way.words(), measured.weighing() == way, group, () -> measured = measured.weighed(way));
            }
        } else if (here.title().startsWith("Length")) {
            ButtonGroup group = new ButtonGroup();
            for (MeasureUp.Height way : MeasureUp.Height.values()) {
                radio(way.words(), measured.height() == way, group, () -> measured = measured.lifted(way));
            }
        }
    }

    private void radio(String words, boolean selected, ButtonGroup group, Runnable choose) {
        JRadioButton radio = new JRadioButton(words, selected);
        radio.setOpaque(false);
        radio.addActionListener(event -> {
            choose.run();
            go(step);
        });
        group.add(radio);
        page.add(radio);
    }

    private Optional<String> take(FormField field, String text) {
        List<String> before = paths();
        measured = measured.with(field.path(), text);
        if (!paths().equals(before)) {
            javax.swing.SwingUtilities.invokeLater(() -> go(step));
        }
        refresh();
        return measured.problem(field);
    }

    private List<String> paths() {
        return measured.steps().get(step).fields().stream().map(FormField::path).toList();
    }

    private void refresh() {
        List<FormField> fields = measured.steps().get(step).fields();
        for (FormRow row : rows) {
            fields.stream()
                    .filter(field -> field.path().equals(row.field().path()))
                    .findFirst()
                    .ifPresent(field -> row.show(
                            field, units, field.example(units).isEmpty() ? "" : "for example " + field.example(units)));
        }
        List<FormField> missing = measured.missing();
        boolean sound = missing.isEmpty() && measured.read().scenario().isPresent();
        done.setEnabled(sound);
        status.setText(
                sound
                        ? "Everything that is needed is there; the rest is estimated, and can be put in later."
                        : missing.isEmpty()
                                ? "Not yet a car: "
                                        + measured.read().problems().get(0).where() + " "
                                        + measured.read().problems().get(0).what()
                                : missing.size() + (missing.size() == 1 ? " value is" : " values are")
                                        + " still to be measured.");
    }
}
