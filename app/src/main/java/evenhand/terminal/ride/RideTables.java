package evenhand.terminal.ride;

import evenhand.answers.Figure;
import evenhand.answers.RideFigures;
import evenhand.car.End;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.AxleRide;
import evenhand.ride.DampingAtSpeed;
import evenhand.ride.DampingSweep;
import evenhand.ride.Standing;
import evenhand.ride.Transfer;
import evenhand.scenario.Scenario;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SetupNotes;
import evenhand.terminal.reply.SetupRide;
import evenhand.words.EventWords;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.ride.RideWords;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** The answers of {@code ride} for people: set-ups side by side, then in words. */
final class RideTables {
    private static final List<Figure<Standing>> AT_REST = Stream.concat(
                    RideFigures.STANDING.stream(), Stream.of(RideFigures.PERCH_MOVE, RideFigures.PRELOAD_IN_DROOP))
            .toList();

    /** Frequencies of the printed curve, Hz. */
    private static final double[] FREQUENCIES = {
        0.5, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10, 12.5, 16, 20, 25
    };

    private final Page page;
    private final Units units;
    private final RideReply reply;

    RideTables(Console console, Units units, RideReply reply) {
        this.page = new Page(console);
        this.units = units;
        this.reply = reply;
    }

    String write() {
        Scenario scenario = reply.scenario();
        List<SetupRide> answers = reply.setups();
        page.title(scenario.title());
        scenario.story().ifPresent(story -> page.paragraph("", story));
        page.blank();
        String where = "On " + reply.road().words() + " at " + units.show(reply.speed(), Dimension.SPEED, 0)
                + ". Rates and loads are those of one wheel.";
        page.paragraph("", where);
        reply.road().warning(reply.speed()).ifPresent(warning -> page.paragraph("", warning));
        page.paragraph("", RideWords.PRACTICE);
        reply.load().ifPresent(aboard -> page.paragraph("", LoadWords.aboard(aboard, units)));
        List<SetupRide.Rides> riding = reply.riding();
        if (!riding.isEmpty()) {
            page.table(table(riding));
        }
        words(answers);
        if (reply.curves()) {
            riding.forEach(this::curves);
        }
        SetupNotes notes = new SetupNotes(page, units);
        notes.estimated(answers);
        notes.warnings(answers);
        return page.text();
    }

    private Table table(List<SetupRide.Rides> answers) {
        Columns<SetupRide.Rides> table =
                new Columns<>(answers, answer -> answer.setup().name(), units, units::ofRide);
        for (End end : End.values()) {
            String name = EventWords.end(end);
            table.heading("At the " + name);
            RideFigures.AXLE.forEach(figure -> table.figureIfAny(figure, answer -> Optional.of(axle(answer, end))));
            damping(table, end);
            RideFigures.TRAMP.forEach(figure ->
                    table.figureIfAny(figure, answer -> axle(answer, end).tramp()));
            table.heading("At the " + name + ", at rest and in the turn");
            AT_REST.forEach(figure -> table.figureIfAny(
                    figure, answer -> Optional.of(axle(answer, end).standing())));
            table.figureIfAny(
                    RideFigures.STOP_TOUCHED,
                    answer -> Optional.of(answer.stops().of(end)));
        }
        for (End end : End.values()) {
            table.heading("On the road, " + EventWords.end(end) + ", r.m.s.");
            RideFigures.ROAD.forEach(figure ->
                    table.figureOf(figure, answer -> axle(answer, end).damped().map(AxleRide.Damped::road)));
            table.row(RideFigures.TYRE_LOAD_VARIATION.words(), "%", answer -> {
                OptionalDouble variation = answer.ride().tyreLoadVariation(end);
                return variation.isPresent() ? percent(variation.getAsDouble()) : Table.NOTHING;
            });
        }
        table.heading("The body as a whole");
        RideFigures.PITCH_BOUNCE.forEach(figure ->
                table.figureIfAny(figure, answer -> Optional.of(answer.ride().pitchBounce())));
        return table.table();
    }

    private static AxleRide axle(SetupRide.Rides answer, End end) {
        return answer.ride().axle(end);
    }

