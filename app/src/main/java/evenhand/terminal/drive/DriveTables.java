package evenhand.terminal.drive;

import evenhand.forms.DriveTable;
import evenhand.straight.Driving;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.SetupNotes;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import evenhand.words.drive.DriveWords;
import evenhand.words.drive.DrivenSetup.Driven;
import java.util.List;

/** The answers of {@code drive} for people: each set-up in words, then all side by side, then the gears. */
final class DriveTables {
    private final Page page;
    private final Units units;
    private final DriveReply reply;

    DriveTables(Console console, Units units, DriveReply reply) {
        page = new Page(console);
        this.units = units;
        this.reply = reply;
    }

    String write() {
        page.title(reply.scenario().title());
        reply.scenario().story().ifPresent(story -> page.paragraph("", story));
        reply.load().ifPresent(aboard -> page.paragraph("", LoadWords.aboard(aboard, units)));
        for (SetupDrive one : reply.setups()) {
            page.heading(one.setup().name());
            one.setup().note().ifPresent(note -> page.paragraph("  ", "(" + note + ")"));
            one.driven().ifPresent(driven -> page.sentences(driven.words(units)));
            one.noAnswer().ifPresent(none -> page.paragraph("  ", "No answer: " + none.text() + "."));
        }
        List<Driven> driving = reply.driving();
        if (!driving.isEmpty()) {
            page.table(DriveTable.of(driving, units));
        }
        List<Driving.Gear> shown = List.of();
        for (Driven driven : driving) {
            if (!driven.answer().gears().isEmpty() && !driven.answer().gears().equals(shown)) {
                shown = driven.answer().gears();
                page.table(DriveTable.gears(driven, reply.speed(), units));
            }
        }
        page.blank();
        DriveWords.CAUTIONS.forEach(caution -> page.paragraph("", caution));
        SetupNotes notes = new SetupNotes(page, units);
        notes.estimated(reply.setups());
        notes.notGiven(reply.setups().stream().map(SetupDrive::setup).toList());
        return page.text();
    }
}
