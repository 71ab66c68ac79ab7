package evenhand.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import evenhand.answers.HandSumFigures;
import evenhand.answers.Trial;
import evenhand.answers.TurnFigures;
import evenhand.car.LoadCase;
import evenhand.handsums.HandSums;
import evenhand.quantity.Dimension;
import evenhand.scenario.Scenario;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.words.BalanceWords;
import evenhand.words.EventWords;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The answers of {@code balance} in JSON. */
final class BalanceJson {
    private static final String LATERAL_ACCELERATION = TurnFigures.LATERAL_ACCELERATION.key();
    private static final String BUDGET = TurnFigures.BUDGET_KEY;

    private BalanceJson() {}

    static byte[] write(Scenario scenario, Trial trial, List<SetupAnswer> answers) {
        return JsonText.of("balance", json -> {
            SetupJson.scenario(json, scenario, trial.load());
            json.writeNumberField("radius_m", trial.radius());
            json.writeStringField("turn", trial.direction().key());
            json.writeArrayFieldStart("setups");
            for (SetupAnswer answer : answers) {
                json.writeStartObject();
                json.writeStringField("name", answer.setup().name());
                if (answer instanceof SetupAnswer.Turned turned) {
                    turned(json, turned, trial.load());
                } else if (answer instanceof SetupAnswer.Unanswered none) {
                    SetupJson.noAnswer(json, none.reason(), none.text());
                }
                SetupJson.estimatedAndWarnings(json, answer.setup());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void turned(JsonGenerator json, SetupAnswer.Turned answer, Optional<LoadCase> load)
            throws IOException {
        TurnAnswer.Turns turn = answer.turn();
        List<String> sentences = BalanceWords.of(answer.sums(), turn, answer.other(), Units.METRIC);
        load.ifPresent(aboard -> sentences.add(0, LoadWords.sits(aboard, answer.rest(), Units.METRIC)));
        json.writeStringField("words", String.join(" ", sentences));
        handSums(json, answer.sums());
        json.writeArrayFieldStart("paces");
        for (PaceAnswer pace : turn.paces()) {
            pace(json, pace);
        }
        json.writeEndArray();
        limit(json, turn.limit());
        json.writeArrayFieldStart("events");
        for (TurnEvent event : turn.events()) {
            event(json, event);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("turn");
        for (TurnRow row : turn.rows()) {
            json.writeStartObject();
            row(json, row);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void handSums(JsonGenerator json, HandSums sums) throws IOException {
        json.writeObjectFieldStart("handSums");
        JsonText.figures(json, HandSumFigures.ALL, sums);
        JsonText.budget(json, BUDGET, HandSumFigures.BUDGET, sums.budget());
        json.writeEndObject();
    }

    private static void pace(JsonGenerator json, PaceAnswer answer) throws IOException {
        json.writeStartObject();
        if (answer instanceof PaceAnswer.InBalance pace) {
            row(json, pace.row());
            JsonText.budget(json, BUDGET, TurnFigures.BUDGET, pace.budget());
        } else {
            acceleration(json, answer.lateralAcceleration());
            json.writeBooleanField("beyondLimit", true);
        }
        json.writeEndObject();
    }

    private static void limit(JsonGenerator json, Limit limit) throws IOException {
        json.writeObjectFieldStart("limit");
        acceleration(json, limit.lateralAcceleration());
        if (limit.firstAxle().isPresent()) {
            json.writeStringField("firstAxle", EventWords.end(limit.firstAxle().get()));
        }
        json.writeStringField("cause", limit.cause().key());
        if (limit.spinningWheel().isPresent()) {
            json.writeStringField("wheel", limit.spinningWheel().get().key());
        }
        JsonText.number(json, "limitBalance", TurnFigures.GRIP_BALANCE.value(limit.row()));
        JsonText.figure(json, TurnFigures.FRONT_GRIP_USED, limit.row());
        JsonText.figure(json, TurnFigures.REAR_GRIP_USED, limit.row());
        json.writeEndObject();
    }

    private static void event(JsonGenerator json, TurnEvent event) throws IOException {
        json.writeStartObject();
        acceleration(json, event.lateralAcceleration());
        json.writeStringField("kind", event.kind().key());
        if (event.axle().isPresent()) {
            json.writeStringField("axle", EventWords.end(event.axle().get()));
        }
        if (event.wheel().isPresent()) {
            json.writeStringField("wheel", event.wheel().get().key());
        }
        json.writeStringField("text", EventWords.sentence(event));
        json.writeEndObject();
    }

    private static void row(JsonGenerator json, TurnRow row) throws IOException {
        JsonText.figures(json, TurnFigures.ROW, row);
        json.writeObjectFieldStart("wheels");
        for (Wheel wheel : Wheel.values()) {
            json.writeObjectFieldStart(wheel.key());
            JsonText.figures(json, TurnFigures.WHEEL, row.wheel(wheel));
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private static void acceleration(JsonGenerator json, double value) throws IOException {
        JsonText.number(
                json,
                LATERAL_ACCELERATION,
                OptionalDouble.of(Dimension.ACCELERATION.metric().fromSi(value)));
    }
}
