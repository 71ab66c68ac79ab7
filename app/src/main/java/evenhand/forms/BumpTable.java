package evenhand.forms;

import evenhand.answers.BumpFigures;
import evenhand.answers.Figure;
import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.turn.Direction;
import evenhand.words.Units;
import evenhand.words.road.BumpWheel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The figures of set-ups over an event beside one another, wheel by wheel. A set-up without an answer has empty cells, a
 * figure that none has no row.
 */
public final class BumpTable {
    /** What matters of a wheel: jolt, travel that is left, contact and grip. */
    private static final List<Figure<Bump>> IN_SHORT = List.of(
            BumpFigures.PEAK_BODY_ACCELERATION,
            BumpFigures.LEFT_TO_STOP,
            BumpFigures.LEFT_TO_METAL,
            BumpFigures.LEFT_IN_DROOP,
            BumpFigures.LEAST_TYRE_LOAD,
            BumpFigures.TIME_OFF_GROUND,
            BumpFigures.GRIP_LOST);

    private static final List<Figure<Bump>> INTO_BUMP = List.of(
            BumpFigures.PEAK_BODY_ACCELERATION,
            BumpFigures.PEAK_BUMP_TRAVEL,
            BumpFigures.BUMP_TRAVEL_TO_STOP,
            BumpFigures.BUMP_TRAVEL_TO_METAL);

    private static final List<Figure<Bump>> INTO_DROOP = List.of(
            BumpFigures.PEAK_DROOP_TRAVEL,
            BumpFigures.DROOP_TRAVEL,
            BumpFigures.LEAST_TYRE_LOAD,
            BumpFigures.TIME_OFF_GROUND,
            BumpFigures.GRIP_LOST);

    private BumpTable() {}

    /** All that is known of each wheel. */
    public static <A> Table of(
            List<A> setups,
            Function<A, String> name,
            Function<A, BumpAnswer> answer,
            Direction direction,
            Units units) {
        Columns<A> columns = new Columns<>(setups, name, units);
        for (String heading : headings(setups, answer, direction)) {
            Function<A, Optional<Bump>> wheel = setup -> wheel(answer.apply(setup), direction, heading);
            columns.heading(heading);
            INTO_BUMP.forEach(figure -> columns.figureIfAny(figure, wheel));
            columns.rowIfAny("bump stop", "", said(wheel, Bump.Room::toStop, Bump::stopTouched, "touched"));
            columns.rowIfAny("metal", "", said(wheel, Bump.Room::toMetal, Bump::metalTouched, "met"));
            INTO_DROOP.forEach(figure -> columns.figureIfAny(figure, wheel));
        }
        return columns.table();
    }

    /** What matters of each. */
    public static <A> Table inShort(
            List<A> setups,
            Function<A, String> name,
            Function<A, BumpAnswer> answer,
            Direction direction,
            Units units) {
        Columns<A> columns = new Columns<>(setups, name, units);
        for (String heading : headings(setups, answer, direction)) {
            columns.heading(heading);
            IN_SHORT.forEach(
                    figure -> columns.figureIfAny(figure, setup -> wheel(answer.apply(setup), direction, heading)));
        }
        return columns.table();
    }

    private static <A> List<String> headings(List<A> setups, Function<A, BumpAnswer> answer, Direction direction) {
        return setups.stream()
                .flatMap(setup -> BumpWheel.of(answer.apply(setup), direction).stream())
                .map(BumpWheel::heading)
                .distinct()
                .toList();
    }

    private static Optional<Bump> wheel(BumpAnswer answer, Direction direction, String heading) {
        return BumpWheel.of(answer, direction).stream()
                .filter(wheel -> wheel.heading().equals(heading))
                .map(BumpWheel::bump)
                .findFirst();
    }

    private static <A> Function<A, String> said(
            Function<A, Optional<Bump>> wheel,
            Function<Bump.Room, OptionalDouble> room,
            Predicate<Bump> happened,
            String word) {
        return setup -> wheel.apply(setup)
                .filter(bump -> room.apply(bump.room()).isPresent())
                .map(bump -> happened.test(bump) ? word : "clear")
                .orElse(Table.NOTHING);
    }
}
