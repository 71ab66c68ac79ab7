package evenhand.scenario;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.angle;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.groups;
import static evenhand.catalogue.Slot.inOrder;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.numbers;
import static evenhand.catalogue.Slot.ratio;
import static evenhand.catalogue.Slot.text;
import static evenhand.quantity.InvalidValue.require;

import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.catalogue.Values;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.roadtest.Channel;
import evenhand.roadtest.Log;
import evenhand.roadtest.Measured;
import evenhand.roadtest.Observation;
import evenhand.roadtest.Pace;
import evenhand.roadtest.RoadTest;
import evenhand.roadtest.Usual;
import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Road tests in a file, declared as the car is. */
final class RoadTestCatalogue {
    /** No car on a road turns faster, m/s². */
    private static final double FASTEST = 1.5 * Weights.GRAVITY;

    private static final Slot<Direction> TURN = choice(
                    "turn", inOrder("left", Direction.LEFT, "right", Direction.RIGHT))
            .means("which way round it was driven");
    private static final Slot<Double> LAPS =
            ratio("laps").optional().means("laps that were timed").within(0.1, 1000);
    private static final Slot<Double> TIME = measure("time", Dimension.TIME)
            .optional()
            .means("time of all these laps")
            .within(0.5, 36_000);
    private static final Slot<Double> SPEED = measure("speed", Dimension.SPEED)
            .optional()
            .means("speed that was held")
            .within(0.3, 100);
    private static final Slot<Double> LATERAL_ACCELERATION = measure("lateralAcceleration", Dimension.ACCELERATION)
            .optional()
            .means("lateral acceleration along the road")
            .within(0.01 * Weights.GRAVITY, 100);
    private static final Slot<Double> STEERING_WHEEL = angle("steeringWheel")
            .optional()
            .means("angle of the steering wheel from the mark on its rim, into the turn positive")
            .within(-40, 40);
    private static final Slot<Double> ROLL = angle("roll")
            .optional()
            .means(
                    "lean of the body against standing, outwards positive, by heights at the sills: a level reads the turn as well")
            .within(-0.6, 0.6);
    private static final Slot<Double> SIDESLIP = angle("sideslip")
            .optional()
            .means("sideslip, its sign as a left turn would have it")
            .within(-0.6, 0.6);

    private static final List<Slot<?>> PACES = List.of(LAPS, TIME, SPEED, LATERAL_ACCELERATION);

    /** What was read at one pace: a channel each. */
    record ReadingGiven(Direction turn, Pace pace, String paceKey, Map<Channel, Measured> channels) {}

    private static final Shape<ReadingGiven> READING = shape(
            "roadReading",
            RoadTestCatalogue::reading,
            TURN,
            LAPS,
            TIME,
            SPEED,
            LATERAL_ACCELERATION,
            STEERING_WHEEL,
            ROLL,
            SIDESLIP);

    private static final Slot<End> FIRST_AXLE = choice("firstAxle", inOrder("front", End.FRONT, "rear", End.REAR))
            .optional()
            .means("the end that went; it is compared, never fitted");

    /** A pace at which an end went. */
    record LimitGiven(Observation.Limit limit, String paceKey) {}

    private static final Shape<LimitGiven> LIMIT = shape(
            "roadLimit",
            v -> new LimitGiven(
                    new Observation.Limit(v.of(TURN), pace(v), Usual.LIMIT, v.optional(FIRST_AXLE)), paceKey(v)),
            TURN,
            LAPS,
            TIME,
            SPEED,
            LATERAL_ACCELERATION,
            FIRST_AXLE);

    private static final Slot<End> AXLE = choice("axle", inOrder("front", End.FRONT, "rear", End.REAR))
            .means("the end that was pressed down and let go");
    private static final Slot<Double> FREQUENCY = measure("frequency", Dimension.FREQUENCY)
            .optional()
            .means("swings of the body in a second")
            .within(0.1, 20);
    private static final Slot<Double> NEXT_SWING = ratio("nextSwing")
            .optional()
            .means("height of a swing over the one before on the same side")
            .within(0, 1);

