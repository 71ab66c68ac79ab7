package evenhand.scenario;

import evenhand.catalogue.Built;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Nearest;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unseen;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads entries from JSON by their shapes. What cannot be read is reported and marked, and the rest is read on. */
final class EntryReader {
    private static final Entry UNREADABLE = new Entry.Unreadable();

    private final Problems problems;

    EntryReader(Problems problems) {
        this.problems = problems;
    }

    Optional<Entries> read(Shape<?> shape, Json json) {
        return object(shape, json) instanceof Entries entries ? Optional.of(entries) : Optional.empty();
    }

    private Entry object(Shape<?> shape, Json json) {
        if (!(json instanceof Json.Obj object)) {
            return refuse(json, "must be an object in { }, not " + json.words());
        }
        if (shape instanceof Shape.Plain<?> only) {
            return members(only, object, Optional.empty(), Optional.empty());
        }
        if (shape instanceof Shape.ByName<?> byName) {
            return named(byName, object);
        }
        Shape.Kinds<?> kinds = (Shape.Kinds<?>) shape;
        Json word = object.members().get(kinds.key());
        if (word == null) {
            Json removed = object.removed().get(kinds.key());
            Place place = removed == null ? object.place() : removed.place();
            problems.at(
                    place,
                    below(object, kinds.key()),
                    "is missing: write " + oneOf(kinds.kinds().keySet()));
            return UNREADABLE;
        }
        Shape.Plain<?> plain = word instanceof Json.Str text ? kinds.kinds().get(text.text()) : null;
        if (plain == null || !(word instanceof Json.Str text)) {
            return refuse(word, unknownWord(word, kinds.kinds().keySet()));
        }
        return members(plain, object, Optional.of(kinds), Optional.of(text.text()));
    }

    /** An object whose keys are names of the person's own. */
    private Entry named(Shape.ByName<?> shape, Json.Obj object) {
        Map<String, Entry> given = new LinkedHashMap<>();
        object.members().forEach((key, value) -> {
            Place place = object.keys().getOrDefault(key, value.place());
            OptionalInt unseen = Unseen.first(key, false);
            Optional<String> fault =
                    unseen.isPresent() ? Optional.of(unseen(key, unseen.getAsInt())) : Shape.ByName.fault(key);
            if (fault.isPresent()) {
                problems.at(place, fault.get());
            } else {
                given.put(key, object(shape.each(), value));
            }
        });
        return new Entries(Optional.empty(), given);
    }

    private Entry members(
            Shape.Plain<?> plain, Json.Obj object, Optional<Shape.Kinds<?>> kinds, Optional<String> kind) {
        Optional<String> kindKey = kinds.map(Shape.Kinds::key);
        Map<String, Entry> given = new LinkedHashMap<>();
        object.members().forEach((key, value) -> {
            if (kindKey.isPresent() && kindKey.get().equals(key)) {
                return;
            }
            Optional<Slot<?>> slot = plain.slot(key);
            if (slot.isEmpty()) {
                String meant = elsewhere(kinds, key)
                        ? foreignKey(kinds.orElseThrow(), kind.orElse(""), object, key)
                        : unknownKey(plain, object, key, kindKey);
                if (Nearest.standsFor(key, meant)) {
                    given.putIfAbsent(meant, UNREADABLE); // one slip, one problem: that key is not missing as well
                }
            } else if (value instanceof Json.Null) {
                given.put(key, refuse(value, "is null; leave it out, or give a value"));
            } else {
                given.put(key, entry(slot.get(), value));
            }
        });
        object.removed().keySet().stream()
                .filter(key -> plain.slot(key).isEmpty() && !kindKey.equals(Optional.of(key)) && !elsewhere(kinds, key))
                .forEach(key -> unknownKey(plain, object, key, kindKey));
        return new Entries(kind, given);
    }

    /** Whether another kind has this key: then its removal is no slip of the pen. */
    private static boolean elsewhere(Optional<Shape.Kinds<?>> kinds, String key) {
        return kinds.isPresent()
                && kinds.get().kinds().values().stream()
                        .anyMatch(kind -> kind.slot(key).isPresent());
    }

