package evenhand.catalogue;

import static java.util.stream.Collectors.joining;

import evenhand.car.Curve;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.quantity.Unseen;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes records from entries. A fault in one object does not keep the others from being looked at. */
final class Building {
    /** Nobody reads so many faults; more would only fill the memory. */
    private static final int MOST = 20_000;

    private final List<Built.Fault> faults = new ArrayList<>();
    private final List<Adjustable> numbers = new ArrayList<>();
    private final Set<String> spelt = new HashSet<>(); // choices whose words were told

    private final Deviation deviation;
    private final Parts parts;

    /** What becomes of the objects on the way. */
    interface Parts {
        /** An object that is there already; none where it must be built. */
        Optional<Object> at(String path);

        /** An object was built. */
        void built(String path, Object object);
    }

    /** Every object is built, and none is kept by itself. */
    private static final Parts NONE = new Parts() {
        @Override
        public Optional<Object> at(String path) {
            return Optional.empty();
        }

        @Override
        public void built(String path, Object object) {}
    };

    private Building(Deviation deviation, Parts parts) {
        this.deviation = deviation;
        this.parts = parts;
    }

    static <T> Built<T> build(Shape<T> shape, Entries entries, Deviation deviation) {
        return build(shape, entries, deviation, NONE);
    }

    static <T> Built<T> build(Shape<T> shape, Entries entries, Deviation deviation, Parts parts) {
        Building building = new Building(deviation, parts);
        Optional<T> value = building.object(shape, entries, "");
        return new Built<>(building.faults.isEmpty() ? value : Optional.empty(), building.faults, building.numbers);
    }

    @SuppressWarnings("unchecked") // a path of a car has one shape
    private <T> Optional<T> object(Shape<T> shape, Entries entries, String path) {
        Optional<Object> there = parts.at(path);
        if (there.isPresent()) {
            return (Optional<T>) there;
        }
        Shape.Plain<? extends T> plain = shape.plain(entries);
        Values values = new Values(plain, entries);
        boolean whole = true;
        for (Slot<?> slot : plain.slots()) {
            whole &= fill(slot, collides(plain, slot, entries), entries, path, values);
        }
        if (!whole) {
            return Optional.empty();
        }
        try {
            T object = plain.builder().apply(values);
            parts.built(path, object);
            return Optional.of(object);
        } catch (InvalidValue invalid) {
            fault(Path.join(path, invalid.component()), String.valueOf(invalid.getMessage()));
            return Optional.empty();
        }
    }

    /** Puts the value of a slot where it has one. False if it should have one and has not. */
    private <V> boolean fill(Slot<V> slot, boolean collides, Entries entries, String path, Values values) {
        Entry entry = entries.given().get(slot.key());
        Optional<Slot.Instead> instead = givenInstead(slot, entries);
        boolean mayBeAbsent = slot.standIn().isEmpty() && !slot.required();
        if (entry == null && (instead.isPresent() || mayBeAbsent)) {
            return true;
        }
        String here = Path.join(path, slot.key());
        Optional<V> value;
        if (instead.isPresent() && entry != null && !instead.get().both()) {
            fault(here, "stands beside " + instead.get().slot().key() + "; leave out one of the two");
            return false;
        } else if (collides) {
            return false; // the collision has its line; which of the two is meant is not known yet
        } else if (entry != null) {
            value = read(slot, entry, here);
            if (value.isEmpty()) {
                return slot.content() instanceof Content.Changes;
            }
        } else if (slot.standIn().isPresent()) {
            value = standIn(slot, slot.standIn().get().among(entries), here, values, entries);
            if (value.isEmpty()) {
                return false;
            }
        } else {
            fault(here, missing(slot));
            return false;
        }
        values.put(slot, value.get());
        return true;
    }

    /** What is given in the place of a slot. No lambda: asked for every number of every car. */
    private static Optional<Slot.Instead> givenInstead(Slot<?> slot, Entries entries) {
        for (Slot.Instead instead : slot.instead()) {
            if (entries.given().containsKey(instead.slot().key())) {
                return Optional.of(instead);
            }
        }
        return Optional.empty();
    }

