package evenhand.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import evenhand.answers.Criterion;
import evenhand.doubt.Doubt;
import evenhand.doubt.Measurement;
import evenhand.doubt.Spread;
import evenhand.scenario.Setup;
import evenhand.words.AimText;
import evenhand.words.DoubtWords;
import evenhand.words.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The answers of {@code doubt} in JSON. */
final class DoubtJson {
    private DoubtJson() {}

    static byte[] write(Doubted doubted) {
        return JsonText.of("doubt", json -> {
            SetupJson.scenario(json, doubted.scenario(), doubted.trial().load());
            json.writeNumberField("samples", doubted.samples());
            json.writeNumberField("seed", doubted.seed());
            json.writeArrayFieldStart("setups");
            for (Setup setup : doubted.scenario().setups()) {
                setup(json, doubted, setup);
            }
            json.writeEndArray();
            if (doubted.answer().isPresent()) {
                differences(json, doubted, doubted.answer().get());
                measureNext(json, doubted.answer().get());
            }
        });
    }

    private static void setup(JsonGenerator json, Doubted doubted, Setup setup) throws IOException {
        int place = doubted.answered().indexOf(setup);
        Optional<Doubted.Silent> silent = doubted.silent().stream()
                .filter(one -> one.setup().equals(setup))
                .findFirst();
        if (place < 0 && silent.isEmpty()) {
            return;
        }
        json.writeStartObject();
        json.writeStringField("name", setup.name());
        if (silent.isPresent()) {
            SetupJson.noAnswer(
                    json, silent.get().why().reason(), silent.get().why().text());
        } else {
            Doubt.Left left = doubted.answer().orElseThrow().cars().get(place);
            Optional<String> aim = doubted.aim().map(one -> AimText.write(one, Units.METRIC));
            figures(json, left);
            JsonText.number(json, "noAnswerShare", OptionalDouble.of(left.noAnswerShare()));
            if (aim.isPresent()) {
                json.writeObjectFieldStart("aim");
                json.writeStringField("text", aim.get());
                JsonText.number(json, "chance", left.chance());
                json.writeEndObject();
            }
            json.writeStringField("words", String.join(" ", DoubtWords.alone(left, doubted.aim(), Units.METRIC)));
        }
        SetupJson.estimatedAndWarnings(json, setup);
        json.writeEndObject();
    }

    private static void figures(JsonGenerator json, Doubt.Left left) throws IOException {
        json.writeArrayFieldStart("figures");
        for (Spread spread : left.spreads()) {
            Criterion criterion = spread.judged().criterion();
            json.writeStartObject();
            CompareJson.judged(json, spread.judged());
            if (spread.nominal().isPresent()) {
                CompareJson.value(json, "nominal", criterion, spread.nominal().getAsDouble());
            }
            CompareJson.value(json, "low", criterion, spread.low());
            CompareJson.value(json, "high", criterion, spread.high());
            CompareJson.value(json, "median", criterion, spread.median());
            CompareJson.value(json, "sd", criterion, spread.standardDeviation());
            JsonText.number(json, "noAnswerShare", OptionalDouble.of(spread.noAnswerShare()));
            json.writeArrayFieldStart("causes");
            for (Spread.Cause cause : spread.causes()) {
                json.writeStartObject();
                json.writeStringField("path", cause.path());
                JsonText.number(json, "share", OptionalDouble.of(cause.share()));
                JsonText.number(json, "standardError", OptionalDouble.of(cause.standardError()));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void differences(JsonGenerator json, Doubted doubted, Doubt.Answer answer) throws IOException {
        if (answer.differences().isEmpty()) {
            return;
        }
        String base = doubted.answered().get(0).name();
        json.writeArrayFieldStart("differences");
        for (int i = 0; i < answer.differences().size(); i++) {
            String name = doubted.answered().get(i + 1).name();
            Doubt.Left left = answer.differences().get(i);
            json.writeStartObject();
            json.writeStringField("name", name);
            json.writeStringField("base", base);
            figures(json, left);
            List<String> words =
                    DoubtWords.apart(name, base, left, answer.cars().get(i + 1), Units.METRIC);
            json.writeStringField("words", String.join(" ", words));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void measureNext(JsonGenerator json, Doubt.Answer answer) throws IOException {
        List<Spread> spreads = new ArrayList<>(answer.cars().get(0).spreads());
        json.writeArrayFieldStart("measureNext");
        for (Measurement one : answer.measureNext()) {
            Criterion criterion = spreads.get(0).judged().criterion();
            json.writeStartObject();
            json.writeStringField("path", one.tolerance().path());
            json.writeStringField("how", one.tolerance().number().slot().how());
            JsonText.number(json, "tolerance", OptionalDouble.of(one.halfWidth()));
            json.writeStringField(
                    "toleranceUnit", one.tolerance().number().dimension().jsonUnit());
            CompareJson.judged(json, spreads.get(0).judged());
            CompareJson.value(json, "low", criterion, one.low());
            CompareJson.value(json, "high", criterion, one.high());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
