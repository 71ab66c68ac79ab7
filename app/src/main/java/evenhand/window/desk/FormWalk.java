package evenhand.window.desk;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Path;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.words.ChangeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A walk through the shapes; sections below an object follow it.
 *
 * @param decided paths of what the links decide
 * @param renames whether what has a name of its own may get another
 */
record FormWalk(
        Form.Home home,
        Map<String, Adjustable> values,
        Set<String> decided,
        boolean renames,
        List<Form.Section> sections) {
    private static final String RIGHT = "right";
    private static final Slot<String> OWN_NAME =
            Slot.text("name").means("name of its own, by which set-ups, searches and answers know it");

    void object(
            String path,
            Form.Role role,
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
            Form.Role role,
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
        if (role == Form.Role.NAMED && renames) {
            fields.add(FormField.of(path, OWN_NAME, Optional.of(new Entry.Word(title)), Optional.empty()));
        }
        if (shape instanceof Shape.Kinds<?> kinds) {
            fields.add(FormField.kind(Path.join(path, kinds.key()), kinds, word));
        }
        if (shape instanceof Shape.Plain<?> || word.isPresent()) {
            Shape.Plain<?> plain = FormPlace.plain(shape, word);
            slots(path, plain, given, fields, pointAbove);
            boolean points = !pointAbove && fields.stream().anyMatch(PointRow::isCoordinate);
            Optional<Slot<?>> other = plain.slot(RIGHT).filter(slot -> points && slot.isByPoints());
            if (other.isPresent() && other.get().content() instanceof Content.Group<?> group) {
                right(path, FormPlace.plain(group.shape(), Optional.empty()), given.orElseThrow(), fields, right);
            }
        }
        if (!fields.isEmpty()) {
            sections.add(
                    own, new Form.Section(home, role, path, title, meaning, given.isEmpty(), needed, 0, fields, right));
        }
    }

    private void slots(
            String path, Shape.Plain<?> plain, Optional<Entries> given, List<FormField> fields, boolean pointAbove) {
        for (Slot<?> slot : plain.slots()) {
            Optional<Entry> entry = given.flatMap(own -> own.get(slot.key()));
            String here = Path.join(path, slot.key());
            boolean ofRight = slot.isByPoints() && slot.key().equals(RIGHT);
            if (ofRight || (entry.isEmpty() && (slot.isByPoints() || decided.contains(here)))) {
                continue;
            }
            if (slot.content() instanceof Content.Group<?> group && group.shape() instanceof Shape.ByName<?> names) {
                names(here, slot.meaning(), names, FormPlace.entries(entry));
            } else if (slot.content() instanceof Content.Group<?> group) {
                boolean point = given.isPresent() && isPointOfIt(slot);
                if (point) {
                    if (!pointAbove) {
                        point(here, FormPlace.plain(group.shape(), Optional.empty()), FormPlace.entries(entry), fields);
                    }
                    continue;
                }
                Optional<Slot<?>> single = slot.isByPoints() ? single(group.shape()) : Optional.empty();
                if (single.isPresent() && single.get().content() instanceof Content.Group<?> end) {
                    point(
                            Path.join(here, single.get().key()),
                            FormPlace.plain(end.shape(), Optional.empty()),
                            FormPlace.entries(entry)
                                    .flatMap(own -> FormPlace.entries(
                                            own.get(single.get().key()))),
                            fields);
                }
                object(
                        here,
                        Form.Role.OBJECT,
                        title(here),
                        slot.meaning(),
                        group.shape(),
                        slot.required(),
                        FormPlace.entries(entry),
                        single.isPresent());
            } else if (slot.content() instanceof Content.Groups<?> groups
                    && Grid.of(slot, entry).isEmpty()) {
                if (given.isPresent()) {
                    list(here, slot.meaning(), groups.shape(), entry);
                }
            } else {
                fields.add(FormField.of(here, slot, entry, Optional.ofNullable(values.get(here))));
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
            plain.slots().stream().filter(FormWalk::isPointOfIt).forEach(points::add);
        }
        return points.size() == 1 ? Optional.of(points.get(0)) : Optional.empty();
    }

    private void point(String path, Shape.Plain<?> shape, Optional<Entries> given, List<FormField> fields) {
        for (Slot<?> slot : shape.slots()) {
            String here = Path.join(path, slot.key());
            fields.add(FormField.of(
                    here, slot, given.flatMap(own -> own.get(slot.key())), Optional.ofNullable(values.get(here))));
        }
    }

    /** What differs on the right among the fields, and what could: there the left one counts. */
    private void right(String path, Shape.Plain<?> shape, Entries left, List<FormField> fields, List<FormField> right) {
        String here = Path.join(path, RIGHT);
        Optional<Entries> given = FormPlace.entries(left.get(RIGHT));
        for (Slot<?> slot : shape.slots()) {
            Optional<Entry> entry = given.flatMap(own -> own.get(slot.key()));
            if (slot.content() instanceof Content.Group<?> group) {
                if (left.get(slot.key()).isPresent()) {
                    for (Slot<?> own :
                            FormPlace.plain(group.shape(), Optional.empty()).slots()) {
                        Optional<Entry> cell = FormPlace.entries(entry).flatMap(point -> point.get(own.key()));
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
        (entry.isPresent() ? fields : right).add(FormField.of(path, slot, entry, counts));
    }

    private void names(String path, String meaning, Shape.ByName<?> shape, Optional<Entries> given) {
        Set<String> names = given.map(own -> own.given().keySet()).orElse(Set.of());
        for (String name : names) {
            object(
                    Path.join(path, name),
                    Form.Role.NAMED,
                    name,
                    shape.meaning(),
                    shape.each(),
                    false,
                    given.flatMap(own -> FormPlace.entries(own.get(name))));
        }
        String one = path.substring(path.lastIndexOf('.') + 1).replaceFirst("s$", "");
        int number = names.size() + 1;
        while (names.contains(one + number)) {
            number++;
        }
        String title = names.isEmpty() ? title(path) : "More " + ChangeWords.name(path);
        sections.add(new Form.Section(
                home,
                Form.Role.NAMES,
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
            object(here, Form.Role.ITEM, title(here), "", shape, false, Optional.of(items.get(i)));
        }
        String title = items.isEmpty() ? title(path) : "More " + ChangeWords.name(path);
        sections.add(new Form.Section(
                home, Form.Role.LIST, path, title, meaning, false, true, items.size(), List.of(), List.of()));
    }

    private static String title(String path) {
        String words = ChangeWords.name(path);
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
