package evenhand.window;

import evenhand.chart.Chart;
import evenhand.chart.ChartView;
import evenhand.chart.ChartWish;
import evenhand.quantity.Dimension;
import evenhand.window.desk.Answering;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Question;
import evenhand.window.desk.Replies;
import evenhand.window.desk.Reply;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** The answer: a sentence, a picture, the numbers, what to do next. */
final class AnswerPane extends JPanel implements Bench.View {
    /** A late answer is dimmed when it is late for so long, ms; sooner would flicker. */
    private static final int PATIENCE = 250;

    private static final int MOST_COLUMNS = 3;

    /** So many pictures stand above the numbers; the others below. */
    private static final int FOREMOST = 2;

    /** Longer lines are hard to read, in sizes of type. */
    private static final double READABLE = 85;

    private final transient Bench bench;
    private final transient List<Question> questions;
    private final transient Consumer<ChartWish> wishes;
    private final Words.Area title =
            new Words.Area("question", Looks::strong, () -> Looks.theme().quiet());
    private final Words.Area headline = Words.headline("answer");
    private final FieldRow fields;
    private final JProgressBar progress = new JProgressBar(0, 100);
    private final JPanel waiting = new JPanel(new MigLayout("insets 0", "[][]", ""));
    private final JPanel tiles = new JPanel(new Tiles(FOREMOST));
    private final JPanel moreTiles = new JPanel(new Tiles(MOST_COLUMNS));
    private final FiguresTable figures = new FiguresTable();
    private final JPanel next = new JPanel(new MigLayout("insets 0, gap 8 4, fillx, wrap 2", "[grow,fill][pref!]", ""));
    private final JPanel more = new JPanel(new MigLayout("insets 0, gap 0 4, fillx, wrap 1", "[grow,fill]", ""));
    private final transient List<ChartView> charts = new ArrayList<>();
    private final DrawingTile drawing;
    private final Timer lateness = new Timer(PATIENCE, event -> dim());

    AnswerPane(Bench bench, List<Question> questions, Runnable cancel, Consumer<ChartWish> wishes) {
        super(new MigLayout("insets 12 16 16 16, gap 0 10, fillx, wrap 1, hidemode 3", "[grow,fill]", ""));
        this.bench = bench;
        this.questions = questions;
        this.wishes = wishes;
        fields = new FieldRow(bench);
        drawing = new DrawingTile(bench);
        JButton stop = new JButton("stop");
        stop.setName("stop");
        stop.addActionListener(event -> cancel.run());
        progress.getAccessibleContext().setAccessibleName("progress of the answer");
        waiting.setOpaque(false);
        waiting.add(progress);
        waiting.add(stop);
        waiting.setVisible(false);
        tiles.setOpaque(false);
        moreTiles.setOpaque(false);
        next.setOpaque(false);
        more.setOpaque(false);
        lateness.setRepeats(false);
        add(title, "wmin 100");
        add(headline, "wmin 100, wmax " + Looks.em(1.35 * READABLE));
        add(fields);
        add(waiting);
        add(tiles, "wmin 100");
        add(figures, "wmin 100, growx 0, alignx left");
        add(next, "wmin 100, wmax " + Looks.em(READABLE));
        add(moreTiles, "wmin 100");
        add(more, "wmin 100, wmax " + Looks.em(READABLE));
    }

    /** The charts that are shown, for tests. */
    List<ChartView> charts() {
        return List.copyOf(charts);
    }

    DrawingTile drawing() {
        return drawing;
    }

    String said() {
        return headline.getText();
    }

    FiguresTable figures() {
        return figures;
    }

    @Override
    public void show(Desk before, Desk now) {
        Question question = Answering.question(questions, now.look().question());
        if (before.is(now) || !before.look().question().equals(now.look().question())) {
            title.setText(question.words());
            scrollRectToVisible(new Rectangle(0, 0, 1, 1));
        }
        fields.show(question, before, now);
        drawing.show(before, now);
        boolean other =
                before.is(now) || !before.replies().reply().equals(now.replies().reply());
        boolean otherTheme = before.look().dark() != now.look().dark();
        if (other || otherTheme) {
            now.replies().reply().ifPresent(reply -> showReply(reply, before, otherTheme || before.is(now)));
        }
        if (now.replies().replyLate(now.asking())) {
            if (!lateness.isRunning()) {
                lateness.restart();
            }
        } else {
            lateness.stop();
        }
        Optional<Double> share = now.replies().progress();
        waiting.setVisible(share.isPresent() && now.replies().replyLate(now.asking()) && !lateness.isRunning());
        share.ifPresent(part -> progress.setValue((int) (100 * part)));
    }

