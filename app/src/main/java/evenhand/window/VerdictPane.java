package evenhand.window;

import evenhand.window.desk.Bench;
import evenhand.window.desk.Replies;
import evenhand.window.desk.Reply;
import evenhand.window.desk.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What stands below the first sentence: what has to be warned of, a line for each set-up, why it is so, and what to do next. */
final class VerdictPane extends JPanel {
    /** So many things to do stand here; what each of them brings with it is told below. */
    private static final int MOST_NEXT = 3;

    /** One less where it is narrower, in sizes of type: words that are cut say nothing. */
    private static final double ROOM_FOR_ALL = 66;

    /** A line of the table can be followed by the eye as far as this, in sizes of type. */
    private static final double WIDEST = 105;

    private final transient Bench bench;
    private final Words.Area warnings =
            new Words.Area("warnings", Looks::strong, () -> Looks.theme().warning());
    private final VerdictTable table;
    private final Words.Area because = Words.quiet("because");
    private final Words.Area caveat = Words.quiet("not given");
    private final JPanel next = new JPanel(new MigLayout("insets 0, gap 8 4, hidemode 3, nogrid", "", ""));
    private transient List<Reply.Next> offered = List.of();
    private final transient List<JButton> buttons = new ArrayList<>();

    VerdictPane(Bench bench) {
        super(new MigLayout("insets 0, gap 0 6, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
        this.bench = bench;
        setOpaque(false);
        table = new VerdictTable(bench);
        next.setOpaque(false);
        next.add(Words.head("Next"));
        for (int i = 0; i < MOST_NEXT; i++) {
            int place = i;
            JButton button = new JButton();
            button.setName("next " + i);
            button.addActionListener(event -> offered.get(place).act().ifPresent(bench::act));
            buttons.add(button);
            next.add(button, "wmin 40");
        }
        add(warnings, "wmin 100");
        add(table, "wmin 100, wmax " + Looks.em(WIDEST));
        add(because, "wmin 100");
        add(next, "wmin 100");
        add(caveat, "wmin 100");
        Stream.of(warnings, table, because, next, caveat).forEach(part -> part.setVisible(false));
    }

    void show(Replies.Replied replied) {
        replied.verdict()
                .ifPresent(verdict -> table.show(verdict, bench.desk().work().active()));
        table.setVisible(replied.verdict().isPresent());
        List<String> warned = new ArrayList<>();
        replied.verdict().ifPresent(verdict -> warned.addAll(verdict.warnings()));
        warned.addAll(replied.reply().cautions());
        say(warnings, String.join("\n", warned));
        List<String> behind = new ArrayList<>(replied.after().because());
        replied.verdict().flatMap(Verdict::sure).ifPresent(behind::add);
        say(
                because,
                behind.isEmpty()
                        ? ""
                        : "Because: " + (replied.afterLate() ? "being worked out …" : String.join(" ", behind)));
        say(caveat, replied.reply().caveat().orElse(""));
        offer(replied);
    }

    private static void say(Words.Area area, String words) {
        Words.say(area, words);
        area.setVisible(!words.isEmpty());
    }

    private void offer(Replies.Replied replied) {
        offered = Stream.concat(replied.reply().next().stream(), replied.after().next().stream())
                .filter(one -> one.act().isPresent())
                .limit(getWidth() > 0 && getWidth() < Looks.em(ROOM_FOR_ALL) ? MOST_NEXT - 1 : MOST_NEXT)
                .toList();
        int own = (int) replied.reply().next().stream()
                .filter(one -> one.act().isPresent())
                .count();
        for (int i = 0; i < MOST_NEXT; i++) {
            JButton button = buttons.get(i);
            button.setVisible(i < offered.size());
            if (i < offered.size()) {
                Reply.Next one = offered.get(i);
                button.setText(one.brief());
                button.setToolTipText(Words.wrapped(one.words()));
                button.getAccessibleContext().setAccessibleName("do it: " + one.words());
                button.setEnabled(i < own || !replied.afterLate());
            }
        }
        next.setVisible(!offered.isEmpty());
    }

    void showLate() {
        table.showLate();
        because.setForeground(Looks.theme().quiet());
    }
}