    private static final Slot<String> RECORD = text("record")
            .optional()
            .means("CSV file beside this one with time_s and height_mm or acceleration_g, instead of both figures");

    /** What a bounced end showed, or the file that shows it. */
    record BounceGiven(List<Observation.Bounce> read, Optional<TestGiven.BounceRecord> record) {}

    private static final Shape<BounceGiven> BOUNCE =
            shape("bounce", RoadTestCatalogue::bounce, AXLE, FREQUENCY, NEXT_SWING, RECORD);

    private static final Slot<String> FILE = text("file").means("CSV file beside this one");
    private static final Slot<List<Double>> LEFT_OUT = numbers("leftOut", Dimension.TIME, 0, "[\"12.5 s\"]")
            .means("moments of the log whose steady pieces are not to count")
            .defaultsTo(List.of());
    private static final Map<Log.Kind, Slot<Double>> INSTRUMENTS = instruments();

    private static Map<Log.Kind, Slot<Double>> instruments() {
        Map<Log.Kind, Slot<Double>> all = new EnumMap<>(Log.Kind.class);
        for (Log.Kind kind : Log.Kind.DRIVEN) {
            Dimension dimension = switch (kind) {
                case SPEED -> Dimension.SPEED;
                case LATERAL_ACCELERATION -> Dimension.ACCELERATION;
                case YAW_RATE -> Dimension.ROTATION;
                case STEERING_WHEEL, ROLL -> Dimension.ANGLE;
                case HEIGHT -> Dimension.LENGTH;
                case ACCELERATION -> Dimension.ACCELERATION;
            };
            all.put(
                    kind,
                    Slot.tolerance(kind.key(), dimension)
                            .optional()
                            .means("how far its instrument may be off, a tolerance alone"));
        }
        return all;
    }

    private static final Shape<TestGiven.LogGiven> LOG =
            new Shape.Plain<>("roadLog", logSlots(), RoadTestCatalogue::log);

    private static List<Slot<?>> logSlots() {
        List<Slot<?>> slots = new ArrayList<>(List.of(FILE));
        slots.addAll(INSTRUMENTS.values());
        slots.add(LEFT_OUT);
        return slots;
    }

    private static TestGiven.LogGiven log(Values v) {
        Map<Log.Kind, Double> tolerances = new LinkedHashMap<>();
        INSTRUMENTS.forEach((kind, slot) -> v.optional(slot).ifPresent(given -> tolerances.put(kind, given)));
        return new TestGiven.LogGiven(v.of(FILE), tolerances, v.of(LEFT_OUT));
    }

    private static final Slot<Double> RADIUS = length("radius")
            .means("radius that the middle of the car drives on")
            .usual(10, 120)
            .within(3, 1000);
    private static final Shape<Measured> CIRCLE = shape(
            "roadCircle",
            v -> {
                double radius = v.of(RADIUS);
                return new Measured(radius, tolerance(v, RADIUS, RoadTest.USUAL_RADIUS_TOLERANCE * radius));
            },
            RADIUS);

    private static final Slot<String> NAME = text("name").means("name that the test is chosen by");
    private static final Slot<String> SETUP = text("setup").means("name of the set-up that was driven");
    private static final Slot<String> LOAD = text("load").optional().means("load case of the file that was aboard");
    private static final Slot<String> DATE = text("date").optional().means("day on which it was driven");
    private static final Slot<String> NOTE = text("note").optional().means("what to know about it");
    private static final Slot<Double> GRIP = ratio("grip")
            .optional()
            .means("factor on the friction of all four tyres on that day's surface; 1 ± 0.1 where it is not given")
            .within(0.1, 2);
    private static final Slot<Double> STRAIGHT_AHEAD = angle("straightAhead")
            .optional()
            .means(
                    "where the mark on the rim stands on a straight road, to the left positive; 0 ± 3 deg where it is not given")
            .within(-7, 7);
    private static final Slot<Measured> CIRCLE_DRIVEN =
            group("circle", CIRCLE).optional().means("circle that was driven");
    private static final Slot<List<ReadingGiven>> READINGS =
            groups("readings", READING).means("what was read in steady turns").defaultsTo(List.of());
    private static final Slot<List<LimitGiven>> LIMITS =
            groups("limits", LIMIT).means("paces at which an end went").defaultsTo(List.of());
    private static final Slot<List<BounceGiven>> BOUNCES = groups("bounce", BOUNCE)
            .means("what pressed corners did when they were let go")
            .defaultsTo(List.of());
    private static final Slot<List<TestGiven.LogGiven>> LOGS =
            groups("logs", LOG).means("what instruments wrote down").defaultsTo(List.of());

