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

    /**
     * What was done, act by act, the latest first, those that were taken back above it; each line is the work that the act led to.
     *
     * @param acts in words; the last line is the work as it was opened
     * @param now line of the work on the desk
     */
    public record History(List<String> acts, int now) {
        /** The line below all acts. */
        public static final String OPENED = "as it was opened";

        public History {
            acts = List.copyOf(acts);
        }
    }

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
            // a drag is told from where it began
            Work before = gestureBegun ? past.pop().before() : desk.work();
            past.push(new Step(before, ActWords.of(act, before, next)));
            gestureBegun = true;
            future.clear();
        }
        show(next);
        return Optional.empty();
    }

    public void undo() {
        go(1);
    }

    public void redo() {
        go(-1);
    }

    /** Takes back so many acts at once; does again what was taken back where it is negative. */
    public void go(int back) {
        gestureBegun = false;
        Deque<Step> from = back > 0 ? past : future;
        Deque<Step> to = back > 0 ? future : past;
        Work work = desk.work();
        int left = Math.min(Math.abs(back), from.size());
        if (left == 0) {
            return;
        }
        for (; left > 0; left--) {
            Step step = from.pop();
            to.push(new Step(work, step.words()));
            work = step.before();
        }
        show(desk.with(work));
    }

    public History history() {
        List<String> acts = new ArrayList<>();
        future.descendingIterator().forEachRemaining(step -> acts.add(step.words()));
        int now = acts.size();
        past.forEach(step -> acts.add(step.words()));
        acts.add(History.OPENED);
        return new History(acts, now);
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
        gestureBegun = false;
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
