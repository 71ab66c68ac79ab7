package evenhand.scenario;

import evenhand.car.Car;
import evenhand.car.mounts.HardUse;
import evenhand.catalogue.Built;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Nearest;
import evenhand.catalogue.Slot;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiConsumer;

/** Reads scenario files and reports all problems at once. */
public final class ScenarioReader {
    private static final int LONGEST_RING = 6;

    private final Problems problems;
    private final EntryReader entryReader;
    private final Map<Patched, Setup> known;

    private ScenarioReader(String file, Map<Patched, Setup> known) {
        this.problems = new Problems(file);
        this.entryReader = new EntryReader(problems);
        this.known = known;
    }

    public static Reading read(Path file) {
        ScenarioReader reader = new ScenarioReader(file.toString(), Map.of());
        Optional<Scenario> scenario =
                Source.read(file, "scenario", reader.problems).flatMap(reader::scenario);
        return reader.reading(scenario);
    }

    /** Reads what comes in from elsewhere than a file, told of by this name. */
    public static Reading read(String name, InputStream in) {
        ScenarioReader reader = new ScenarioReader(name, Map.of());
        return reader.reading(Source.readIn(in, "scenario", reader.problems).flatMap(reader::scenario));
    }

    /** Reads what would stand in a file of this name. */
    public static Reading read(String file, String text) {
        ScenarioReader reader = new ScenarioReader(file, Map.of());
        return reader.reading(reader.scenario(new Source(text)));
    }

    /**
     * Reads the text of a scenario that was edited. The set-ups that stand as they did are taken over, the very same, so that an
     * adjustment that is dragged costs one set-up and not all of them.
     */
    public static Reading again(Scenario before, String text) {
        ScenarioReader reader = new ScenarioReader(before.file(), patched(before));
        return reader.reading(reader.scenario(new Source(text)));
    }

    private static Map<Patched, Setup> patched(Scenario sound) {
        ScenarioReader reader = new ScenarioReader(sound.file(), Map.of());
        Map<Patched, Setup> patched = new HashMap<>();
        if (JsonReader.read(new Source(sound.text()), reader.problems).orElse(null) instanceof Json.Obj top
                && top.members().get("car") instanceof Json.Obj car) {
            reader.patched(car, top)
                    .forEach(one -> sound.setup(one.named().name()).ifPresent(setup -> patched.put(one, setup)));
        }
        return patched;
    }

    private Reading reading(Optional<Scenario> scenario) {
        return new Reading(problems.isEmpty() ? scenario : Optional.empty(), problems.inOrder());
    }

    /** A set-up's JSON and what is known of it before its changes are applied. */
    private record Raw(FileCatalogue.Named named, Json.Obj json) {}

    /** A set-up, its car with all changes applied, and its look. */
    private record Patched(FileCatalogue.Named named, Json car, int look) {}

