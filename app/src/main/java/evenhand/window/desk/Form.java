package evenhand.window.desk;

import evenhand.car.Car;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Built;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Path;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.scenario.EntryJson;
import evenhand.scenario.FileCatalogue;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.ChangeWords;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The fields of a job by concept, made from the catalogue: what is declared there has its field here. */
public record Form(List<Section> sections) {
    /** Whose values a section holds. */
    public enum Home {
        CAR,
        /** The file round the car. */
        JOB,
        SETUP
    }

    /** What a section is of. */
    public enum Role {
        OBJECT,
        /** A list of larger things, each of which has a section of its own. */
        LIST,
        ITEM,
        /** The same by names of the person's own. */
        NAMES,
        NAMED
    }

    /**
     * The fields of one object.
     *
     * @param path of the object; empty for the car itself
     * @param title in words
     * @param meaning of the object
     * @param absent whether there is none; the fields are then what one would need
     * @param needed whether a car cannot do without
     * @param size of a list, or how many there are by name
     * @param next name of what would be added next, where there are names
     * @param fields points that are measured have their coordinates among them
     * @param right what could differ on the right side and does not
     */
    public record Section(
            Home home,
            Role role,
            String path,
            String title,
            String meaning,
            boolean absent,
            boolean needed,
            int size,
            String next,
            List<FormField> fields,
            List<FormField> right) {
        private Section(
                Home home,
                Role role,
                String path,
                String title,
                String meaning,
                boolean absent,
                boolean needed,
                int size,
                List<FormField> fields,
                List<FormField> right) {
            this(home, role, path, title, meaning, absent, needed, size, "", fields, right);
        }

        public Section {
            fields = List.copyOf(fields);
            right = List.copyOf(right);
        }

        /** Whether a search for words finds what can be added here. */
        public boolean matches(String search) {
            return (absent || adds()) && FormField.matches(title + " " + path + " " + meaning, search);
        }

        /** Whether one more can be added here to those that there are. */
        public boolean adds() {
            return role == Role.LIST || role == Role.NAMES;
        }

        /** What is added here: the object itself, or the next of the list. */
        public String added() {
            return role == Role.LIST ? path + "[" + size + "]" : role == Role.NAMES ? Path.join(path, next) : path;
        }
    }

    private static final String SHEET = "sheet";
    private static final Entries NOTHING = new Entries(Optional.empty(), Map.of());
    private static final Slot<String> OWN_NAME =
            Slot.text("name").means("name of its own, by which set-ups, searches and answers know it");

    public Form {
        sections = List.copyOf(sections);
    }

    /** The form of a car. */
    public static Form of(Entries car) {
        return of(car, false);
    }

    /** @param renames whether what has a name of its own may get another, which it then has in all set-ups */
    private static Form of(Entries car, boolean renames) {
        Map<String, Adjustable> values = new HashMap<>();
        Built<Car> built = Catalogue.build(Catalogue.CAR, car);
        built.values().forEach(value -> values.put(value.path(), value));
        // what only the ride estimates, or what follows from others, stands in its blank field all the same
        built.value()
                .ifPresent(whole -> Stream.concat(
                                Catalogue.workedOut(whole).stream(),
                                Catalogue.estimatedForRide(whole.settled()).stream())
                        .forEach(value -> values.putIfAbsent(value.path(), value)));
        List<Section> sections = new ArrayList<>();
        new Walk(Home.CAR, values, Catalogue.decidedByLinks(car), renames, sections)
                .object("", Role.OBJECT, "The car as a whole", "", Catalogue.CAR, true, Optional.of(car));
        return new Form(sections);
    }

    /** The form of a job: its car for all set-ups, and what is round it. */
    public static Form of(Scenario job) {
        List<Section> sections = new ArrayList<>(of(job.car(), true).sections());
        new Walk(Home.JOB, Map.of(), Set.of(), false, sections)
                .object("", Role.OBJECT, "The job", "", JOB, true, Optional.of(job.given()));
        return new Form(sections);
    }