    private void dim() {
        if (bench.desk().replies().replyLate(bench.desk().asking())) {
            charts.forEach(ChartView::showLate);
            figures.showLate();
            headline.setForeground(Looks.theme().quiet());
            waiting.setVisible(bench.desk().replies().progress().isPresent());
        }
    }

    private void showReply(Replies.Replied replied, Desk before, boolean all) {
        Reply reply = replied.reply();
        Optional<Reply> old = all ? Optional.empty() : before.replies().reply().map(Replies.Replied::reply);
        if (!old.map(Reply::headlines).equals(Optional.of(reply.headlines()))) {
            headline.setText(String.join("\n", reply.headlines()));
        }
        headline.setForeground(Looks.theme().ink());
        charts(reply.charts(), replied);
        figures.show(reply.figures());
        if (!old.map(Reply::next).equals(Optional.of(reply.next()))) {
            next(reply.next());
        }
        if (!old.map(Reply::more).equals(Optional.of(reply.more()))) {
            more(reply.more());
        }
    }

    private void charts(List<Chart> wanted, Replies.Replied replied) {
        boolean drawn = Answering.question(questions, replied.of().question()).drawsTheCar();
        boolean same = wanted.size() == charts.size() && drawn == (drawing.getParent() != null);
        if (!same) {
            tiles.removeAll();
            moreTiles.removeAll();
            charts.clear();
            for (int i = 0; i < wanted.size(); i++) {
                ChartView view = new ChartView(wanted.get(i), Looks.theme(), wishes);
                view.setName("chart " + i);
                charts.add(view);
                // The drawing stands beside the first picture.
                (tiles.getComponentCount() < FOREMOST ? tiles : moreTiles).add(view);
                if (i == 0 && drawn) {
                    tiles.add(drawing);
                }
            }
            if (wanted.isEmpty() && drawn) {
                tiles.add(drawing);
            }
            tiles.setVisible(tiles.getComponentCount() > 0);
            moreTiles.setVisible(moreTiles.getComponentCount() > 0);
            revalidate();
            repaint();
        }
        double g = Dimension.ACCELERATION.metric().fromSi(replied.of().work().pace());
        for (int i = 0; i < wanted.size(); i++) {
            Chart chart = wanted.get(i);
            charts.get(i).show(chart, Looks.theme());
            boolean overAcceleration = chart.across().words().equals("lateral acceleration");
            charts.get(i).mark(overAcceleration ? OptionalDouble.of(g) : OptionalDouble.empty());
        }
    }

    private void next(List<Reply.Next> wanted) {
        next.removeAll();
        if (!wanted.isEmpty()) {
            next.add(Words.head("What to do next"), "span 2");
        }
        for (Reply.Next one : wanted) {
            Words.Area words = Words.plain("next");
            words.setText(one.words());
            next.add(words, "wmin 60" + (one.act().isEmpty() ? ", span 2" : ""));
            one.act().ifPresent(act -> {
                JButton button = new JButton("do it");
                button.setName("do it");
                button.getAccessibleContext().setAccessibleName("do it: " + one.words());
                button.addActionListener(event -> bench.act(act));
                next.add(button, "aligny top");
            });
        }
        next.setVisible(!wanted.isEmpty());
        revalidate();
        repaint();
    }

    private void more(List<Reply.Paragraph> wanted) {
        more.removeAll();
        for (Reply.Paragraph paragraph : wanted) {
            if (!paragraph.sentences().isEmpty()) {
                more.add(Words.head(paragraph.heading()), "gaptop 8");
                Words.Area words = Words.plain("more");
                words.setText(String.join("\n", paragraph.sentences()));
                more.add(words, "wmin 60");
            }
        }
        revalidate();
        repaint();
    }
}
