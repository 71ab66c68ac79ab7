package evenhand.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import evenhand.answers.Figure;
import evenhand.answers.Trial;
import evenhand.lowering.LoweringFigures;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import evenhand.quantity.Dimension;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.words.LoweringWords;
import evenhand.words.LowestWords;
import evenhand.words.Units;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The answers of {@code lower} in JSON. */
final class LowerJson {
    private LowerJson() {}

    static byte[] write(LowerCommand.Lowered lowered) {
        LoweringStudy study = lowered.study();
        Trial trial = lowered.trial();
        return JsonText.of("lower", json -> {
            SetupJson.scenario(json, lowered.scenario(), trial.load());
            json.writeStringField("setup", lowered.setup().name());
            json.writeNumberField("radius_m", trial.radius());
            json.writeStringField("turn", trial.direction().key());
            json.writeArrayFieldStart("paces_g");
            for (double pace : trial.paces()) {
                json.writeNumber(Dimension.ACCELERATION.metric().fromSi(pace));
            }
            json.writeEndArray();
            JsonText.number(json, "keepReserve_g", lowered.reserve());
            json.writeArrayFieldStart("rows");
            for (Stance stance : study.rows()) {
                json.writeStartObject();
                row(json, stance);
                json.writeEndObject();
            }
            json.writeEndArray();
            lowest(json, lowered);
            needs(json, study);
            json.writeStringField("words", String.join(" ", words(lowered, Units.METRIC)));
            SetupJson.estimatedAndWarnings(json, lowered.setup());
        });
    }

    static List<String> words(LowerCommand.Lowered lowered, Units units) {
        return LoweringWords.of(lowered.study(), lowered.setup().car(), lowered.reserve(), units);
    }

    private static void row(JsonGenerator json, Stance stance) throws IOException {
        JsonText.figure(json, LoweringFigures.LOWERED, stance);
        if (stance instanceof Stance.Stands stands) {
            JsonText.figures(json, LoweringFigures.TRAVEL, stands);
            JsonText.figures(json, LoweringFigures.ROLL, stands);
            understeer(json, LoweringFigures.paces(stands));
            for (List<Figure<Stance.Stands>> figures : List.of(
                    LoweringFigures.TURN,
                    LoweringFigures.ROLL_CENTRES,
                    LoweringFigures.COMFORT,
                    LoweringFigures.METAL,
                    LoweringFigures.LEVER,
                    LoweringFigures.CAMBER,
                    LoweringFigures.FREQUENCIES,
                    LoweringFigures.SPRINGS)) {
                JsonText.figures(json, figures, stands);
            }
        }
        Optional<String> none = stance.noAnswer();
        if (none.isPresent()) {
            SetupJson.noAnswer(json, reason(stance), none.get());
        }
    }

    private static String reason(Stance stance) {
        return stance instanceof Stance.Stands stands && stands.turn() instanceof TurnAnswer.NoTurn none
                ? none.reason().key()
                : TurnAnswer.Reason.NO_EQUILIBRIUM.key();
    }

    /** In the order of the paces; those beyond the limit have none and are named beside. */
    private static void understeer(JsonGenerator json, List<PaceAnswer> paces) throws IOException {
        if (paces.isEmpty()) {
            return;
        }
        Figure<PaceAnswer> figure = LoweringFigures.UNDERSTEER;
        json.writeArrayFieldStart(figure.key());
        for (PaceAnswer pace : paces) {
            if (figure.value(pace).isPresent()) {
                json.writeNumber(figure.value(pace).getAsDouble() + 0.0);
            }
        }
        json.writeEndArray();
        if (paces.stream().anyMatch(pace -> figure.value(pace).isEmpty())) {
            json.writeArrayFieldStart("beyondLimit_g");
            for (PaceAnswer pace : paces) {
                if (figure.value(pace).isEmpty()) {
                    json.writeNumber(Dimension.ACCELERATION.metric().fromSi(pace.lateralAcceleration()));
                }
            }
            json.writeEndArray();
        }
    }

    private static void lowest(JsonGenerator json, LowerCommand.Lowered lowered) throws IOException {
        LoweringStudy study = lowered.study();
        json.writeObjectFieldStart("lowest");
        JsonText.number(json, LoweringFigures.LOWERED.key(), study.lowest());
        if (study.stop().isPresent()) {
            json.writeStringField("stoppedBy", study.stop().get().need().key());
        }
        json.writeStringField("text", LowestWords.of(study, Units.METRIC));
        JsonText.number(json, "higher_m", study.higher());
        json.writeEndObject();
    }

    private static void needs(JsonGenerator json, LoweringStudy study) throws IOException {
        json.writeArrayFieldStart("needs");
        for (LoweringStudy.Ending end : study.ends()) {
            Need need = end.need();
            if (need.equals(Need.ANSWER)) {
                continue;
            }
            json.writeStartObject();
            json.writeStringField("key", need.key());
            json.writeNumberField(
                    need.atLeast() ? "atLeast" : "atMost",
                    need.dimension().metric().fromSi(need.bound()));
            json.writeStringField("unit", need.dimension().metric().symbol());
            json.writeStringField("basis", "common practice");
            json.writeBooleanField("metAtFirst", !end.atOnce());
            JsonText.number(json, "metDownTo_m", end.lowered());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
