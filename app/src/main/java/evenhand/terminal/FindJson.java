package evenhand.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Trial;
import evenhand.choice.Finding;
import evenhand.choice.Span;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.AimText;
import evenhand.words.FindWords;
import evenhand.words.Units;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;

/** The answers of {@code find} in JSON. */
final class FindJson {
    private FindJson() {}

    static byte[] write(Scenario scenario, Trial trial, Setup setup, Finding finding) {
        return JsonText.of("find", json -> {
            SetupJson.scenario(json, scenario, trial.load());
            json.writeStringField("setup", setup.name());
            if (finding instanceof Finding.One one) {
                json.writeStringField("change", one.change().path());
                aim(json, one.aim(), one.met());
                number(json, "value", one.value());
                json.writeStringField("valueUnit", unit(one.change()));
                achieved(json, one.aim().judged().criterion(), one.achieved(), one.reach());
                json.writeArrayFieldStart("solutions");
                for (double solution : one.solutions()) {
                    json.writeNumber(solution + 0.0);
                }
                json.writeEndArray();
                Criterion criterion = one.aim().judged().criterion();
                number(json, "slopeAtValue", criterion.unit().fromSi(one.slope()));
                json.writeArrayFieldStart("curve");
                for (Finding.Point point : one.curve()) {
                    json.writeStartArray();
                    json.writeNumber(point.at() + 0.0);
                    json.writeNumber(criterion.unit().fromSi(point.figure()) + 0.0);
                    json.writeEndArray();
                }
                json.writeEndArray();
                kept(json, one.kept());
                notes(json, one.notes());
            } else if (finding instanceof Finding.Several several) {
                json.writeArrayFieldStart("changes");
                for (int i = 0; i < several.changes().size(); i++) {
                    json.writeStartObject();
                    json.writeStringField("change", several.changes().get(i).path());
                    number(json, "value", several.values().get(i));
                    json.writeStringField("valueUnit", unit(several.changes().get(i)));
                    json.writeEndObject();
                }
                json.writeEndArray();
                aim(json, several.aim(), several.met());
                achieved(json, several.aim().judged().criterion(), several.achieved(), several.reach());
                kept(json, several.kept());
                notes(json, several.notes());
            } else if (finding instanceof Finding.NoValue none) {
                SetupJson.noAnswer(json, none.reason(), none.text());
            }
            json.writeStringField("words", String.join(" ", FindWords.of(finding, Units.METRIC)));
            SetupJson.estimatedAndWarnings(json, setup);
        });
    }

    private static void number(JsonGenerator json, String key, double value) throws IOException {
        JsonText.number(json, key, OptionalDouble.of(value));
    }

    private static String unit(Span span) {
        return span.adjustable().dimension().jsonUnit();
    }

    private static void aim(JsonGenerator json, Aim aim, boolean met) throws IOException {
        CompareJson.judged(json, aim.judged());
        CompareJson.value(json, "aim", aim.judged().criterion(), aim.value());
        json.writeStringField("status", met ? "met" : "nearest");
    }

    private static void achieved(JsonGenerator json, Criterion criterion, double achieved, Finding.Reach reach)
            throws IOException {
        CompareJson.value(json, "achieved", criterion, achieved);
        json.writeObjectFieldStart("reach");
        CompareJson.value(json, "lowest", criterion, reach.lowest());
        CompareJson.value(json, "highest", criterion, reach.highest());
        json.writeEndObject();
    }

    private static void kept(JsonGenerator json, List<Finding.Kept> kept) throws IOException {
        if (kept.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("kept");
        for (Finding.Kept one : kept) {
            Criterion criterion = one.keep().judged().criterion();
            json.writeStartObject();
            json.writeStringField("keep", AimText.write(one.keep(), Units.METRIC));
            if (one.value().isPresent()) {
                CompareJson.value(json, "value", criterion, one.value().getAsDouble());
            }
            json.writeStringField("unit", criterion.unit().symbol());
            json.writeBooleanField("ok", one.ok());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void notes(JsonGenerator json, List<Finding.Note> notes) throws IOException {
        json.writeArrayFieldStart("notes");
        for (Finding.Note note : notes) {
            json.writeString(note.key());
        }
        json.writeEndArray();
    }
}