    /** Reports a key that another kind has. No key of this kind was meant. */
    private String foreignKey(Shape.Kinds<?> kinds, String kind, Json.Obj object, String key) {
        List<String> owners = kinds.kinds().entrySet().stream()
                .filter(other -> other.getValue().slot(key).isPresent())
                .map(Map.Entry::getKey)
                .toList();
        problems.at(
                object.keys().getOrDefault(key, object.place()),
                "belongs to the " + kinds.key() + " " + oneOf(owners) + ", not to \"" + kind
                        + "\"; leave it out, or change the " + kinds.key());
        return "";
    }

    /** Reports a key and gives the one that was probably meant. */
    private String unknownKey(Shape.Plain<?> plain, Json.Obj object, String key, Optional<String> kindKey) {
        List<String> known =
                new ArrayList<>(plain.slots().stream().map(Slot::key).toList());
        kindKey.ifPresent(known::add);
        Place place = object.keys().getOrDefault(key, object.place());
        String nearest = Nearest.key(key, known);
        problems.at(
                place,
                known.isEmpty()
                        ? "is unknown here, where no key belongs; leave it out"
                        : "is unknown here; the nearest known key is \"" + nearest + "\"");
        return nearest;
    }

    private Entry entry(Slot<?> slot, Json json) {
        return entry(slot, slot.content(), json);
    }

    private Entry entry(Slot<?> slot, Content<?> content, Json json) {
        if (content instanceof Content.Measure measure) {
            return measured(measure, json);
        } else if (content instanceof Content.Tolerance tolerance) {
            return tolerance(tolerance.dimension(), json);
        } else if (content instanceof Content.Choice<?> choice) {
            boolean known = json instanceof Json.Str text && choice.words().containsKey(text.text());
            return known
                    ? new Entry.Word(((Json.Str) json).text())
                    : refuse(json, unknownWord(json, choice.words().keySet()));
        } else if (content instanceof Content.Text) {
            return text(json, FileCatalogue.hasLines(slot))
                    .<Entry>map(Entry.Word::new)
                    .orElse(UNREADABLE);
        } else if (content instanceof Content.Texts) {
            return texts(json);
        } else if (content instanceof Content.Points<?> points) {
            return points(points.of(), json);
        } else if (content instanceof Content.Numbers numbers) {
            return numbers(numbers, json);
        } else if (content instanceof Content.Names names) {
            return names(names, json);
        } else if (content instanceof Content.Shares shares) {
            return shares(shares, json);
        } else if (content instanceof Content.WordOr<?, ?> either) {
            return wordOr(slot, either, json);
        } else if (content instanceof Content.Flag) {
            return json instanceof Json.Bool flag
                    ? new Entry.Word(String.valueOf(flag.value()))
                    : refuse(json, "must be true or false, without quotes, not " + json.words());
        } else if (content instanceof Content.Group<?> group) {
            return object(group.shape(), json);
        } else if (content instanceof Content.Groups<?> groups) {
            return list(groups.shape(), json);
        } else if (content instanceof Content.Version version) {
            return version(version.known(), json);
        }
        return json instanceof Json.Obj ? UNREADABLE : refuse(json, "must be an object in { }, not " + json.words());
    }

    private Entry refuse(Json json, String what) {
        problems.at(json.place(), what);
        return UNREADABLE;
    }

    private Entry measured(Content.Measure measure, Json json) {
        Dimension dimension = measure.dimension();
        Json written = measure.bare() && json instanceof Json.Num number
                ? new Json.Str(json.place(), (number.text() + " " + dimension.jsonUnit()).strip())
                : json;
        Optional<Quantity> quantity = quantity(dimension, dimension.example(), written);
        return quantity.isPresent() ? new Entry.Measured(quantity.get()) : UNREADABLE;
    }

    private Entry tolerance(Dimension dimension, Json json) {
        String example = "\"± 1 " + dimension.metric().symbol() + "\"";
        if (!(json instanceof Json.Str text)) {
            return refuse(json, "must be a tolerance alone, for example " + example + ", not " + json.words());
        }
        try {
            Quantity quantity = Quantity.parseTolerance(text.text(), dimension);
            return quantity.tolerance() > 0
                    ? new Entry.Measured(quantity)
                    : refuse(json, "is a tolerance of zero; say how far the instrument may be off, or leave it out");
        } catch (QuantityException wrong) {
            return refuse(json, wrong.message(example));
        }
    }

