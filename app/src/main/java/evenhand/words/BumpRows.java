package evenhand.words;

import evenhand.answers.BumpFigures;
import evenhand.answers.Figure;
import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** The figures of set-ups over an event beside one another, wheel by wheel. */
public final class BumpRows {
    private static final String NOTHING = "–";

    private final Units units;
    private final List<Optional<Bump>> bumps;
    private final List<Row> rows = new ArrayList<>();

    private BumpRows(Units units, List<Optional<Bump>> bumps) {
        this.units = units;
        this.bumps = List.copyOf(bumps);
    }

    /** One figure, a cell for each set-up. */
    public record Row(String words, String unit, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** Those of one wheel. */
    public record Group(String heading, List<Row> rows) {
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /** All that is known of each wheel; a set-up without an answer has empty cells, a figure that none has no row. */
    public static List<Group> of(List<BumpAnswer> answers, Direction direction, Units units) {
        return groups(answers, direction, units, BumpRows::all);
    }

    /** What matters of each wheel: jolt, travel that is left, contact and grip. */
    public static List<Group> inShort(List<BumpAnswer> answers, Direction direction, Units units) {
        return groups(answers, direction, units, BumpRows::few);
    }

    private static List<Group> groups(
            List<BumpAnswer> answers, Direction direction, Units units, Consumer<BumpRows> choice) {
        List<List<BumpWheel>> wheels =
                answers.stream().map(answer -> BumpWheel.of(answer, direction)).toList();
        Set<String> headings = new LinkedHashSet<>();
        wheels.forEach(own -> own.forEach(wheel -> headings.add(wheel.heading())));
        List<Group> groups = new ArrayList<>();
        for (String heading : headings) {
            List<Optional<Bump>> bumps = wheels.stream()
                    .map(own -> own.stream()
                            .filter(wheel -> wheel.heading().equals(heading))
                            .map(BumpWheel::bump)
                            .findFirst())
                    .toList();
            BumpRows chosen = new BumpRows(units, bumps);
            choice.accept(chosen);
            groups.add(new Group(heading, chosen.rows));
        }
        return groups;
    }

    private void all() {
        number(BumpFigures.PEAK_BODY_ACCELERATION);
        number(BumpFigures.PEAK_BUMP_TRAVEL);
        number(BumpFigures.BUMP_TRAVEL_TO_STOP);
        number(BumpFigures.BUMP_TRAVEL_TO_METAL);
        said("bump stop", bump -> bump.room().toStop().isPresent(), Bump::stopTouched, "touched");
        said("metal", bump -> bump.room().toMetal().isPresent(), Bump::metalTouched, "met");
        number(BumpFigures.PEAK_DROOP_TRAVEL);
        number(BumpFigures.DROOP_TRAVEL);
        number(BumpFigures.LEAST_TYRE_LOAD);
        number(BumpFigures.TIME_OFF_GROUND);
        number(BumpFigures.GRIP_LOST);
    }

    private void few() {
        number(BumpFigures.PEAK_BODY_ACCELERATION);
        number(BumpFigures.LEFT_TO_STOP);
        number(BumpFigures.LEFT_TO_METAL);
        number(BumpFigures.LEFT_IN_DROOP);
        number(BumpFigures.LEAST_TYRE_LOAD);
        number(BumpFigures.TIME_OFF_GROUND);
        number(BumpFigures.GRIP_LOST);
    }

    private void number(Figure<Bump> figure) {
        List<String> cells = new ArrayList<>();
        for (Optional<Bump> bump : bumps) {
            OptionalDouble value =
                    bump.isPresent() ? figure.in(units.of(figure.dimension()), bump.get()) : OptionalDouble.empty();
            cells.add(value.isPresent() ? Numbers.fixed(value.getAsDouble(), units.digits(figure)) : NOTHING);
        }
        add(figure.words(), units.of(figure.dimension()).symbol(), cells);
    }

    private void said(String words, Predicate<Bump> known, Predicate<Bump> happened, String word) {
        List<String> cells = new ArrayList<>();
        for (Optional<Bump> bump : bumps) {
            cells.add(bump.filter(known)
                    .map(one -> happened.test(one) ? word : "clear")
                    .orElse(NOTHING));
        }
        add(words, "", cells);
    }

    private void add(String words, String unit, List<String> cells) {
        if (cells.stream().anyMatch(cell -> !cell.equals(NOTHING))) {
            rows.add(new Row(words, unit, cells));
        }
    }
}
