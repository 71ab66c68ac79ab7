package evenhand.window;

import evenhand.window.desk.Jotting;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/** Papers with their last days, a line each; where something stands in the last line there is one more. */
final class PaperFields extends JPanel implements DocumentListener {
    private static final int LETTERS = 16;
    private static final int DAY_LETTERS = 10;

    private record Line(JTextField what, JTextField until) {
        private boolean isEmpty() {
            return what.getText().isBlank() && until.getText().isBlank();
        }
    }

    private final transient List<Line> lines = new ArrayList<>();

    PaperFields() {
        super(new MigLayout("insets 0, gap 8 4, wrap 3", "[][][]", ""));
        setName("papers");
        setOpaque(false);
        getAccessibleContext().setAccessibleName("papers given or renewed");
        another();
    }

    List<Jotting.Paper> papers() {
        return lines.stream()
                .map(line ->
                        new Jotting.Paper(line.what().getText(), line.until().getText()))
                .toList();
    }

    void fill(List<Jotting.Paper> papers) {
        removeAll();
        lines.clear();
        another();
        for (Jotting.Paper paper : papers) {
            Line last = lines.get(lines.size() - 1);
            last.until().setText(paper.until());
            last.what().setText(paper.what());
        }
        revalidate();
        repaint();
    }

    private void another() {
        int number = lines.size() + 1;
        Line line = new Line(field("paper " + number, LETTERS), field("paper " + number + " until", DAY_LETTERS));
        lines.add(line);
        add(line.what(), "wmin 60");
        JLabel until = new JLabel("until");
        until.setLabelFor(line.until());
        add(until);
        add(line.until(), "wmin 60");
        revalidate();
    }

    private JTextField field(String name, int letters) {
        JTextField field = new JTextField(letters);
        field.setName(name);
        field.getAccessibleContext().setAccessibleName(name);
        field.getDocument().addDocumentListener(this);
        return field;
    }

    private void typed() {
        if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
            another();
        }
    }

    @Override
    public void insertUpdate(DocumentEvent event) {
        typed();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
        typed();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
        // Plain text has no look of its own.
    }
}
