package evenhand.terminal.brakes;

import evenhand.forms.BrakesTable;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.SetupNotes;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import evenhand.words.brakes.BrakeWords;
import evenhand.words.brakes.BrakedSetup.Braked;
import java.util.List;

/** The answers of {@code brakes} for people: each set-up in words, the verdict first, then all side by side. */
final class BrakesTables {
    private final Page page;
    private final Units units;
    private final BrakesReply reply;

    BrakesTables(Console console, Units units, BrakesReply reply) {
        page = new Page(console);
        this.units = units;
        this.reply = reply;
    }

    String write() {
        page.title(reply.scenario().title());
        reply.scenario().story().ifPresent(story -> page.paragraph("", story));
        reply.load().ifPresent(aboard -> page.paragraph("", LoadWords.aboard(aboard, units)));
        for (SetupBrakes one : reply.setups()) {
            page.heading(one.setup().name());
            one.setup().note().ifPresent(note -> page.paragraph("  ", "(" + note + ")"));
            one.braked().ifPresent(braked -> page.sentences(words(braked)));
            one.noAnswer().ifPresent(none -> page.paragraph("  ", "No answer: " + none.text() + "."));
        }
        List<Braked> braked =
                reply.setups().stream().flatMap(one -> one.braked().stream()).toList();
        if (!braked.isEmpty()) {
            page.table(BrakesTable.of(braked, units));
        }
        page.blank();
        BrakeWords.CAUTIONS.forEach(caution -> page.paragraph("", caution));
        SetupNotes notes = new SetupNotes(page, units);
        notes.estimated(reply.setups());
        notes.notGiven(reply.setups().stream().map(SetupBrakes::setup).toList());
        return page.text();
    }

    /** The sentences of a set-up; where an earlier one brakes alike to the last digit, only that. */
    private List<String> words(Braked braked) {
        return reply.setups().stream()
                .flatMap(one -> one.braked().stream())
                .takeWhile(earlier -> !earlier.setup().equals(braked.setup()))
                .filter(earlier -> earlier.answer().equals(braked.answer()))
                .findFirst()
                .map(earlier -> List.of("Brakes as \"" + earlier.setup().name() + "\" does."))
                .orElseGet(() -> braked.words(units));
    }
}
