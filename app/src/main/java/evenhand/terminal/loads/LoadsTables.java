package evenhand.terminal.loads;

import evenhand.forms.LoadsTable;
import evenhand.structure.UseAnswer;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.SetupNotes;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import evenhand.words.loads.LoadedSetup.Loaded;
import evenhand.words.loads.LoadsWords;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The answers of {@code loads} for people: each set-up in words, then the worst of each part, or every end of the cases asked. */
final class LoadsTables {
    private final Page page;
    private final Units units;
    private final LoadsReply reply;

    LoadsTables(Console console, Units units, LoadsReply reply) {
        page = new Page(console);
        this.units = units;
        this.reply = reply;
    }

    String write() {
        page.title(reply.scenario().title());
        reply.load().ifPresent(aboard -> page.paragraph("", LoadWords.aboard(aboard, units)));
        Set<String> said = new HashSet<>(); // what holds for several set-ups is said once
        for (SetupLoads one : reply.setups()) {
            page.heading(one.setup().name());
            one.setup().note().ifPresent(note -> page.paragraph("  ", "(" + note + ")"));
            one.loaded()
                    .ifPresent(loaded -> page.sentences(loaded.words(reply.first(loaded), units).stream()
                            .filter(sentence -> said.add(sentence) || ofItsOwn(loaded, sentence))
                            .toList()));
            one.noAnswer().ifPresent(none -> page.paragraph("  ", "No answer: " + none.text() + "."));
        }
        List<Loaded> loaded =
                reply.setups().stream().flatMap(one -> one.loaded().stream()).toList();
        if (reply.asked().inCases()) {
            loaded.forEach(this::ends);
        } else if (!loaded.isEmpty()) {
            page.table(LoadsTable.worst(loaded, units));
        }
        page.blank();
        LoadsWords.CAUTIONS.forEach(caution -> page.paragraph("", caution));
        SetupNotes notes = new SetupNotes(page, units);
        notes.estimated(reply.setups());
        notes.notGiven(reply.setups().stream().map(SetupLoads::setup).toList());
        return page.text();
    }

    /** What has no answer is told of each. */
    private static boolean ofItsOwn(Loaded loaded, String sentence) {
        return loaded.leftOut().stream().anyMatch(sentence::startsWith);
    }

    private void ends(Loaded loaded) {
        for (UseAnswer.Carried one : loaded.loads().carried()) {
            page.heading(loaded.name() + ": " + one.title() + ", what each end does to the part that it is bolted to");
            page.tableAtOnce(LoadsTable.ends(one, units));
        }
    }
}
