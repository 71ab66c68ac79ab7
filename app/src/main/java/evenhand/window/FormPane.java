package evenhand.window;

import evenhand.catalogue.Entries;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Draft;
import evenhand.window.desk.Drafting;
import evenhand.window.desk.Form;
import evenhand.window.desk.FormField;
import evenhand.window.desk.FormPlace;
import evenhand.window.desk.Grid;
import evenhand.window.desk.PointRow;
import evenhand.window.desk.Question;
import evenhand.window.desk.Target;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/** The car in forms by concept, made from the catalogue; edits the car itself, or the active set-up alone. */
final class FormPane extends JPanel implements Bench.View {
    private static final Stack.Above ABOVE_A_SECTION = new Stack.Above(12);

    private final transient Bench bench;
    private final JTextField search = new JTextField(18);
    private final JComboBox<String> target = new JComboBox<>();
    private final JPanel rows = new JPanel(new Stack(2));
    private final transient Map<String, FormRow> byPath = new LinkedHashMap<>();
    private final transient Map<String, Draft> drafts = new LinkedHashMap<>();
    private final transient List<Part> parts = new ArrayList<>();
    private final Words.Area none = Words.plain("what is not found");
    private final Words.Area trouble = Words.warning("what is wrong");
    private transient List<String> structure = List.of();
    private boolean wholeCar = true;

    /** A section as it is shown. */
    private record Part(Form.Section section, JPanel head, Optional<PointsPane> points, List<FormRow> rows) {}

    /** Tables of points, by the path of their link. */
    private final transient Map<String, PointsPane> tables = new LinkedHashMap<>();

    /** Links of which everything is shown that could differ on the right. */
    private final transient Set<String> rightAsked = new HashSet<>();

