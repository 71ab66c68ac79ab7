package evenhand.window.desk;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Built;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Path;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.words.ChangeWords;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The fields of a car by concept, made from the catalogue: what is declared there has its field here. */
public record Form(List<Section> sections) {
    /**
     * The fields of one object of the car.
     *
     * @param path of the object; empty for the car itself
     * @param title in words
     * @param meaning of the object
     * @param absent whether the car has none; the fields are then what one would need
     */
    public record Section(String path, String title, String meaning, boolean absent, List<FormField> fields) {
        public Section {
            fields = List.copyOf(fields);
        }
    }

    public Form {
        sections = List.copyOf(sections);
    }

    /** The form of a car. */
    public static Form of(Entries car) {
        Built<?> built = Catalogue.build(Catalogue.CAR, car);
        Map<String, Adjustable> values = new HashMap<>();
        built.values().forEach(value -> values.put(value.path(), value));
        List<Section> sections = new ArrayList<>();
        new Walk(values, sections).object("", "The car as a whole", "", Catalogue.CAR, Optional.of(car));
        return new Form(sections);
    }

    /** All fields, in order. */
    public List<FormField> fields() {
        return sections.stream().flatMap(section -> section.fields().stream()).toList();
    }

    public Optional<FormField> field(String path) {
        return fields().stream().filter(field -> field.path().equals(path)).findFirst();
    }

    /**
     * The fields of an object that is being drafted: all of its own, and those that it needs in the objects below.
     *
     * @param car whose object it is
     * @param path of the object
     * @param draft what was typed so far, by paths of the car
     */
    public static List<FormField> drafted(Entries car, String path, Draft draft) {
        Shape<?> shape = Catalogue.CAR;
        Optional<Entries> here = Optional.of(car);
        String walked = "";
        for (Path.Step step : Path.of(path).steps()) {
            Shape.Plain<?> plain = plain(shape, here.flatMap(Entries::kind));
            if (!(plain.slot(step.key()).orElseThrow().content() instanceof Content.Group<?> group)) {
                throw new IllegalArgumentException("no object of the car: " + path);
            }
            shape = group.shape();
            walked = Path.join(walked, step.key());
            here = here.flatMap(own -> own.get(step.key()))
                    .filter(Entries.class::isInstance)
                    .map(Entries.class::cast);
        }
        List<FormField> fields = new ArrayList<>();
        draft(walked, shape, draft, true, fields);
        return fields;
    }

    /** The fields that an object cannot do without, or all where it is the one that is drafted. */
    static void draft(String path, Shape<?> shape, Draft draft, boolean all, List<FormField> fields) {
        Optional<String> word = Optional.empty();
        if (shape instanceof Shape.Kinds<?> kinds) {
            String key = Path.join(path, kinds.key());
            word = draft.get(key);
            List<String> choices = List.copyOf(kinds.kinds().keySet());
            fields.add(new FormField(key, Optional.empty(), kinds.meaning(), choices, word, Optional.empty()));
        }
        for (Slot<?> slot : plain(shape, word).slots()) {
            String here = Path.join(path, slot.key());
            if (slot.content() instanceof Content.Group<?> group) {
                if (slot.required()) {
                    draft(here, group.shape(), draft, false, fields);
                }
            } else if (!(slot.content() instanceof Content.Groups<?>) && (all || slot.required())) {
                fields.add(field(here, slot, draft.get(here), Optional.empty()));
            }
        }
    }

    /** The object proper of a kind; the first where none is said. */
    static Shape.Plain<?> plain(Shape<?> shape, Optional<String> kind) {
        if (shape instanceof Shape.Kinds<?> kinds) {
            Shape.Plain<?> known = kind.isPresent() ? kinds.kinds().get(kind.get()) : null;
            return known == null ? kinds.kinds().values().iterator().next() : known;
        }
        return (Shape.Plain<?>) shape;
    }

    static FormField field(String path, Slot<?> slot, Optional<String> given, Optional<Adjustable> value) {
        List<String> choices = slot.content() instanceof Content.Choice<?> choice
                ? List.copyOf(choice.words().keySet())
                : List.of();
        return new FormField(path, Optional.of(slot), slot.meaning(), choices, given, value);
    }

    /** A walk through the shapes; sections below an object follow it. */
    private record Walk(Map<String, Adjustable> values, List<Section> sections) {
        void object(String path, String title, String meaning, Shape<?> shape, Optional<Entries> given) {
            List<FormField> fields = new ArrayList<>();
            int own = sections.size();
            Optional<Shape.Plain<?>> plain = Optional.empty();
            if (shape instanceof Shape.Kinds<?> kinds) {
                Optional<String> word = given.flatMap(Entries::kind);
                fields.add(new FormField(
                        Path.join(path, kinds.key()),
                        Optional.empty(),
                        kinds.meaning(),
                        List.copyOf(kinds.kinds().keySet()),
                        word,
                        Optional.empty()));
                plain = word.map(known -> kinds.kinds().get(known));
            } else if (shape instanceof Shape.Plain<?> only) {
                plain = Optional.of(only);
            }
            plain.ifPresent(known -> slots(path, known, given, fields));
            Section section = new Section(path, title, meaning, given.isEmpty(), fields);
            if (!fields.isEmpty()) {
                sections.add(own, section);
            }
        }

        private void slots(String path, Shape.Plain<?> plain, Optional<Entries> given, List<FormField> fields) {
            for (Slot<?> slot : plain.slots()) {
                Optional<Entry> entry = given.flatMap(own -> own.get(slot.key()));
                String here = Path.join(path, slot.key());
                if (slot.content() instanceof Content.Group<?> group) {
                    object(
                            here,
                            title(here),
                            slot.meaning(),
                            group.shape(),
                            entry.filter(Entries.class::isInstance).map(Entries.class::cast));
                } else if (!(slot.content() instanceof Content.Groups<?>)) {
                    Optional<String> text =
                            entry.map(own -> own instanceof Entry.Drawn drawn ? Points.text(drawn) : own.text());
                    fields.add(field(here, slot, text, Optional.ofNullable(values.get(here))));
                }
            }
        }

        private static String title(String path) {
            String words = ChangeWords.name(path);
            return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
        }
    }
}
