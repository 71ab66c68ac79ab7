package evenhand.window.desk;

import evenhand.words.Units;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Desks for tests. */
public final class Desks {
    static final Path SCENARIOS = Path.of("..", "scenarios");

    private Desks() {}

    static Desk demo(String name) {
        Drawer.Opened opened = Drawer.open(SCENARIOS.resolve(name + ".json"));
        Drawer.Opened.Sound sound = (Drawer.Opened.Sound) opened;
        return new Desk(sound.work(), Look.at("first", Units.METRIC, false), Replies.NONE, sound.filed());
    }

    static Asking asking(Work work, String question) {
        return new Asking(work, question, Units.METRIC, Map.of());
    }

    public static Bench bench(String name) {
        return new Bench(demo(name), asking -> {});
    }

    public static Desk done(Bench bench, Act act) {
        Optional<String> why = bench.act(act);
        if (why.isPresent()) {
            throw new AssertionError(act + " was refused: " + why.get());
        }
        return bench.desk();
    }
}
