package evenhand.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import evenhand.answers.FlatRide;
import evenhand.answers.RideFigures;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.ride.AxleRide;
import evenhand.ride.BodyOverHump;
import evenhand.ride.DampingAtSpeed;
import evenhand.ride.DampingSweep;
import evenhand.ride.Ride;
import evenhand.ride.Standing;
import evenhand.ride.Transfer;
import evenhand.scenario.Scenario;
import evenhand.words.EventWords;
import evenhand.words.LoadWords;
import evenhand.words.RideWords;
import evenhand.words.Units;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The answers of {@code ride} in JSON. */
final class RideJson {
    /** Frequencies of a curve, Hz. */
    private static final double LOWEST = 0.2;

    private static final double HIGHEST = 50;
    private static final int POINTS = 200;

    private RideJson() {}

    static byte[] write(
            Scenario scenario,
            Optional<LoadCase> load,
            AskedRoad road,
            double speed,
            List<SetupRide> answers,
            boolean curves) {
        return JsonText.of("ride", json -> {
            SetupJson.scenario(json, scenario, load);
            json.writeArrayFieldStart("setups");
            for (SetupRide answer : answers) {
                json.writeStartObject();
                json.writeStringField("name", answer.setup().name());
                if (answer instanceof SetupRide.Rides rides) {
                    rides(json, rides, load, road, speed, curves);
                    List<String> warnings = rides.warnings();
                    road.warning(speed).ifPresent(warnings::add);
                    SetupJson.estimatedAndWarnings(
                            json, answer.setup(), answer.setup().estimatedForRide(rides.car()), warnings);
                } else if (answer instanceof SetupRide.Unanswered none) {
                    SetupJson.noAnswer(json, "noEquilibrium", none.text());
                    SetupJson.estimatedAndWarnings(json, answer.setup());
                }
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void rides(
            JsonGenerator json,
            SetupRide.Rides rides,
            Optional<LoadCase> load,
            AskedRoad road,
            double speed,
            boolean curves)
            throws IOException {
        Ride ride = rides.ride();
        List<String> sentences =
                RideWords.of(rides.car(), ride, rides.stops(), rides.passages(), road.words(), Units.METRIC);
        load.ifPresent(aboard -> sentences.add(0, LoadWords.sits(aboard, rides.rest(), Units.METRIC)));
        json.writeStringField("words", String.join(" ", sentences));
        for (End end : End.values()) {
            json.writeObjectFieldStart(EventWords.end(end));
            axle(json, rides, ride.axle(end));
            json.writeEndObject();
        }
        json.writeObjectFieldStart("road");
        json.writeStringField(road.key(), road.name());
        json.writeNumberField("speed_m_per_s", speed);
        for (End end : End.values()) {
            json.writeObjectFieldStart(EventWords.end(end));
            AxleRide axle = ride.axle(end);
            if (axle.damped().isPresent()) {
                JsonText.figures(json, RideFigures.ROAD, axle.damped().get().road());
                JsonText.figure(json, RideFigures.TYRE_LOAD_VARIATION, axle);
            }
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeObjectFieldStart("pitchBounce");
        JsonText.figures(json, RideFigures.PITCH_BOUNCE, ride.pitchBounce());
        json.writeEndObject();
        json.writeObjectFieldStart("static");
        for (End end : End.values()) {
            json.writeObjectFieldStart(EventWords.end(end));
            standing(json, ride.axle(end).standing(), rides.stops().of(end));
            json.writeEndObject();
        }
        json.writeEndObject();
        flatRide(json, rides);
        if (curves) {
            json.writeObjectFieldStart("curves");
            for (End end : End.values()) {
                json.writeObjectFieldStart(EventWords.end(end));
                curves(json, rides, ride.axle(end));
                json.writeEndObject();
            }
            json.writeEndObject();
        }
    }

    private static void axle(JsonGenerator json, SetupRide.Rides rides, AxleRide axle) throws IOException {
        JsonText.figures(json, RideFigures.AXLE, axle);
        List<DampingAtSpeed> bySpeed = axle.dampingBySpeed(rides.car());
        if (!bySpeed.isEmpty()) {
            json.writeArrayFieldStart("dampingBySpeed");
            for (DampingAtSpeed one : bySpeed) {
                json.writeStartObject();
                JsonText.figures(json, RideFigures.DAMPING, one);
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        if (axle.tramp().isPresent()) {
            json.writeObjectFieldStart("tramp");
            JsonText.figures(json, RideFigures.TRAMP, axle.tramp().get());
            json.writeEndObject();
        }
        settings(json, rides, axle);
    }

    private static void settings(JsonGenerator json, SetupRide.Rides rides, AxleRide axle) throws IOException {
        List<AxleRide.Setting> settings =
                axle.settings(rides.car(), rides.ride().road(), rides.ride().speed());
        if (settings.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("damperSettings");
        for (AxleRide.Setting setting : settings) {
            json.writeStartObject();
            json.writeStringField("name", setting.name());
            json.writeBooleanField("set", setting.set());
            JsonText.figures(json, RideFigures.SWEEP, DampingSweep.of(axle, setting.damped()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void standing(JsonGenerator json, Standing standing, OptionalDouble touched) throws IOException {
        JsonText.figures(json, RideFigures.STANDING, standing);
        JsonText.figure(json, RideFigures.STOP_TOUCHED, touched);
        if (standing.looseInDroop().isPresent()) {
            json.writeBooleanField("looseInDroop", standing.looseInDroop().get());
        }
        JsonText.figure(json, RideFigures.PERCH_MOVE, standing);
        JsonText.figure(json, RideFigures.PRELOAD_IN_DROOP, standing);
    }

    private static void flatRide(JsonGenerator json, SetupRide.Rides rides) throws IOException {
        json.writeObjectFieldStart("flatRide");
        json.writeNumberField("humpHeight_m", FlatRide.HUMP_HEIGHT);
        json.writeNumberField("humpLength_m", FlatRide.HUMP_LENGTH);
        json.writeArrayFieldStart("speeds");
        for (BodyOverHump.Passage passage : rides.passages()) {
            json.writeStartObject();
            JsonText.figures(json, RideFigures.HUMP, passage);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void curves(JsonGenerator json, SetupRide.Rides rides, AxleRide axle) throws IOException {
        Transfer transfer =
                new Transfer(axle.damped().map(AxleRide.Damped::quarterCar).orElse(axle.undamped()));
        double[] frequencies = new double[POINTS];
        double[] acceleration = new double[POINTS];
        double[] travel = new double[POINTS];
        double[] tyre = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            frequencies[i] = LOWEST * Math.pow(HIGHEST / LOWEST, i / (POINTS - 1.0));
            transfer.at(frequencies[i]);
            acceleration[i] = transfer.bodyAcceleration();
            travel[i] = transfer.suspensionTravel();
            tyre[i] = transfer.tyreDeflection();
        }
        array(json, "frequency_Hz", frequencies);
        array(json, "bodyAcceleration_per_s2", acceleration);
        array(json, "suspensionTravel", travel);
        array(json, "tyreDeflection", tyre);
        json.writeArrayFieldStart("damping");
        for (DampingSweep.Point point :
                DampingSweep.of(axle, rides.ride().road(), rides.ride().speed())) {
            json.writeStartObject();
            JsonText.figures(json, RideFigures.SWEEP, point);
            json.writeEndObject();
        }
        json.writeEndArray();
        if (axle.damped().isPresent()) {
            json.writeObjectFieldStart("asSet");
            JsonText.figures(
                    json, RideFigures.SWEEP, DampingSweep.of(axle, axle.damped().get()));
            json.writeEndObject();
        }
        settings(json, rides, axle);
    }

    private static void array(JsonGenerator json, String key, double[] values) throws IOException {
        json.writeFieldName(key);
        json.writeArray(values, 0, values.length);
    }
}
