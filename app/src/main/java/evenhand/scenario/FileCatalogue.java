package evenhand.scenario;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.changes;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.groups;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.mass;
import static evenhand.catalogue.Slot.ratio;
import static evenhand.catalogue.Slot.text;
import static evenhand.catalogue.Slot.texts;
import static evenhand.catalogue.Slot.version;
import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Car;
import evenhand.car.LoadCase;
import evenhand.car.mounts.HardUse;
import evenhand.catalogue.Amount;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The file round the car, declared as the car is. */
public final class FileCatalogue {
    static final Slot<String> NAME = text("name").means("name");

    static final Slot<String> SHOP_NAME = NAME.optional().means("name of the workshop, for the report");
    static final Slot<String> PICTURE = text("picture").optional().means("file of a picture for the report");
    static final Shape<Scenario.Shop> SHOP_SHAPE =
            shape("shop", v -> new Scenario.Shop(v.optional(SHOP_NAME), v.optional(PICTURE)), SHOP_NAME, PICTURE);

    static final Slot<String> NOTE = text("note").optional().means("what to know about this set-up");
    static final Slot<String> BASED_ON =
            text("basedOn").optional().means("name of the set-up whose changes come first");
    static final Slot<Double> LOOK = ratio("look")
            .optional()
            .means(
                    "which colour, line and marker the set-up is drawn with, from 1; the program writes it where another place"
                            + " in the list would change it")
            .within(1, Setup.MOST_LOOKS);
    static final Slot<Car> CHANGES = changes("changes", Catalogue.CAR)
            .optional()
            .means("what differs from the car: a JSON Merge Patch (RFC 7396), in which null removes");
    static final Slot<Map<String, String>> SHEET =
            texts("sheet").means("free words for the set-up sheet").defaultsTo(Map.of());

    /** A set-up before its changes are applied. */
    record Named(
            String name,
            Optional<String> note,
            Optional<String> basedOn,
            Map<String, String> sheet,
            OptionalDouble look) {
        Named {
            require(!name.isBlank(), "name", "is empty; give the set-up a name");
            require(
                    look.isEmpty() || look.getAsDouble() == Math.rint(look.getAsDouble()),
                    "look",
                    "must be a whole number, from 1 to " + Setup.MOST_LOOKS);
        }
    }

    static final Shape<Named> SETUP = shape(
            "setup",
            v -> new Named(v.of(NAME), v.optional(NOTE), v.optional(BASED_ON), v.of(SHEET), v.maybe(LOOK)),
            NAME,
            NOTE,
            BASED_ON,
            CHANGES,
            SHEET,
            LOOK);

    static final Slot<String> WHAT = text("what").means("what is added").defaultsTo("load");
    static final Slot<Double> ADDED_MASS = mass("mass")
            .means("mass that is added")
            .measured("scales", Amount.percent(5))
            .usual(1, 600)
            .within(0, 10_000);
    static final Slot<Double> BEHIND_FRONT_AXLE = length("behindFrontAxle")
            .means("distance of its centre behind the front axle")
            .measured("tape", Amount.of(0.05))
            .usual(-1, 4)
            .within(-20, 20);
    static final Slot<Double> HEIGHT = length("height")
            .means("height of its centre above the ground, in the car before any lowered and without the load")
            .measured("tape", Amount.of(0.05))
            .usual(0.1, 2)
            .within(0, 10);
    static final Shape<LoadCase.Added> ADDED_SHAPE = shape(
            "addedMass",
            v -> new LoadCase.Added(v.of(WHAT), v.of(ADDED_MASS), v.of(BEHIND_FRONT_AXLE), v.of(HEIGHT)),
            WHAT,
            ADDED_MASS,
            BEHIND_FRONT_AXLE,
            HEIGHT);
    static final Slot<List<LoadCase.Added>> ADDED = groups("added", ADDED_SHAPE).means("masses on top of the car");
    static final Slot<String> CASE_NAME = NAME.means("name that the case is chosen by");
    static final Shape<LoadCase> LOAD_CASE =
            shape("loadCase", v -> new LoadCase(v.of(CASE_NAME), v.of(ADDED)), CASE_NAME, ADDED);