    static final Shape<TestGiven> TEST = shape(
            "roadTest",
            RoadTestCatalogue::test,
            NAME,
            SETUP,
            LOAD,
            DATE,
            NOTE,
            GRIP,
            STRAIGHT_AHEAD,
            CIRCLE_DRIVEN,
            READINGS,
            LIMITS,
            BOUNCES,
            LOGS);

    private RoadTestCatalogue() {}

    private static TestGiven test(Values v) {
        String name = v.of(NAME);
        require(!name.isBlank(), "name", "is empty; give the road test a name");
        Optional<Measured> circle = v.optional(CIRCLE_DRIVEN);
        OptionalDouble radius =
                circle.isPresent() ? OptionalDouble.of(circle.get().value()) : OptionalDouble.empty();
        List<Observation> observations = new ArrayList<>();
        List<ReadingGiven> readings = v.of(READINGS);
        for (int i = 0; i < readings.size(); i++) {
            ReadingGiven one = readings.get(i);
            String where = "readings[" + i + "].";
            requirePace(one.pace(), radius, where + one.paceKey());
            one.channels().forEach((channel, measured) -> {
                require(
                        !channel.needsCircle() || circle.isPresent(),
                        where + channel.key(),
                        "says nothing without a circle; give \"circle\": {\"radius\": \"30 m\"} in this test");
                observations.add(new Observation.Reading(one.turn(), one.pace(), channel, measured));
            });
        }
        List<LimitGiven> limits = v.of(LIMITS);
        for (int i = 0; i < limits.size(); i++) {
            require(
                    circle.isPresent(),
                    "limits[" + i + "]",
                    "says nothing without a circle; give \"circle\": {\"radius\": \"30 m\"} in this test");
            requirePace(
                    limits.get(i).limit().pace(),
                    radius,
                    "limits[" + i + "]." + limits.get(i).paceKey());
            observations.add(limits.get(i).limit());
        }
        v.of(BOUNCES).forEach(bounce -> observations.addAll(bounce.read()));
        return new TestGiven(
                name,
                v.of(SETUP),
                v.optional(LOAD),
                v.optional(DATE),
                v.optional(NOTE),
                said(v, GRIP, RoadTest.USUAL_GRIP),
                said(v, STRAIGHT_AHEAD, RoadTest.USUAL_STRAIGHT_AHEAD),
                circle,
                observations,
                v.of(LOGS),
                v.of(BOUNCES).stream()
                        .flatMap(bounce -> bounce.record().stream())
                        .toList());
    }

    private static void requirePace(Pace pace, OptionalDouble radius, String where) {
        require(
                radius.isPresent() || !pace.needsCircle(),
                where,
                "is a pace only on a circle; give \"circle\": {\"radius\": \"30 m\"} in this test, or lateralAcceleration");
        double acceleration = pace.acceleration(radius.orElse(1));
        require(
                acceleration <= FASTEST,
                where,
                String.format(
                        Locale.ROOT,
                        "comes to %.2f g, which no road car does; look at laps, time and radius",
                        acceleration / Weights.GRAVITY));
    }

