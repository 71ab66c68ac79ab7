package evenhand.window;

import evenhand.scenario.Warning;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Form;
import evenhand.window.desk.FormField;
import evenhand.window.desk.PointRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The rows of the form that are shown: made when they are first, kept while what they show is the same. */
final class FormRows extends JPanel {
    private static final Stack.Above ABOVE_A_SECTION = new Stack.Above(14);

    private final transient FormHand hand;
    private final transient Consumer<FormField> focused;
    private final transient Map<String, FormRow> byPath = new LinkedHashMap<>();

    /** Tables of points, by the path of their link. */
    private final transient Map<String, PointsPane> tables = new LinkedHashMap<>();

    private transient List<String> structure = List.of();

    /**
     * A section as far as it is shown.
     *
     * @param title over its rows
     * @param whole whether all of it is shown, so that it can be added or removed there
     */
    record Lot(Form.Section section, String title, boolean whole, List<FormField> fields) {
        Lot {
            fields = List.copyOf(fields);
        }
    }

    /**
     * What is said beside a field.
     *
     * @param none what it means that a value is not given, by path
     * @param unusual what is unusual about a value, by path
     */
    record Notes(Map<String, String> none, Map<String, String> unusual) {
        static final Notes NONE = new Notes(Map.of(), Map.of());

        static Notes of(Desk now) {
            Map<String, String> none = new LinkedHashMap<>();
            now.work().activeSetup().assumed().forEach(one -> none.put(one.path(), one.text()));
            Map<String, String> unusual = new LinkedHashMap<>();
            for (Warning warning : now.work().activeSetup().warnings()) {
                String path = warning.where().replaceFirst("^.*changes\\.", "").replaceFirst("^car\\.", "");
                unusual.merge(path, warning.what(), (one, other) -> one + "; " + other);
            }
            return new Notes(none, unusual);
        }
    }

    /** @param focused is told the field that gets the keys */
    FormRows(FormHand hand, Consumer<FormField> focused) {
        super(new Stack(4));
        this.hand = hand;
        this.focused = focused;
        setOpaque(false);
    }

    /** What was typed into what is gone goes with it. */
    void forget(String above) {
        byPath.keySet().removeIf(key -> key.startsWith(above));
        tables.keySet().removeIf(key -> key.startsWith(above));
        structure = List.of();
    }

    void show(Desk now, List<Lot> lots, Notes notes) {
        List<String> next = new ArrayList<>();
        for (Lot lot : lots) {
            Form.Section section = lot.section();
            next.add(
                    "# " + lot.title() + section.home() + section.added() + section.absent() + hand.isDrafted(section));
            lot.fields().forEach(field -> next.add(field.path()));
        }
        if (!next.equals(structure)) {
            structure = next;
            build(lots);
        }
        for (Lot lot : lots) {
            for (FormField field : lot.fields()) {
                FormRow row = byPath.get(field.path());
                if (row != null && !PointRow.isCoordinate(field)) {
                    row.show(field, now.look().units(), "", notes);
                }
            }
            PointsPane table = tables.get(section(lot));
            if (table != null) {
                table.show(
                        hand.points(now, lot.section(), lot.fields()),
                        !lot.section().right().isEmpty(),
                        hand.showsRight(lot.section()),
                        now.look().units());
            }
        }
    }

    private static String section(Lot lot) {
        return lot.section().added();
    }

    private void build(List<Lot> lots) {
        removeAll();
        // A row that stays keeps what is typed in it; so does one with something wrong in it that is out of sight.
        Map<String, FormRow> before = new LinkedHashMap<>(byPath);
        Map<String, PointsPane> tablesBefore = new LinkedHashMap<>(tables);
        byPath.values().removeIf(row -> !row.isWrong());
        tables.values().removeIf(table -> !table.isWrong());
        for (Lot lot : lots) {
            add(head(lot), ABOVE_A_SECTION);
            if (lot.fields().stream().anyMatch(PointRow::isCoordinate)) {
                PointsPane old = tablesBefore.get(section(lot));
                PointsPane table = old == null ? table(lot.section()) : old;
                tables.put(section(lot), table);
                brought(table);
            }
            for (FormField field : lot.fields()) {
                if (PointRow.isCoordinate(field)) {
                    continue;
                }
                FormRow old = before.get(field.path());
                FormRow row = old != null && old.fits(field)
                        ? old
                        : new FormRow(field, words(lot.section(), field), hand.taker(lot.section()), focused);
                byPath.put(field.path(), row);
                brought(row);
            }
        }
        revalidate();
        repaint();
    }

    /** What was out of sight has missed a change of the theme. */
    private void brought(JPanel row) {
        add(row);
        SwingUtilities.updateComponentTreeUI(row);
    }

    /** How a field is called under the title of its section: "top bolt", "longer, right". */
    private static String words(Form.Section section, FormField field) {
        String above = section.added() + ".";
        return field.path().startsWith(above) ? PointRow.words(field.path().substring(above.length())) : field.label();
    }

    private PointsPane table(Form.Section section) {
        return new PointsPane(section.added(), hand.taker(section), asked -> hand.showRight(section, asked), focused);
    }

    private JPanel head(Lot lot) {
        Form.Section section = lot.section();
        JPanel head = new JPanel(new MigLayout("insets 0, gap 10, fillx", "[][grow,fill][]", ""));
        head.setOpaque(false);
        head.add(Words.head(lot.title()), "aligny top");
        Words.Area meaning = Words.quiet("meaning of " + section.title());
        meaning.setText(section.meaning());
        head.add(meaning, "wmin 40");
        boolean drafted = hand.isDrafted(section);
        boolean adds = section.absent() || section.adds();
        if (lot.whole() && (drafted || adds || !section.needed())) {
            JButton button = new JButton(drafted ? "leave as it was" : adds ? "add" : "remove");
            button.setName((drafted ? "leave " : adds ? "add " : "remove ") + section.added());
            button.getAccessibleContext().setAccessibleName(button.getText() + " " + section.title());
            button.addActionListener(event -> {
                if (drafted) {
                    hand.leave(section);
                } else if (adds) {
                    hand.add(section);
                } else {
                    hand.remove(section);
                }
            });
            head.add(button, "aligny top");
        }
        return head;
    }

    /** Puts the keys into the field of a path, if it is shown. */
    boolean focus(String path) {
        return Optional.ofNullable(byPath.get(path))
                .filter(row -> row.getParent() == this)
                .map(row -> {
                    Objects.requireNonNull(row).focus();
                    return true;
                })
                .orElse(false);
    }
}
