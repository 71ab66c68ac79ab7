package evenhand.window;

import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.catalogue.Range;
import evenhand.quantity.Unit;
import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import evenhand.window.desk.FormField;
import evenhand.window.desk.Knob;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Work;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What an adjustment moves while it is moved, in a few words beside it. */
final class Effects {
    private Effects() {}

    /**
     * The same in fewer and fewer words: "near the limit −0.40 deg/g, understeer −0.12 deg/g at 0.5 g", "−0.40 deg/g near the limit",
     * "−0.40 deg/g".
     */
    static List<String> words(TurnedSetup before, TurnedSetup now, Work work, Units units) {
        Optional<String> limit = difference(TurnFigures.NEAR_UNDERSTEER, limit(before), limit(now), units);
        Optional<String> pace = before.reaches(work.pace()) && now.reaches(work.pace())
                ? difference(TurnFigures.UNDERSTEER_GRADIENT, before.row(work.pace()), now.row(work.pace()), units)
                : Optional.empty();
        String atPace = " at " + Units.pace(work.pace());
        List<String> wordings = new ArrayList<>();
        if (limit.isPresent() && pace.isPresent()) {
            wordings.add("near the limit " + limit.get() + ", understeer " + pace.get() + atPace);
        }
        if (limit.isPresent()) {
            wordings.add(limit.get() + " near the limit");
            wordings.add(limit.get());
        } else if (pace.isPresent()) {
            wordings.add("no limit to compare, understeer " + pace.get() + atPace);
            wordings.add(pace.get() + atPace);
        } else {
            wordings.add("nothing to compare");
            wordings.add("–");
        }
        return wordings;
    }

    private static Optional<Limit> limit(TurnedSetup setup) {
        return setup.turn().map(TurnAnswer.Turns::limit);
    }

    private static <T> Optional<String> difference(Figure<T> figure, Optional<T> before, Optional<T> now, Units units) {
        Unit unit = units.of(figure.dimension());
        OptionalDouble from = before.map(row -> figure.in(unit, row)).orElse(OptionalDouble.empty());
        OptionalDouble to = now.map(row -> figure.in(unit, row)).orElse(OptionalDouble.empty());
        return from.isPresent() && to.isPresent()
                ? Optional.of(Numbers.signed(to.getAsDouble() - from.getAsDouble(), figure.digits()) + " "
                        + figure.symbol(unit))
                : Optional.empty();
    }

    /** The usual range of a knob, in the units of show. */
    static String range(Knob knob, Units units) {
        Range range = knob.value().slot().usual().orElseThrow();
        Unit unit = FormField.unit(knob.value().dimension(), units);
        return Numbers.significant(unit.fromSi(range.low()), 3) + " to "
                + FormField.show(range.high(), knob.value().dimension(), units);
    }
}
