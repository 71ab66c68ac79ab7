package evenhand.window.desk;

/** All that the window shows. Immutable: an act makes the next one. */
public record Desk(Work work, Look look, Replies replies, Filed filed) {
    /** Whether something would be lost. */
    public boolean unsaved() {
        return !filed.text().map(work.scenario().text()::equals).orElse(false);
    }

    /** Whether it is the very same: what is shown for the first time is shown whole. */
    @SuppressWarnings("ReferenceEquality")
    public boolean is(Desk other) {
        return this == other;
    }

    /** What is to be answered. */
    public Asking asking() {
        return new Asking(work, look.question(), look.units(), look.wishes());
    }

    Desk with(Work next) {
        return new Desk(next, look, replies, filed);
    }

    Desk with(Look next) {
        return new Desk(work, next, replies, filed);
    }

    Desk with(Replies next) {
        return new Desk(work, look, next, filed);
    }

    Desk with(Filed next) {
        return new Desk(work, look, replies, next);
    }
}
