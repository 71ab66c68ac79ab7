package evenhand.terminal.ride;

import evenhand.answers.FlatRide;
import evenhand.answers.RideFigures;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.forms.Contents;
import evenhand.forms.CsvForm;
import evenhand.forms.JsonForm;
import evenhand.ride.AxleRide;
import evenhand.ride.AxleTramp;
import evenhand.ride.BodyOverHump;
import evenhand.ride.DampingAtSpeed;
import evenhand.ride.DampingSweep;
import evenhand.ride.PitchBounce;
import evenhand.ride.RoadResponse;
import evenhand.ride.Standing;
import evenhand.ride.Transfer;
import evenhand.scenario.Scenario;
import evenhand.terminal.asked.AskedRoad;
import evenhand.terminal.page.Console;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupRide;
import evenhand.terminal.reply.SharedParts;
import evenhand.words.EventWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What {@code ride} answers.
 *
 * @param speed on the road, m/s
 * @param curves whether the response over frequency is wanted, too
 * @param full whether all figures are for people to read, or the verdict on one screen
 */
record RideReply(
        Scenario scenario,
        Optional<LoadCase> load,
        AskedRoad road,
        double speed,
        List<SetupRide> setups,
        boolean curves,
        boolean full)
        implements Reply {
    /** One end of a set-up. */
    private record AtEnd(SetupRide.Rides rides, End end) {
        AxleRide axle() {
            return rides.ride().axle(end);
        }

        List<DampingSweep.Point> sweep() {
            return DampingSweep.of(axle(), rides.ride().road(), rides.ride().speed());
        }

        Optional<DampingSweep.Point> asSet() {
            return axle().damped().map(damped -> DampingSweep.of(axle(), damped));
        }

        List<AtSetting> settings() {
            return axle()
                    .settings(rides.car(), rides.ride().road(), rides.ride().speed())
                    .stream()
                    .map(setting -> new AtSetting(axle(), setting))
                    .toList();
        }
    }

    /** An axle with a damper at one of its settings. */
    private record AtSetting(AxleRide axle, AxleRide.Setting setting) {}

    private static final Contents<DampingSweep.Point> SWEEP =
            Contents.of(DampingSweep.Point.class).figures(RideFigures.SWEEP);

    private static final Contents<AtSetting> SETTING = Contents.of(AtSetting.class)
            .text("name", at -> at.setting().name())
            .flag("set", at -> at.setting().set())
            .with(at -> DampingSweep.of(at.axle(), at.setting().damped()), SWEEP);

    private static final Contents<AtEnd> SETTINGS =
            Contents.of(AtEnd.class).listIfAny("damperSettings", AtEnd::settings, SETTING);

    private static final Contents<AtEnd> AXLE_FIGURES = Contents.of(AtEnd.class)
            .with(AtEnd::axle, Contents.of(AxleRide.class).figures(RideFigures.AXLE));

    private static final Contents<AtEnd> AXLE = AXLE_FIGURES
            .listIfAny(
                    "dampingBySpeed",
                    at -> at.axle().dampingBySpeed(at.rides().car()),
                    Contents.of(DampingAtSpeed.class).figures(RideFigures.DAMPING))
            .partIfAny(
                    "tramp",
                    at -> at.axle().tramp(),
                    Contents.of(AxleTramp.class).figures(RideFigures.TRAMP))
            .with(at -> at, SETTINGS);

    private static final Contents<AtEnd> ROAD = Contents.of(AtEnd.class)
            .withIfAny(
                    at -> at.axle().damped().map(AxleRide.Damped::road),
                    Contents.of(RoadResponse.class).figures(RideFigures.ROAD))
            .with(AtEnd::axle, Contents.of(AxleRide.class).figure(RideFigures.TYRE_LOAD_VARIATION));

    private static final Contents<AtEnd> STANDING_FIGURES = Contents.of(AtEnd.class)
            .with(at -> at.axle().standing(), Contents.of(Standing.class).figures(RideFigures.STANDING))
            .with(
                    at -> at.rides().stops().of(at.end()),
                    Contents.of(OptionalDouble.class).figure(RideFigures.STOP_TOUCHED))
            .flagIfAny("looseInDroop", at -> at.axle().standing().looseInDroop());

    private static final Contents<AtEnd> STANDING = STANDING_FIGURES.with(
            at -> at.axle().standing(),
            Contents.of(Standing.class).figure(RideFigures.PERCH_MOVE).figure(RideFigures.PRELOAD_IN_DROOP));

    private static final Contents<PitchBounce> PITCH_BOUNCE =
            Contents.of(PitchBounce.class).figures(RideFigures.PITCH_BOUNCE);

    private static final Contents<SetupRide.Rides> FLAT_RIDE = Contents.of(SetupRide.Rides.class)
            .number("humpHeight_m", rides -> FlatRide.HUMP_HEIGHT)
            .number("humpLength_m", rides -> FlatRide.HUMP_LENGTH)
            .list(
                    "speeds",
                    SetupRide.Rides::passages,
                    Contents.of(BodyOverHump.Passage.class).figures(RideFigures.HUMP));

    private static final Contents<AtEnd> CURVES = Contents.of(AtEnd.class)
            .with(
                    at -> Response.of(at.axle()),
                    Contents.of(Response.class)
                            .numbers("frequency_Hz", Response::frequencies)
                            .numbers("bodyAcceleration_per_s2", Response::acceleration)
                            .numbers("suspensionTravel", Response::travel)
                            .numbers("tyreDeflection", Response::tyre))
            .list("damping", AtEnd::sweep, SWEEP)
            .partIfAny("asSet", AtEnd::asSet, SWEEP)
            .with(at -> at, SETTINGS);

    private static final Contents<SetupRide.Rides> ON_ROAD = Contents.of(SetupRide.Rides.class)
            .textIfAny("class", rides -> rides.road().named("class"))
            .textIfAny("file", rides -> rides.road().named("file"))
            .number("speed_m_per_s", SetupRide.Rides::speed)
            .with(rides -> rides, atBothEnds(ROAD));

    private static final Contents<SetupRide.Rides> RIDES = Contents.of(SetupRide.Rides.class)
            .sentences("words", rides -> rides.words(Units.METRIC))
            .with(rides -> rides, atBothEnds(AXLE))
            .part("road", rides -> rides, ON_ROAD)
            .part("pitchBounce", rides -> rides.ride().pitchBounce(), PITCH_BOUNCE)
            .part("static", rides -> rides, atBothEnds(STANDING))
            .part("flatRide", rides -> rides, FLAT_RIDE);

    private static Contents<RideReply> reply(Contents<SetupRide.Rides> rides) {
        return Contents.of(RideReply.class)
                .with(reply -> reply, SharedParts.OPENING)
                .list(
                        "setups",
                        RideReply::setups,
                        SharedParts.setup(
                                SetupRide.class, Contents.of(SetupRide.class).where(SetupRide.Rides.class, rides)));
    }

    /** In CSV a row per set-up. */
    private static final Contents<SetupRide.Rides> ROWS = rows();

    /** The response of an axle to the road, over frequency in Hz. */
    private record Response(
            List<Double> frequencies, List<Double> acceleration, List<Double> travel, List<Double> tyre) {
        private static final double LOWEST = 0.2;
        private static final double HIGHEST = 50;
        private static final int POINTS = 200;

        static Response of(AxleRide axle) {
            Transfer transfer =
                    new Transfer(axle.damped().map(AxleRide.Damped::quarterCar).orElse(axle.undamped()));
            Response response =
                    new Response(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
            for (int i = 0; i < POINTS; i++) {
                double frequency = LOWEST * Math.pow(HIGHEST / LOWEST, i / (POINTS - 1.0));
                transfer.at(frequency);
                response.frequencies.add(frequency);
                response.acceleration.add(transfer.bodyAcceleration());
                response.travel.add(transfer.suspensionTravel());
                response.tyre.add(transfer.tyreDeflection());
            }
            return response;
        }
    }

    RideReply {
        setups = List.copyOf(setups);
    }

    private static Contents<SetupRide.Rides> atBothEnds(Contents<AtEnd> contents) {
        Contents<SetupRide.Rides> both = Contents.of(SetupRide.Rides.class);
        for (End end : End.values()) {
            both = both.part(EventWords.end(end), rides -> new AtEnd(rides, end), contents);
        }
        return both;
    }

    private static Contents<SetupRide.Rides> rows() {
        Contents<SetupRide.Rides> rows = Contents.of(SetupRide.Rides.class)
                .text("setup", rides -> rides.setup().name());
        for (End end : End.values()) {
            String name = EventWords.end(end);
            rows = rows.part(name, rides -> new AtEnd(rides, end), AXLE_FIGURES)
                    .part("road." + name, rides -> new AtEnd(rides, end), ROAD)
                    .part("static." + name, rides -> new AtEnd(rides, end), STANDING_FIGURES);
        }
        return rows.part("pitchBounce", rides -> rides.ride().pitchBounce(), PITCH_BOUNCE);
    }

    /** The set-ups that ride. */
    List<SetupRide.Rides> riding() {
        return Reply.only(SetupRide.Rides.class, setups);
    }

    @Override
    public String command() {
        return "ride";
    }

    @Override
    public byte[] json() {
        return JsonForm.write(
                command(), reply(curves ? RIDES.part("curves", rides -> rides, atBothEnds(CURVES)) : RIDES), this);
    }

    @Override
    public String csv(Units units) {
        return CsvForm.write(ROWS, riding(), units);
    }

    @Override
    public String text(Console console, Units units) {
        return full ? new RideTables(console, units, this).write() : new RidePage(console, units, this).write();
    }
}
