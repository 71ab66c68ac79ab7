package evenhand.window;

import evenhand.drawing.measuring.Sketches;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Chapter;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Form;
import evenhand.window.desk.FormField;
import evenhand.window.desk.PointRow;
import evenhand.window.desk.Question;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ScrollPaneConstants;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/**
 * The car in forms by concept, made from the catalogue; edits the car itself, or the active set-up alone. Its chapters are listed on
 * the left; of one that is turned to, what is missing comes first, and stays there until another is turned to. Words that are
 * searched for show what they find in all of them.
 */
final class FormPane extends JPanel implements Bench.View {
    /** So many fields that are found are looked through; more are found by more of the word. */
    private static final int MOST_FOUND = 40;

    private final transient Bench bench;
    private final transient FormHand hand;
    private final JTextField search = new JTextField(18);
    private final JComboBox<String> target = new JComboBox<>();
    private final ChapterList list = new ChapterList(this::turnTo);
    private final FormRows rows;
    private final JScrollPane scroll;
    private final SketchPane sketch = new SketchPane();
    private final Words.Area summary = Words.plain("how far the car is filled in");
    private final Words.Area found = Words.plain("what is found");
    private final Words.Area trouble = Words.warning("what is wrong");
    private transient List<Chapter> chapters = List.of();
    private transient Chapter.Subject turned = Chapter.Subject.BODY;
    private transient Set<String> first = Set.of();

    FormPane(Bench bench) {
        super(new MigLayout("insets 12 16 0 0, gap 16 6, fill, hidemode 3", "[18em!][grow,fill]", "[][][grow,fill]"));
        this.bench = bench;
        setOpaque(false);
        hand = new FormHand(bench, this::say, this::forget, this::again);
        rows = new FormRows(hand, field -> sketch.show(field.path()));
        JPanel page = new Page();
        page.setOpaque(false);
        page.setBorder(BorderFactory.createEmptyBorder(0, 0, 16, 16));
        page.add(trouble);
        page.add(found);
        page.add(rows);
        scroll = new JScrollPane(
                page, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(3));
        JPanel bar = bar();
        JScrollPane left = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        left.setBorder(BorderFactory.createEmptyBorder());
        left.setOpaque(false);
        left.getViewport().setOpaque(false);
        trouble.setVisible(false);
        found.setName("found nothing");
        found.setVisible(false);
        add(bar, "span 2, growx, wrap");
        add(summary, "span 2, growx, wmin 60, gapright 16, wrap");
        add(left, "growx, aligny top, hmin 60");
        JPanel right = new JPanel(new SketchPane.Beside(scroll, sketch));
        right.setOpaque(false);
        right.add(scroll);
        right.add(sketch);
        add(right, "grow, wmin 60, hmin 60");
    }

