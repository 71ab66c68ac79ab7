package evenhand.window;

import evenhand.window.desk.Answering;
import evenhand.window.desk.Arrangement;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.DefaultListSelectionModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;

/**
 * The questions in the user's words, each group of them under its head. Where there is room all are open; else only the group of
 * the question that is asked, and those that somebody opens. The arrow keys go through all of them, the page keys from group to
 * group.
 */
final class QuestionList extends JList<QuestionList.Row> implements Bench.View {
    /** A line of the list. */
    sealed interface Row {
        /** Above its questions. */
        record Head(Question.Group group, boolean open) implements Row {
            @Override
            public String toString() {
                return group.words();
            }
        }

        record Asked(Question question) implements Row {
            @Override
            public String toString() {
                return question.words();
            }
        }
    }

    private final transient Bench bench;
    private final transient List<Question> questions;
    private final DefaultListModel<Row> model = new DefaultListModel<>();
    private boolean roomy;

    QuestionList(Bench bench, List<Question> questions) {
        this.bench = bench;
        this.questions = questions;
        setModel(model);
        setName("questions");
        getAccessibleContext().setAccessibleName("questions");
        setToolTipText("up and down ask the one before or after, page up and down go from group to group");
        setSelectionModel(new QuestionsOnly());
        setCellRenderer(new Cell());
        addListSelectionListener(event -> {
            if (getSelectedValue() instanceof Row.Asked row
                    && !Optional.of(row.question()).equals(answered(bench.desk()))) {
                bench.act(new LookAct.Ask(row.question().key()));
            }
        });
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                int index = locationToIndex(e.getPoint());
                if (index >= 0
                        && getCellBounds(index, index).contains(e.getPoint())
                        && model.get(index) instanceof Row.Head head) {
                    fold(head);
                }
            }
        });
        int last = questions.size() - 1;
        key("selectNextRow", at -> at + 1);
        key("selectPreviousRow", at -> at - 1);
        key("selectFirstRow", at -> 0);
        key("selectLastRow", at -> last);
        key("scrollDown", at -> inNextGroup(at, 1));
        key("scrollUp", at -> inNextGroup(at, -1));
    }

    /** What a key of the list leads to, from the question that is asked. */
    private void key(String action, IntUnaryOperator to) {
        getActionMap().put(action, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                int at = questions.indexOf(
                        Answering.question(questions, bench.desk().look().question()));
                int next = Math.max(0, Math.min(questions.size() - 1, to.applyAsInt(at)));
                bench.act(new LookAct.Ask(questions.get(next).key()));
            }
        });
    }

    /** The first question of the group before or after. */
    private int inNextGroup(int at, int way) {
        Question.Group[] groups = Question.Group.values();
        int group = questions.get(at).group().ordinal() + way;
        if (group < 0 || group >= groups.length) {
            return way < 0 ? 0 : questions.size() - 1;
        }
        for (int i = 0; i < questions.size(); i++) {
            if (questions.get(i).group() == groups[group]) {
                return i;
            }
        }
        return at;
    }

    private void fold(Row.Head head) {
        boolean own = answered(bench.desk())
                .map(question -> question.group() == head.group())
                .orElse(false);
        if (!own || !head.open()) {
            bench.act(new LookAct.Fold(Arrangement.of(head.group()), head.open()));
        }
    }

    /** So many lines there are where all groups are open. */
    int lines() {
        return questions.size() + Question.Group.values().length;
    }

    /** Whether there is room for all groups to be open. */
    void roomy(boolean room) {
        if (room != roomy) {
            roomy = room;
            rows(bench.desk());
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Looks.surface());
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
        rows(now);
    }

    private void rows(Desk now) {
        Question.Group own =
                Answering.question(questions, now.look().question()).group();
        List<Row> rows = new ArrayList<>();
        for (Question.Group group : Question.Group.values()) {
            boolean open = group == own
                    || now.look()
                            .arrangement()
                            .folded(Arrangement.of(group))
                            .map(shut -> !shut)
                            .orElse(roomy);
            rows.add(new Row.Head(group, open));
            questions.stream()
                    .filter(question -> open && question.group() == group)
                    .forEach(question -> rows.add(new Row.Asked(question)));
        }
        if (!rows.equals(Collections.list(model.elements()))) {
            model.clear();
            model.addAll(rows);
            setVisibleRowCount(rows.size());
            revalidate();
        }
        Optional<Row> answered = answered(now).map(Row.Asked::new);
        if (answered.isEmpty()) {
            clearSelection();
        } else if (!answered.get().equals(getSelectedValue())) {
            setSelectedValue(answered.get(), true);
        }
    }

    /** Heads are not chosen. */
    private final class QuestionsOnly extends DefaultListSelectionModel {
        QuestionsOnly() {
            setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        }

        @Override
        public void setSelectionInterval(int from, int to) {
            if (to >= 0 && to < model.size() && model.get(to) instanceof Row.Asked) {
                super.setSelectionInterval(from, to);
            }
        }
    }

    private static final class Cell extends DefaultListCellRenderer {
        private static final int LEFT = 12;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            JLabel label = (JLabel) super.getListCellRendererComponent(list, value, index, selected, focus);
            boolean head = value instanceof Row.Head;
            String words = String.valueOf(value);
            label.setIcon(value instanceof Row.Head own ? own.open() ? Glyph.UNFOLDED : Glyph.FOLDED : null);
            label.setIconTextGap(4);
            label.setBorder(BorderFactory.createEmptyBorder(0, head ? LEFT - 4 : LEFT + Looks.em(1.2), 0, 8));
            if (head) {
                label.setFont(Looks.small());
                label.setForeground(Looks.theme().quiet());
            }
            label.getAccessibleContext()
                    .setAccessibleName(
                            value instanceof Row.Head own ? words + (own.open() ? ", open" : ", folded") : words);
            return label;
        }
    }
}