    private Optional<Quantity> quantity(Dimension dimension, String example, Json json) {
        try {
            if (json instanceof Json.Str text) {
                return Optional.of(Quantity.parse(text.text(), dimension));
            }
            if (json instanceof Json.Num) {
                throw QuantityException.needsUnit(dimension);
            }
            refuse(json, "must be " + dimension.words() + ", for example " + example + ", not " + json.words());
        } catch (QuantityException wrong) {
            refuse(json, wrong.message(example));
        }
        return Optional.empty();
    }

    private Entry texts(Json json) {
        if (!(json instanceof Json.Obj object)) {
            return refuse(json, "must be an object of texts, for example {\"castor\": \"4 deg\"}, not " + json.words());
        }
        Map<String, String> texts = new LinkedHashMap<>();
        object.members().forEach((key, value) -> {
            Unseen.first(key, false)
                    .ifPresent(at -> problems.at(object.keys().getOrDefault(key, value.place()), unseen(key, at)));
            text(value, true).ifPresent(text -> texts.put(key, text));
        });
        return new Entry.Texts(texts);
    }

    /** A text without characters that nobody sees: they would drive the terminal, or turn round what is read there. */
    private Optional<String> text(Json json, boolean lines) {
        if (!(json instanceof Json.Str text)) {
            refuse(json, "must be a text in quotes, not " + json.words());
            return Optional.empty();
        }
        OptionalInt unseen = Unseen.first(text.text(), lines);
        if (unseen.isPresent()) {
            refuse(json, unseen(text.text(), unseen.getAsInt()));
            return Optional.empty();
        }
        return Optional.of(text.text());
    }

    private static String unseen(String text, int at) {
        return "has " + Unseen.words(text, at) + "; take it out";
    }

    private Entry points(Content.CurveOf of, Json json) {
        if (!(json instanceof Json.Arr list)) {
            return refuse(json, "must be a list of pairs, for example " + of.example() + ", not " + json.words());
        }
        List<Entry.Drawn.Point> points = new ArrayList<>();
        for (Json item : list.items()) {
            if (item instanceof Json.Arr pair && pair.items().size() == 2) {
                Optional<Quantity> first =
                        quantity(of.at(), of.example(), pair.items().get(0));
                Optional<Quantity> second =
                        quantity(of.up(), of.example(), pair.items().get(1));
                if (first.isPresent() && second.isPresent()) {
                    points.add(new Entry.Drawn.Point(first.get(), second.get()));
                }
            } else {
                refuse(item, "must be a pair, as in " + of.example());
            }
        }
        return points.size() == list.items().size() ? new Entry.Drawn(points) : UNREADABLE;
    }

    /** A list of numbers; a wrong one names its own place. */
    private Entry numbers(Content.Numbers numbers, Json json) {
        String those = (numbers.dimension() == Dimension.RATIO ? "numbers" : "quantities") + ", for example "
                + numbers.example();
        if (!(json instanceof Json.Arr list) || list.items().isEmpty()) {
            return refuse(
                    json,
                    json instanceof Json.Arr && numbers.count() == 0
                            ? "is empty; give at least one, for example " + numbers.example()
                            : "must be a list of " + (numbers.count() == 0 ? "" : numbers.count() + " ") + those
                                    + ", not " + (json instanceof Json.Arr ? "empty" : json.words()));
        }
        if (numbers.count() > 0 && list.items().size() != numbers.count()) {
            return refuse(json, "has " + list.items().size() + " instead of " + numbers.count() + " " + those);
        }
        Dimension dimension = numbers.dimension();
        List<Quantity> read = new ArrayList<>();
        for (Json item : list.items()) {
            Json written = item instanceof Json.Num number && dimension == Dimension.RATIO
                    ? new Json.Str(item.place(), number.text())
                    : item;
            quantity(dimension, dimension.example(), written).ifPresent(read::add);
        }
        return read.size() == list.items().size() ? new Entry.Numbers(read) : UNREADABLE;
    }

    /** A list of texts; a wrong one names its own place. */
    private Entry names(Content.Names names, Json json) {
        if (!(json instanceof Json.Arr list)) {
            return refuse(json, "must be a list of texts, for example " + names.example() + ", not " + json.words());
        }
        List<String> read = new ArrayList<>();
        list.items().forEach(item -> text(item, false).ifPresent(read::add));
        return read.size() == list.items().size() ? new Entry.Names(read) : UNREADABLE;
    }

