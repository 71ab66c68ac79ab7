package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.forms.Table;
import evenhand.window.desk.Act;
import evenhand.window.desk.Afterthought;
import evenhand.window.desk.Answering;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Drawer;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Replies;
import evenhand.window.desk.Reply;
import evenhand.words.Units;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;

/** A desk without a screen that is asked questions the way the window asks them. */
final class Asks {
    private static final Path SCENARIOS = Path.of("..", "scenarios");

    private final Bench bench;
    private final Map<String, String> wishes = new HashMap<>();
    private Units units = Units.METRIC;

    private Asks(String text, Path file) {
        Drawer.Opened opened = Drawer.open(text, Optional.of(file));
        assertThat(opened).as("%s", opened).isInstanceOf(Drawer.Opened.Sound.class);
        Drawer.Opened.Sound sound = (Drawer.Opened.Sound) opened;
        bench = new Bench(
                new Desk(sound.work(), Look.at("", Units.METRIC, false), Replies.NONE, sound.filed()), asking -> {});
    }

    static Asks demo(String name) throws Exception {
        return demo(name, text -> text);
    }

    /** A demo car with another text. */
    static Asks demo(String name, UnaryOperator<String> edit) throws Exception {
        String text = Files.readString(SCENARIOS.resolve(name + ".json"));
        return new Asks(edit.apply(text), SCENARIOS.resolve(name + ".json"));
    }

    /** A file of its own, with what stands beside it. */
    static Asks file(Path file, String text) {
        return new Asks(text, file);
    }

    Asks act(Act act) {
        assertThat(bench.act(act)).isEmpty();
        return this;
    }

    /** Puts something into a field of a question: "bump/over". */
    Asks wish(String field, String value) {
        wishes.put(field, value);
        return this;
    }

    Asks in(Units other) {
        units = other;
        return this;
    }

    evenhand.window.desk.Work work() {
        return bench.desk().work();
    }

    Reply reply(String question) throws Exception {
        CompletableFuture<Reply> came = new CompletableFuture<>();
        try (Answering answering = new Answering(Questions.ALL, Runnable::run)) {
            answering.deliverTo(act -> {
                if (act instanceof LookAct.ReplyCame reply) {
                    came.complete(reply.reply());
                }
            });
            answering.ask(new Asking(work(), question, units, wishes));
            return came.get(60, TimeUnit.SECONDS);
        }
    }

    Afterthought after(String question) throws Exception {
        CompletableFuture<Afterthought> came = new CompletableFuture<>();
        try (Answering answering = new Answering(Questions.ALL, Runnable::run)) {
            answering.deliverTo(act -> {
                if (act instanceof LookAct.AfterthoughtCame after) {
                    came.complete(after.after());
                }
            });
            answering.ask(new Asking(work(), question, units, wishes));
            return came.get(60, TimeUnit.SECONDS);
        }
    }

    static String all(Reply reply) {
        return String.join("\n", reply.headlines()) + "\n"
                + String.join(
                        "\n",
                        reply.more().stream()
                                .flatMap(one -> one.sentences().stream())
                                .toList());
    }

    /** The cells of the first row with these words below a heading. */
    static List<String> row(Table figures, String heading, String words) {
        boolean below = false;
        for (Table.Line line : figures.lines()) {
            if (line instanceof Table.Heading) {
                below = line.words().equals(heading);
            } else if (below && line instanceof Table.Row row && row.words().equals(words)) {
                return row.cells();
            }
        }
        throw new AssertionError("no row " + words + " below " + heading + " in " + figures);
    }
}
