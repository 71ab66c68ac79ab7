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
        String start = BalanceCsv.quoted(setup) + "," + effect.step().path() + "," + step(effect, units);
        for (Effect.Move move : effect.moves()) {
            Unit unit = CompareCsv.unit(move.judged(), units);
            csv.append(start).append(',').append(CompareCsv.judged(move.judged(), units));
            csv.append(',').append(CompareCsv.number(unit, move.base()));
            csv.append(',').append(CompareCsv.number(unit, move.difference())).append('\n');
        }
    }

    /** Metric as in JSON, in SI; a setting by its name. */
    private static String step(Effect effect, Units units) {
        if (!(effect.step() instanceof Effect.ByNumber number)) {
            return BalanceCsv.quoted(((Effect.ToSetting) effect.step()).to()) + ",setting";
        }
        if (units == Units.METRIC) {
            return (number.size() + 0.0) + "," + number.adjustable().dimension().jsonUnit();
        }
        Unit unit = number.adjustable().dimension().imperial();
        return CompareCsv.number(unit, number.size()) + "," + unit.symbol();
    }
}
