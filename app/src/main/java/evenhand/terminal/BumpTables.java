package evenhand.terminal;

import evenhand.answers.BumpFigures;
import evenhand.answers.Figure;
import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.quantity.Dimension;
import evenhand.scenario.Scenario;
import evenhand.turn.Direction;
import evenhand.turn.Wheel;
import evenhand.words.BumpWords;
import evenhand.words.EventWords;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.RoughnessWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;

/** The answers of {@code bump} for people: a table of all set-ups, then words of each. */
final class BumpTables {
    private static final String NOTHING = "–";

    private final Console console;
    private final Units units;
    private final StringBuilder text = new StringBuilder();

    BumpTables(Console console, Units units) {
        this.console = console;
        this.units = units;
    }

    String write(
            Scenario scenario,
            Optional<LoadCase> load,
            BumpCommand.Question question,
            List<BumpCommand.Answer> answers) {
        text.append(Paint.bold(Console.oneLine(scenario.title()), console)).append('\n');
        String way = question.direction() == Direction.LEFT ? "left" : "right";
        String where = question.pace().isPresent()
                ? ", turning " + way + " at " + Units.pace(question.pace().getAsDouble()) + " on a radius of "
                        + RoughnessWords.road(
                                question.speed()
                                        * question.speed()
                                        / question.pace().getAsDouble(),
                                units)
                : ", straight ahead";
        Paragraph.append(
                text,
                "",
                "Over " + question.over() + " at " + units.show(question.speed(), Dimension.SPEED, 0) + where + ".",
                console.columns());
        load.ifPresent(aboard -> Paragraph.append(text, "", LoadWords.aboard(aboard, units), console.columns()));
        List<BumpCommand.Answer> answered = answers.stream()
                .filter(answer -> !BumpJson.byKey(answer.bump()).isEmpty())
                .toList();
        if (!answered.isEmpty()) {
            text.append('\n').append(table(answered, question)).append('\n');
            Paragraph.append(
                    text,
                    "",
                    "Grip lost: part of the side force that changes of load take, from the beginning until half a second"
                            + " after the event, "
                            + (question.pace().isPresent()
                                    ? "at the slip that the wheel has in the corner."
                                    : "of the most that the tyre could give."),
                    console.columns());
        }
        for (BumpCommand.Answer answer : answers) {
            text.append('\n').append(Paint.bold(answer.setup().name(), console)).append('\n');
            if (answer.bump() instanceof BumpAnswer.None none) {
                Paragraph.append(text, "  ", "No answer: " + none.text() + ".", console.columns());
            }
            for (String sentence : BumpWords.of(answer.car(), answer.bump(), question.direction(), units)) {
                Paragraph.append(text, "  ", sentence, console.columns());
            }
        }
        return text.toString();
    }

    private String table(List<BumpCommand.Answer> answers, BumpCommand.Question question) {
        Table table =
                new Table(answers.stream().map(answer -> answer.setup().name()).toList());
        if (question.pace().isEmpty()) {
            for (End end : End.values()) {
                table.heading(end == End.FRONT ? "Front wheels" : "Rear wheels");
                rows(table, answers, answer -> bump(answer, EventWords.end(end)));
            }
        } else {
            for (Wheel wheel : Wheel.values()) {
                boolean inner = wheel.left() == (question.direction() == Direction.LEFT);
                table.heading((inner ? "Inner " : "Outer ") + EventWords.end(wheel.end()) + " wheel");
                rows(table, answers, answer -> bump(answer, wheel.key()));
            }
        }
        return table.text(console);
    }

    private static Optional<Bump> bump(BumpCommand.Answer answer, String key) {
        return Optional.ofNullable(BumpJson.byKey(answer.bump()).get(key));
    }

    private void rows(
            Table table, List<BumpCommand.Answer> answers, Function<BumpCommand.Answer, Optional<Bump>> wheel) {
        List<Optional<Bump>> bumps = answers.stream().map(wheel).toList();
        row(table, BumpFigures.PEAK_BODY_ACCELERATION, bumps);
        row(table, BumpFigures.PEAK_BUMP_TRAVEL, bumps);
        row(table, BumpFigures.BUMP_TRAVEL_TO_STOP, bumps);
        row(table, BumpFigures.BUMP_TRAVEL_TO_METAL, bumps);
        said(table, "bump stop", bumps, bump -> bump.room().toStop().isPresent(), Bump::stopTouched, "touched");
        said(table, "metal", bumps, bump -> bump.room().toMetal().isPresent(), Bump::metalTouched, "met");
        row(table, BumpFigures.PEAK_DROOP_TRAVEL, bumps);
        row(table, BumpFigures.DROOP_TRAVEL, bumps);
        row(table, BumpFigures.LEAST_TYRE_LOAD, bumps);
        row(table, BumpFigures.TIME_OFF_GROUND, bumps);
        row(table, BumpFigures.GRIP_LOST, bumps);
    }

    /** A row of numbers; none where no set-up has one. */
    private void row(Table table, Figure<Bump> figure, List<Optional<Bump>> bumps) {
        List<String> cells = new ArrayList<>();
        for (Optional<Bump> bump : bumps) {
            OptionalDouble value =
                    bump.isPresent() ? figure.in(units.of(figure.dimension()), bump.get()) : OptionalDouble.empty();
            cells.add(value.isPresent() ? Numbers.fixed(value.getAsDouble(), units.digits(figure)) : NOTHING);
        }
        add(table, figure.words(), units.of(figure.dimension()).symbol(), cells);
    }

    private static void said(
            Table table,
            String label,
            List<Optional<Bump>> bumps,
            Predicate<Bump> known,
            Predicate<Bump> happened,
            String word) {
        List<String> cells = new ArrayList<>();
        for (Optional<Bump> bump : bumps) {
            cells.add(bump.filter(known)
                    .map(one -> happened.test(one) ? word : "clear")
                    .orElse(NOTHING));
        }
        add(table, label, "", cells);
    }

    private static void add(Table table, String label, String unit, List<String> cells) {
        if (cells.stream().anyMatch(cell -> !cell.equals(NOTHING))) {
            table.row(label, unit, cells);
        }
    }
}
