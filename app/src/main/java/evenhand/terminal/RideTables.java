package evenhand.terminal;

import evenhand.answers.Figure;
import evenhand.answers.RideFigures;
import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.AxleRide;
import evenhand.ride.DampingAtSpeed;
import evenhand.ride.DampingSweep;
import evenhand.ride.RoadResponse;
import evenhand.ride.Standing;
import evenhand.ride.Transfer;
import evenhand.scenario.Scenario;
import evenhand.words.EventWords;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.RideWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The answers of {@code ride} for people: set-ups side by side, then in words. */
final class RideTables {
    private static final String NOTHING = "–";

    /** Frequencies of the printed curve, Hz. */
    private static final double[] FREQUENCIES = {
        0.5, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10, 12.5, 16, 20, 25
    };

    private final Console console;
    private final Units units;
    private final RideReply reply;
    private final StringBuilder text = new StringBuilder();

    RideTables(Console console, Units units, RideReply reply) {
        this.console = console;
        this.units = units;
        this.reply = reply;
    }

    String write() {
        Scenario scenario = reply.scenario();
        List<SetupRide> answers = reply.setups();
        text.append(Paint.bold(Console.oneLine(scenario.title()), console)).append('\n');
        scenario.story().ifPresent(story -> Paragraph.append(text, "", story, console.columns()));
        text.append('\n');
        String where = "On " + reply.road().words() + " at " + units.show(reply.speed(), Dimension.SPEED, 0)
                + ". Rates and loads are those of one wheel.";
        Paragraph.append(text, "", where, console.columns());
        reply.road()
                .warning(reply.speed())
                .ifPresent(warning -> Paragraph.append(text, "", warning, console.columns()));
        Paragraph.append(text, "", RideWords.PRACTICE, console.columns());
        reply.load()
                .ifPresent(aboard -> Paragraph.append(text, "", LoadWords.aboard(aboard, units), console.columns()));
        List<SetupRide.Rides> riding = reply.riding();
        if (!riding.isEmpty()) {
            text.append('\n').append(table(riding).text(console));
        }
        words(answers);
        if (reply.curves()) {
            riding.forEach(this::curves);
        }
        SetupNotes notes = new SetupNotes(text, console, units);
        notes.estimated(answers);
        notes.warnings(answers);
        return text.toString();
    }

    private Table table(List<SetupRide.Rides> answers) {
        List<String> names = new ArrayList<>();
        for (SetupRide.Rides answer : answers) {
            names.add(answer.setup().name());
        }
        Table table = new Table(names);
        for (End end : End.values()) {
            String name = EventWords.end(end);
            table.heading("At the " + name);
            for (Figure<AxleRide> figure : RideFigures.AXLE) {
                row(table, figure, answers, answer -> answer.ride().axle(end));
            }
            damping(table, answers, end);
            tramp(table, answers, end);
            table.heading("At the " + name + ", at rest and in the turn");
            for (Figure<Standing> figure : RideFigures.STANDING) {
                row(table, figure, answers, answer -> answer.ride().axle(end).standing());
            }
            row(
                    table,
                    RideFigures.PERCH_MOVE,
                    answers,
                    answer -> answer.ride().axle(end).standing());
            row(
                    table,
                    RideFigures.PRELOAD_IN_DROOP,
                    answers,
                    answer -> answer.ride().axle(end).standing());
            row(
                    table,
                    RideFigures.STOP_TOUCHED,
                    answers,
                    answer -> answer.stops().of(end));
        }
        for (End end : End.values()) {
            table.heading("On the road, " + EventWords.end(end) + ", r.m.s.");
            for (Figure<RoadResponse> figure : RideFigures.ROAD) {
                List<String> cells = new ArrayList<>();
                for (SetupRide.Rides answer : answers) {
                    cells.add(answer.ride()
                            .axle(end)
                            .damped()
                            .map(damped -> cell(figure, damped.road()))
                            .orElse(NOTHING));
                }
                table.row(figure.words(), figure.symbol(unit(figure)), cells);
            }
            List<String> cells = new ArrayList<>();
            for (SetupRide.Rides answer : answers) {
                OptionalDouble variation = answer.ride().tyreLoadVariation(end);
                cells.add(variation.isPresent() ? percent(variation.getAsDouble()) : NOTHING);
            }
            table.row(RideFigures.TYRE_LOAD_VARIATION.words(), "%", cells);
        }
        table.heading("The body as a whole");
        RideFigures.PITCH_BOUNCE.forEach(
                figure -> row(table, figure, answers, answer -> answer.ride().pitchBounce()));
        return table;
    }

