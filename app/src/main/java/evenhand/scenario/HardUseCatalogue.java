package evenhand.scenario;

import static evenhand.catalogue.Shape.as;
import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.numbers;
import static evenhand.catalogue.Slot.ratio;
import static evenhand.catalogue.Slot.shares;
import static evenhand.catalogue.Slot.text;
import static evenhand.catalogue.Slot.wordOrMeasure;
import static evenhand.quantity.InvalidValue.require;

import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.UsualUse;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Amount;
import evenhand.catalogue.Built;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Path;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.catalogue.Values;
import evenhand.quantity.Dimension;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the car is put through, as a file lists it. What a case leaves out is as usual, and told in the answers of loads. */
final class HardUseCatalogue {
    private static final String KEY = "hardUse";

    private static final Slot<String> NAME = text("name").means("name of the case");
    private static final Slot<Double> FACTOR = ratio("factor")
            .means("all its forces times that: for abuse, fatigue, doubt about a weld")
            .usual(0.5, 5)
            .within(1e-3, 1000)
            .defaultsTo(1.0);

    private static final Slot<OptionalDouble> PACE = wordOrMeasure(
                    "pace", Map.of("limit", OptionalDouble.empty()), Dimension.ACCELERATION, OptionalDouble::of)
            .means("lateral acceleration, or \"limit\"")
            .defaultsTo(OptionalDouble.empty());

    private static final Slot<Double> DECELERATION = measure("deceleration", Dimension.ACCELERATION)
            .means("how hard it brakes")
            .usual(1, 20)
            .within(0.01, 100)
            .estimatedBy(v -> usual(HardUse.Braking.class).deceleration(), origin(HardUse.Braking.class), Amount.NONE);

    private static final Slot<Double> GEAR =
            ratio("gear").means("gear it starts in").within(1, 20).defaultsTo(1.0);
    private static final Slot<Double> SHOCK = ratio("shock")
            .means("all forces of the start times that, for the clutch is dropped")
            .usual(1, 3)
            .within(0.01, 100)
            .estimatedBy(v -> usual(HardUse.Launch.class).shock(), origin(HardUse.Launch.class), Amount.NONE);

    private static final Slot<Double> SIDE = ofLoad("side", "force inwards on the struck wheel over its load at rest")
            .estimatedBy(v -> usual(HardUse.Kerb.class).side(), origin(HardUse.Kerb.class), Amount.NONE);
    private static final Slot<Double> KERB_UP = ofLoad("up", "force upwards on the struck wheel over its load at rest")
            .estimatedBy(v -> usual(HardUse.Kerb.class).up(), origin(HardUse.Kerb.class), Amount.NONE);
    private static final Slot<Double> HEIGHT = Slot.length("height")
            .means("how far above the ground the kerb strikes")
            .usual(0, 0.15)
            .within(0, 1)
            .estimatedBy(v -> usual(HardUse.Kerb.class).height(), origin(HardUse.Kerb.class), Amount.NONE);

    private static final Slot<Double> HOLE_UP = ofLoad("up", "force upwards on the wheel over its load at rest")
            .estimatedBy(v -> usual(HardUse.Pothole.class).up(), origin(HardUse.Pothole.class), Amount.NONE);
    private static final Slot<Double> BACK = ofLoad("back", "force backwards on the wheel over its load at rest")
            .estimatedBy(v -> usual(HardUse.Pothole.class).back(), origin(HardUse.Pothole.class), Amount.NONE);

    private static final Slot<Double> TIMES = ratio("times")
            .means("weight of the hanging parts times that")
            .usual(1, 5)
            .within(0.01, 100)
            .estimatedBy(v -> usual(HardUse.Hanging.class).times(), origin(HardUse.Hanging.class), Amount.NONE);

    private static final Slot<Map<String, HardUse.Force>> WHEELS =
            group("wheels", wheels()).means("force of the ground by wheel; a wheel that is not named stands");

    private static final Slot<List<Content.Share>> OF = shares(
                    "of", "[[\"Hard corner\", 0.7], [\"Hard braking\", 0.7]]")
            .means("cases before this one, and how much of what each adds to standing");

