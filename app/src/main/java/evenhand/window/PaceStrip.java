package evenhand.window;

import evenhand.car.Weights;
import evenhand.catalogue.Range;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.WhichCar;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The trial that every set-up is put to: pace, circle, and which way it turns. */
final class PaceStrip extends JPanel implements Bench.View {
    private static final double LEAST = 0.02;
    private static final double MOST = 1.2;
    private static final double LEAST_RADIUS = 5;
    private static final double MOST_RADIUS = 2000;
    private static final String AS_WEIGHED = "as weighed";
    private static final Range USUAL = new Range(0.2, 0.5);

    private final transient Bench bench;
    private final JTextField pace = new JTextField(6);
    private final Track track = new Track("pace, track", this::move);
    private final JTextField radius = new JTextField(6);
    private final JComboBox<String> turning = new JComboBox<>(new String[] {"turning left", "turning right"});
    private final JComboBox<String> load = new JComboBox<>();
    private final JLabel aboard = new JLabel("load");
    private final JComboBox<String> which = new JComboBox<>();
    private final JLabel trouble = new JLabel();

    PaceStrip(Bench bench) {
        super(new MigLayout("insets 6 16 6 16, fillx, hidemode 3", "[][][grow,fill]16[][]16[]16[][]16[]", ""));
        this.bench = bench;
        pace.setName("pace");
        pace.getAccessibleContext().setAccessibleName("pace");
        pace.setToolTipText("lateral acceleration that the drawing and the figures stand at");
        radius.setName("circle");
        radius.getAccessibleContext().setAccessibleName("radius of the circle");
        turning.setName("turning");
        turning.getAccessibleContext().setAccessibleName("direction of the turn");
        trouble.setName("pace trouble");
        commit(pace, this::pace);
        commit(radius, this::radius);
        turning.addActionListener(event -> turn());
        load.setName("load");
        load.getAccessibleContext().setAccessibleName("what is aboard");
        load.addActionListener(event -> load());
        add(new JLabel("pace"));
        add(pace);
        add(track, "growx");
        add(new JLabel("circle"));
        add(radius);
        add(turning);
        add(aboard);
        add(load, "wmax 14em");
        which.setName("which car");
        which.getAccessibleContext().setAccessibleName("car as measured or as tested");
        which.setToolTipText("ask the numbers of the file, or as the road tests have corrected them");
        which.addActionListener(event -> which());
        add(which);
        add(trouble, "newline, span, hidemode 3");
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Looks.surface());
    }

    private static void commit(JTextField field, Consumer<String> take) {
        field.addActionListener(event -> take.accept(field.getText()));
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                take.accept(field.getText());
            }
        });
    }

    Track track() {
        return track;
    }

    @Override
    public void show(Desk before, Desk now) {
        if (before.is(now)
                || !before.work().equals(now.work())
                || before.look().units() != now.look().units()) {
            double g = Dimension.ACCELERATION.metric().fromSi(now.work().pace());
            String words = Units.pace(now.work().pace());
            if (!pace.isFocusOwner()) {
                pace.setText(words);
            }
            track.show(LEAST, Math.max(MOST, g), g, 0.01, Optional.of(USUAL), OptionalDouble.empty(), words);
            if (!radius.isFocusOwner()) {
                radius.setText(radius(now));
            }
            int way = now.work().direction() == Direction.LEFT ? 0 : 1;
            if (turning.getSelectedIndex() != way) {
                turning.setSelectedIndex(way);
            }
            loads(now);
            cars(now);
        }
    }

    private void cars(Desk now) {
        boolean tests = !now.work().scenario().roadTests().isEmpty();
        WhichCar own = now.work().which();
        List<WhichCar> offered = WhichCar.offered(now.work());
        if (which.getItemCount() != offered.size()) {
            DefaultComboBoxModel<String> model = new DefaultComboBoxModel<>(
                    offered.stream().map(WhichCar::words).toArray(String[]::new));
            model.setSelectedItem(own.words());
            which.setModel(model);
        }
        if (!own.words().equals(which.getSelectedItem())) {
            which.setSelectedItem(own.words());
        }
        which.setForeground(
                own.isTested() ? Looks.theme().warning() : Looks.theme().ink());
        which.setVisible(tests);
    }

    private void which() {
        WhichCar.of(String.valueOf(which.getSelectedItem()))
                .filter(one -> one != bench.desk().work().which())
                .ifPresent(one -> bench.act(new TrialAct.ChooseCar(one)));
    }

    private void loads(Desk now) {
        List<String> names = new ArrayList<>(List.of(AS_WEIGHED));
        now.work().scenario().loadCases().forEach(one -> names.add(one.name()));
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < load.getItemCount(); i++) {
            shown.add(load.getItemAt(i));
        }
        String own = now.work().load().filter(names::contains).orElse(AS_WEIGHED);
        if (!names.equals(shown)) {
            DefaultComboBoxModel<String> model = new DefaultComboBoxModel<>(names.toArray(new String[0]));
            model.setSelectedItem(own);
            load.setModel(model);
        }
        if (!own.equals(load.getSelectedItem())) {
            load.setSelectedItem(own);
        }
        load.setVisible(names.size() > 1);
        aboard.setVisible(names.size() > 1);
    }

    private void load() {
        Object chosen = load.getSelectedItem();
        Optional<String> next = AS_WEIGHED.equals(chosen)
                ? Optional.empty()
                : Optional.ofNullable(chosen).map(Object::toString);
        if (!next.equals(bench.desk().work().load())) {
            bench.act(new TrialAct.ChooseLoad(next));
        }
    }

    private static String radius(Desk desk) {
        Unit unit = Unit.of(desk.look().units() == Units.METRIC ? "m" : "ft");
        return Numbers.plain(unit.fromSi(desk.work().radius()), 1) + " " + unit.symbol();
    }

    private void move(double g, boolean same) {
        bench.act(new TrialAct.ChoosePace(Unit.of("g").toSi(g), same));
    }

    private void pace(String text) {
        if (text.equals(Units.pace(bench.desk().work().pace()))) {
            say("");
            return;
        }
        try {
            double si = Quantity.parse(text, Dimension.ACCELERATION).si();
            if (si < LEAST * Weights.GRAVITY || si > 20 * Weights.GRAVITY) {
                say("pace: write one from 0.02 g to 20 g");
                return;
            }
            say("");
            bench.act(new TrialAct.ChoosePace(si, false));
            pace.setText(Units.pace(si));
        } catch (QuantityException wrong) {
            say("pace: " + wrong.getMessage());
        }
    }

    private void radius(String text) {
        if (text.equals(radius(bench.desk()))) {
            say("");
            return;
        }
        try {
            double si = Quantity.parse(text, Dimension.LENGTH, MOST_RADIUS).si();
            if (si < LEAST_RADIUS) {
                say("circle: write a radius from 5 m to 2000 m");
                return;
            }
            say("");
            bench.act(new TrialAct.ChooseRadius(si));
            radius.setText(radius(bench.desk()));
        } catch (QuantityException wrong) {
            say("circle: " + wrong.getMessage());
        }
    }

    private void turn() {
        Direction next = turning.getSelectedIndex() == 0 ? Direction.LEFT : Direction.RIGHT;
        if (next != bench.desk().work().direction()) {
            bench.act(new TrialAct.ChooseDirection(next));
        }
    }

    private void say(String words) {
        trouble.setForeground(Looks.theme().warning());
        trouble.setText(words);
        trouble.setVisible(!words.isEmpty());
    }
}