    private Optional<Scenario> scenario(Source source) {
        Optional<Json> read = JsonReader.read(source, problems);
        if (read.isEmpty()) {
            return Optional.empty();
        }
        Json root = read.get();
        Optional<Entries> entries = entryReader.read(FileCatalogue.FILE, root);
        if (entries.isEmpty() || !(root instanceof Json.Obj top)) {
            return Optional.empty();
        }
        Built<FileCatalogue.Opened> opened = Catalogue.build(FileCatalogue.FILE, entries.get());
        report(opened.faults(), root);
        uniqueLoadCases(top);
        hardUse(entries.get(), root);
        judges(entries.get(), root);
        if (!(top.members().get("car") instanceof Json.Obj car)) {
            return Optional.empty();
        }
        Optional<Entries> asGiven =
                entries.get().get("car").filter(Entries.class::isInstance).map(Entries.class::cast);
        List<Setup> setups = patched(car, top).stream()
                .flatMap(one -> Optional.ofNullable(known.get(one)).or(() -> setup(one, asGiven)).stream())
                .toList();
        opened.value().ifPresent(file -> new RoadTestChecks(problems, top).of(file, setups));
        BiConsumer<String, String> report = (path, what) -> problems.at(Locator.place(root, path), what);
        opened.value().ifPresent(file -> BookChecks.of(file.record().book(), report));
        Map<String, Double> tolerances = opened.value()
                .map(file -> ToleranceReading.of(file.tolerances(), setups, report))
                .orElse(Map.of());
        if (!problems.isEmpty()
                || opened.value().isEmpty()
                || !(entries.get().given().get("car") instanceof Entries given)) {
            return Optional.empty();
        }
        FileCatalogue.Opened file = opened.value().get();
        Built<List<HardUse>> uses = file.hardUse()
                .map(listed -> new Built<>(
                        Optional.of(HardUseCatalogue.withStanding(listed)),
                        List.of(),
                        opened.values().stream()
                                .filter(value -> value.path().startsWith(FileCatalogue.HARD_USE.key() + "["))
                                .toList()))
                .orElseGet(() -> HardUseCatalogue.usual(given));
        Set<Warning> warnings =
                new LinkedHashSet<>(new Checks(problems.file(), car).of(given, Catalogue.build(given), file.car()));
        setups.forEach(setup -> warnings.addAll(setup.warnings()));
        BiConsumer<String, String> warn = (path, what) -> {
            Place place = Locator.place(root, path);
            warnings.add(new Warning(problems.file(), place.line(), place.column(), place.where(), what));
        };
        BookChecks.slips(file.record(), setups.stream().map(Setup::name).toList(), warn);
        if (file.hardUse().isPresent()) {
            HardUseChecks.leftOut(file.hardUse().get(), file.car(), warn);
        }
        return Optional.of(new Scenario(
                problems.file(),
                source.text(),
                file.title(),
                file.story(),
                file.asked(),
                file.shop(),
                entries.get(),
                given,
                setups,
                file.loadCases(),
                uses.value().orElseThrow(),
                uses.estimated(),
                file.roadTests(),
                file.record().within(tolerances),
                warnings.stream().sorted(Warning.BY_PLACE).toList(),
                Optional.empty()));
    }

    private void uniqueLoadCases(Json.Obj top) {
        Set<String> names = new HashSet<>();
        if (top.members().get("loadCases") instanceof Json.Arr cases) {
            for (Json item : cases.items()) {
                if (item instanceof Json.Obj object
                        && object.members().get("name") instanceof Json.Str name
                        && !names.add(name.text())) {
                    problems.at(name.place(), "is the name of an earlier load case; choose another");
                }
            }
        }
    }

    /** Names of judges that are no load case; whatever else is wrong with one was reported with the file. */
    private void judges(Entries file, Json root) {
        List<String> loads = listed(file, FileCatalogue.LOAD_CASES).stream()
                .flatMap(item -> item.get(FileCatalogue.CASE_NAME.key()).stream())
                .map(Entry::text)
                .toList();
        List<Entries> asked = listed(file, FileCatalogue.ASKED);
        for (int i = 0; i < asked.size(); i++) {
            Optional<Judge> judge = Catalogue.build(FileCatalogue.ASKED_SHAPE, asked.get(i))
                    .value()
                    .flatMap(Asked::judge);
            if (judge.orElse(null) instanceof Judge.Aboard aboard && !loads.contains(aboard.loadCase())) {
                problems.at(
                        Locator.place(root, "asked[" + i + "].judge"), JudgeReading.unknown(aboard.loadCase(), loads));
            }
        }
    }

    private static List<Entries> listed(Entries file, Slot<?> slot) {
        return file.given().get(slot.key()) instanceof Entry.Listed listed ? listed.items() : List.of();
    }

    /** What is wrong with the cases of hard use taken together; what is wrong with one was reported with the file. */
    private void hardUse(Entries file, Json root) {
        if (!(file.given().get(FileCatalogue.HARD_USE.key()) instanceof Entry.Listed listed)) {
            return;
        }
        List<HardUse> uses = listed.items().stream()
                .flatMap(item -> Catalogue.build(HardUseCatalogue.HARD_USE, item).value().stream())
                .toList();
        if (uses.size() == listed.items().size()) {
            HardUseChecks.together(uses, file).forEach((path, what) -> problems.at(Locator.place(root, path), what));
        }
    }