    /** The form of one set-up: the car with its changes, and its words for the sheet. */
    public static Form of(Setup setup) {
        List<Section> sections = new ArrayList<>(of(setup.entries()).sections());
        Slot<?> sheet = FileCatalogue.sheet();
        Optional<Entry> words = Optional.of(new Entry.Texts(setup.sheet()));
        sections.add(new Section(
                Home.SETUP,
                Role.OBJECT,
                SHEET,
                "The set-up sheet",
                "",
                false,
                true,
                0,
                List.of(field(SHEET, sheet, words, Optional.empty())),
                List.of()));
        return new Form(sections);
    }

    private static final Shape<?> JOB = new Shape.Plain<>("job", FileCatalogue.besideTheCar(), values -> values);

    /** All fields, in order. */
    public List<FormField> fields() {
        return sections.stream().flatMap(section -> section.fields().stream()).toList();
    }

    public Optional<FormField> field(String path) {
        return fields().stream().filter(field -> field.path().equals(path)).findFirst();
    }

    /** A place among the shapes, and what was given there. */
    private record Spot(Shape<?> shape, Optional<Entries> given) {
        Shape.Plain<?> plain() {
            return shape instanceof Shape.ByName<?> byName
                    ? byName.plain(given.orElse(NOTHING))
                    : Form.plain(shape, given.flatMap(Entries::kind));
        }

        Spot below(Path.Step step) {
            if (shape instanceof Shape.ByName<?> byName) {
                return new Spot(byName.each(), entries(given.flatMap(own -> own.get(step.key()))));
            }
            Content<?> content = plain().slot(step.key()).orElseThrow().content();
            Optional<Entry> entry = given.flatMap(own -> own.get(step.key()));
            if (content instanceof Content.Group<?> group) {
                return new Spot(group.shape(), entries(entry));
            } else if (content instanceof Content.Groups<?> groups) {
                boolean there = entry.orElse(null) instanceof Entry.Listed listed
                        && step.index() < listed.items().size();
                return new Spot(
                        groups.shape(),
                        there
                                ? Optional.of(((Entry.Listed) entry.orElseThrow())
                                        .items()
                                        .get(step.index()))
                                : Optional.empty());
            }
            throw new IllegalArgumentException("no object: " + step);
        }
    }

    /** What an object of a car or job is, in the words of the trade. */
    public static String meaning(Home home, Entries given, String path) {
        List<Path.Step> steps = Path.of(path).steps();
        int last = steps.size() - 1;
        return spot(home, given, steps.subList(0, last))
                .plain()
                .slot(steps.get(last).key())
                .map(Slot::meaning)
                .orElse("");
    }

    private static Optional<Entries> entries(Optional<Entry> entry) {
        return entry.filter(Entries.class::isInstance).map(Entries.class::cast);
    }

    private static Spot spot(Home home, Entries given, List<Path.Step> steps) {
        Spot spot = new Spot(home == Home.CAR ? Catalogue.CAR : JOB, Optional.of(given));
        for (Path.Step step : steps) {
            spot = spot.below(step);
        }
        return spot;
    }

    /**
     * The fields of an object that is being drafted: all of its own, and those that it needs in the objects below.
     *
     * @param given the car or job whose object it is
     * @param path of the object
     * @param draft what was typed so far, by path
     */
    public static List<FormField> drafted(Home home, Entries given, String path, Draft draft) {
        List<FormField> fields = new ArrayList<>();
        draft(path, spot(home, given, Path.of(path).steps()).shape(), draft, true, fields);
        return fields;
    }

    /** What was given under a path of the car, as JSON. */
    static Optional<String> given(Entries car, String path) {
        List<Path.Step> steps = Path.of(path).steps();
        String key = steps.get(steps.size() - 1).key();
        Spot spot = spot(Home.CAR, car, steps.subList(0, steps.size() - 1));
        return spot.given()
                .flatMap(own -> own.get(key))
                .map(entry -> EntryJson.write(spot.plain().slot(key).orElseThrow(), entry));
    }

