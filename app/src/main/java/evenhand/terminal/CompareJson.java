package evenhand.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.TurnFigures;
import evenhand.choice.Change;
import evenhand.choice.Comparison;
import evenhand.quantity.Dimension;
import evenhand.words.ComparisonWords;
import evenhand.words.Units;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;

/** The answers of {@code compare} in JSON. */
final class CompareJson {
    private CompareJson() {}

    static byte[] write(Compared compared) {
        return JsonText.of("compare", json -> {
            SetupJson.scenario(json, compared.scenario(), compared.trial().load());
            json.writeStringField("base", compared.base().name());
            json.writeArrayFieldStart("setups");
            for (Compared.Against against : compared.setups()) {
                json.writeStartObject();
                json.writeStringField("name", against.setup().name());
                if (against.answer() instanceof Compared.Answered answered) {
                    comparison(json, answered.comparison());
                } else if (against.answer() instanceof Compared.Unanswered none) {
                    SetupJson.noAnswer(json, none.reason(), none.text());
                }
                SetupJson.estimatedAndWarnings(json, against.setup());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void comparison(JsonGenerator json, Comparison comparison) throws IOException {
        json.writeArrayFieldStart("differences");
        for (Comparison.Difference difference : comparison.differences()) {
            Criterion criterion = difference.judged().criterion();
            json.writeStartObject();
            judged(json, difference.judged());
            value(json, "base", criterion, difference.base());
            value(json, "value", criterion, difference.value());
            value(json, "difference", criterion, difference.difference());
            if (difference.shares().isPresent()) {
                json.writeArrayFieldStart("shares");
                List<Double> shares = difference.shares().get().shares();
                for (int i = 0; i < shares.size(); i++) {
                    Change change = comparison.changes().get(i);
                    json.writeStartObject();
                    json.writeStringField("change", change.path());
                    json.writeStringField("from", change.from());
                    json.writeStringField("to", change.to());
                    value(json, "share", criterion, shares.get(i));
                    json.writeEndObject();
                }
                json.writeEndArray();
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("words", String.join(" ", ComparisonWords.of(comparison, Units.METRIC)));
    }

    /** Which figure, at which pace, in which unit. */
    static void judged(JsonGenerator json, Judged judged) throws IOException {
        json.writeStringField("figure", judged.criterion().name());
        if (judged.pace().isPresent()) {
            double pace = Dimension.ACCELERATION.metric().fromSi(judged.pace().getAsDouble());
            JsonText.number(json, TurnFigures.LATERAL_ACCELERATION.key(), OptionalDouble.of(pace));
        }
        json.writeStringField("unit", judged.criterion().unit().symbol());
    }

    /** A number of a criterion, in its unit. */
    static void value(JsonGenerator json, String key, Criterion criterion, double si) throws IOException {
        JsonText.number(json, key, OptionalDouble.of(criterion.unit().fromSi(si)));
    }
}
