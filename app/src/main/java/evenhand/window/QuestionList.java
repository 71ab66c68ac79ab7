package evenhand.window;

import evenhand.window.desk.Answering;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import java.awt.Component;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;

/** The questions, in the user's words. */
final class QuestionList extends JList<Question> implements Bench.View {
    private final transient List<Question> questions;

    QuestionList(Bench bench, List<Question> questions) {
        super(questions.toArray(new Question[0]));
        this.questions = questions;
        setName("questions");
        getAccessibleContext().setAccessibleName("questions");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setVisibleRowCount(questions.size());
        setCellRenderer(new DefaultListCellRenderer() {
            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focus) {
                String words = value instanceof Question question ? question.words() : "";
                JLabel label = (JLabel) super.getListCellRendererComponent(list, words, index, selected, focus);
                label.setToolTipText(words);
                label.setBorder(BorderFactory.createEmptyBorder(0, 12, 0, 8));
                label.getAccessibleContext().setAccessibleName(words);
                return label;
            }
        });
        setFixedCellWidth(Looks.em(17));
        addListSelectionListener(event -> {
            Question chosen = getSelectedValue();
            if (chosen != null && !Optional.of(chosen).equals(answered(bench.desk()))) {
                bench.act(new LookAct.Ask(chosen.key()));
            }
        });
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Looks.theme().background());
    }

    /** The question whose answer is shown. */
    private Optional<Question> answered(Desk desk) {
        Look look = desk.look();
        return look.page() == Look.Page.ANSWER
                ? Optional.of(Answering.question(questions, look.question()))
                : Optional.empty();
    }

    @Override
    public void show(Desk before, Desk now) {
        Optional<Question> answered = answered(now);
        if (answered.isEmpty()) {
            clearSelection();
        } else if (!answered.get().equals(getSelectedValue())) {
            setSelectedValue(answered.get(), true);
        }
    }
}
