package evenhand.window;

import evenhand.drawing.Pull;
import evenhand.window.desk.Bench;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Knob;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What is pulled in a drawing as edits of the active set-up. From first to last a pull is one act to undo; a key is one of its own. */
final class Pulls {
    private static final double SAME = 1e-9;

    private final Bench bench;
    private boolean held;

    Pulls(Bench bench) {
        this.bench = bench;
    }

    /** Whether a hand is on a handle. */
    boolean isHeld() {
        return held;
    }

    /** Does it; says why not where the car cannot be so. */
    Optional<String> take(Pull pull) {
        boolean same = held;
        held = pull.phase() != Pull.Phase.DONE;
        Map<String, String> texts = new LinkedHashMap<>();
        pull.values()
                .forEach((path, value) -> Knob.of(bench.desk().work(), path)
                        .filter(knob -> Math.abs(knob.value().si() - value) > SAME)
                        .ifPresent(knob ->
                                texts.put(path, knob.text(knob.value().unit().fromSi(value)))));
        return bench.act(new EditAct.SetValues(Optional.of(bench.desk().work().active()), texts, same));
    }
}