    /** A list of pairs of a name and a number. */
    private Entry shares(Content.Shares shares, Json json) {
        if (!(json instanceof Json.Arr list)) {
            return refuse(json, "must be a list of pairs, for example " + shares.example() + ", not " + json.words());
        }
        List<Entry.Shares.Share> read = new ArrayList<>();
        for (Json item : list.items()) {
            if (item instanceof Json.Arr pair && pair.items().size() == 2) {
                Optional<String> name = text(pair.items().get(0), false);
                Json times = pair.items().get(1);
                Json written = times instanceof Json.Num number ? new Json.Str(times.place(), number.text()) : times;
                Optional<Quantity> share = quantity(Dimension.RATIO, Dimension.RATIO.example(), written);
                if (name.isPresent() && share.isPresent()) {
                    read.add(new Entry.Shares.Share(name.get(), share.get()));
                }
            } else {
                refuse(item, "must be a pair of a name and a number, as in " + shares.example());
            }
        }
        return read.size() == list.items().size() ? new Entry.Shares(read) : UNREADABLE;
    }

    /** One of a few words, or what may stand in their place; a text without a digit was meant for a word. */
    private Entry wordOr(Slot<?> slot, Content.WordOr<?, ?> either, Json json) {
        boolean list = either.otherwise() instanceof Content.Numbers;
        if (json instanceof Json.Str text && either.words().containsKey(text.text())) {
            return new Entry.Word(text.text());
        }
        boolean other = list ? json instanceof Json.Arr : json instanceof Json.Num || hasDigit(json);
        return other
                ? entry(slot, either.otherwise(), json)
                : refuse(json, unknownWord(json, either.words().keySet()) + ", or " + otherwise(either.otherwise()));
    }

    private static boolean hasDigit(Json json) {
        return json instanceof Json.Str text && text.text().chars().anyMatch(c -> c >= '0' && c <= '9');
    }

    private static String otherwise(Content<?> content) {
        if (content instanceof Content.Numbers numbers) {
            return numbers.count() + " numbers, for example " + numbers.example();
        }
        Dimension dimension = ((Content.Measure) content).dimension();
        return dimension.words() + ", for example " + dimension.example();
    }

    private Entry list(Shape<?> shape, Json json) {
        if (!(json instanceof Json.Arr list)) {
            return refuse(json, "must be a list in [ ], not " + json.words());
        }
        List<Entries> items = new ArrayList<>();
        List<Json> readable = new ArrayList<>();
        for (Json item : list.items()) {
            read(shape, item).ifPresent(entries -> {
                items.add(entries);
                readable.add(item);
            });
        }
        if (items.size() == list.items().size()) {
            return new Entry.Listed(items);
        }
        // The list is not built as a whole, so what can be read of it is looked at here.
        for (int i = 0; i < items.size(); i++) {
            for (Built.Fault fault : Catalogue.build(shape, items.get(i)).faults()) {
                problems.at(Locator.place(readable.get(i), fault.path()), fault.what());
            }
        }
        return UNREADABLE;
    }

    private Entry version(int known, Json json) {
        if (json instanceof Json.Num number && is(known, number.text())) {
            return new Entry.Word(number.text());
        }
        return refuse(
                json,
                json instanceof Json.Str text && text.text().strip().equals(String.valueOf(known))
                        ? "must be the number " + known + ", without quotes"
                        : "is no format that is known here; the known one is " + known);
    }

    /** Whether a number as written is this one: 1.0 is 1. */
    private static boolean is(int known, String written) {
        try {
            return written.length() <= 60 && new BigDecimal(written).compareTo(BigDecimal.valueOf(known)) == 0;
        } catch (NumberFormatException farOut) {
            return false;
        }
    }

    private static String below(Json.Obj object, String key) {
        return object.place().where().isEmpty() ? key : object.place().where() + "." + key;
    }

    private static String unknownWord(Json json, Collection<String> known) {
        String written = json instanceof Json.Str text ? "\"" + JsonReader.shown(text.text()) + "\" is unknown; " : "";
        return written + "write " + oneOf(known);
    }

    private static String oneOf(Collection<String> words) {
        List<String> quoted = words.stream().map(word -> "\"" + word + "\"").toList();
        int last = quoted.size() - 1;
        return last == 0 ? quoted.get(0) : String.join(", ", quoted.subList(0, last)) + " or " + quoted.get(last);
    }
}
