package evenhand.scenario;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.groups;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.mass;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.ratio;
import static evenhand.catalogue.Slot.text;
import static evenhand.catalogue.Slot.texts;
import static evenhand.quantity.InvalidValue.require;

import evenhand.catalogue.Amount;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.catalogue.Values;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.turn.Wheel;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** What the shop writes down of a job, declared as the car is. */
final class RecordCatalogue {
    private static final Slot<String> REGISTRATION =
            text("registration").optional().means("number on its plates");
    private static final Slot<String> CHASSIS_NUMBER =
            text("chassisNumber").optional().means("number stamped into it");
    private static final Slot<String> OWNER = text("owner").optional().means("whose it is");
    private static final Shape<Vehicle> VEHICLE_SHAPE = shape(
            "vehicle",
            v -> new Vehicle(v.optional(REGISTRATION), v.optional(CHASSIS_NUMBER), v.optional(OWNER)),
            REGISTRATION,
            CHASSIS_NUMBER,
            OWNER);
    static final Slot<Vehicle> VEHICLE = group("vehicle", VEHICLE_SHAPE)
            .means("which very car it is, for the set-up sheet and the book")
            .defaultsTo(Vehicle.UNKNOWN);

    private static final Slot<String> FUEL = text("fuel").optional().means("fuel in the tank, such as \"half a tank\"");
    private static final Slot<String> DRIVER =
            text("driver").optional().means("who sat in it, such as \"nobody\" or \"82 kg in the driver's seat\"");
    private static final Slot<String> BALLAST = text("ballast").optional().means("what else was put in, and where");
    private static final Shape<WeighedWith> WEIGHED_SHAPE = shape(
            "weighedWith",
            v -> new WeighedWith(v.optional(FUEL), v.optional(DRIVER), v.optional(BALLAST)),
            FUEL,
            DRIVER,
            BALLAST);
    static final Slot<WeighedWith> WEIGHED_WITH = group("weighedWith", WEIGHED_SHAPE)
            .means("what was in the car when it was weighed, in words of your own; heights and weights are with it")
            .defaultsTo(WeighedWith.UNSAID);

    static final Slot<Map<String, String>> TOLERANCES = texts(ToleranceReading.KEY)
            .means(
                    "to build within, by the path of a number of the car, such as \"front.toe\": \"0.05 deg\"; what is not"
                            + " named has a usual one on the set-up sheet")
            .defaultsTo(Map.of());

    private static final Map<Wheel, Slot<Double>> HEIGHTS = heights();

    private static final Shape<Map<Wheel, Quantity>> CORNER_HEIGHTS =
            new Shape.Plain<>("cornerHeights", new ArrayList<>(HEIGHTS.values()), v -> given(HEIGHTS, v));

    static final Slot<Map<Wheel, Quantity>> RIDE_HEIGHTS = group("rideHeights", CORNER_HEIGHTS)
            .means("ride heights that are asked for, from the middle of the wheel up to the edge of the arch")
            .defaultsTo(Map.of());

    private static final Map<Wheel, Slot<Double>> SCALES = scales();

    private static final Shape<Map<Wheel, Quantity>> CORNER_SCALES =
            new Shape.Plain<>("cornerScales", new ArrayList<>(SCALES.values()), v -> given(SCALES, v));

    private static final Slot<Map<Wheel, Quantity>> HEIGHTS_THEN = group("rideHeights", CORNER_HEIGHTS)
            .means("ride heights, from the middle of the wheel up to the edge of the arch")
            .defaultsTo(Map.of());
    private static final Slot<Map<Wheel, Quantity>> WEIGHTS_THEN = group("cornerWeights", CORNER_SCALES)
            .means("what the scales showed under each wheel")
            .defaultsTo(Map.of());
    private static final Slot<Map<String, String>> OTHER =
            texts("other").means("anything else, in words of your own").defaultsTo(Map.of());
    private static final Shape<BookEntry.Measured> MEASURED = shape(
            "measuredThen",
            v -> new BookEntry.Measured(v.of(HEIGHTS_THEN), v.of(WEIGHTS_THEN), v.of(OTHER)),
            HEIGHTS_THEN,
            WEIGHTS_THEN,
            OTHER);

    private static final Slot<String> UNTIL = text("until").means("last day that it holds on, as 2027-03-31");
    private static final Slot<String> PAPER_WHAT = text("what").means("which paper it is");
    private static final Shape<BookEntry.Paper> PAPER =
            shape("paper", v -> new BookEntry.Paper(v.of(PAPER_WHAT), day(UNTIL, v.of(UNTIL))), PAPER_WHAT, UNTIL);