    static final Slot<Integer> EVENHAND = version("evenhand", 1).means("number of the file's format");
    static final Slot<String> TITLE = text("title").means("title of the job").defaultsTo("");
    static final Slot<String> STORY = text("story").optional().means("what the job is about");
    static final Slot<String> ASKED_TEXT =
            text("text").means("complaint or wish, in the words of whoever brought the car");
    static final Slot<String> JUDGE = text("judge")
            .optional()
            .means("what the sums judge it by: " + JudgeReading.KNOWN + "; left out where no figure tells");
    static final Shape<Asked> ASKED_SHAPE = shape(
            "asked", v -> new Asked(v.of(ASKED_TEXT), v.optional(JUDGE).map(JudgeReading::read)), ASKED_TEXT, JUDGE);
    static final Slot<List<Asked>> ASKED = groups("asked", ASKED_SHAPE)
            .means("what was asked for, each with what judges it; the owner's paper answers it line by line")
            .defaultsTo(List.of());

    static final Slot<Scenario.Shop> SHOP = group("shop", SHOP_SHAPE).optional().means("the workshop, for the report");
    static final Slot<Car> CAR = group("car", Catalogue.CAR).means("car, as measured");
    static final Slot<List<Named>> SETUPS = groups("setups", SETUP)
            .means("ways in which the car is set up; none is one named \"" + Setup.AS_GIVEN + "\"")
            .defaultsTo(List.of());
    static final Slot<List<LoadCase>> LOAD_CASES = groups("loadCases", LOAD_CASE)
            .means("people and luggage on top of the car as weighed, each case chosen by its name")
            .defaultsTo(List.of());

    static final Slot<List<HardUse>> HARD_USE = groups("hardUse", HardUseCatalogue.HARD_USE)
            .means("what the car is put through; it decides what links, brackets and mounts have to carry")
            .optional();

    static final Slot<List<TestGiven>> ROAD_TESTS = groups("roadTests", RoadTestCatalogue.TEST)
            .means("what was read on the road; nothing of it changes an answer unless it is asked for")
            .defaultsTo(List.of());

    /** The whole file, its set-ups not yet worked out. */
    record Opened(
            String title,
            Optional<String> story,
            List<Asked> asked,
            Optional<Scenario.Shop> shop,
            Car car,
            List<Named> setups,
            List<LoadCase> loadCases,
            Optional<List<HardUse>> hardUse,
            List<TestGiven> roadTests,
            Map<String, String> tolerances,
            ShopRecord record) {}

    static final Shape<Opened> FILE = shape(
            "file",
            v -> new Opened(
                    v.of(TITLE),
                    v.optional(STORY),
                    v.of(ASKED),
                    v.optional(SHOP),
                    v.of(CAR),
                    v.of(SETUPS),
                    v.of(LOAD_CASES),
                    v.optional(HARD_USE),
                    v.of(ROAD_TESTS),
                    v.of(RecordCatalogue.TOLERANCES),
                    new ShopRecord(
                            v.of(RecordCatalogue.VEHICLE),
                            v.of(RecordCatalogue.WEIGHED_WITH),
                            v.of(RecordCatalogue.RIDE_HEIGHTS),
                            Map.of(), // read with the set-ups
                            v.of(RecordCatalogue.TORQUES),
                            new Book(v.of(RecordCatalogue.LOG)))),
            EVENHAND,
            TITLE,
            STORY,
            ASKED,
            SHOP,
            CAR,
            SETUPS,
            LOAD_CASES,
            HARD_USE,
            ROAD_TESTS,
            RecordCatalogue.VEHICLE,
            RecordCatalogue.WEIGHED_WITH,
            RecordCatalogue.RIDE_HEIGHTS,
            RecordCatalogue.TOLERANCES,
            RecordCatalogue.TORQUES,
            RecordCatalogue.LOG);

    private FileCatalogue() {}

    /** Whether a text may have several lines. */
    public static boolean hasLines(Slot<?> slot) {
        return slot.key().equals(STORY.key()) || slot.key().equals(NOTE.key());
    }

    /** What the file holds beside its car and its set-ups. */
    public static List<Slot<?>> besideTheCar() {
        return List.of(
                TITLE,
                STORY,
                ASKED,
                SHOP,
                RecordCatalogue.VEHICLE,
                LOAD_CASES,
                HARD_USE,
                RecordCatalogue.WEIGHED_WITH,
                RecordCatalogue.RIDE_HEIGHTS,
                RecordCatalogue.TOLERANCES,
                RecordCatalogue.TORQUES);
    }

    /** The free words of a set-up. */
    public static Slot<Map<String, String>> sheet() {
        return SHEET;
    }
}
