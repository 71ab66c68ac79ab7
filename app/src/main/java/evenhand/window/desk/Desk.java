package evenhand.window.desk;

/** All that the window shows. Immutable: an act makes the next one. */
public record Desk(Work work, Look look, Replies replies, Filed filed) {
    /** Whether something would be lost. */
    public boolean unsaved() {
        return !filed.text().map(work.scenario().text()::equals).orElse(false);
    }

    /** What the window is called: a star stands for changes that are not saved. */
    public String name() {
        String title = work.scenario().title();
        return (unsaved() ? "* " : "") + file() + (title.isBlank() ? "" : " – " + title) + " – Evenhand";
    }

    /** Where it is kept, and whether all of it is. */
    public String kept() {
        return unsaved() ? "* " + file() + ", not saved" : filed.path().isPresent() ? file() + ", saved" : file();
    }

    private String file() {
        return filed.path().map(path -> path.getFileName().toString()).orElse("no file yet");
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
