package evenhand.window.desk;

import evenhand.car.Car;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Built;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Path;
import evenhand.catalogue.Slot;
import evenhand.scenario.FileCatalogue;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
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
        Section(
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
        new FormWalk(Home.CAR, values, Catalogue.decidedByLinks(car), renames, sections)
                .object("", Role.OBJECT, "The car as a whole", "", Catalogue.CAR, true, Optional.of(car));
        return new Form(sections);
    }

    /** The form of a job: its car for all set-ups, and what is round it. */
    public static Form of(Scenario job) {
        List<Section> sections = new ArrayList<>(of(job.car(), true).sections());
        new FormWalk(Home.JOB, Map.of(), Set.of(), false, sections)
                .object("", Role.OBJECT, "The job", "", FormPlace.JOB, true, Optional.of(job.given()));
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
                List.of(FormField.of(SHEET, sheet, words, Optional.empty())),
                List.of()));
        return new Form(sections);
    }

    /** All fields, in order. */
    public List<FormField> fields() {
        return sections.stream().flatMap(section -> section.fields().stream()).toList();
    }

    public Optional<FormField> field(String path) {
        return fields().stream().filter(field -> field.path().equals(path)).findFirst();
    }
}
