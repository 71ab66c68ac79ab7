package evenhand.forms;

import evenhand.answers.DriveFigures;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.straight.Driving;
import evenhand.turn.Wheel;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.drive.DrivenSetup.Driven;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The figures of set-ups that pull away, beside one another, and those of their gears. */
public final class DriveTable {
    private DriveTable() {}

    /** Launch, wheels, tyres and ratio. */
    public static Table of(List<Driven> all, Units units) {
        Columns<Driven> table = new Columns<>(all, Driven::name, units);
        launch(table, all);
        return table.table();
    }

    /**
     * The same with each gear, set-up by set-up.
     *
     * @param speed at which the engine's speed is told, m/s
     */
    public static Table withGears(List<Driven> all, double speed, Units units) {
        Columns<Driven> table = new Columns<>(
                all,
                Driven::name,
                units,
                figure -> figure.equals(DriveFigures.RATIO) ? Unit.of("") : units.of(figure.dimension()));
        launch(table, all);
        int gears =
                all.stream().mapToInt(one -> one.answer().gears().size()).max().orElse(0);
        for (int i = 0; i < gears; i++) {
            int at = i;
            Function<Driven, Optional<Driving.Gear>> gear =
                    one -> one.answer().gears().stream().skip(at).findFirst();
            table.heading("Gear " + (i + 1) + ", at the engine's best torque");
            DriveFigures.GEAR.forEach(figure -> table.figureIfAny(figure, gear));
            table.row(
                    "engine at " + units.show(speed, Dimension.SPEED, 0),
                    "rpm",
                    one -> gear.apply(one)
                            .map(found -> Numbers.fixed(DriveFigures.rpm(found.engineSpeed()), 0))
                            .orElse(Table.NOTHING));
            DriveFigures.PULLS.forEach(
                    figure -> table.figureIfAny(figure, one -> gear.apply(one).flatMap(Driving.Gear::pull)));
            table.rowIfAny(
                    "limited by",
                    "",
                    one -> gear.apply(one).map(DriveTable::limitedBy).orElse(Table.NOTHING));
        }
        return table.table();
    }

    private static void launch(Columns<Driven> table, List<Driven> all) {
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
        table.heading("Tyres and axle ratio, against \"" + all.get(0).firstName() + "\"");
        table.rowIfAny("speedometer at 100 km/h", "km/h", one -> fixed(one.speedometer(), 1));
        table.rowIfAny("axle ratio that feels alike", "", one -> fixed(one.equalFinalDrive(), 2));
    }

    private static String limitedBy(Driving.Gear gear) {
        return gear.pull().map(pulls -> pulls.limitedBy().key()).orElse(Table.NOTHING);
    }

    private static String fixed(OptionalDouble number, int digits) {
        return number.isPresent() ? Numbers.fixed(number.getAsDouble(), digits) : Table.NOTHING;
    }

    /**
     * The gears of one of them beside one another.
     *
     * @param speed at which the engine's speed is told, m/s
     */
    public static Table gears(Driven driven, double speed, Units units) {
        Columns<Driving.Gear> table = new Columns<>(
                driven.answer().gears(),
                gear -> gear.gear() + ".",
                units,
                figure -> figure.equals(DriveFigures.RATIO) ? Unit.of("") : units.of(figure.dimension()));
        table.heading(driven.name() + ", gears at the engine's best torque");
        DriveFigures.GEAR.forEach(figure -> table.figureIfAny(figure, Optional::of));
        table.row(
                "engine at " + units.show(speed, Dimension.SPEED, 0),
                "rpm",
                gear -> Numbers.fixed(DriveFigures.rpm(gear.engineSpeed()), 0));
        DriveFigures.PULLS.forEach(figure -> table.figureIfAny(figure, Driving.Gear::pull));
        table.rowIfAny("limited by", "", DriveTable::limitedBy);
        return table.table();
    }
}
