package evenhand.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import evenhand.car.LoadCase;
import evenhand.catalogue.Adjustable;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.scenario.Warning;
import evenhand.turn.TurnAnswer;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** What every command says about a set-up in JSON besides its answer. */
final class SetupJson {
    private SetupJson() {}

    /** What an answer opens with. */
    static void scenario(JsonGenerator json, Scenario scenario, Optional<LoadCase> load) throws IOException {
        json.writeStringField("scenario", scenario.title());
        if (load.isPresent()) {
            json.writeStringField("load", load.get().name());
        }
    }

    static void noAnswer(JsonGenerator json, TurnAnswer.Reason reason, String text) throws IOException {
        noAnswer(json, reason.key(), text);
    }

    static void noAnswer(JsonGenerator json, String reason, String text) throws IOException {
        json.writeObjectFieldStart("noAnswer");
        json.writeStringField("reason", reason);
        json.writeStringField("text", text);
        json.writeEndObject();
    }

    static void estimatedAndWarnings(JsonGenerator json, Setup setup) throws IOException {
        estimatedAndWarnings(json, setup, setup.estimated(), List.of());
    }

    /** The same where more was estimated, or where the answer itself warns. */
    static void estimatedAndWarnings(
            JsonGenerator json, Setup setup, List<Adjustable> estimated, List<String> ownWarnings) throws IOException {
        if (!estimated.isEmpty()) {
            json.writeArrayFieldStart("estimated");
            for (Adjustable value : estimated) {
                json.writeStartObject();
                json.writeStringField("path", value.path());
                json.writeNumberField("value", value.si());
                json.writeStringField("rule", value.rule());
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        if (!setup.warnings().isEmpty() || !ownWarnings.isEmpty()) {
            json.writeArrayFieldStart("warnings");
            for (String warning : ownWarnings) {
                json.writeString(warning);
            }
            for (Warning warning : setup.warnings()) {
                json.writeString(warning.where() + ": " + warning.what());
            }
            json.writeEndArray();
        }
    }
}