    static final Shape<HardUse> HARD_USE = Shape.kinds(
            KEY,
            "kind",
            "what the car is put through",
            as("standing", shape("standing", v -> new HardUse.Standing(v.of(NAME), v.of(FACTOR)), NAME, FACTOR)),
            as(
                    "cornering",
                    shape(
                            "cornering",
                            v -> new HardUse.Cornering(v.of(NAME), v.of(PACE), v.of(FACTOR)),
                            NAME,
                            PACE,
                            FACTOR)),
            as(
                    "braking",
                    shape(
                            "hardBraking",
                            v -> new HardUse.Braking(v.of(NAME), v.of(DECELERATION), v.of(FACTOR)),
                            NAME,
                            DECELERATION,
                            FACTOR)),
            as("launch", shape("launch", HardUseCatalogue::launch, NAME, GEAR, SHOCK, FACTOR)),
            as(
                    "kerb",
                    shape(
                            "kerb",
                            v -> new HardUse.Kerb(v.of(NAME), v.of(SIDE), v.of(KERB_UP), v.of(HEIGHT), v.of(FACTOR)),
                            NAME,
                            SIDE,
                            KERB_UP,
                            HEIGHT,
                            FACTOR)),
            as(
                    "pothole",
                    shape(
                            "pothole",
                            v -> new HardUse.Pothole(v.of(NAME), v.of(HOLE_UP), v.of(BACK), v.of(FACTOR)),
                            NAME,
                            HOLE_UP,
                            BACK,
                            FACTOR)),
            as(
                    "hanging",
                    shape(
                            "hanging",
                            v -> new HardUse.Hanging(v.of(NAME), v.of(TIMES), v.of(FACTOR)),
                            NAME,
                            TIMES,
                            FACTOR)),
            as(
                    "given",
                    shape(
                            "givenForces",
                            v -> new HardUse.Given(v.of(NAME), v.of(WHEELS), v.of(FACTOR)),
                            NAME,
                            WHEELS,
                            FACTOR)),
            as(
                    "combined",
                    shape(
                            "combined",
                            v -> new HardUse.Combined(
                                    v.of(NAME),
                                    v.of(OF).stream()
                                            .map(share -> new HardUse.Part(share.name(), share.times()))
                                            .toList(),
                                    v.of(FACTOR)),
                            NAME,
                            OF,
                            FACTOR)));

    private HardUseCatalogue() {}

    private static HardUse.Launch launch(Values v) {
        double gear = v.of(GEAR);
        require(gear == Math.rint(gear), GEAR.key(), "must be a whole number, from 1 on");
        return new HardUse.Launch(v.of(NAME), (int) gear, v.of(SHOCK), v.of(FACTOR));
    }

    private static Slot<Double> ofLoad(String key, String meaning) {
        return ratio(key).means(meaning).usual(0, 6).within(0, 100);
    }

    private static Shape<Map<String, HardUse.Force>> wheels() {
        List<Slot<List<Double>>> wheels = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            wheels.add(numbers(wheel.key(), Dimension.FORCE, 3, "[\"-5 kN\", \"2.5 kN\", \"9 kN\"]")
                    .optional()
                    .means("force of the ground on this wheel: forwards, to the left, up"));
        }
        return shape(
                "forcesOfTheGround",
                v -> {
                    Map<String, HardUse.Force> forces = new LinkedHashMap<>();
                    wheels.forEach(wheel -> v.optional(wheel)
                            .ifPresent(f -> forces.put(wheel.key(), new HardUse.Force(f.get(0), f.get(1), f.get(2)))));
                    return forces;
                },
                wheels.toArray(Slot<?>[]::new));
    }

    private static UsualUse usualCase(Class<? extends HardUse> kind) {
        return UsualUse.ALL.stream()
                .filter(usual -> kind.isInstance(usual.use()))
                .findFirst()
                .orElseThrow();
    }

    private static <T extends HardUse> T usual(Class<T> kind) {
        return kind.cast(usualCase(kind).use());
    }

    private static String origin(Class<? extends HardUse> kind) {
        return usualCase(kind).origin();
    }

    /**
     * What a file without a list of its own is asked: the usual cases, each given by no more than its name; no start where nobody
     * knows which wheels drive.
     */
    static Built<List<HardUse>> usual(Entries car) {
        List<HardUse> uses = new ArrayList<>();
        List<Adjustable> values = new ArrayList<>();
        for (UsualUse usual : UsualUse.ALL) {
            Entries named = new Entries(
                    Optional.of(usual.use().kind()),
                    Map.of(NAME.key(), new Entry.Word(usual.use().name())));
            Built<HardUse> built = Catalogue.build(HARD_USE, named);
            if (usual.use() instanceof HardUse.Launch && car.get("drive").isEmpty()) {
                continue;
            }
            String item = KEY + "[" + uses.size() + "]";
            built.values()
                    .forEach(value -> values.add(new Adjustable(
                            Path.join(item, value.path()),
                            value.slot(),
                            value.si(),
                            value.tolerance(),
                            value.origin(),
                            value.rule(),
                            value.unit())));
            uses.add(built.value().orElseThrow());
        }
        return new Built<>(Optional.of(List.copyOf(uses)), List.of(), values);
    }

    /** A file's list with the car at rest in it, which is always looked at. */
    static List<HardUse> withStanding(List<HardUse> uses) {
        if (uses.stream().anyMatch(HardUse.Standing.class::isInstance)) {
            return uses;
        }
        String name = usual(HardUse.Standing.class).name();
        List<HardUse> all = new ArrayList<>();
        all.add(new HardUse.Standing(HardUse.named(uses, name).isEmpty() ? name : name + " at rest", 1));
        all.addAll(uses);
        return List.copyOf(all);
    }
}