    private List<Patched> patched(Json car, Json.Obj top) {
        if (!(top.members().get("setups") instanceof Json.Arr list)
                || list.items().isEmpty()) {
            FileCatalogue.Named only = new FileCatalogue.Named(
                    Setup.AS_GIVEN, Optional.empty(), Optional.empty(), Map.of(), OptionalDouble.empty());
            return List.of(new Patched(only, car, 0));
        }
        Map<String, Raw> byName = new LinkedHashMap<>();
        Set<String> unreadable = new HashSet<>();
        for (Json item : list.items()) {
            if (item instanceof Json.Obj object) {
                Optional<Raw> raw = raw(object);
                if (raw.isEmpty()) {
                    if (object.members().get("name") instanceof Json.Str name) {
                        unreadable.add(name.text());
                    }
                } else if (byName.putIfAbsent(raw.get().named().name(), raw.get()) != null) {
                    problems.at(place(object, "name"), "is the name of an earlier set-up; choose another");
                }
            }
        }
        Map<String, Chained> done = new HashMap<>();
        List<Patched> setups = new ArrayList<>();
        Map<String, Integer> looks = looks(byName);
        byName.forEach((name, raw) -> chained(raw, car, byName, unreadable, done)
                .car()
                .ifPresent(patched ->
                        setups.add(new Patched(raw.named(), patched, Objects.requireNonNull(looks.get(name))))));
        return setups;
    }

    private Map<String, Integer> looks(Map<String, Raw> byName) {
        Set<Integer> seen = new HashSet<>();
        List<OptionalInt> given = new ArrayList<>();
        byName.forEach((name, raw) -> {
            OptionalDouble own = raw.named().look();
            given.add(own.isPresent() ? OptionalInt.of((int) own.getAsDouble() - 1) : OptionalInt.empty());
            if (own.isPresent() && !seen.add((int) own.getAsDouble())) {
                problems.at(
                        place(raw.json(), "look"),
                        "is the look of an earlier set-up; choose another from 1 to " + Setup.MOST_LOOKS
                                + ", or leave it out");
            }
        });
        Map<String, Integer> looks = new HashMap<>();
        Iterator<Integer> each = SetupLooks.of(given).iterator();
        byName.keySet().forEach(name -> looks.put(name, each.next()));
        return looks;
    }

    private static Place place(Json.Obj object, String key) {
        Json value = object.members().get(key);
        return value == null ? object.place() : value.place();
    }

    private Optional<Raw> raw(Json.Obj object) {
        // Problems of the set-up itself were reported when the whole file was read.
        return new EntryReader(new Problems(problems.file()))
                .read(FileCatalogue.SETUP, object)
                .flatMap(
                        entries -> Catalogue.build(FileCatalogue.SETUP, entries).value())
                .map(named -> new Raw(named, object));
    }

    /**
     * What a set-up comes to on its bases.
     *
     * @param car with the changes of its bases and its own; none where a base is missing or they go in a ring
     * @param ring the set-up at which one enters the ring that it goes round in or leads into
     */
    private record Chained(Optional<Json> car, Optional<Raw> ring) {
        static Chained of(Json car) {
            return new Chained(Optional.of(car), Optional.empty());
        }

        static Chained nowhere(Optional<Raw> ring) {
            return new Chained(Optional.empty(), ring);
        }
    }

