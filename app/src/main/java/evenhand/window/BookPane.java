package evenhand.window;

import evenhand.window.desk.Bench;
import evenhand.window.desk.BookPage;
import evenhand.window.desk.Desk;
import evenhand.words.book.BookWords;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The shop's book: what is due, an entry to put down, and the entries that are there, the newest first. */
final class BookPane extends JPanel {
    /** Longer lines are hard to read, in sizes of type. */
    private static final double READABLE = 85;

    private final JLabel dueHead = Words.head("");
    private final JPanel due = column("wrap 1, hidemode 3", "[grow,fill]");
    private final EntryForm form;
    private final JPanel entries = column("wrap 3", "[pref!][grow,fill][pref!]");
    private final JButton older = new JButton();
    private int most = BookPage.MOST;
    private transient Optional<BookPage> shown = Optional.empty();

    BookPane(Bench bench) {
        super(new MigLayout("insets 0, gap 0 6, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
        setName("the book");
        setOpaque(false);
        form = new EntryForm(bench);
        older.setName("older entries");
        older.addActionListener(event -> {
            most += BookPage.MOST;
            show(bench.desk());
        });
        due.setName("what is due");
        setVisible(false);
        due.setVisible(false);
        add(form, "wmin 60, wmax " + Looks.em(READABLE));
        add(Words.head("The book, the newest entry first"), "gaptop 8");
        add(entries, "wmin 60, wmax " + Looks.em(READABLE));
        add(older, "growx 0, alignx left");
    }

    private static JPanel column(String rows, String columns) {
        JPanel column = new JPanel(new MigLayout("insets 0, gap 8 4, fillx, " + rows, columns, ""));
        column.setOpaque(false);
        return column;
    }

    /** What is due: the first thing that is read. */
    JPanel due() {
        return due;
    }

    /** Only what the question about the book shows is worked out. */
    void show(boolean wanted, Desk before, Desk now) {
        boolean came = before.is(now) || wanted != isVisible();
        setVisible(wanted);
        due.setVisible(wanted && due.getComponentCount() > 1);
        boolean otherJob =
                !before.work().scenario().file().equals(now.work().scenario().file());
        if (otherJob) {
            most = BookPage.MOST;
            form.show(now, true);
        }
        if (wanted && (came || otherJob || !before.asking().equals(now.asking()))) {
            form.show(now, false);
            show(now);
        }
    }

    private void show(Desk now) {
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        BookPage page = BookPage.of(
                now.work().scenario().record(),
                now.look().units(),
                BookPage.day(now.asking().wish(BookPage.DAY), today),
                most);
        if (!shown.equals(Optional.of(page))) {
            shown = Optional.of(page);
            lay(page);
        }
    }

    private void lay(BookPage page) {
        dueHead.setText("Due, as of " + page.on());
        due.removeAll();
        due.add(dueHead);
        for (BookPage.Due one : page.due()) {
            Words.Area words = new Words.Area(
                    "due",
                    one.overdue() ? Looks::strong : Looks::body,
                    () -> one.overdue()
                            ? Looks.theme().warning()
                            : Looks.theme().ink());
            Words.say(words, one.words());
            due.add(words, "wmin 60");
        }
        due.setVisible(!page.due().isEmpty());
        entries.removeAll();
        if (page.rows().isEmpty()) {
            Words.Area none = Words.plain("no entry");
            Words.say(none, BookWords.NOTHING_YET);
            entries.add(none, "span 3, wmin 60");
        }
        page.rows().forEach(this::lay);
        older.setText("older … (" + page.older() + ")");
        older.getAccessibleContext().setAccessibleName(page.older() + " older entries");
        older.setVisible(page.older() > 0);
        revalidate();
        repaint();
    }

    private void lay(BookPage.Row row) {
        Words.Area words =
                row.corrected() ? Words.quiet("entry " + row.number()) : Words.plain("entry " + row.number());
        Words.say(words, row.words());
        JButton correct = new JButton("correct");
        correct.setName("correct " + row.number());
        correct.setFont(Looks.small());
        correct.getAccessibleContext().setAccessibleName("correct entry " + row.number() + ": " + row.words());
        correct.addActionListener(event -> form.correct(row.number()));
        entries.add(new JLabel(row.number() + ".  " + row.when()), "aligny top");
        entries.add(words, "wmin 60");
        entries.add(correct, "aligny top");
    }
}
