package evenhand.window;

import evenhand.window.desk.Chapter;
import evenhand.window.desk.FormField;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The chapters of the car page, each with how many of its values are given, estimated and missing. */
final class ChapterList extends JList<ChapterList.Line> {
    /** A chapter as it is listed. */
    record Line(Chapter.Subject subject, Chapter.Filled filled) {
        /** "12 given, 3 estimated, 1 missing". */
        String counts() {
            return parts().stream().map(Part::words).collect(Collectors.joining(", "));
        }

        List<Part> parts() {
            List<Part> parts = new ArrayList<>();
            part(parts, FormField.Standing.TAKEN_AS_NONE, filled.missing(), "missing");
            part(parts, FormField.Standing.GIVEN, filled.given(), "given");
            part(parts, FormField.Standing.ESTIMATED, filled.estimated(), "estimated");
            if (parts.isEmpty()) {
                parts.add(new Part(FormField.Standing.BLANK, "nothing given"));
            }
            return parts;
        }

        private static void part(List<Part> parts, FormField.Standing standing, int count, String words) {
            if (count > 0) {
                parts.add(new Part(standing, count + " " + words));
            }
        }

        /** As it is read out. */
        @Override
        public String toString() {
            return subject.title() + ": " + counts();
        }
    }

    private record Part(FormField.Standing standing, String words) {}

    private final DefaultListModel<Line> lines = new DefaultListModel<>();
    private boolean filling;

    ChapterList(Consumer<Chapter.Subject> turn) {
        setModel(lines);
        setName("chapters");
        getAccessibleContext().setAccessibleName("chapters of the car");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setOpaque(false);
        setCellRenderer(new Cell());
        addListSelectionListener(event -> {
            Line line = getSelectedValue();
            if (!filling && line != null) {
                turn.accept(line.subject());
            }
        });
    }

    /** @param chosen none of them while words are searched for in all */
    void show(List<Chapter> chapters, Set<String> none, java.util.Optional<Chapter.Subject> chosen) {
        List<Line> wanted = chapters.stream()
                .map(chapter -> new Line(chapter.subject(), chapter.filled(none)))
                .toList();
        filling = true;
        for (int i = 0; i < wanted.size(); i++) {
            if (i >= lines.size()) {
                lines.addElement(wanted.get(i));
            } else if (!lines.get(i).equals(wanted.get(i))) {
                lines.set(i, wanted.get(i));
            }
        }
        while (lines.size() > wanted.size()) {
            lines.remove(lines.size() - 1);
        }
        int index = chosen.map(
                        subject -> wanted.stream().map(Line::subject).toList().indexOf(subject))
                .orElse(-1);
        if (index < 0) {
            clearSelection();
        } else if (index != getSelectedIndex()) {
            setSelectedIndex(index);
        }
        filling = false;
    }

    /** Title above, counts below it; all in one panel, which is painted without ever being in the window. */
    private static final class Cell extends JPanel implements ListCellRenderer<Line> {
        private final JLabel title = new JLabel();

        Cell() {
            super(new MigLayout("insets 0, gap 8 0", "", "[]0[]"));
            setBorder(BorderFactory.createEmptyBorder(4, 8, 4, 8));
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Line> list, Line line, int index, boolean selected, boolean focused) {
            setOpaque(selected);
            setBackground(list.getSelectionBackground());
            title.setText(line.subject().title());
            title.setFont(selected ? Looks.strong() : evenhand.look.Typeface.plain(Looks.size()));
            title.setForeground(
                    selected ? list.getSelectionForeground() : Looks.theme().ink());
            removeAll();
            add(title, "span, wrap");
            for (Part part : line.parts()) {
                JLabel one = new JLabel(part.words(), new FillMark(part.standing()), JLabel.LEADING);
                one.setIconTextGap(Looks.em(0.25));
                one.setFont(Looks.small());
                one.setForeground(
                        selected ? list.getSelectionForeground() : Looks.theme().quiet());
                add(one);
            }
            getAccessibleContext().setAccessibleName(line.toString());
            setSize(list.getWidth(), getPreferredSize().height);
            doLayout(); // without a screen nobody else does
            return this;
        }
    }
}
