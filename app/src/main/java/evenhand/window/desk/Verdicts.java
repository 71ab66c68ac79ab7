package evenhand.window.desk;

import evenhand.turn.TurnAnswer;
import evenhand.words.owner.OwnerWords;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/** Remembers of each file what was last answered of its car, so that the start page tells it without working anything out. */
public final class Verdicts implements Bench.View, AutoCloseable {
    /** Nothing is written down while a hand still moves something, ms. */
    private static final long CALM = 1000;

    private final Worker<Told> worker;

    private record Told(Path file, String title, String verdict) {}

    public Verdicts(Memory memory) {
        worker = new Worker<>(
                "verdicts",
                CALM,
                (told, progress) -> memory.answered(told.file(), told.title(), told.verdict(), Instant.now()),
                share -> {});
    }

    @Override
    public void show(Desk before, Desk now) {
        boolean other = !before.replies().turns().equals(now.replies().turns())
                || !before.filed().equals(now.filed());
        Optional<Path> file = now.filed().path();
        if (other && file.isPresent() && !now.unsaved() && !now.replies().turnsLate(now.work())) {
            now.replies()
                    .turns()
                    .flatMap(turns ->
                            Optional.ofNullable(turns.setups().get(now.work().active())))
                    .ifPresent(turned -> worker.ask(
                            new Told(file.get(), now.work().scenario().title(), verdict(turned, now))));
        }
    }

    /** Of the set-up that is adjusted, how its turn ends. */
    private static String verdict(TurnedSetup turned, Desk desk) {
        String name = "\"" + turned.setup().name() + "\": ";
        if (turned.turn().isEmpty()) {
            return name + "no answer.";
        }
        TurnAnswer.Turns turn = turned.turn().get();
        String way = turned.standing().turnsAlikeBothWays()
                ? ""
                : "turning " + turn.direction().key() + ", ";
        String limit = OwnerWords.limit(turn.limit(), desk.look().units());
        return name + way + limit.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + limit.substring(1);
    }

    @Override
    public void close() {
        worker.close();
    }
}