    FormPane(Bench bench) {
        super(new Stack(6));
        setBorder(BorderFactory.createEmptyBorder(0, 16, 16, 16));
        this.bench = bench;
        setOpaque(false);
        rows.setOpaque(false);
        search.setName("search");
        search.putClientProperty("JTextField.placeholderText", "find a field: spring rate");
        search.putClientProperty("JTextField.showClearButton", true);
        search.getAccessibleContext().setAccessibleName("find a field by its name");
        search.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                filter();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                filter();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                filter();
            }
        });
        target.setName("edit");
        target.getAccessibleContext().setAccessibleName("what is edited");
        target.addActionListener(event -> {
            boolean whole = target.getSelectedIndex() <= 0;
            if (whole != wholeCar) {
                wholeCar = whole;
                drafts.clear();
                forget();
                show(bench.desk(), bench.desk());
            }
        });
        JPanel bar = new JPanel(new MigLayout("insets 0, gap 8", "[][]16[][]", ""));
        bar.setOpaque(false);
        bar.add(new JLabel("find"));
        bar.add(search);
        bar.add(new JLabel("edit"));
        bar.add(target);
        add(bar);
        add(trouble);
        trouble.setVisible(false);
        none.setName("found nothing");
        none.setVisible(false);
        add(none);
        add(rows);
    }

    void focusSearch() {
        search.requestFocusInWindow();
        search.selectAll();
    }

    private Optional<String> setup() {
        return wholeCar ? Optional.empty() : Optional.of(bench.desk().work().active());
    }

    private Entries car(Desk desk) {
        return wholeCar
                ? desk.work().scenario().car()
                : desk.work().activeSetup().entries();
    }

    @Override
    public void show(Desk before, Desk now) {
        boolean shown = now.look().question().equals(Question.FORM);
        setVisible(shown);
        if (!shown) {
            return;
        }
        if (!before.work().scenario().file().equals(now.work().scenario().file())) {
            // What was typed into another job's form is no part of this one.
            drafts.clear();
            forget();
        }
        boolean came = !before.look().question().equals(Question.FORM);
        boolean same = before.work().equals(now.work())
                && before.look().units() == now.look().units();
        if (same && !came && !before.is(now)) {
            return;
        }
        targets(now);
        Form form =
                wholeCar ? Form.of(now.work().scenario()) : Form.of(now.work().activeSetup());
        List<String> next = new ArrayList<>();
        form.sections().forEach(section -> {
            next.add("# " + section.home() + section.added() + section.absent() + drafts.containsKey(section.added()));
            fields(now, section).forEach(field -> next.add(field.path()));
        });
        if (!next.equals(structure)) {
            structure = next;
            build(now, form);
        }
        for (Form.Section section : form.sections()) {
            for (FormField field : fields(now, section)) {
                FormRow row = byPath.get(field.path());
                if (row != null) {
                    row.show(field, now.look().units(), "");
                }
            }
            PointsPane table = tables.get(section.added());
            if (table != null) {
                table.show(
                        points(now, section),
                        !section.right().isEmpty(),
                        rightAsked.contains(section.added()),
                        now.look().units());
            }
        }
    }

    private void forget() {
        byPath.clear();
        tables.clear();
        structure = List.of();
    }

    private void targets(Desk now) {
        List<String> wanted =
                List.of("the car, for all set-ups", "“" + now.work().active() + "” alone");
        if (target.getItemCount() != wanted.size() || !target.getItemAt(1).equals(wanted.get(1))) {
            int index = wholeCar ? 0 : 1;
            target.setModel(new javax.swing.DefaultComboBoxModel<>(wanted.toArray(new String[0])));
            target.setSelectedIndex(index);
        }
    }

    /** The fields of a section: those of its draft while it is drafted; none of one that the car has not. */
    private List<FormField> fields(Desk desk, Form.Section section) {
        Draft draft = drafts.get(section.added());
        if (draft != null) {
            return Drafting.drafted(section.home(), given(desk, section), section.added(), draft);
        }
        boolean below = drafts.keySet().stream().anyMatch(path -> section.path().startsWith(path + "."));
        return section.absent() || below ? List.of() : withRight(section);
    }

    private List<FormField> withRight(Form.Section section) {
        List<FormField> all = new ArrayList<>(section.fields());
        if (rightAsked.contains(section.added())) {
            all.addAll(section.right());
        }
        return all;
    }

    private List<PointRow> points(Desk now, Form.Section section) {
        return PointRow.among(
                section.added(), fields(now, section), path -> FormPlace.meaning(section.home(), given(now, section), path));
    }

    /** How a field is called under the title of its section: "top bolt", "longer, right". */
    private static String words(Form.Section section, FormField field) {
        String above = section.added() + ".";
        return field.path().startsWith(above) ? PointRow.words(field.path().substring(above.length())) : field.label();
    }

    private Entries given(Desk desk, Form.Section section) {
        return section.home() == Form.Home.JOB ? desk.work().scenario().given() : car(desk);
    }

    private Target target(Form.Section section) {
        return new Target(section.home(), setup());
    }

    private void build(Desk now, Form form) {
        rows.removeAll();
        parts.clear();
        // A row that stays keeps what is typed in it.
        Map<String, FormRow> before = new LinkedHashMap<>(byPath);
        byPath.clear();
        Map<String, PointsPane> tablesBefore = new LinkedHashMap<>(tables);
        tables.clear();
        for (Form.Section section : form.sections()) {
            JPanel head = head(section);
            rows.add(head, ABOVE_A_SECTION);
            Optional<PointsPane> table = Optional.empty();
            if (!points(now, section).isEmpty()) {
                PointsPane old = tablesBefore.get(section.added());
                table = Optional.of(old == null ? table(section) : old);
                tables.put(section.added(), table.get());
                rows.add(table.get());
            }
            List<FormRow> own = new ArrayList<>();
            for (FormField field : fields(now, section)) {
                if (PointRow.isCoordinate(field)) {
                    continue;
                }
                FormRow old = before.get(field.path());
                FormRow row = old != null && old.fits(field)
                        ? old
                        : new FormRow(field, words(section, field), taker(section));
                byPath.put(field.path(), row);
                own.add(row);
                rows.add(row);
            }
            parts.add(new Part(section, head, table, own));
        }
        filter();
        revalidate();
        repaint();
    }

    private PointsPane table(Form.Section section) {
        return new PointsPane(section.added(), taker(section), asked -> {
            if (asked) {
                rightAsked.add(section.added());
            } else {
                rightAsked.remove(section.added());
            }
            again();
        });
    }

    private JPanel head(Form.Section section) {
        JPanel head = new JPanel(new MigLayout("insets 0, gap 10, fillx", "[][grow,fill][]", ""));
        head.setOpaque(false);
        head.add(Words.head(section.title()));
        Words.Area meaning = Words.quiet("meaning of " + section.title());
        meaning.setText(section.meaning());
        head.add(meaning, "wmin 40");
        boolean drafted = drafts.containsKey(section.added());
        boolean adds = section.absent() || section.adds();
        if (drafted || adds || !section.needed()) {
            JButton button = new JButton(drafted ? "leave as it was" : adds ? "add" : "remove");
            button.setName((drafted ? "leave " : adds ? "add " : "remove ") + section.added());
            button.getAccessibleContext().setAccessibleName(button.getText() + " " + section.title());
            button.addActionListener(event -> {
                say(Optional.empty());
                if (drafted) {
                    drafts.remove(section.added());
                } else if (adds) {
                    drafts.put(section.added(), Draft.EMPTY);
                } else {
                    forgetBelow(section.path());
                    say(bench.act(target(section).remove(section.path())));
                }
                again();
            });
            head.add(button);
        }
        return head;
    }

    /** What was typed into an object that is taken away goes with it; the items behind one of a list move up. */
    private void forgetBelow(String path) {
        String list = path.endsWith("]") ? path.substring(0, path.lastIndexOf('[')) : path;
        byPath.keySet().removeIf(key -> key.startsWith(list));
        tables.keySet().removeIf(key -> key.startsWith(list));
    }

    private void again() {
        structure = List.of();
        show(bench.desk(), bench.desk());
    }

    private void say(Optional<String> why) {
        Words.put(trouble, why.orElse(""));
        trouble.setVisible(why.isPresent());
    }

    private FormRow.Taker taker(Form.Section section) {
        return new FormRow.Taker() {
            @Override
            public Optional<String> take(FormField field, String text) {
                say(Optional.empty());
                Draft draft = drafts.get(section.added());
                if (draft != null) {
                    return draft(section, draft.with(field.path(), field.drafted(text)));
                }
                if (field.isOwnName(section)) {
                    forgetBelow(section.path());
                    return bench.act(target(section).name(section.path(), text));
                }
                if (field.slot().isEmpty()) {
                    return draft(section, kindChanged(section, field, text));
                }
                return bench.act(target(section).value(field, text, insteadOf(section, field.path())));
            }

            @Override
            public Optional<String> take(FormField field, Grid grid, List<List<String>> wanted) {
                say(Optional.empty());
                Draft draft = drafts.get(section.added());
                return draft == null
                        ? bench.act(target(section).rows(field, grid, wanted))
                        : draft(section, draft.with(field.path(), wanted.isEmpty() ? "" : grid.json(wanted)));
            }
        };
    }

    private List<String> insteadOf(Form.Section section, String path) {
        return section.home() == Form.Home.CAR ? FormPlace.insteadOf(car(bench.desk()), path) : List.of();
    }

    /** The object of another kind, with what both kinds have. */
    private Draft kindChanged(Form.Section section, FormField kind, String word) {
        Entries given = given(bench.desk(), section);
        Draft draft = Draft.EMPTY.with(kind.path(), word);
        for (FormField wanted : Drafting.drafted(section.home(), given, section.path(), draft)) {
            Optional<FormField> old = Form.of(car(bench.desk())).field(wanted.path());
            if (wanted.slot().isPresent()
                    && old.isPresent()
                    && old.get().given().isPresent()) {
                FormField had = old.get();
                String text = had.grid()
                        .map(grid -> grid.json(grid.rows()))
                        .orElseGet(() -> had.given().orElse(""));
                draft = draft.with(wanted.path(), text);
            }
        }
        return draft;
    }

    /** Takes the draft over if it makes a car, and keeps it as a draft if not yet. */
    private Optional<String> draft(Form.Section section, Draft draft) {
        String path = section.added();
        Optional<String> why = bench.act(target(section).json(path, draft.object(path), insteadOf(section, path)));
        if (why.isEmpty()) {
            drafts.remove(path);
        } else {
            drafts.put(path, draft);
        }
        say(why.map(words -> "Still to be given: " + words));
        javax.swing.SwingUtilities.invokeLater(this::again);
        return Optional.empty();
    }

    private void filter() {
        String words = search.getText();
        boolean found = words.isBlank();
        for (Part part : parts) {
            boolean any = words.isBlank() || part.section().matches(words);
            if (part.points().isPresent()) {
                boolean matches = words.isBlank() || part.points().get().matches(words);
                part.points().get().setVisible(matches);
                any |= matches;
            }
            for (FormRow row : part.rows()) {
                boolean matches = words.isBlank() || row.field().matches(words);
                row.setVisible(matches);
                any |= matches;
            }
            part.head().setVisible(any);
            found |= any;
        }
        Words.say(none, found ? "" : "No field of this car has \"" + words.strip() + "\" in its name or meaning.");
        none.setVisible(!found);
        rows.revalidate();
        rows.repaint();
    }
}