    /** Whether a slot stands beside another that it excludes. */
    private static boolean collides(Shape.Plain<?> plain, Slot<?> slot, Entries entries) {
        if (slot.content() instanceof Content.Group && entries.given().containsKey(slot.key())) {
            for (Slot<?> other : plain.slots()) {
                for (Slot.Instead instead : other.instead()) {
                    if (!instead.both()
                            && instead.slot().key().equals(slot.key())
                            && entries.given().containsKey(other.key())) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static String missing(Slot<?> slot) {
        return "is missing"
                + (slot.meaning().isEmpty()
                        ? ""
                        : ": give " + (isClause(slot.meaning()) ? "" : "the ") + slot.meaning())
                + slot.instead().stream()
                        .filter(other -> !other.slot().isByPoints())
                        .map(other -> ", or " + other.slot().key())
                        .collect(joining())
                + usual(slot);
    }

    /** What is usual of a bare number, whose size its meaning does not tell. */
    private static String usual(Slot<?> slot) {
        return slot.content() instanceof Content.Measure measure && measure.dimension() == Dimension.RATIO
                ? slot.usual()
                        .map(range -> "; most cars have from "
                                + Quantity.of(range.low(), Dimension.RATIO.metric())
                                        .text() + " to "
                                + Quantity.of(range.high(), Dimension.RATIO.metric())
                                        .text())
                        .orElse("")
                : "";
    }

    /** A need by its key; the first time in an object with the words that it can be: "kind (one of "cross-ply", ...)". */
    private String named(Slot<?> need, String object) {
        if (!(need.content() instanceof Content.Choice<?> choice) || !spelt.add(object + need.key())) {
            return need.key();
        }
        return need.key()
                + choice.words().keySet().stream()
                        .map(word -> "\"" + word + "\"")
                        .collect(joining(", ", " (one of ", ")"));
    }

    private static boolean isClause(String meaning) {
        return meaning.startsWith("what ") || meaning.startsWith("each ");
    }

    @SuppressWarnings("unchecked") // a V that is a Double stays one
    private <V> Optional<V> standIn(
            Slot<V> slot, Slot.StandIn<V> standIn, String here, Values values, Entries entries) {
        List<Slot<?>> wanting = wanting(standIn.needs(), values);
        if (!wanting.isEmpty()) {
            // A need that is there but could not be read, or was itself to be estimated, has its own line.
            String object = here.substring(0, here.length() - slot.key().length());
            if (wanting.stream().noneMatch(need -> entries.given().containsKey(need.key()) || !isPlain(need))) {
                fault(
                        here,
                        "is missing; give it, or "
                                + wanting.stream()
                                        .map(need -> named(need, object))
                                        .collect(joining(", "))
                                + " to estimate it from");
            }
            return Optional.empty();
        }
        V value;
        try {
            value = standIn.value().apply(values);
        } catch (InvalidValue invalid) {
            String path = here.substring(0, here.length() - slot.key().length()) + invalid.component();
            fault(path, String.valueOf(invalid.getMessage()));
            return Optional.empty();
        }
        if (value instanceof Double number && Double.isFinite(number)) {
            boolean estimate = standIn.rule().isPresent();
            boolean isSurmise = standIn.isSurmise(values);
            return (Optional<V>) note(
                    here,
                    slot,
                    number,
                    standIn.tolerance(number, isSurmise),
                    estimate ? Adjustable.Origin.ESTIMATED : Adjustable.Origin.DEFAULT,
                    standIn.rule(isSurmise),
                    Optional.empty());
        }
        return Optional.of(value);
    }

    /** What of the needs has no value. No stream: asked for every estimate of every car. */
    private static List<Slot<?>> wanting(List<Slot<?>> needs, Values values) {
        List<Slot<?>> wanting = List.of();
        for (Slot<?> need : needs) {
            if (!values.has(need)) {
                wanting = wanting.isEmpty() ? new ArrayList<>() : wanting;
                wanting.add(need);
            }
        }
        return wanting;
    }

    private static boolean isPlain(Slot<?> need) {
        return need.standIn().isEmpty() && !(need.content() instanceof Content.Group);
    }

    private <V> Optional<V> read(Slot<V> slot, Entry entry, String here) {
        return read(slot.content(), slot, entry, here);
    }

    @SuppressWarnings("unchecked") // each arm gives what its Content<V> says
    private <V> Optional<V> read(Content<V> content, Slot<?> slot, Entry entry, String here) {
        if (content instanceof Content.Measure && entry instanceof Entry.Measured measured) {
            return (Optional<V>) number(slot, measured.quantity(), here);
        } else if (content instanceof Content.Tolerance && entry instanceof Entry.Measured measured) {
            return (Optional<V>) Optional.of(measured.quantity().tolerance());
        } else if (content instanceof Content.Choice<V> choice && entry instanceof Entry.Word word) {
            return Optional.ofNullable(choice.words().get(word.text()));
        } else if (content instanceof Content.Flag && entry instanceof Entry.Word word) {
            return (Optional<V>) Optional.of(Boolean.valueOf(word.text()));
        } else if (content instanceof Content.Text && entry instanceof Entry.Word word) {
            return (Optional<V>) Optional.of(word.text());
        } else if (content instanceof Content.Version version && entry instanceof Entry.Word) {
            return (Optional<V>) Optional.of(version.known());
        } else if (content instanceof Content.Texts && entry instanceof Entry.Texts texts) {
            return (Optional<V>) Optional.of(texts.texts());
        } else if (content instanceof Content.Points<V> points && entry instanceof Entry.Drawn drawn) {
            return curve(points, drawn, here);
        } else if (content instanceof Content.Numbers && entry instanceof Entry.Numbers numbers) {
            return (Optional<V>)
                    Optional.of(numbers.numbers().stream().map(Quantity::si).toList());
        } else if (content instanceof Content.Names && entry instanceof Entry.Names names) {
            return (Optional<V>) Optional.of(names.names());
        } else if (content instanceof Content.Shares && entry instanceof Entry.Shares shares) {
            return (Optional<V>) Optional.of(shares.shares().stream()
                    .map(share -> new Content.Share(share.name(), share.times().si()))
                    .toList());
        } else if (content instanceof Content.WordOr<?, V> either) {
            return entry instanceof Entry.Word word
                    ? Optional.ofNullable(either.words().get(word.text()))
                    : otherwise(either, slot, entry, here);
        } else if (content instanceof Content.Group<V> group && entry instanceof Entries entries) {
            return object(group.shape(), entries, here);
        } else if (content instanceof Content.Groups<?> groups && entry instanceof Entry.Listed listed) {
            return (Optional<V>) list(groups.shape(), listed, here);
        }
        return Optional.empty(); // unreadable: it has its line already
    }

    private <W, V> Optional<V> otherwise(Content.WordOr<W, V> either, Slot<?> slot, Entry entry, String here) {
        try {
            return read(either.otherwise(), slot, entry, here).map(either.made());
        } catch (InvalidValue invalid) {
            fault(here, String.valueOf(invalid.getMessage()));
            return Optional.empty();
        }
    }

    private Optional<Double> number(Slot<?> slot, Quantity quantity, String here) {
        Range bounds = slot.bounds();
        if (!bounds.holds(quantity.si())) {
            boolean low = quantity.si() < bounds.low();
            Quantity bound = Quantity.of(low ? bounds.low() : bounds.high(), quantity.unit());
            fault(
                    here,
                    "must be at " + (low ? "least " : "most ") + bound.text() + ", not "
                            + Unseen.shown(quantity.text())
                            + (slot.why().isEmpty() ? "" : ": " + slot.why()));
            return Optional.empty();
        }
        return note(
                here,
                slot,
                quantity.si(),
                quantity.tolerance(),
                Adjustable.Origin.GIVEN,
                "",
                Optional.of(quantity.unit()));
    }

    /** Writes a number down, and gives what it deviates to. */
    @SuppressWarnings("unchecked") // only slots of measures hold doubles
    private Optional<Double> note(
            String path,
            Slot<?> slot,
            double si,
            double tolerance,
            Adjustable.Origin origin,
            String rule,
            Optional<Unit> unit) {
        if (!(slot.content() instanceof Content.Measure measure)) {
            return Optional.of(si);
        }
        Adjustable number = new Adjustable(
                path,
                (Slot<Double>) slot,
                si,
                tolerance,
                origin,
                rule,
                unit.isPresent() ? unit.get() : measure.dimension().metric());
        numbers.add(number);
        return Optional.of(deviation.of(number));
    }

    private <V> Optional<V> curve(Content.Points<V> points, Entry.Drawn drawn, String here) {
        try {
            return Optional.of(points.made()
                    .apply(drawn.points().stream()
                            .map(point -> new Curve.Point(
                                    point.at().si(), point.force().si()))
                            .toList()));
        } catch (InvalidValue invalid) {
            fault(here, String.valueOf(invalid.getMessage()));
            return Optional.empty();
        }
    }

    private <T> Optional<List<T>> list(Shape<T> shape, Entry.Listed listed, String here) {
        List<T> items = new ArrayList<>();
        for (int i = 0; i < listed.items().size(); i++) {
            object(shape, listed.items().get(i), here + "[" + i + "]").ifPresent(items::add);
        }
        return items.size() == listed.items().size() ? Optional.of(List.copyOf(items)) : Optional.empty();
    }

    private void fault(String path, String what) {
        if (faults.size() < MOST) {
            faults.add(new Built.Fault(path, what));
        }
    }
}
