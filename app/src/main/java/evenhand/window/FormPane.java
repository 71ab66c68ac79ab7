package evenhand.window;

import evenhand.catalogue.Entries;
import evenhand.scenario.ScenarioWriter;
import evenhand.window.desk.Act;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Draft;
import evenhand.window.desk.Form;
import evenhand.window.desk.FormField;
import evenhand.window.desk.Points;
import evenhand.window.desk.Question;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private final transient Bench bench;
    private final JTextField search = new JTextField(18);
    private final JComboBox<String> target = new JComboBox<>();
    private final JPanel rows =
            new JPanel(new MigLayout("insets 0, gap 0 2, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
    private final transient Map<String, FormRow> byPath = new LinkedHashMap<>();
    private final transient Map<String, Draft> drafts = new LinkedHashMap<>();
    private final transient Map<String, JPanel> heads = new LinkedHashMap<>();
    private final Words.Area trouble = Words.warning("what is wrong");
    private transient List<String> structure = List.of();
    private boolean wholeCar = true;

    FormPane(Bench bench) {
        super(new MigLayout("insets 0 16 16 16, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
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
                structure = List.of();
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
        add(trouble, "wmin 60");
        trouble.setVisible(false);
        add(rows, "wmin 100");
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
        boolean came = !before.look().question().equals(Question.FORM);
        boolean same = before.work().equals(now.work())
                && before.look().units() == now.look().units();
        if (same && !came && !before.is(now)) {
            return;
        }
        targets(now);
        Form form = Form.of(car(now));
        List<String> next = new ArrayList<>();
        form.sections().forEach(section -> {
            next.add("# " + section.path() + section.absent() + drafts.containsKey(section.path()));
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
        }
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
        Draft draft = drafts.get(section.path());
        if (draft != null) {
            return Form.drafted(car(desk), section.path(), draft);
        }
        boolean below = drafts.keySet().stream().anyMatch(path -> section.path().startsWith(path + "."));
        return section.absent() || below ? List.of() : section.fields();
    }

    private void build(Desk now, Form form) {
        rows.removeAll();
        byPath.clear();
        heads.clear();
        for (Form.Section section : form.sections()) {
            JPanel head = head(section);
            heads.put(section.path(), head);
            rows.add(head, "gaptop 12");
            for (FormField field : fields(now, section)) {
                FormRow row = new FormRow(field, (own, text) -> take(section, own, text));
                byPath.put(field.path(), row);
                rows.add(row);
            }
        }
        filter();
        revalidate();
        repaint();
    }

    private JPanel head(Form.Section section) {
        JPanel head = new JPanel(new MigLayout("insets 0, gap 10, fillx", "[][grow,fill][]", ""));
        head.setOpaque(false);
        head.add(Words.head(section.title()));
        Words.Area meaning = Words.quiet("meaning of " + section.title());
        meaning.setText(section.meaning());
        head.add(meaning, "wmin 40");
        boolean drafted = drafts.containsKey(section.path());
        boolean removable = !section.absent() && isOptional(section.path());
        if (drafted || section.absent() || removable) {
            JButton button = new JButton(drafted ? "leave as it was" : section.absent() ? "add" : "remove");
            button.setName((drafted ? "leave " : section.absent() ? "add " : "remove ") + section.path());
            button.getAccessibleContext().setAccessibleName(button.getText() + " " + section.title());
            button.addActionListener(event -> {
                if (drafted) {
                    drafts.remove(section.path());
                } else if (section.absent()) {
                    drafts.put(section.path(), Draft.EMPTY);
                } else {
                    remove(section.path());
                }
                again();
            });
            head.add(button);
        }
        return head;
    }

    private static boolean isOptional(String path) {
        return path.matches(".*\\.(bar|damper|bumpStop|droopStop|metalStop)|air|steering");
    }

    private void again() {
        structure = List.of();
        show(bench.desk(), bench.desk());
    }

    private void remove(String path) {
        say(bench.act(wholeCar ? new Act.TakeBack(Optional.empty(), path) : new Act.SetJson(setup(), path, "null")));
    }

    private void say(Optional<String> why) {
        trouble.setText(why.orElse(""));
        trouble.setVisible(why.isPresent());
    }

    private Optional<String> take(Form.Section section, FormField field, String text) {
        say(Optional.empty());
        Draft draft = drafts.get(section.path());
        if (draft != null) {
            return draft(section.path(), draft.with(field.path(), value(field, text)));
        }
        if (field.slot().isEmpty()) {
            return draft(section.path(), kindChanged(section, field, text));
        }
        if (text.isBlank()) {
            return bench.act(new Act.TakeBack(setup(), field.path()));
        }
        boolean words = field.isCurve() || !field.choices().isEmpty();
        return bench.act(
                words
                        ? new Act.SetJson(
                                setup(),
                                field.path(),
                                field.isCurve() ? value(field, text) : ScenarioWriter.quoted(text))
                        : new Act.SetValue(setup(), field.path(), text));
    }

    private static String value(FormField field, String text) {
        return field.isCurve() ? Points.json(text).orElse("") : text;
    }

    /** The object of another kind, with what both kinds have. */
    private Draft kindChanged(Form.Section section, FormField kind, String word) {
        Draft draft = Draft.EMPTY.with(kind.path(), word);
        for (FormField wanted : Form.drafted(car(bench.desk()), section.path(), draft)) {
            Optional<FormField> old = Form.of(car(bench.desk())).field(wanted.path());
            if (wanted.slot().isPresent()
                    && old.isPresent()
                    && old.get().given().isPresent()) {
                draft = draft.with(
                        wanted.path(), value(old.get(), old.get().given().get()));
            }
        }
        return draft;
    }

    /** Takes the draft over if it makes a car, and keeps it as a draft if not yet. */
    private Optional<String> draft(String path, Draft draft) {
        Optional<String> why = bench.act(new Act.SetJson(setup(), path, draft.object(path)));
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
        Map<String, Boolean> found = new LinkedHashMap<>();
        byPath.forEach((path, row) -> {
            boolean matches = words.isBlank() || row.field().matches(words);
            row.setVisible(matches);
            heads.keySet().stream()
                    .filter(section -> path.equals(section)
                            || (section.isEmpty()
                                    ? !path.contains(".")
                                    : parent(path).equals(section)))
                    .forEach(section -> found.merge(section, matches, Boolean::logicalOr));
        });
        heads.forEach((section, head) -> head.setVisible(words.isBlank() || found.getOrDefault(section, false)));
        rows.revalidate();
        rows.repaint();
    }

    private static String parent(String path) {
        int dot = path.lastIndexOf('.');
        return dot < 0 ? "" : path.substring(0, dot);
    }
}
