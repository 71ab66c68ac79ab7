package evenhand.words;

import static java.util.stream.Collectors.joining;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.quantity.Unit;

/** Aims as they are written: "understeer 0.8 deg/g at 0.5 g", "roll gradient at most 5.5 deg/g at 0.5 g". */
public final class AimText {
    private AimText() {}

    /** An aim as it is written: "understeer at most 0.8 deg/g at 0.5 g". */
    public static String write(Aim aim, Units units) {
        if (aim.equals(Aim.frontFirst())) {
            return Criterion.FRONT_FIRST.name();
        }
        return aim.judged().criterion().name() + " " + demand(aim, units)
                + aim.judged().pace().stream()
                        .mapToObj(pace -> " at " + Units.pace(pace))
                        .collect(joining());
    }

    /** What the figure is to be: "at most 0.8 deg/g". */
    public static String demand(Aim aim, Units units) {
        String side = switch (aim.sense()) {
            case EXACTLY -> "";
            case AT_MOST -> "at most ";
            case AT_LEAST -> "at least ";
        };
        Unit unit = units.of(aim.judged().criterion());
        String number = Numbers.significant(unit.fromSi(aim.value()), 5);
        return side + number + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
    }
}