    private static final Slot<String> DATE = text("date").means("day on which it was done, as 2026-11-25");
    private static final Slot<Double> DISTANCE = measure("distance", Dimension.DISTANCE)
            .optional()
            .means("way that the car had run")
            .within(0, 1e10);
    private static final Slot<String> TEXT = text("text").means("what was done");
    private static final Slot<String> SETUP_LEFT = text("setup").optional().means("set-up that the car was left in");
    private static final Slot<BookEntry.Measured> MEASURED_THEN =
            group("measured", MEASURED).means("what was measured then").defaultsTo(BookEntry.Measured.NOTHING);
    private static final Slot<List<String>> TORQUED = Slot.names("torqued", "[\"rear upper links\"]")
            .means("what was tightened, by the names of the torques")
            .defaultsTo(List.of());
    private static final Slot<List<BookEntry.Paper>> PAPERS =
            groups("papers", PAPER).means("papers that were given or renewed").defaultsTo(List.of());
    private static final Slot<Double> CORRECTS = ratio("corrects")
            .optional()
            .means("number of an earlier entry that this one puts right, the first being 1");

    private static final Shape<BookEntry> ENTRY = shape(
            "bookEntry",
            RecordCatalogue::entry,
            DATE,
            DISTANCE,
            TEXT,
            SETUP_LEFT,
            MEASURED_THEN,
            TORQUED,
            PAPERS,
            CORRECTS);

    static final Slot<List<BookEntry>> LOG = groups(BookChecks.KEY, ENTRY)
            .means("the book: what was done, day by day; an entry is never altered, a later one corrects it")
            .defaultsTo(List.of());

    private static final Slot<String> TORQUE_WHAT = text("what").means("what is tightened");
    private static final Slot<Double> TORQUE_VALUE = measure("value", Dimension.MOMENT)
            .means("torque that it is tightened to")
            .usual(1, 500)
            .within(0.01, 5000);
    private static final Slot<Double> RECHECK_AFTER = measure("recheckAfter", Dimension.DISTANCE)
            .optional()
            .means("way after which it is checked again")
            .usual(1e4, 1e7)
            .within(1, 1e10);
    private static final Shape<Torque> TORQUE = shape(
            "torque",
            v -> new Torque(v.of(TORQUE_WHAT), v.given(TORQUE_VALUE).orElseThrow(), v.given(RECHECK_AFTER)),
            TORQUE_WHAT,
            TORQUE_VALUE,
            RECHECK_AFTER);
    static final Slot<List<Torque>> TORQUES = groups("torques", TORQUE)
            .means("what is tightened to which torque, and when it is checked again")
            .defaultsTo(List.of());

    private RecordCatalogue() {}

    private static BookEntry entry(Values v) {
        OptionalDouble corrects = v.maybe(CORRECTS);
        require(
                corrects.isEmpty() || corrects.getAsDouble() == Math.rint(corrects.getAsDouble()),
                CORRECTS.key(),
                "must be a whole number, that of an earlier entry");
        return new BookEntry(
                day(DATE, v.of(DATE)),
                v.given(DISTANCE),
                v.of(TEXT),
                v.optional(SETUP_LEFT),
                v.of(MEASURED_THEN),
                v.of(TORQUED),
                v.of(PAPERS),
                corrects.isPresent() ? OptionalInt.of((int) corrects.getAsDouble()) : OptionalInt.empty());
    }

    private static LocalDate day(Slot<String> slot, String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException none) {
            throw new InvalidValue(slot.key(), "is no day; write year, month and day, for example \"2026-11-25\"");
        }
    }

    private static Map<Wheel, Slot<Double>> heights() {
        Map<Wheel, Slot<Double>> all = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            all.put(
                    wheel,
                    length(wheel.key())
                            .optional()
                            .means("from the middle of the " + wheel.words() + " wheel up to the edge of its arch")
                            .measured("steel rule from the middle of the hub to the arch", Amount.of(0.001))
                            .usual(0.2, 0.6)
                            .within(0.02, 2));
        }
        return all;
    }

    private static Map<Wheel, Slot<Double>> scales() {
        Map<Wheel, Slot<Double>> all = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            all.put(
                    wheel,
                    mass(wheel.key())
                            .optional()
                            .means("what the scale under the " + wheel.words() + " wheel showed")
                            .usual(80, 900)
                            .within(0.1, 1e5));
        }
        return all;
    }

    private static Map<Wheel, Quantity> given(Map<Wheel, Slot<Double>> slots, Values v) {
        Map<Wheel, Quantity> given = new EnumMap<>(Wheel.class);
        slots.forEach((wheel, slot) -> v.given(slot).ifPresent(quantity -> given.put(wheel, quantity)));
        return given;
    }
}
