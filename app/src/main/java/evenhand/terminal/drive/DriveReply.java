package evenhand.terminal.drive;

import evenhand.answers.DriveFigures;
import evenhand.car.LoadCase;
import evenhand.forms.Contents;
import evenhand.scenario.Scenario;
import evenhand.straight.Driving;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.turn.Wheel;
import evenhand.words.Units;
import evenhand.words.drive.DriveWords;
import evenhand.words.drive.DrivenSetup.Driven;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What {@code drive} answers.
 *
 * @param speed at which the engine's speed in each gear is told, m/s
 */
record DriveReply(Scenario scenario, Optional<LoadCase> load, double speed, List<SetupDrive> setups) implements Reply {
    private static final Contents<Driving.Gear> GEAR = Contents.of(Driving.Gear.class)
            .whole("gear", Driving.Gear::gear)
            .figures(DriveFigures.GEAR)
            .number("rpmAtSpeed", gear -> DriveFigures.rpm(gear.engineSpeed()))
            .withIfAny(
                    Driving.Gear::pull,
                    Contents.of(Driving.Pulls.class)
                            .figures(DriveFigures.PULLS)
                            .text("limitedBy", pulls -> pulls.limitedBy().key()));

    private static final Contents<Driven> TYRES = Contents.of(Driven.class)
            .numberIfAny("speedometerAt100_km_per_h", Driven::speedometer)
            .numberIfAny("equalFinalDrive", Driven::equalFinalDrive);

    private static final Contents<Driving.Launch> LIMITS = Contents.of(Driving.Launch.class)
            .figure(DriveFigures.LAUNCH)
            .text("limitedBy", launch -> launch.limitedBy().key())
            .figure(DriveFigures.ENGINE)
            .figure(DriveFigures.GRIP)
            .textIfAny("firstWheel", launch -> launch.firstWheel().map(Wheel::key))
            .with(Driving.Launch::state, Contents.of(Driving.Pulling.class).figures(DriveFigures.STATE));

    private static final Contents<Driving.WheelPull> WHEEL =
            Contents.of(Driving.WheelPull.class).figure(DriveFigures.LOAD).figure(DriveFigures.ALONG);

    private static final Contents<Driving.Launch> LAUNCH =
            LIMITS.part("wheels", launch -> launch.state().wheels(), wheels());

    private static final Contents<Driving.Answer> DIFFERENTIALS =
            Contents.of(Driving.Answer.class).figure(DriveFigures.OPEN).figure(DriveFigures.LOCKED);

    private static final Contents<Driven> DRIVEN = Contents.of(Driven.class)
            .sentences(
                    "words",
                    driven -> Stream.concat(driven.words(Units.METRIC).stream(), DriveWords.CAUTIONS.stream())
                            .toList())
            .listIfAny("gears", driven -> driven.answer().gears(), GEAR)
            .part("tyres", driven -> driven, TYRES)
            .partIfAny("launch", driven -> driven.answer().launch(), LAUNCH)
            .part("differentials", Driven::answer, DIFFERENTIALS);

    private static final Contents<DriveReply> REPLY = Contents.of(DriveReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .number("speed_m_per_s", DriveReply::speed)
            .list(
                    "setups",
                    DriveReply::setups,
                    SharedParts.setup(
                            SetupDrive.class, Contents.of(SetupDrive.class).withIfAny(SetupDrive::driven, DRIVEN)));

    /** In CSV a row per set-up and gear; the launch stands in each. */
    private static final Contents<Driven> ROWS = Contents.of(Driven.class)
            .text("setup", driven -> driven.setup().name())
            .partIfAny("launch", driven -> driven.answer().launch(), LAUNCH)
            .part("differentials", Driven::answer, DIFFERENTIALS)
            .part("tyres", driven -> driven, TYRES)
            .list("gears", driven -> driven.answer().gears(), GEAR);

    DriveReply {
        setups = List.copyOf(setups);
    }

    private static Contents<List<Driving.WheelPull>> wheels() {
        Contents<List<Driving.WheelPull>> all = Contents.ofAny();
        for (Wheel wheel : Wheel.values()) {
            all = all.part(wheel.key(), wheels -> wheels.get(wheel.index()), WHEEL);
        }
        return all;
    }

    /** The set-ups that drive. */
    List<Driven> driving() {
        return setups.stream().flatMap(one -> one.driven().stream()).toList();
    }

    @Override
    public Written written() {
        return Written.of(
                "drive",
                REPLY,
                this,
                Written.Csv.of(ROWS, this::driving),
                (console, units) -> new DriveTables(console, units, this).write());
    }
}