    private static ReadingGiven reading(Values v) {
        Map<Channel, Measured> channels = new LinkedHashMap<>();
        Map<Channel, Slot<Double>> slots = new EnumMap<>(
                Map.of(Channel.STEERING_WHEEL, STEERING_WHEEL, Channel.ROLL, ROLL, Channel.SIDESLIP, SIDESLIP));
        Pace pace = pace(v);
        slots.forEach((channel, slot) -> v.optional(slot)
                .ifPresent(value -> channels.put(channel, new Measured(value, tolerance(v, slot, Usual.of(channel))))));
        require(!channels.isEmpty(), "", "has nothing that was read; give steeringWheel, roll or sideslip");
        return new ReadingGiven(v.of(TURN), pace, paceKey(v), channels);
    }

    private static Pace pace(Values v) {
        List<String> given = PACES.stream().filter(v::has).map(Slot::key).toList();
        boolean timed = v.has(LAPS) || v.has(TIME);
        int paces = (timed ? 1 : 0) + (v.has(SPEED) ? 1 : 0) + (v.has(LATERAL_ACCELERATION) ? 1 : 0);
        require(paces > 0, "", "has no pace; give laps with time, speed or lateralAcceleration");
        require(
                paces == 1,
                given.get(given.size() - 1),
                "is a second pace; give one of laps with time, speed and lateralAcceleration");
        if (timed) {
            require(v.has(TIME), "time", "is missing: give the time of these laps");
            require(v.has(LAPS), "laps", "is missing: give how many laps took this time");
            return new Pace.Laps(v.of(LAPS), new Measured(v.of(TIME), tolerance(v, TIME, Usual.LAP_TIME)));
        }
        return v.has(SPEED)
                ? new Pace.Speed(new Measured(v.of(SPEED), tolerance(v, SPEED, Usual.SPEED)))
                : new Pace.Acceleration(new Measured(
                        v.of(LATERAL_ACCELERATION), tolerance(v, LATERAL_ACCELERATION, Usual.LATERAL_ACCELERATION)));
    }

    private static String paceKey(Values v) {
        return v.has(TIME) ? TIME.key() : v.has(SPEED) ? SPEED.key() : LATERAL_ACCELERATION.key();
    }

    private static BounceGiven bounce(Values v) {
        List<Observation.Bounce> all = new ArrayList<>();
        v.optional(FREQUENCY)
                .ifPresent(frequency -> all.add(new Observation.Bounce(
                        v.of(AXLE),
                        Observation.Swing.FREQUENCY,
                        new Measured(frequency, tolerance(v, FREQUENCY, Usual.FREQUENCY * frequency)))));
        v.optional(NEXT_SWING)
                .ifPresent(next -> all.add(new Observation.Bounce(
                        v.of(AXLE),
                        Observation.Swing.NEXT_SWING,
                        new Measured(next, tolerance(v, NEXT_SWING, Usual.NEXT_SWING)))));
        Optional<String> record = v.optional(RECORD);
        require(
                !all.isEmpty() || record.isPresent(),
                "",
                "has nothing that was read; give frequency or nextSwing, or a record");
        require(
                all.isEmpty() || record.isEmpty(),
                RECORD.key(),
                "tells what frequency and nextSwing say; leave out the one or the other");
        return new BounceGiven(all, record.map(file -> new TestGiven.BounceRecord(v.of(AXLE), file)));
    }

    private static Measured said(Values v, Slot<Double> slot, Measured usual) {
        return v.optional(slot)
                .map(value -> new Measured(value, tolerance(v, slot, usual.tolerance())))
                .orElse(usual);
    }

    /** The tolerance that was given, or what is usual. */
    private static double tolerance(Values v, Slot<Double> slot, double usual) {
        Optional<Quantity> given = v.given(slot);
        if (given.isEmpty() || !given.get().saysTolerance()) {
            return usual;
        }
        if (!given.get().hasTolerance()) {
            throw new InvalidValue(
                    slot.key(),
                    "has a tolerance of zero, which no reading has; say how far it may be off, or leave the tolerance out");
        }
        return given.get().tolerance();
    }
}