    /** Paths of what is given on a car and cannot stand beside something else there. */
    public static List<String> insteadOf(Entries car, String path) {
        List<Path.Step> steps = Path.of(path).steps();
        List<Path.Step> above = steps.subList(0, steps.size() - 1);
        String key = steps.get(above.size()).key();
        Spot spot = spot(Home.CAR, car, above);
        return spot.plain().slots().stream()
                .filter(other ->
                        spot.given().flatMap(own -> own.get(other.key())).isPresent())
                .filter(other -> excludes(spot.plain(), key, other.key()) || excludes(spot.plain(), other.key(), key))
                .map(other -> Path.join(new Path(above).toString(), other.key()))
                .toList();
    }

    private static boolean excludes(Shape.Plain<?> shape, String one, String other) {
        return shape.slot(one).stream()
                .flatMap(slot -> slot.instead().stream())
                .anyMatch(instead -> !instead.both() && instead.slot().key().equals(other));
    }

    /** The fields that an object cannot do without, or all where it is the one that is drafted. */
    static void draft(String path, Shape<?> shape, Draft draft, boolean all, List<FormField> fields) {
        Optional<String> word = Optional.empty();
        if (shape instanceof Shape.Kinds<?> kinds) {
            String key = Path.join(path, kinds.key());
            word = draft.get(key);
            fields.add(kind(key, kinds, word));
        }
        for (Slot<?> slot : plain(shape, word).slots()) {
            String here = Path.join(path, slot.key());
            Optional<String> typed = draft.get(here);
            if (slot.content() instanceof Content.Group<?> group) {
                if (slot.required()) {
                    draft(here, group.shape(), draft, isOfNumbers(group.shape()), fields);
                }
            } else if (all || slot.required()) {
                Optional<Grid> grid = Grid.of(slot, typed.flatMap(json -> EntryJson.read(slot, json)));
                if (grid.isPresent() || !(slot.content() instanceof Content.Groups<?>)) {
                    fields.add(field(here, slot, typed, Optional.empty(), grid));
                }
            }
        }
    }

    /** Whether an object holds nothing but numbers, any of which may be left out: then all are asked for. */
    private static boolean isOfNumbers(Shape<?> shape) {
        return shape instanceof Shape.Plain<?> plain
                && plain.slots().stream().allMatch(slot -> slot.content() instanceof Content.Numbers);
    }

    /** The object proper of a kind; the first where none is said. */
    static Shape.Plain<?> plain(Shape<?> shape, Optional<String> kind) {
        if (shape instanceof Shape.ByName<?> byName) {
            return byName.plain(NOTHING);
        }
        if (shape instanceof Shape.Kinds<?> kinds) {
            Shape.Plain<?> known = kind.isPresent() ? kinds.kinds().get(kind.get()) : null;
            return known == null ? kinds.kinds().values().iterator().next() : known;
        }
        return (Shape.Plain<?>) shape;
    }

    private static FormField kind(String path, Shape.Kinds<?> kinds, Optional<String> word) {
        return new FormField(
                path,
                Optional.empty(),
                kinds.meaning(),
                List.copyOf(kinds.kinds().keySet()),
                word,
                Optional.empty());
    }

    private static FormField field(String path, Slot<?> slot, Optional<Entry> entry, Optional<Adjustable> value) {
        return field(path, slot, entry.map(Entry::text), value, Grid.of(slot, entry));
    }

    static FormField field(
            String path, Slot<?> slot, Optional<String> given, Optional<Adjustable> value, Optional<Grid> grid) {
        List<String> choices = slot.content() instanceof Content.Choice<?> choice
                ? List.copyOf(choice.words().keySet())
                : slot.content() instanceof Content.Flag ? List.of("true", "false") : List.of();
        return new FormField(path, Optional.of(slot), slot.meaning(), choices, given, value, grid);
    }