    private static String percent(double ratio) {
        return Numbers.fixed(Unit.of("%").fromSi(ratio), 1);
    }

    private void damping(Table table, List<SetupRide.Rides> answers, End end) {
        for (int i = 0; i < DampingAtSpeed.SPEEDS.size(); i++) {
            List<String> heave = new ArrayList<>();
            List<String> roll = new ArrayList<>();
            for (SetupRide.Rides answer : answers) {
                List<DampingAtSpeed> speeds = answer.ride().axle(end).dampingBySpeed(answer.car());
                heave.add(speeds.isEmpty() ? NOTHING : both(speeds.get(i)));
                roll.add(
                        speeds.isEmpty() ? NOTHING : Numbers.fixed(speeds.get(i).rollMean(), 2));
            }
            String speed = Numbers.plain(DampingAtSpeed.SPEEDS.get(i), 2) + " m/s";
            table.row("  ratio by bump/rebound at " + speed, "", heave);
            table.row("  ratio in roll at " + speed, "", roll);
        }
    }

    private static String both(DampingAtSpeed damping) {
        return Numbers.fixed(damping.bump(), 2) + "/" + Numbers.fixed(damping.rebound(), 2);
    }

    private void tramp(Table table, List<SetupRide.Rides> answers, End end) {
        if (answers.stream().noneMatch(answer -> answer.ride().axle(end).tramp().isPresent())) {
            return;
        }
        RideFigures.TRAMP.forEach(figure -> {
            List<String> cells = new ArrayList<>();
            for (SetupRide.Rides answer : answers) {
                cells.add(answer.ride()
                        .axle(end)
                        .tramp()
                        .map(tramp -> cell(figure, tramp))
                        .orElse(NOTHING));
            }
            table.row(figure.words(), figure.symbol(unit(figure)), cells);
        });
    }

    private <T> void row(
            Table table, Figure<T> figure, List<SetupRide.Rides> answers, Function<SetupRide.Rides, T> part) {
        List<String> cells = new ArrayList<>();
        for (SetupRide.Rides answer : answers) {
            cells.add(cell(figure, part.apply(answer)));
        }
        if (!cells.stream().allMatch(NOTHING::equals)) {
            table.row(figure.words(), figure.symbol(unit(figure)), cells);
        }
    }

    /** Ratios stand as ratios here, and vibration in m/s²: so the trade speaks of them. */
    private Unit unit(Figure<?> figure) {
        return figure.dimension() == Dimension.RATIO || figure.dimension() == Dimension.ACCELERATION
                ? figure.unit()
                : units.of(figure.dimension());
    }

    /** A lbf*s/in is some 175 times coarser than a N*s/m. */
    private int digits(Figure<?> figure) {
        return units.digits(figure) + (figure.dimension() == Dimension.DAMPING && units == Units.IMPERIAL ? 1 : 0);
    }

    private <T> String cell(Figure<T> figure, T part) {
        OptionalDouble value = figure.in(unit(figure), part);
        return value.isPresent() ? Numbers.fixed(value.getAsDouble(), digits(figure)) : NOTHING;
    }

    private void words(List<SetupRide> answers) {
        for (SetupRide answer : answers) {
            text.append('\n').append(Paint.bold(answer.setup().name(), console)).append('\n');
            answer.setup().note().ifPresent(note -> Paragraph.append(text, "  ", "(" + note + ")", console.columns()));
            if (answer instanceof SetupRide.Rides rides) {
                rides.words(units).forEach(sentence -> Paragraph.append(text, "  ", sentence, console.columns()));
            } else if (answer instanceof SetupAnswer.None none) {
                Paragraph.append(text, "  ", none.sentence(), console.columns());
            }
        }
    }

    private void curves(SetupRide.Rides answer) {
        for (End end : End.values()) {
            AxleRide axle = answer.ride().axle(end);
            Transfer transfer =
                    new Transfer(axle.damped().map(AxleRide.Damped::quarterCar).orElse(axle.undamped()));
            String title = answer.setup().name() + ", " + EventWords.end(end);
            Table response = new Table(List.of("body acceleration", "suspension travel", "tyre deflection"));
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
            text.append('\n').append(response.text(console));
            text.append('\n').append(sweep(answer, axle, title).text(console));
        }
    }

    private Table sweep(SetupRide.Rides answer, AxleRide axle, String title) {
        Table table = new Table(List.of("damper rate", "comfort", "tyre load varies"));
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
        return table;
    }

    private void point(Table table, DampingSweep.Point point, String name) {
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
