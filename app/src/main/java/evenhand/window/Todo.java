package evenhand.window;

import evenhand.window.desk.Act;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Replies;
import evenhand.window.desk.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What to do next, each with a button where it can be done at once. What belongs to an earlier asking cannot be pressed. */
final class Todo extends JPanel {
    private record Row(Words.Area words, JButton button) {}

    private final transient Bench bench;
    private final transient List<Row> rows = new ArrayList<>();
    private transient List<Reply.Next> shown = List.of();

    Todo(Bench bench) {
        super(new MigLayout("insets 0, gap 8 4, fillx, wrap 2, hidemode 3", "[grow,fill][pref!]", ""));
        this.bench = bench;
        setOpaque(false);
        setVisible(false);
    }

    void show(Replies.Replied replied) {
        List<Reply.Next> own = replied.reply().next();
        shown = Stream.concat(own.stream(), replied.after().next().stream()).toList();
        if (rows.size() != shown.size()) {
            lay();
        }
        for (int i = 0; i < shown.size(); i++) {
            boolean late = i >= own.size() && replied.afterLate();
            show(rows.get(i), shown.get(i), late);
        }
    }

    private static void show(Row row, Reply.Next next, boolean late) {
        Words.say(row.words(), next.words());
        row.words().setForeground(late ? Looks.theme().quiet() : Looks.theme().ink());
        row.button().getAccessibleContext().setAccessibleName("do it: " + next.words());
        row.button().setVisible(next.act().isPresent());
        row.button().setEnabled(!late);
    }

    private void lay() {
        removeAll();
        rows.clear();
        if (!shown.isEmpty()) {
            add(Words.head("What to do next"), "span 2");
        }
        for (int i = 0; i < shown.size(); i++) {
            int place = i;
            JButton button = new JButton("do it");
            button.setName("do it");
            button.addActionListener(event -> doIt(place));
            Row row = new Row(Words.plain("next"), button);
            rows.add(row);
            add(row.words(), "wmin 60");
            add(button, "aligny top");
        }
        setVisible(!shown.isEmpty());
        revalidate();
        repaint();
    }

    private void doIt(int place) {
        Optional<Act> act = shown.get(place).act();
        act.ifPresent(bench::act);
    }
}
