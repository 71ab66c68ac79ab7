package evenhand.window.desk;

import evenhand.scenario.NewEntry;

/** Puts an entry down in the book, behind the last: what stands there already is never altered. */
public record EntryAct(NewEntry entry) implements Act {
    /** Letters of what was done that the history reads out. */
    private static final int MOST = 60;

    @Override
    public Outcome on(Desk desk) {
        return Edit.whole(desk, desk.work(), entry::behind);
    }

    @Override
    public String words() {
        String text = entry.text();
        boolean whole = text.codePointCount(0, text.length()) <= MOST;
        String read = whole
                ? text
                : text.substring(0, text.offsetByCodePoints(0, MOST)).strip() + "…";
        return "put down: " + read
                + (entry.corrects().isPresent()
                        ? " (corrects entry " + entry.corrects().getAsInt() + ")"
                        : "");
    }
}