    private JPanel bar() {
        search.setName("search");
        search.putClientProperty("JTextField.placeholderText", "find a value: sway bar, mu, spring rate");
        search.putClientProperty("JTextField.showClearButton", true);
        search.getAccessibleContext().setAccessibleName("find a value by its name or another word of the trade");
        search.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                searched();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                searched();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                searched();
            }
        });
        target.setName("edit");
        target.getAccessibleContext().setAccessibleName("what is edited");
        target.addActionListener(event -> {
            boolean whole = target.getSelectedIndex() <= 0;
            if (whole != hand.isOnWholeCar()) {
                hand.turnTo(whole);
                rows.forget("");
                again();
            }
        });
        JPanel bar = new JPanel(new MigLayout("insets 0 0 0 16, gap 8", "[]16[grow,fill]16:push[][]", ""));
        bar.setOpaque(false);
        bar.add(Words.head("The car itself"));
        bar.add(search, "wmax " + Looks.em(26));
        bar.add(new JLabel("edit"));
        bar.add(target);
        return bar;
    }

    void focusSearch() {
        search.requestFocusInWindow();
        search.selectAll();
    }

    /** Turns to the chapter of a value, and puts the keys into its field. */
    void turnToValue(String path) {
        chapters.stream().filter(chapter -> chapter.has(path)).findFirst().ifPresent(chapter -> {
            turnTo(chapter.subject());
            rows.focus(path);
        });
    }

    private void turnTo(Chapter.Subject subject) {
        turned = subject;
        order(FormRows.Notes.of(bench.desk()));
        if (search.getText().isEmpty()) {
            refresh(bench.desk());
        } else {
            search.setText("");
        }
        scroll.getVerticalScrollBar().setValue(0);
    }

    /** What is missing in the chapter comes first, as it is now. */
    private void order(FormRows.Notes notes) {
        first = chapter()
                .map(chapter -> Set.copyOf(chapter.missing(notes.none().keySet())))
                .orElse(Set.of());
    }

    private Optional<Chapter> chapter() {
        return chapters.stream()
                .filter(chapter -> chapter.subject() == turned)
                .findFirst()
                .or(() -> chapters.stream().findFirst());
    }

    private void searched() {
        refresh(bench.desk());
        scroll.getVerticalScrollBar().setValue(0);
    }

    @Override
    public void show(Desk before, Desk now) {
        if (!now.look().question().equals(Question.FORM)) {
            return;
        }
        boolean otherFile =
                !before.work().scenario().file().equals(now.work().scenario().file());
        if (otherFile) {
            hand.forget();
            rows.forget("");
        }
        boolean came = !before.look().question().equals(Question.FORM);
        boolean same = before.work().equals(now.work())
                && before.look().units() == now.look().units();
        if (same && !came && !before.is(now)) {
            return;
        }
        targets(now);
        chapters = Chapter.of(hand.form(now));
        if (came || otherFile || before.is(now)) {
            order(FormRows.Notes.of(now));
        }
        refresh(now);
    }

    private void refresh(Desk now) {
        FormRows.Notes notes = FormRows.Notes.of(now);
        boolean searching = !search.getText().isBlank();
        list.show(
                chapters,
                notes.none().keySet(),
                searching ? Optional.empty() : chapter().map(Chapter::subject));
        summary.setText(summary(notes.none().keySet()));
        if (searching) {
            rows.show(now, found(now), notes);
        } else {
            found.setVisible(false);
            List<FormRows.Lot> lots = lots(now, chapter());
            rows.show(now, lots, notes);
            sketched(lots);
        }
        revalidate();
        repaint();
    }

    /** Until a field has the keys, the first that is measured shows how. */
    private void sketched(List<FormRows.Lot> lots) {
        List<String> paths = lots.stream()
                .flatMap(lot -> lot.fields().stream())
                .map(FormField::path)
                .filter(path -> Sketches.of(path).isPresent())
                .toList();
        if (paths.isEmpty()) {
            sketch.clear();
        } else if (!paths.contains(sketch.path())) {
            sketch.show(paths.get(0));
        }
    }

    /** "212 values are given, 18 estimated, and 3 that move an answer are missing and taken as none." */
    private String summary(Set<String> none) {
        int given = 0;
        int estimated = 0;
        int missing = 0;
        for (Chapter chapter : chapters) {
            Chapter.Filled filled = chapter.filled(none);
            given += filled.given();
            estimated += filled.estimated();
            missing += filled.missing();
        }
        return given + " values are given, "
                + (estimated == 0 ? "none is" : estimated == 1 ? "1 is" : estimated + " are")
                + " estimated; "
                + (missing == 0
                        ? "nothing that moves an answer is missing."
                        : missing + (missing == 1 ? " that moves" : " that move") + " an answer "
                                + (missing == 1 ? "is" : "are") + " missing and taken as none.");
    }

    /** A chapter, what was missing as it was turned to before the rest. */
    private List<FormRows.Lot> lots(Desk now, Optional<Chapter> chapter) {
        List<FormRows.Lot> missing = new ArrayList<>();
        List<FormRows.Lot> rest = new ArrayList<>();
        for (Form.Section section : chapter.map(Chapter::sections).orElse(List.of())) {
            List<FormField> fields = hand.fields(now, section);
            if (first.contains(section.path())) {
                missing.add(new FormRows.Lot(section, section.title(), true, fields));
                continue;
            }
            List<FormField> wanted = fields.stream()
                    .filter(field -> first.contains(field.path()))
                    .toList();
            if (!wanted.isEmpty()) {
                missing.add(new FormRows.Lot(section, section.title() + ", not given", false, wanted));
            }
            List<FormField> others =
                    fields.stream().filter(field -> !wanted.contains(field)).toList();
            rest.add(new FormRows.Lot(section, section.title(), true, others));
        }
        missing.addAll(rest);
        return missing;
    }

    /** What a search finds in all chapters: by name and meaning first, then by the trade's other words. */
    private List<FormRows.Lot> found(Desk now) {
        String words = search.getText().strip();
        List<FormRows.Lot> all = new ArrayList<>(matching(now, field -> field.matches(words), words));
        Set<String> direct = new LinkedHashSet<>();
        all.forEach(lot -> lot.fields().forEach(field -> direct.add(field.path())));
        all.addAll(matching(now, field -> field.isAlsoCalled(words) && !direct.contains(field.path()), ""));
        List<FormRows.Lot> shown = new ArrayList<>();
        int count = 0;
        int left = 0;
        for (FormRows.Lot lot : all) {
            if (count >= MOST_FOUND) {
                left += lot.fields().size();
            } else {
                shown.add(lot);
                count += lot.fields().size();
            }
        }
        Words.say(
                found,
                all.isEmpty()
                        ? "No value of this car has \"" + words + "\" in its name or meaning."
                        : left > 0 ? left + " more are found by more of the word." : "");
        found.setVisible(all.isEmpty() || left > 0);
        return shown;
    }

    private List<FormRows.Lot> matching(Desk now, Predicate<FormField> wanted, String words) {
        return chapters.stream()
                .flatMap(chapter -> chapter.sections().stream())
                .flatMap(section -> {
                    List<FormField> fields = hand.fields(now, section);
                    // Points stand in one table, of which no line is told without the others.
                    boolean points =
                            fields.stream().anyMatch(field -> PointRow.isCoordinate(field) && wanted.test(field));
                    List<FormField> own = fields.stream()
                            .filter(field -> PointRow.isCoordinate(field) ? points : wanted.test(field))
                            .toList();
                    boolean head = !words.isEmpty() && section.matches(words);
                    return own.isEmpty() && !head
                            ? Stream.empty()
                            : Stream.of(new FormRows.Lot(section, section.title(), head, own));
                })
                .toList();
    }

    private void targets(Desk now) {
        List<String> wanted =
                List.of("the car, for all set-ups", "“" + now.work().active() + "” alone");
        if (target.getItemCount() != wanted.size() || !target.getItemAt(1).equals(wanted.get(1))) {
            target.setModel(new DefaultComboBoxModel<>(wanted.toArray(new String[0])));
            target.setSelectedIndex(hand.isOnWholeCar() ? 0 : 1);
        }
    }

    private void forget(String above) {
        rows.forget(above);
    }

    private void again() {
        show(bench.desk(), bench.desk());
    }

    private void say(Optional<String> why) {
        Words.put(trouble, why.orElse(""));
        trouble.setVisible(why.isPresent());
    }
}
