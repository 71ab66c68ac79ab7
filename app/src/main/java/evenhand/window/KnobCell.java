package evenhand.window;

import evenhand.catalogue.Range;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Knob;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Work;
import evenhand.words.ChangeWords;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** One adjustment in a row: its name, its value to be typed, its track to be dragged, what it moves, and the way back to the base. */
final class KnobCell extends JPanel {
    /** Room for a value, in sizes of type. */
    private static final double LEAST_FIELD = 6;

    private static final Pattern NUMBER = Pattern.compile("[-+−]?\\d+(\\.\\d+)?");

    private final transient Bench bench;
    private final String path;
    private final JTextField field = new JTextField();
    private final Track track;
    private final JButton reset;
    private final JLabel label;
    private final EffectLabel effect = new EffectLabel();
    private final Words.Area trouble = Words.warning("what is wrong");
    private transient Optional<Knob> knob = Optional.empty();
    private transient Optional<TurnedSetup> before = Optional.empty();
    /** The work that the effect beside the track is of. */
    private transient Optional<Work> moved = Optional.empty();

    private String shown = "";

    KnobCell(Bench bench, String path) {
        super(new MigLayout(
                "insets 0, gap 4 0, fillx, hidemode 3",
                "[pref!][pref!][3.5em::,grow,fill][" + EffectLabel.LEAST + "em::" + EffectLabel.MOST
                        + "em,grow 60,fill][pref!]",
                "[1.85em::]0[]"));
        this.bench = bench;
        this.path = path;
        setOpaque(false);
        String name = ChangeWords.name(path);
        label = new JLabel(ChangeWords.inShort(path));
        label.setFont(Looks.small());
        label.setToolTipText(name);
        label.setLabelFor(field);
        track = new Track(name + ", track", this::move);
        field.setName(path);
        field.getAccessibleContext().setAccessibleName(name);
        field.addActionListener(event -> typed());
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                typed();
            }
        });
        field.registerKeyboardAction(
                event -> takeBack(), KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), JComponent.WHEN_FOCUSED);
        reset = Glyph.RESET.button(
                path + " reset", name + ", back to the base", "back to the value of the base set-up", this::reset);
        reset.setMargin(new Insets(1, 1, 1, 1));
        effect.setName(path + " effect");
        add(label);
        add(field);
        add(track);
        add(effect);
        add(reset, "hidemode 0, wrap"); // nothing moves when it comes
        add(trouble, "span 5, growx, wmin 40");
        trouble.setVisible(false);
    }

    /** Gives the names of all one width, and the fields, so that the rows are a table. */
    static void align(List<KnobCell> cells) {
        int name = 0;
        int value = Looks.em(LEAST_FIELD);
        for (KnobCell cell : cells) {
            cell.label.setPreferredSize(null);
            name = Math.max(name, cell.label.getPreferredSize().width);
            // and one digit more, which a drag may bring
            int words = cell.field.getFontMetrics(cell.field.getFont()).stringWidth(cell.shown + "0");
            value = Math.max(value, words + Looks.em(1.2));
        }
        for (KnobCell cell : cells) {
            cell.label.setPreferredSize(new Dimension(name, cell.label.getPreferredSize().height));
            cell.field.setPreferredSize(null);
            cell.field.setPreferredSize(new Dimension(value, cell.field.getPreferredSize().height));
            cell.field.setMinimumSize(cell.field.getPreferredSize());
        }
    }

    String path() {
        return path;
    }

    Track track() {
        return track;
    }

    /** Shows the adjustment as it stands now. */
    void show(Desk desk) {
        knob = Knob.of(desk.work(), path);
        knob.ifPresent(own -> {
            String words = own.shown(desk.look().units());
            // What is being typed is left alone until it is done.
            if (!field.isFocusOwner() || field.getText().equals(shown)) {
                trouble.setVisible(false);
                if (!field.getText().equals(words)) {
                    field.setText(words);
                }
            }
            shown = words;
            Range range = own.shown();
            track.show(range.low(), range.high(), own.number(), own.step(), own.usual(), own.base(), words);
            String usual = own.usual().isEmpty()
                    ? ""
                    : "usual " + Effects.range(own, desk.look().units());
            field.setToolTipText(own.value().slot().meaning() + (usual.isEmpty() ? "" : "; " + usual));
            track.setToolTipText(usual);
            reset.setVisible(own.base().isPresent() && own.base().getAsDouble() != own.number());
        });
        if (!track.isHeld() && !moved.equals(Optional.of(desk.work()))) {
            clearEffect();
        }
    }

    /** Shows what the hand that is on it has moved. */
    void showTurn(Desk desk, TurnedSetup now) {
        if (before.isPresent()) {
            effect.say(Effects.words(before.get(), now, desk.work(), desk.look().units()));
        }
    }

    /** What was moved here has been undone, or is said of another set-up, question or unit. */
    void clearEffect() {
        before = Optional.empty();
        moved = Optional.empty();
        effect.say(List.of());
    }

    private void move(double to, boolean same) {
        if (knob.isEmpty()) {
            return;
        }
        if (!same || before.isEmpty()) {
            before = bench.desk()
                    .replies()
                    .turns()
                    .flatMap(turns -> Optional.ofNullable(
                            turns.setups().get(bench.desk().work().active())));
        }
        act(knob.get().text(to), same);
        moved = Optional.of(bench.desk().work());
    }

    private void typed() {
        String text = field.getText();
        if (!text.equals(shown)) {
            act(withUnit(text), false);
        }
    }

    /** A number alone is meant in the unit that stood there. */
    private String withUnit(String text) {
        Matcher stood = NUMBER.matcher(shown);
        return NUMBER.matcher(text.strip()).matches() && stood.lookingAt()
                ? text.strip() + shown.substring(stood.end())
                : text;
    }

    /** What was typed is dropped for what stands in the car. */
    private void takeBack() {
        field.setText(shown);
        trouble.setVisible(false);
        revalidate();
    }

    private void act(String text, boolean same) {
        Optional<String> why =
                bench.act(new EditAct.SetValue(Optional.of(bench.desk().work().active()), path, text, same));
        trouble.setText(why.orElse(""));
        trouble.setVisible(why.isPresent());
        if (why.isEmpty()) {
            // What was typed is shown as it was read, even where nothing has changed by it.
            knob.ifPresent(own -> field.setText(own.shown(bench.desk().look().units())));
        }
        revalidate();
    }

    private void reset() {
        knob.ifPresent(own -> {
            if (own.base().isPresent()) {
                act(own.text(own.base().getAsDouble()), false);
            }
        });
    }
}