    /**
     * A walk through the shapes; sections below an object follow it.
     *
     * @param decided paths of what the links decide
     * @param renames whether what has a name of its own may get another
     */
    private record Walk(
            Home home, Map<String, Adjustable> values, Set<String> decided, boolean renames, List<Section> sections) {
        private static final String RIGHT = "right";

        void object(
                String path,
                Role role,
                String title,
                String meaning,
                Shape<?> shape,
                boolean needed,
                Optional<Entries> given) {
            object(path, role, title, meaning, shape, needed, given, false);
        }

        /** @param pointAbove whether its only point stands in the table of what it belongs to */
        private void object(
                String path,
                Role role,
                String title,
                String meaning,
                Shape<?> shape,
                boolean needed,
                Optional<Entries> given,
                boolean pointAbove) {
            List<FormField> fields = new ArrayList<>();
            List<FormField> right = new ArrayList<>();
            int own = sections.size();
            Optional<String> word = given.flatMap(Entries::kind);
            if (role == Role.NAMED && renames) {
                fields.add(field(path, OWN_NAME, Optional.of(new Entry.Word(title)), Optional.empty()));
            }
            if (shape instanceof Shape.Kinds<?> kinds) {
                fields.add(kind(Path.join(path, kinds.key()), kinds, word));
            }
            if (shape instanceof Shape.Plain<?> || word.isPresent()) {
                Shape.Plain<?> plain = plain(shape, word);
                slots(path, plain, given, fields, pointAbove);
                boolean points = !pointAbove && fields.stream().anyMatch(PointRow::isCoordinate);
                Optional<Slot<?>> other = plain.slot(RIGHT).filter(slot -> points && slot.isByPoints());
                if (other.isPresent() && other.get().content() instanceof Content.Group<?> group) {
                    right(path, plain(group.shape(), Optional.empty()), given.orElseThrow(), fields, right);
                }
            }
            if (!fields.isEmpty()) {
                sections.add(
                        own, new Section(home, role, path, title, meaning, given.isEmpty(), needed, 0, fields, right));
            }
        }

        private void slots(
                String path,
                Shape.Plain<?> plain,
                Optional<Entries> given,
                List<FormField> fields,
                boolean pointAbove) {
            for (Slot<?> slot : plain.slots()) {
                Optional<Entry> entry = given.flatMap(own -> own.get(slot.key()));
                String here = Path.join(path, slot.key());
                boolean ofRight = slot.isByPoints() && slot.key().equals(RIGHT);
                if (ofRight || (entry.isEmpty() && (slot.isByPoints() || decided.contains(here)))) {
                    continue;
                }
                if (slot.content() instanceof Content.Group<?> group
                        && group.shape() instanceof Shape.ByName<?> names) {
                    names(here, slot.meaning(), names, entries(entry));
                } else if (slot.content() instanceof Content.Group<?> group) {
                    boolean point = given.isPresent() && isPointOfIt(slot);
                    if (point) {
                        if (!pointAbove) {
                            point(here, plain(group.shape(), Optional.empty()), entries(entry), fields);
                        }
                        continue;
                    }
                    Optional<Slot<?>> single = slot.isByPoints() ? single(group.shape()) : Optional.empty();
                    if (single.isPresent() && single.get().content() instanceof Content.Group<?> end) {
                        point(
                                Path.join(here, single.get().key()),
                                plain(end.shape(), Optional.empty()),
                                entries(entry)
                                        .flatMap(own ->
                                                entries(own.get(single.get().key()))),
                                fields);
                    }
                    object(
                            here,
                            Role.OBJECT,
                            title(here),
                            slot.meaning(),
                            group.shape(),
                            slot.required(),
                            entries(entry),
                            single.isPresent());
                } else if (slot.content() instanceof Content.Groups<?> groups
                        && Grid.of(slot, entry).isEmpty()) {
                    if (given.isPresent()) {
                        list(here, slot.meaning(), groups.shape(), entry);
                    }
                } else {
                    fields.add(field(here, slot, entry, Optional.ofNullable(values.get(here))));
                }
            }
        }

        /** A point that an object cannot do without, or that it was given, is no object of its own. */
        private static boolean isPointOfIt(Slot<?> slot) {
            return PointRow.isPoint(slot) && (slot.required() || slot.isByPoints());
        }

        /** The point of an object that has no other: a rod's end. */
        private static Optional<Slot<?>> single(Shape<?> shape) {
            List<Slot<?>> points = new ArrayList<>();
            if (shape instanceof Shape.Plain<?> plain) {
                plain.slots().stream().filter(Walk::isPointOfIt).forEach(points::add);
            }
            return points.size() == 1 ? Optional.of(points.get(0)) : Optional.empty();
        }

        private void point(String path, Shape.Plain<?> shape, Optional<Entries> given, List<FormField> fields) {
            for (Slot<?> slot : shape.slots()) {
                String here = Path.join(path, slot.key());
                fields.add(field(
                        here, slot, given.flatMap(own -> own.get(slot.key())), Optional.ofNullable(values.get(here))));
            }
        }

        /** What differs on the right among the fields, and what could: there the left one counts. */
        private void right(
                String path, Shape.Plain<?> shape, Entries left, List<FormField> fields, List<FormField> right) {
            String here = Path.join(path, RIGHT);
            Optional<Entries> given = entries(left.get(RIGHT));
            for (Slot<?> slot : shape.slots()) {
                Optional<Entry> entry = given.flatMap(own -> own.get(slot.key()));
                if (slot.content() instanceof Content.Group<?> group) {
                    if (left.get(slot.key()).isPresent()) {
                        for (Slot<?> own :
                                plain(group.shape(), Optional.empty()).slots()) {
                            Optional<Entry> cell = entries(entry).flatMap(point -> point.get(own.key()));
                            rightField(
                                    Path.join(Path.join(here, slot.key()), own.key()),
                                    Path.join(Path.join(path, slot.key()), own.key()),
                                    own,
                                    cell,
                                    fields,
                                    right);
                        }
                    }
                } else {
                    rightField(Path.join(here, slot.key()), Path.join(path, slot.key()), slot, entry, fields, right);
                }
            }
        }

        private void rightField(
                String path,
                String mirrored,
                Slot<?> slot,
                Optional<Entry> entry,
                List<FormField> fields,
                List<FormField> right) {
            Optional<Adjustable> counts = Optional.ofNullable(values.get(entry.isPresent() ? path : mirrored))
                    .map(value -> entry.isPresent()
                            ? value
                            : new Adjustable(
                                    path, value.slot(), value.si(), 0, Adjustable.Origin.DEFAULT, "", value.unit()));
            (entry.isPresent() ? fields : right).add(field(path, slot, entry, counts));
        }

        private void names(String path, String meaning, Shape.ByName<?> shape, Optional<Entries> given) {
            Set<String> names = given.map(own -> own.given().keySet()).orElse(Set.of());
            for (String name : names) {
                object(
                        Path.join(path, name),
                        Role.NAMED,
                        name,
                        shape.meaning(),
                        shape.each(),
                        false,
                        given.flatMap(own -> entries(own.get(name))));
            }
            String one = path.substring(path.lastIndexOf('.') + 1).replaceFirst("s$", "");
            int number = names.size() + 1;
            while (names.contains(one + number)) {
                number++;
            }
            String title = names.isEmpty() ? title(path) : "More " + ChangeWords.name(path);
            sections.add(new Section(
                    home,
                    Role.NAMES,
                    path,
                    title,
                    meaning,
                    false,
                    true,
                    names.size(),
                    one + number,
                    List.of(),
                    List.of()));
        }

        private void list(String path, String meaning, Shape<?> shape, Optional<Entry> entry) {
            List<Entries> items = entry.orElse(null) instanceof Entry.Listed listed ? listed.items() : List.of();
            for (int i = 0; i < items.size(); i++) {
                String here = path + "[" + i + "]";
                object(here, Role.ITEM, title(here), "", shape, false, Optional.of(items.get(i)));
            }
            String title = items.isEmpty() ? title(path) : "More " + ChangeWords.name(path);
            sections.add(new Section(
                    home, Role.LIST, path, title, meaning, false, true, items.size(), List.of(), List.of()));
        }

        private static String title(String path) {
            String words = ChangeWords.name(path);
            return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
        }
    }
}
