package evenhand.window.desk;

import evenhand.words.Units;
import java.util.Optional;

/** Something that undo leaves alone: how the desk is looked at, that it was saved, answers that come in. */
public sealed interface LookAct extends Act {
    @Override
    default boolean isWork() {
        return false;
    }

    @Override
    default String words() {
        return "";
    }

    record TurnTo(Look.Page page) implements LookAct {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.look().withPage(page)));
        }
    }

    /** Asks a question, and turns to its answer. */
    record Ask(String question) implements LookAct {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.look().withQuestion(question)));
        }
    }

    /** Puts something into a field of the question that is asked. */
    record Wish(String field, String value) implements LookAct {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.look().withWish(field, value)));
        }
    }

    record ShowUnits(Units units) implements LookAct {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.look().withUnits(units)));
        }
    }

    record ShowDark(boolean dark) implements LookAct {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.look().withDark(dark)));
        }
    }

    /** The scenario was saved, as it is now or was a moment ago. */
    record Saved(Filed filed) implements LookAct {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(filed));
        }
    }

    /** Replies have come. */
    record TurnsCame(Replies.Turns turns) implements LookAct {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.replies().with(turns)));
        }
    }

    record ReplyCame(Asking of, Reply reply) implements LookAct {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.replies().with(of, reply)));
        }
    }

    /** What was thought after a reply has come; it joins it, if it is still shown. */
    record AfterthoughtCame(Asking of, Afterthought after) implements LookAct {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.replies().withAfter(of, after)));
        }
    }

    record ProgressCame(Optional<Double> progress) implements LookAct {
        @Override
        public Outcome on(Desk desk) {
            return new Outcome.Done(desk.with(desk.replies().withProgress(progress)));
        }
    }
}
