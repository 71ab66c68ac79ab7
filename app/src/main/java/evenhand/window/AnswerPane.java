package evenhand.window;

import evenhand.chart.ChartView;
import evenhand.chart.ChartWish;
import evenhand.drawing.DrawingView;
import evenhand.window.desk.Answering;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Replies;
import evenhand.window.desk.Reply;
import evenhand.words.TestedWords;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import java.util.function.Predicate;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** The answer: a sentence, a picture, the numbers, what to do next. */
final class AnswerPane extends JPanel implements Bench.View {
    /** A late answer is dimmed when it is late for so long, ms; sooner would flicker. */
    private static final int PATIENCE = 250;

    /** Between what stands one below the other, px. */
    private static final int GAP = 6;

    /** So much of what is scrolled to is seen, in sizes of type: it says that there is more. */
    private static final double PEEK = 2.2;

    /** Longer lines are hard to read, in sizes of type. */
    private static final double READABLE = 85;

    private final transient Bench bench;
    private final transient List<Question> questions;
    private final Words.Area title =
            new Words.Area("question", Looks::strong, () -> Looks.theme().quiet());
    /** What every answer of a corrected car wears. */
    private final Words.Area tested =
            new Words.Area("tested", Looks::strong, () -> Looks.theme().warning());

    private final Headline headline = new Headline();
    private final FieldRow fields;
    private final JProgressBar progress = new JProgressBar(0, 100);
    private final JPanel waiting = new JPanel(new MigLayout("insets 0", "[][]", ""));
    private final Words.Area haltedWords = Words.plain("stopped");
    private final JPanel halted = new JPanel(new MigLayout("insets 0, gap 8", "[pref][]", ""));
    private final VerdictPane verdict;
    private final BookPane book;
    private final transient Pictures pictures;
    private final FiguresTable figures;
    private final JPanel numbers =
            new JPanel(new MigLayout("insets 0, gap 0 10, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
    private final transient Beside beside;
    private final JPanel lower;
    private final Todo todo;
    private final Said said = new Said();
    private transient Optional<Asking> stopped = Optional.empty();
    /** Whether nothing stands there, because what stood there answered another question. */
    private boolean empty;

    /** Whether it has been late for as long as patience goes. */
    private boolean dimmed;

    private transient BooleanSupplier held = () -> false;
    private final Timer lateness = new Timer(PATIENCE, event -> dim());

    /** @param screen height that is seen without scrolling, px */
    AnswerPane(
            Bench bench,
            List<Question> questions,
            Answering answering,
            Consumer<ChartWish> wishes,
            IntSupplier screen) {
        super(new Stack(GAP));
        setBorder(BorderFactory.createEmptyBorder(8, 16, 16, 16));
        this.bench = bench;
        this.questions = questions;
        figures = new FiguresTable(wanted -> bench.act(new LookAct.ShowDifferences(wanted)));
        fields = new FieldRow(bench);
        verdict = new VerdictPane(bench);
        book = new BookPane(bench);
        pictures = new Pictures(bench, wishes);
        JButton stop = new JButton("stop");
        stop.setName("stop");
        stop.addActionListener(event -> {
            answering.cancel();
            stopped = Optional.of(bench.desk().asking());
            showStopped();
        });
        JButton again = new JButton("ask again");
        again.setName("ask again");
        again.addActionListener(event -> {
            stopped = Optional.empty();
            showStopped();
            answering.ask(bench.desk().asking());
        });
        halted.setOpaque(false);
        halted.add(haltedWords, "wmin 60");
        halted.add(again);
        halted.setVisible(false);
        progress.getAccessibleContext().setAccessibleName("progress of the answer");
        waiting.setOpaque(false);
        waiting.add(progress);
        waiting.add(stop);
        waiting.setVisible(false);
        todo = new Todo(bench);
        lateness.setRepeats(false);
        tested.setVisible(false);
        for (JComponent part : List.of(title, tested, book.due(), headline, fields, waiting, halted, verdict, book)) {
            add(part);
        }
        add(pictures.foremost(), new Stack.Filling(() -> screen.getAsInt() - Looks.em(PEEK)));
        pictures.whenLarge(alone -> room());
        numbers.setOpaque(false);
        numbers.add(figures, "wmin 100, growx 0, alignx left");
        numbers.add(todo, "wmin 100, wmax " + Looks.em(READABLE));
        beside = new Beside(figures, pictures.layoutOfOthers());
        lower = new JPanel(beside);
        lower.setOpaque(false);
        lower.add(numbers);
        lower.add(pictures.others());
        add(lower);
        add(said);
    }

    /** @param hand whether it is on something that moves the answer: axes are then not drawn in */
    void steadyWhile(BooleanSupplier hand) {
        held = hand;
    }

    /** The charts that are shown, for tests. */
    List<ChartView> charts() {
        return pictures.charts();
    }

    /** The drawings of the answer, for tests. */
    List<DrawingView> drawings() {
        return pictures.drawings();
    }

    /** A picture that has all the room stands alone below its question. */
    private void room() {
        boolean words = !pictures.isLarge() && !empty;
        for (JComponent part : List.of(headline, verdict, lower, said)) {
            part.setVisible(words);
        }
        fields.setVisible(!pictures.isLarge() && fields.getComponentCount() > 0);
        revalidate();
        repaint();
    }

    /** Whether a hand is on a track of the question, or on a handle of its drawings. */
    boolean isHeld() {
        return fields.isHeld() || pictures.isHeld();
    }

    /** The pictures that are seen first, for tests. */
    JPanel foremost() {
        return pictures.foremost();
    }

    DrawingTile drawing() {
        return pictures.drawing();
    }

    String said() {
        return headline.said();
    }

    FiguresTable figures() {
        return figures;
    }

    @Override
    public void show(Desk before, Desk now) {
        Question question = Answering.question(questions, now.look().question());
        if (before.is(now) || !before.look().question().equals(now.look().question())) {
            scrollRectToVisible(new Rectangle(0, 0, 1, 1));
            dimmed = false;
        }
        fields.show(question, before, now);
        book.show(question.showsTheBook(), before, now);
        pictures.drawing().show(before, now);
        figures.show(now);
        boolean other =
                before.is(now) || !before.replies().reply().equals(now.replies().reply());
        boolean otherTheme = !before.look().isDressedAs(now.look());
        // An answer that was waited for in vain comes back when its question is asked again.
        boolean back = empty && now.replies().reply().filter(isOf(now)).isPresent();
        if (other || otherTheme || back) {
            now.replies().reply().ifPresent(this::showReply);
        }
        if (now.replies().reply().isEmpty()) {
            title.setText(question.words());
        }
        if (now.replies().replyLate(now.asking())) {
            if (!lateness.isRunning() && !dimmed) {
                lateness.restart();
            }
        } else {
            lateness.stop();
            dimmed = false;
        }
        showStopped();
        Optional<Double> share = now.replies().progress();
        waiting.setVisible(share.isPresent() && now.replies().replyLate(now.asking()) && dimmed);
        share.ifPresent(part -> progress.setValue((int) (100 * part)));
    }

    /** Says that the answer was stopped, as long as the same is asked and not answered. */
    private void showStopped() {
        Desk desk = bench.desk();
        Words.say(
                haltedWords,
                empty ? "Stopped before it was answered." : "Stopped. What is shown here was answered before.");
        if (empty) {
            headline.say(stopped.filter(desk.asking()::equals).isPresent() ? List.of() : List.of("Being worked out …"));
            headline.showLate();
        }
        halted.setVisible(stopped.filter(
                        asking -> asking.equals(desk.asking()) && desk.replies().replyLate(asking))
                .isPresent());
    }

    /** Whether a reply is to the question that is asked. */
    private static Predicate<Replies.Replied> isOf(Desk desk) {
        return replied -> replied.of().question().equals(desk.look().question());
    }

    /** What stands there answers another question, and has stood long enough. */
    private void clear() {
        Desk desk = bench.desk();
        title.setText(Answering.question(questions, desk.look().question()).words());
        tested.setVisible(false);
        verdict.setVisible(false);
        pictures.foremost().setVisible(false);
        lower.setVisible(false);
        said.setVisible(false);
        empty = true;
        revalidate();
        repaint();
    }

    private void dim() {
        Desk desk = bench.desk();
        dimmed = true;
        if (desk.replies().reply().filter(isOf(desk)).isEmpty()) {
            clear();
            showStopped();
            waiting.setVisible(desk.replies().progress().isPresent());
        } else if (desk.replies().replyLate(desk.asking())) {
            pictures.showLate();
            verdict.showLate();
            figures.showLate();
            headline.showLate();
            waiting.setVisible(desk.replies().progress().isPresent());
        }
    }

    private void showReply(Replies.Replied replied) {
        Reply reply = replied.reply();
        title.setText(Answering.question(questions, replied.of().question()).words());
        empty = false;
        dimmed = false;
        Words.say(tested, reply.tested().map(TestedWords::inALine).orElse(""));
        tested.setVisible(reply.tested().isPresent());
        headline.say(reply.headlines());
        beside.picturesFirst(!reply.drawings().isEmpty());
        verdict.show(replied);
        pictures.show(
                replied, Answering.question(questions, replied.of().question()).drawsTheCar(), held);
        figures.show(reply.figures());
        todo.show(replied);
        said.show(reply.more());
        room();
    }
}
