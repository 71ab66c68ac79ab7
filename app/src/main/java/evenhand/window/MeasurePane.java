package evenhand.window;

import evenhand.drawing.measuring.Sketches;
import evenhand.scenario.Problem;
import evenhand.scenario.Reading;
import evenhand.window.desk.FormField;
import evenhand.window.desk.Guess;
import evenhand.window.desk.MeasureUp;
import evenhand.words.Units;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;

/** Measuring a car up, step by step; it can be left at any step, and what was typed stays. */
final class MeasurePane extends JPanel {
    /** So many links find room in two lines. */
    private static final int MOST_LINKS = 8;

    private final JPanel steps = new JPanel(new MigLayout("insets 0, gap 6 2, wrap 1", "[fill]", ""));
    private final JPanel page =
            new JPanel(new MigLayout("insets 0, gap 0 6, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
    private final Words.Area status = Words.quiet("what is still missing");
    private final JPanel links = new JPanel(new FlowLayout(FlowLayout.LEADING, 2, 0));
    private final SketchPane sketch = new SketchPane();
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
        super(new MigLayout("insets 16, gap 24 8, fill", "[pref!][grow,fill]", "[][grow,fill][]0[][]"));
        this.open = open;
        setName("measure up");
        Words.Area title = Words.headline("measure up");
        title.setText("Measure a car up");
        back.addActionListener(event -> turnTo(step - 1));
        next.addActionListener(event -> turnTo(step + 1));
        back.setName("measure before");
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
        JPanel all = new Page();
        all.setOpaque(false);
        all.add(page);
        JScrollPane scroll = new JScrollPane(
                all, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(3));
        JPanel right = new JPanel(new SketchPane.Beside(scroll, sketch));
        right.setOpaque(false);
        right.add(scroll);
        right.add(sketch);
        add(right, "grow, hmin 60, h 60:60:, wrap");
        // Under both columns, so that they stay under the mouse whatever the steps above are called.
        add(status, "span 2, growx, wmin 60, wrap");
        links.setOpaque(false);
        add(links, "span 2, growx, wmin 60, h " + Looks.em(4.6) + "!, wrap");
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
                    .allMatch(field ->
                            field.given().isPresent() && measured.problem(field).isEmpty());
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
            FormRow row =
                    FormRow.asking(field, field.labelOfAxle(), this::take, focused -> sketch.show(focused.path()));
            rows.add(row);
            page.add(row);
            offers(field);
        }
        here.fields().stream()
                .map(FormField::path)
                .filter(path -> Sketches.of(path).isPresent())
                .findFirst()
                .ifPresentOrElse(sketch::show, sketch::clear);
        refresh();
        back.setEnabled(step > 0);
        next.setEnabled(step < all.size() - 1);
        revalidate();
        repaint();
    }

    /** What may be meant, and what can stand in for who does not know. */
    private void offers(FormField field) {
        Optional<Guess> proposal = Guess.proposed(field, measured);
        boolean scales = field.path().equals("cornerWeights.rearRight");
        Optional<Guess> guess = Guess.of(field, measured, units);
        boolean taken =
                guess.map(own -> field.given().equals(Optional.of(own.text()))).orElse(false);
        if (proposal.isEmpty() && !scales && (guess.isEmpty() || (field.given().isPresent() && !taken))) {
            return;
        }
        JPanel offer = new JPanel(new MigLayout("insets 0, gap 8, hidemode 3", "[pref!][grow,fill]", ""));
        offer.setOpaque(false);
        Words.Area why = Words.quiet("why " + field.path());
        why.setName("why " + field.path());
        if (proposal.isPresent()) {
            offer.add(offer("propose " + field.path(), "take " + proposal.get().text(), why, field, () -> {
                measured = measured.with(field.path(), proposal.get().text());
            }));
            why.setText(proposal.get().from());
        } else if (scales) {
            offer.add(offer("estimate " + field.path(), "no four scales: the whole weight", why, field, () -> {
                measured = measured.guessed(field, units);
            }));
            why.setText("the weight of the car as in its papers, driver aboard, and a guess of the front's part");
        } else {
            Guess own = guess.get();
            String cost = cost(own, field);
            if (!taken) {
                String words = field.path().startsWith("axleLift")
                        ? "cannot lift it: height of the weight "
                        : "don't know: estimate ";
                offer.add(offer("estimate " + field.path(), words + own.text(), why, field, () -> {
                    measured = measured.guessed(field, units);
                }));
            }
            why.setText((taken ? "estimated from " : "from ") + own.from() + cost);
        }
        offer.add(why, "wmin 60");
        page.add(offer, "gapleft " + Looks.em(13.8) + ", gapbottom 4");
    }

