package evenhand.window.desk;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Where acts are done, one after the other: it holds the desk, remembers the work before each act, tells the views, and asks
 * for answers. Lives on one thread.
 */
public final class Bench {
    /** A view of the desk: it compares both and shows again what differs. */
    public interface View {
        void show(Desk before, Desk now);
    }

    /** The work before an act, and what was done then. */
    private record Step(Work before, String words) {}

    private final Deque<Step> past = new ArrayDeque<>();
    private final Deque<Step> future = new ArrayDeque<>();
    private final List<View> views = new ArrayList<>();
    private final Consumer<Asking> questions;
    private Desk desk;
    private boolean gestureBegun;

    /** @param questions is told what is to be answered, whenever that has changed */
    public Bench(Desk first, Consumer<Asking> questions) {
        this.desk = first;
        this.questions = questions;
    }

    public Desk desk() {
        return desk;
    }

    public void add(View view) {
        views.add(view);
    }

    /** Does something; says why not where it cannot be done. */
    public Optional<String> act(Act act) {
        Outcome outcome = act.on(desk);
        gestureBegun &= !act.isWork() || act.sameGesture();
        if (outcome instanceof Outcome.Refused refused) {
            return Optional.of(refused.why());
        }
        Desk next = ((Outcome.Done) outcome).desk();
        if (act.isWork() && !next.work().equals(desk.work())) {
            if (!gestureBegun) {
                past.push(new Step(desk.work(), act.words()));
            }
            gestureBegun = true;
            future.clear();
        }
        show(next);
        return Optional.empty();
    }

    public void undo() {
        gestureBegun = false;
        if (!past.isEmpty()) {
            Step step = past.pop();
            future.push(new Step(desk.work(), step.words()));
            show(desk.with(step.before()));
        }
    }

    public void redo() {
        gestureBegun = false;
        if (!future.isEmpty()) {
            Step step = future.pop();
            past.push(new Step(desk.work(), step.words()));
            show(desk.with(step.before()));
        }
    }

    /** What undo would take back. */
    public Optional<String> undoable() {
        return Optional.ofNullable(past.peek()).map(Step::words);
    }

    public Optional<String> redoable() {
        return Optional.ofNullable(future.peek()).map(Step::words);
    }

    /** Lays another job on the desk. What was done to the one before is forgotten. */
    public void open(Work work, Filed filed) {
        past.clear();
        future.clear();
        Desk before = desk;
        show(new Desk(work, desk.look(), Replies.NONE, filed));
        if (desk.asking().equals(before.asking())) {
            questions.accept(desk.asking()); // the same car opened once more has no answers yet
        }
    }

    /** Shows the desk as it is; once, when everything stands. */
    public void show() {
        views.forEach(view -> view.show(desk, desk));
    }

    /** Shows the desk as it is and asks for its answers; once, when everything stands. */
    public void begin() {
        show();
        ask();
    }

    /** Asks for the answers to what the desk asks. */
    public void ask() {
        questions.accept(desk.asking());
    }

    private void show(Desk next) {
        Desk before = desk;
        desk = next;
        for (View view : List.copyOf(views)) {
            view.show(before, next);
        }
        if (!next.asking().equals(before.asking())) {
            questions.accept(next.asking());
        }
    }
}