    private static String percent(double ratio) {
        return Numbers.fixed(Unit.of("%").fromSi(ratio), 1);
    }

    private static void damping(Columns<SetupRide.Rides> table, End end) {
        for (int i = 0; i < DampingAtSpeed.SPEEDS.size(); i++) {
            int index = i;
            Function<SetupRide.Rides, Optional<DampingAtSpeed>> damping =
                    answer -> axle(answer, end).dampingBySpeed(answer.car()).stream()
                            .skip(index)
                            .findFirst();
            String speed = Numbers.plain(DampingAtSpeed.SPEEDS.get(i), 2) + " m/s";
            table.row(
                    "  ratio by bump/rebound at " + speed,
                    "",
                    answer -> damping.apply(answer).map(RideTables::both).orElse(Table.NOTHING));
            table.row(
                    "  ratio in roll at " + speed,
                    "",
                    answer -> damping.apply(answer)
                            .map(one -> Numbers.fixed(one.rollMean(), 2))
                            .orElse(Table.NOTHING));
        }
    }

    private static String both(DampingAtSpeed damping) {
        return Numbers.fixed(damping.bump(), 2) + "/" + Numbers.fixed(damping.rebound(), 2);
    }

    private void words(List<SetupRide> answers) {
        for (SetupRide answer : answers) {
            page.heading(answer.setup().name());
            answer.setup().note().ifPresent(note -> page.paragraph("  ", "(" + note + ")"));
            if (answer instanceof SetupRide.Rides rides) {
                page.sentences(rides.words(units));
            } else if (answer instanceof SetupAnswer.None none) {
                page.paragraph("  ", none.sentence());
            }
        }
    }

    private void curves(SetupRide.Rides answer) {
        for (End end : End.values()) {
            AxleRide axle = answer.ride().axle(end);
            Transfer transfer =
                    new Transfer(axle.damped().map(AxleRide.Damped::quarterCar).orElse(axle.undamped()));
            String title = answer.setup().name() + ", " + EventWords.end(end);
            Table.Builder response =
                    new Table.Builder(List.of("body acceleration", "suspension travel", "tyre deflection"));
            response.heading(title + ": response per height of the road (acceleration in 1/s²)");
            for (double frequency : FREQUENCIES) {
                transfer.at(frequency);
                response.row(
                        Numbers.plain(frequency, 2),
                        "Hz",
                        List.of(
                                Numbers.fixed(transfer.bodyAcceleration(), 1),
                                Numbers.fixed(transfer.suspensionTravel(), 3),
                                Numbers.fixed(transfer.tyreDeflection(), 3)));
            }
            page.table(response.build());
            page.table(sweep(answer, axle, title));
        }
    }

    private Table sweep(SetupRide.Rides answer, AxleRide axle, String title) {
        Table.Builder table = new Table.Builder(List.of("damper rate", "comfort", "tyre load varies"));
        table.heading(title + ": comfort against grip over the damping ratio ("
                + units.of(Dimension.DAMPING).symbol() + ", m/s², %)");
        for (DampingSweep.Point point :
                DampingSweep.of(axle, answer.ride().road(), answer.ride().speed())) {
            point(table, point, "");
        }
        axle.damped().ifPresent(damped -> point(table, DampingSweep.of(axle, damped), "as set"));
        for (AxleRide.Setting setting :
                axle.settings(answer.car(), answer.ride().road(), answer.ride().speed())) {
            point(table, DampingSweep.of(axle, setting.damped()), "\"" + setting.name() + "\"");
        }
        return table.build();
    }

    private void point(Table.Builder table, DampingSweep.Point point, String name) {
        table.row(
                (Numbers.fixed(point.dampingRatio(), 2) + "  " + name).stripTrailing(),
                "",
                List.of(
                        Numbers.fixed(
                                units.of(Dimension.DAMPING).fromSi(point.dampingRate()), units == Units.METRIC ? 0 : 1),
                        Numbers.fixed(point.weightedAcceleration(), 3),
                        percent(point.tyreLoadVariation())));
    }
}