    private String cost(Guess guess, FormField field) {
        OptionalDouble cost = guess.cost(field, measured, units);
        return cost.isPresent()
                ? "; leaves the understeer near the limit open by about ±"
                        + units.show(cost.getAsDouble(), evenhand.answers.Criterion.NEAR_UNDERSTEER)
                : "";
    }

    private JButton offer(String name, String words, Words.Area why, FormField field, Runnable take) {
        JButton button = new JButton(words);
        button.setName(name);
        button.setFont(Looks.small());
        button.getAccessibleContext()
                .setAccessibleName(words + " for " + evenhand.words.ChangeWords.name(field.path()));
        button.getAccessibleContext().setAccessibleDescription(why.getText());
        button.addActionListener(event -> {
            take.run();
            go(step);
            focus(field.path());
        });
        return button;
    }

    /** Turns to the field of a value. */
    private void turnTo(String path) {
        measured.step(path).ifPresent(this::go);
        focus(path);
    }

    private void focus(String path) {
        rows.stream()
                .filter(row -> row.field().path().equals(path))
                .findFirst()
                .or(() -> rows.stream().findFirst())
                .ifPresent(FormRow::focus);
    }

    private void links(List<String> paths) {
        links.removeAll();
        for (String path : paths.subList(0, Math.min(MOST_LINKS, paths.size()))) {
            String words = evenhand.words.ChangeWords.name(path.replace("axleLift.readings.", "axleLift."));
            JButton link = new JButton(words);
            link.setName("missing " + path);
            link.setFont(Looks.small());
            link.putClientProperty("JButton.buttonType", "borderless");
            link.setForeground(Looks.theme().colour(new evenhand.look.SetupStyle(0)));
            link.getAccessibleContext().setAccessibleName("go to " + words);
            link.addActionListener(event -> turnTo(path));
            links.add(link);
        }
        if (paths.size() > MOST_LINKS) {
            JLabel more = new JLabel("and " + (paths.size() - MOST_LINKS) + " more");
            more.setFont(Looks.small());
            links.add(more);
        }
        links.revalidate();
        links.repaint();
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
        List<String> offered = offered();
        measured = measured.with(field.path(), text);
        if (!paths().equals(before) || !offered().equals(offered)) {
            javax.swing.SwingUtilities.invokeLater(this::again);
        }
        refresh();
        return measured.problem(field);
    }

    /** The step anew, the keys where they were. */
    private void again() {
        Optional<String> owner = rows.stream()
                .filter(FormRow::hasKeys)
                .map(row -> row.field().path())
                .findFirst();
        go(step);
        owner.ifPresent(this::focus);
    }

    /** What is offered at the fields of this step. */
    private List<String> offered() {
        return measured.steps().get(step).fields().stream()
                .map(field -> Guess.proposed(field, measured)
                        .or(() -> Guess.of(field, measured, units)
                                .filter(own -> field.given().isEmpty()))
                        .map(Guess::text)
                        .orElse(""))
                .toList();
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
                    .ifPresent(field -> {
                        String example = field.example(units);
                        row.show(field, units, example.isEmpty() ? "" : "for example " + example);
                        row.say(measured.problem(field));
                    });
        }
        List<FormField> missing = measured.missing();
        Reading reading = measured.read();
        boolean sound = missing.isEmpty() && reading.scenario().isPresent();
        done.setEnabled(sound);
        if (sound) {
            status.setText("Everything that is needed is there; the rest is estimated, and can be put in later.");
            links(List.of());
        } else if (missing.isEmpty()) {
            Problem first = reading.problems().get(0);
            status.setText("Not yet a car: " + first.where() + " " + first.what());
            String path = first.where().replaceFirst("^car\\.", "").replace("readings[0]", "readings");
            links(measured.step(path).isPresent() ? List.of(path) : List.of());
        } else {
            status.setText(missing.size() + (missing.size() == 1 ? " value is" : " values are") + " still missing:");
            links(missing.stream().map(FormField::path).toList());
        }
    }
}
