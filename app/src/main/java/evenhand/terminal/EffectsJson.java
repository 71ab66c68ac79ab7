package evenhand.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import evenhand.answers.Criterion;
import evenhand.answers.Trial;
import evenhand.choice.Effect;
import evenhand.scenario.Scenario;
import evenhand.words.EffectWords;
import evenhand.words.Units;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;

/** The answers of {@code effects} in JSON. */
final class EffectsJson {
    private EffectsJson() {}

    static byte[] write(Scenario scenario, Trial trial, List<EffectsCommand.Answer> answers) {
        return JsonText.of("effects", json -> {
            SetupJson.scenario(json, scenario, trial.load());
            json.writeArrayFieldStart("setups");
            for (EffectsCommand.Answer answer : answers) {
                json.writeStartObject();
                json.writeStringField("name", answer.setup().name());
                if (answer instanceof EffectsCommand.Found found) {
                    found(json, found);
                } else if (answer instanceof EffectsCommand.Unanswered none) {
                    SetupJson.noAnswer(json, none.reason(), none.text());
                }
                SetupJson.estimatedAndWarnings(json, answer.setup());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void found(JsonGenerator json, EffectsCommand.Found found) throws IOException {
        json.writeArrayFieldStart("effects");
        for (Effect effect : found.effects()) {
            json.writeStartObject();
            json.writeStringField("change", effect.step().path());
            if (effect.step() instanceof Effect.ByNumber number) {
                JsonText.number(json, "step", OptionalDouble.of(number.size()));
                json.writeStringField(
                        "stepUnit", number.adjustable().dimension().jsonUnit());
            } else if (effect.step() instanceof Effect.ToSetting setting) {
                json.writeNumberField("step", 1);
                json.writeStringField("stepUnit", "setting");
                json.writeStringField("from", setting.from());
                json.writeStringField("to", setting.to());
            }
            json.writeArrayFieldStart("differences");
            for (Effect.Move move : effect.moves()) {
                Criterion criterion = move.judged().criterion();
                json.writeStartObject();
                CompareJson.judged(json, move.judged());
                CompareJson.value(json, "base", criterion, move.base());
                CompareJson.value(json, "difference", criterion, move.difference());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        if (found.complaint().isPresent()) {
            List<String> words = EffectWords.help(found.complaint().get(), found.effects(), Units.METRIC);
            json.writeStringField("words", String.join(" ", words));
        }
    }
}
