package evenhand.terminal;

import evenhand.choice.Effect;
import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.List;

/** The answers of {@code effects} as CSV, a row per difference. */
final class EffectsCsv {
    private EffectsCsv() {}

    static String write(List<EffectsCommand.Answer> answers, Units units) {
        StringBuilder csv =
                new StringBuilder("setup,change,step,stepUnit,figure,lateralAcceleration_g,unit,base,difference\n");
        for (EffectsCommand.Answer answer : answers) {
            if (answer instanceof EffectsCommand.Found found) {
                for (Effect effect : found.effects()) {
                    rows(csv, answer.setup().name(), effect, units);
                }
            }
        }
        return csv.toString();
    }

    private static void rows(StringBuilder csv, String setup, Effect effect, Units units) {
        String start = BalanceCsv.quoted(setup) + "," + effect.adjustable().path() + "," + step(effect, units);
        for (Effect.Move move : effect.moves()) {
            Unit unit = CompareCsv.unit(move.judged(), units);
            csv.append(start).append(',').append(CompareCsv.judged(move.judged(), units));
            csv.append(',').append(CompareCsv.number(unit, move.base()));
            csv.append(',').append(CompareCsv.number(unit, move.difference())).append('\n');
        }
    }

    /** Metric as in JSON, in SI. */
    private static String step(Effect effect, Units units) {
        if (units == Units.METRIC) {
            return (effect.step() + 0.0) + "," + effect.adjustable().dimension().jsonUnit();
        }
        Unit unit = effect.adjustable().dimension().imperial();
        return CompareCsv.number(unit, effect.step()) + "," + unit.symbol();
    }
}
