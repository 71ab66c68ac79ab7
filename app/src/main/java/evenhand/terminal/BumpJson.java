package evenhand.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import evenhand.answers.BumpFigures;
import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.bump.Series;
import evenhand.car.LoadCase;
import evenhand.quantity.Dimension;
import evenhand.scenario.Scenario;
import evenhand.turn.Direction;
import evenhand.turn.Wheel;
import evenhand.words.BumpWords;
import evenhand.words.EventWords;
import evenhand.words.Units;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The answers of {@code bump} in JSON. */
final class BumpJson {
    private BumpJson() {}

    static byte[] write(
            Scenario scenario,
            Optional<LoadCase> load,
            BumpCommand.Question question,
            List<BumpCommand.Answer> answers) {
        return JsonText.of("bump", json -> {
            SetupJson.scenario(json, scenario, load);
            json.writeStringField("over", question.over());
            JsonText.number(json, TurnFigures.SPEED.key(), OptionalDouble.of(question.speed()));
            if (question.pace().isPresent()) {
                double pace = question.pace().getAsDouble();
                acceleration(json, pace);
                json.writeNumberField("radius_m", question.speed() * question.speed() / pace);
                json.writeStringField("turn", question.direction().key());
            }
            json.writeArrayFieldStart("setups");
            for (BumpCommand.Answer answer : answers) {
                json.writeStartObject();
                json.writeStringField("name", answer.setup().name());
                answer(json, answer, question.direction());
                SetupJson.estimatedAndWarnings(json, answer.setup());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void acceleration(JsonGenerator json, double pace) throws IOException {
        JsonText.number(
                json,
                TurnFigures.LATERAL_ACCELERATION.key(),
                OptionalDouble.of(Dimension.ACCELERATION.metric().fromSi(pace)));
    }

    private static void answer(JsonGenerator json, BumpCommand.Answer answer, Direction direction) throws IOException {
        BumpAnswer bump = answer.bump();
        if (bump instanceof BumpAnswer.None none) {
            SetupJson.noAnswer(json, none.reason(), none.text());
            return;
        }
        if (bump instanceof BumpAnswer.BeyondLimit beyond) {
            acceleration(json, beyond.lateralAcceleration());
            json.writeBooleanField("beyondLimit", true);
            return;
        }
        json.writeStringField("words", String.join(" ", BumpWords.of(answer.car(), bump, direction, Units.METRIC)));
        for (Map.Entry<String, Bump> one : byKey(bump).entrySet()) {
            json.writeObjectFieldStart(one.getKey());
            wheel(json, one.getValue());
            json.writeEndObject();
        }
    }

    /** The wheels of an answer by their keys: axles straight ahead, wheels in mid-corner. */
    static Map<String, Bump> byKey(BumpAnswer answer) {
        Map<String, Bump> wheels = new LinkedHashMap<>();
        if (answer instanceof BumpAnswer.Straight straight) {
            straight.axles().entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .forEach(one -> wheels.put(EventWords.end(one.getKey()), one.getValue()));
        } else if (answer instanceof BumpAnswer.InCorner corner) {
            corner.wheels().entrySet().stream()
                    .sorted(Map.Entry.<Wheel, Bump>comparingByKey())
                    .forEach(one -> wheels.put(one.getKey().key(), one.getValue()));
        }
        return wheels;
    }

    private static void wheel(JsonGenerator json, Bump bump) throws IOException {
        JsonText.figures(json, BumpFigures.PEAKS, bump);
        json.writeBooleanField("stopTouched", bump.stopTouched());
        for (Figure<Bump> figure : BumpFigures.GRIP_AND_ROOM) {
            JsonText.figure(json, figure, bump);
        }
        json.writeBooleanField("metalTouched", bump.metalTouched());
        json.writeBooleanField("droopStopReached", bump.droopStopReached());
        json.writeBooleanField("settled", bump.settled());
        json.writeObjectFieldStart("series");
        Series series = bump.series();
        column(json, "time_s", series.time());
        column(json, "road_m", series.road());
        column(json, "bodyAcceleration_m_per_s2", series.bodyAcceleration());
        column(json, "travel_m", series.travel());
        column(json, "tyreLoad_N", series.tyreLoad());
        json.writeEndObject();
    }

    private static void column(JsonGenerator json, String key, List<Double> values) throws IOException {
        json.writeArrayFieldStart(key);
        for (double value : values) {
            json.writeNumber(value + 0.0); // + 0.0 makes -0.0 a plain zero
        }
        json.writeEndArray();
    }
}