    /**
     * A set-up on its bases. Each is worked out once, whatever is based on it, so that a long chain costs no more than as many
     * set-ups side by side.
     *
     * @param done those worked out before; this set-up and its bases are added
     */
    private Chained chained(
            Raw setup, Json asGiven, Map<String, Raw> byName, Set<String> unreadable, Map<String, Chained> done) {
        Map<String, Raw> open = new LinkedHashMap<>(); // from this set-up up to what is known
        Chained base = Chained.of(asGiven);
        Optional<Raw> next = Optional.of(setup);
        while (next.isPresent()) {
            Raw one = next.get();
            Chained known = done.get(one.named().name());
            if (known != null) {
                base = known;
                break;
            }
            if (open.put(one.named().name(), one) != null) {
                base = Chained.nowhere(Optional.of(one));
                break;
            }
            next = one.named().basedOn().map(byName::get);
            if (next.isEmpty() && one.named().basedOn().isPresent()) {
                missingBase(one, byName.keySet(), unreadable);
                base = Chained.nowhere(Optional.empty());
            }
        }
        boolean around =
                base.ring().map(entry -> open.containsKey(entry.named().name())).orElse(false);
        List<Raw> deepestFirst = new ArrayList<>(open.values());
        Collections.reverse(deepestFirst);
        for (Raw one : deepestFirst) {
            Optional<Raw> entry = base.ring();
            if (around) {
                ring(one, "goes round in a ring: a set-up cannot be based on itself; base one of them on nothing");
                done.put(one.named().name(), Chained.nowhere(Optional.of(one)));
                around = !one.named().name().equals(entry.orElseThrow().named().name());
                continue;
            }
            entry.ifPresent(
                    into -> ring(one, "leads into a ring: " + ring(into, byName) + "; base one of these on nothing"));
            base = base.car().map(car -> Chained.of(changed(car, one))).orElse(base);
            done.put(one.named().name(), base);
        }
        return done.getOrDefault(setup.named().name(), base);
    }

    private static Json changed(Json car, Raw setup) {
        return setup.json().members().get("changes") instanceof Json.Obj changes ? MergePatch.merge(car, changes) : car;
    }

    private void ring(Raw setup, String what) {
        problems.at(place(setup.json(), "basedOn"), what);
    }

    private void missingBase(Raw setup, Set<String> names, Set<String> unreadable) {
        String base = setup.named().basedOn().orElseThrow();
        if (!unreadable.contains(base) && !problems.isFull()) {
            problems.at(
                    place(setup.json(), "basedOn"),
                    problems.isMoreThanListed()
                            ? "names no set-up of this file"
                            : noSuchBase(setup.named().name(), base, names));
        }
    }

    private static String noSuchBase(String own, String base, Set<String> names) {
        String nearest = Nearest.to(
                base, names.stream().filter(name -> !name.equals(own)).toList());
        return "names no set-up of this file; "
                + (nearest.isEmpty()
                        ? "there is no other, so leave it out"
                        : "the nearest name is \"" + JsonReader.shown(nearest) + "\"");
    }

    /** The set-ups of a ring from one of them on; of a long ring the first. */
    private static String ring(Raw first, Map<String, Raw> byName) {
        StringBuilder names =
                new StringBuilder("\"" + JsonReader.shown(first.named().name()) + "\"");
        Raw next = first;
        for (int i = 0; i < LONGEST_RING; i++) {
            next = Objects.requireNonNull(byName.get(next.named().basedOn().orElseThrow()));
            names.append(" on \"").append(JsonReader.shown(next.named().name())).append('"');
            if (next.named().name().equals(first.named().name())) {
                return names.toString();
            }
        }
        return names.append(" and so on").toString();
    }

    private Optional<Setup> setup(Patched patched, Optional<Entries> asGiven) {
        FileCatalogue.Named named = patched.named();
        Json car = patched.car();
        Optional<Entries> entries = entryReader.read(Catalogue.CAR, car);
        if (entries.isEmpty()) {
            return Optional.empty();
        }
        Built<Car> built = Catalogue.build(entries.get());
        report(built.faults(), car);
        return built.value()
                .map(whole -> new Setup(
                        named.name(),
                        named.note(),
                        named.basedOn(),
                        entries.get(),
                        whole,
                        built.values(),
                        named.sheet(),
                        patched.look(),
                        new Checks(problems.file(), car).of(asGiven, entries.get(), built, whole)));
    }

    private void report(List<Built.Fault> faults, Json root) {
        for (Built.Fault fault : faults) {
            Place place = Locator.place(root, fault.path());
            problems.at(place, place.where(), fault.what());
        }
    }
}
