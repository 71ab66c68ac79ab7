package evenhand.terminal.drive;

import evenhand.answers.DriveFigures;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.straight.Driving;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.SetupNotes;
import evenhand.turn.Wheel;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.drive.DriveWords;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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
        List<SetupDrive.Driven> driving = reply.driving();
        if (!driving.isEmpty()) {
            page.table(table(driving));
        }
        List<Driving.Gear> shown = List.of();
        for (SetupDrive.Driven driven : driving) {
            if (!driven.answer().gears().isEmpty() && !driven.answer().gears().equals(shown)) {
                shown = driven.answer().gears();
                page.table(gears(driven));
            }
        }
        page.blank();
        DriveWords.CAUTIONS.forEach(caution -> page.paragraph("", caution));
        SetupNotes notes = new SetupNotes(page, units);
        notes.estimated(reply.setups());
        notes.notGiven(reply.setups().stream().map(SetupDrive::setup).toList());
        return page.text();
    }

    private Table table(List<SetupDrive.Driven> all) {
        Columns<SetupDrive.Driven> table = new Columns<>(all, one -> one.setup().name(), units);
        table.heading("Launch");
        for (var figure : List.of(DriveFigures.LAUNCH, DriveFigures.ENGINE, DriveFigures.GRIP)) {
            table.figureIfAny(figure, one -> one.answer().launch());
        }
        table.rowIfAny(
                "spins first",
                "",
                one -> one.answer()
                        .launch()
                        .flatMap(Driving.Launch::firstWheel)
                        .map(Wheel::words)
                        .orElse(Table.NOTHING));
        for (var figure : List.of(DriveFigures.OPEN, DriveFigures.LOCKED)) {
            table.figureIfAny(figure, one -> Optional.of(one.answer()));
        }
        DriveFigures.STATE.forEach(
                figure -> table.figureIfAny(figure, one -> one.answer().launch().map(Driving.Launch::state)));
        table.heading("On its wheels");
        for (Wheel wheel : Wheel.values()) {
            for (var figure : List.of(DriveFigures.LOAD, DriveFigures.ALONG)) {
                table.figureIfAny(
                        wheel.words() + ", " + figure.words(),
                        figure,
                        one -> one.answer()
                                .launch()
                                .map(launch -> launch.state().wheels().get(wheel.index())));
            }
        }
        table.heading("Tyres and axle ratio, against \"" + all.get(0).first().name() + "\"");
        table.rowIfAny("speedometer at 100 km/h", "km/h", one -> fixed(one.speedometer(), 1));
        table.rowIfAny("axle ratio that feels alike", "", one -> fixed(one.equalFinalDrive(), 2));
        return table.table();
    }

    private static String fixed(OptionalDouble number, int digits) {
        return number.isPresent() ? Numbers.fixed(number.getAsDouble(), digits) : Table.NOTHING;
    }

    private Table gears(SetupDrive.Driven driven) {
        Columns<Driving.Gear> table = new Columns<>(
                driven.answer().gears(),
                gear -> gear.gear() + ".",
                units,
                figure -> figure.equals(DriveFigures.RATIO) ? Unit.of("") : units.of(figure.dimension()));
        table.heading(driven.setup().name() + ", gears at the engine's best torque");
        DriveFigures.GEAR.forEach(figure -> table.figureIfAny(figure, Optional::of));
        table.row(
                "engine at " + units.show(reply.speed(), Dimension.SPEED, 0),
                "rpm",
                gear -> Numbers.fixed(DriveFigures.rpm(gear.engineSpeed()), 0));
        DriveFigures.PULLS.forEach(figure -> table.figureIfAny(figure, Driving.Gear::pull));
        table.rowIfAny(
                "limited by",
                "",
                gear -> gear.pull().map(pulls -> pulls.limitedBy().key()).orElse(Table.NOTHING));
        return table.table();
    }
}
