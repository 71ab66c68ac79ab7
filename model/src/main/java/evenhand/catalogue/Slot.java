package evenhand.catalogue;

import evenhand.car.Curve;
import evenhand.car.Engine;
import evenhand.quantity.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One key of the file, declared once: what it holds, what it means, how it is measured, what is usual, and what stands in for it
 * where it is absent. Each method gives a new slot with one thing more said.
 */
public final class Slot<V> {
    private static final Range ANYTHING = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /**
     * What stands in for an absent value.
     *
     * @param needs slots, declared before this one, without which it cannot be had
     * @param value from the values before it
     * @param rule in words where it is an estimate, to be listed in every answer
     * @param tolerance of the estimate
     * @param surmise where it rests on less than usual
     * @param beside what holds instead where another value was given
     */
    public record StandIn<V>(
            List<Slot<?>> needs,
            Function<Values, V> value,
            Optional<String> rule,
            Amount tolerance,
            Optional<Surmise> surmise,
            Optional<Beside<V>> beside) {
        private StandIn(List<Slot<?>> needs, Function<Values, V> value, Optional<String> rule, Amount tolerance) {
            this(needs, value, rule, tolerance, Optional.empty(), Optional.empty());
        }

        /** What holds among these entries. */
        StandIn<V> among(Entries entries) {
            return beside.isPresent()
                            && entries.given().containsKey(beside.get().slot().key())
                    ? new StandIn<>(List.of(), values -> beside.get().value(), Optional.empty(), Amount.NONE)
                    : this;
        }

        /** Whether it rests on less than usual here. */
        boolean isSurmise(Values values) {
            return surmise.isPresent() && surmise.get().where().test(values);
        }

        /** How far the estimate may be off, SI. */
        double tolerance(double estimate, boolean isSurmise) {
            return (isSurmise ? 2 : 1) * tolerance.at(estimate);
        }

        /** How it was estimated; empty where it is none. */
        String rule(boolean isSurmise) {
            return rule.orElse("") + (isSurmise ? "; " + surmise.orElseThrow().why() : "");
        }
    }

    /**
     * Where an estimate rests on something that is itself only usual: it may then be off by twice as much.
     *
     * @param why in words
     */
    public record Surmise(Predicate<Values> where, String why) {}

    /** A value that holds without a word where another slot's value was given. */
    public record Beside<V>(Slot<?> slot, V value) {}

    /**
     * Another slot that may be given instead of this one.
     *
     * @param both whether both may stand together, this one then without effect
     */
    public record Instead(Slot<?> slot, boolean both) {}

    private final String key;
    private final Content<V> content;
    private final boolean required;
    private final Told told;
    private final Optional<StandIn<V>> standIn;
    private final List<Instead> instead;

    /** What it takes to give a car another value. */
    public enum Work {
        /** Something is turned, hung in another hole, or swapped for another that bolts on. */
        SETTING,
        /** Other links, brackets or wheels. */
        REBUILDING,
        /** It is the car as it came: nobody changes it to set the car up. */
        ANOTHER_CAR
    }

    /** How a shop comes back to the value that was. */
    public enum WayBack {
        /** It is turned, pumped or hung back. */
        TURNED_BACK,
        /** The part that came out goes in again. */
        OLD_PART,
        /** It was cut, drilled or welded. */
        NONE
    }

    /** What a person is told of a slot; written only while a slot is being made. */
    private static final class Told {
        private String meaning = "";
        private String how = "";
        private Amount tolerance = Amount.NONE;
        private Optional<Range> usual = Optional.empty();
        private Optional<Amount> step = Optional.empty();
        private Range bounds = ANYTHING;
        private String why = "";
        private Work work = Work.SETTING;
        private Optional<WayBack> wayBack = Optional.empty();
        private boolean byPoints;

        private Told() {}

        private Told(Told other) {
            meaning = other.meaning;
            how = other.how;
            tolerance = other.tolerance;
            usual = other.usual;
            step = other.step;
            bounds = other.bounds;
            why = other.why;
            work = other.work;
            wayBack = other.wayBack;
            byPoints = other.byPoints;
        }
    }

    private Slot(
            String key,
            Content<V> content,
            boolean required,
            Told told,
            Optional<StandIn<V>> standIn,
            List<Instead> instead) {
        this.key = key;
        this.content = content;
        this.required = required;
        this.told = told;
        this.standIn = standIn;
        this.instead = instead;
    }

    private static <V> Slot<V> of(String key, Content<V> content) {
        return new Slot<>(key, content, true, new Told(), Optional.empty(), List.of());
    }

    public static Slot<Double> measure(String key, Dimension dimension) {
        return of(key, new Content.Measure(dimension));
    }

    /** A number of a printed set of coefficients, whose unit the set says: a bare one is in SI. */
    public static Slot<Double> printed(String key, Dimension dimension) {
        return of(key, new Content.Measure(dimension, true));
    }

    public static Slot<Double> length(String key) {
        return measure(key, Dimension.LENGTH);
    }

    public static Slot<Double> mass(String key) {
        return measure(key, Dimension.MASS);
    }

    public static Slot<Double> angle(String key) {
        return measure(key, Dimension.ANGLE);
    }

    public static Slot<Double> ratio(String key) {
        return measure(key, Dimension.RATIO);
    }

    /** A half-width alone. */
    public static Slot<Double> tolerance(String key, Dimension dimension) {
        return of(key, new Content.Tolerance(dimension));
    }

    public static <V> Slot<V> choice(String key, Map<String, V> words) {
        return of(key, new Content.Choice<>(words));
    }

    /** Two words in this order. */
    public static <V> Map<String, V> inOrder(String first, V one, String second, V other) {
        Map<String, V> words = new LinkedHashMap<>();
        words.put(first, one);
        words.put(second, other);
        return words;
    }

    /** True or false. */
    static Slot<Boolean> flag(String key) {
        return of(key, new Content.Flag());
    }

    public static Slot<String> text(String key) {
        return of(key, new Content.Text());
    }

    public static Slot<Map<String, String>> texts(String key) {
        return of(key, new Content.Texts());
    }

    public static Slot<Curve> curve(String key, Content.CurveOf of) {
        return of(
                key,
                new Content.Points<>(
                        of, points -> of.mayBeUnmeasured() && points.isEmpty() ? Curve.NO_FORCE : new Curve(points)));
    }

    /** An engine's torque over its speed. */
    static Slot<Engine.Torque> torque(String key) {
        return of(
                key,
                new Content.Points<>(
                        Content.CurveOf.ENGINE,
                        points -> new Engine.Torque(points.stream()
                                .map(point -> new Engine.Torque.Point(point.at(), point.force()))
                                .toList())));
    }

    /** Bare numbers one after another, with some for an example. */
    static Slot<List<Double>> numbers(String key, String example) {
        return numbers(key, Dimension.RATIO, 0, example);
    }

    /** So many numbers one after another. */
    public static Slot<List<Double>> numbers(String key, Dimension dimension, int count, String example) {
        return of(key, new Content.Numbers(dimension, count, example));
    }

    /** Texts one after another, with some for an example. */
    public static Slot<List<String>> names(String key, String example) {
        return of(key, new Content.Names(example));
    }

    /** Pairs of a name and how often it counts, with some for an example. */
    public static Slot<List<Content.Share>> shares(String key, String example) {
        return of(key, new Content.Shares(example));
    }

    /** One of a few words, or a quantity. */
    public static <V> Slot<V> wordOrMeasure(
            String key, Map<String, V> words, Dimension dimension, Function<Double, V> made) {
        return of(key, new Content.WordOr<>(words, new Content.Measure(dimension), made));
    }

    /** One of a few words, or so many bare numbers. */
    static <V> Slot<V> wordOrNumbers(
            String key, Map<String, V> words, int count, String example, Function<List<Double>, V> made) {
        return of(key, new Content.WordOr<>(words, new Content.Numbers(Dimension.RATIO, count, example), made));
    }

    public static <V> Slot<V> group(String key, Shape<V> shape) {
        return of(key, new Content.Group<>(shape));
    }

    public static <V> Slot<List<V>> groups(String key, Shape<V> shape) {
        return of(key, new Content.Groups<>(shape));
    }

    public static <V> Slot<V> changes(String key, Shape<V> shape) {
        return of(key, new Content.Changes<>(shape));
    }

    public static Slot<Integer> version(String key, int known) {
        return of(key, new Content.Version(known));
    }

    /** The meaning, in the words of the trade. */
    public Slot<V> means(String words) {
        return told(more -> more.meaning = words);
    }

    /** How a shop measures it, and the tolerance of that: two standard deviations. */
    public Slot<V> measured(String how, Amount tolerance) {
        return told(more -> {
            more.how = how;
            more.tolerance = tolerance;
        });
    }

    /** What cars have; outside there is a warning, never a refusal. */
    public Slot<V> usual(double low, double high) {
        return told(more -> more.usual = Optional.of(new Range(low, high)));
    }

    /** The step that a shop takes at once. */
    public Slot<V> usualStep(Amount step) {
        return told(more -> more.step = Optional.of(step));
    }

    /** What nature allows; samples are cut there, and values beyond are refused. */
    public Slot<V> within(double low, double high) {
        return told(more -> more.bounds = new Range(low, high));
    }

    /** Says why nature allows no more. */
    public Slot<V> because(String why) {
        return told(more -> more.why = why);
    }

    /** What it takes to give a car another value; a setting where nothing is said. */
    public Slot<V> takes(Work work) {
        return told(more -> more.work = work);
    }

    /** How the old value comes back; where nothing is said, a setting is turned back and a rebuilt car stays rebuilt. */
    public Slot<V> goesBack(WayBack way) {
        return told(more -> more.wayBack = Optional.of(way));
    }

    /** Belongs to links that are measured by points: nobody is shown it on a car that has none. */
    public Slot<V> byPoints() {
        return told(more -> more.byPoints = true);
    }

    private Slot<V> told(Consumer<Told> say) {
        Told more = new Told(told);
        say.accept(more);
        return new Slot<>(key, content, required, more, standIn, instead);
    }

    /** May be absent, and then nothing stands in for it. */
    public Slot<V> optional() {
        return new Slot<>(key, content, false, told, Optional.empty(), instead);
    }

    /** Belongs there only where the other is absent; both together are an error. */
    public Slot<V> unless(Slot<?> other) {
        return instead(new Instead(other, false));
    }

    /** Is not asked for where the other is given; both together are accepted, and the other counts. */
    public Slot<V> notNeededWith(Slot<?> other) {
        return instead(new Instead(other, true));
    }

    private Slot<V> instead(Instead other) {
        List<Instead> more = new ArrayList<>(instead);
        more.add(other);
        return new Slot<>(key, content, required, told, standIn, List.copyOf(more));
    }

    /** Where absent, this value holds without a word. */
    public Slot<V> defaultsTo(V value) {
        return standIn(new StandIn<>(List.of(), values -> value, Optional.empty(), Amount.NONE));
    }

    /** Where absent, the value of another slot's part holds without a word. */
    public <N> Slot<V> defaultsTo(Slot<N> needed, Function<N, V> value) {
        return standIn(new StandIn<>(
                List.of(needed), values -> value.apply(values.of(needed)), Optional.empty(), Amount.NONE));
    }

    /** Where absent, it is estimated, and every answer says so with this rule. */
    public Slot<V> estimatedBy(Function<Values, V> value, String rule, Amount tolerance, Slot<?>... needs) {
        return standIn(new StandIn<>(List.of(needs), value, Optional.of(rule), tolerance));
    }

    /** Where the estimate may be off by twice as much, and why. */
    public Slot<V> surmisedWhere(Predicate<Values> where, String why) {
        StandIn<V> now = standIn.orElseThrow();
        return standIn(new StandIn<>(
                now.needs(),
                now.value(),
                now.rule(),
                now.tolerance(),
                Optional.of(new Surmise(where, why)),
                now.beside()));
    }

    /** Where the other slot is given, nothing is estimated and this value holds. */
    public Slot<V> besideGiven(Slot<?> other, V value) {
        StandIn<V> now = standIn.orElseThrow();
        return standIn(new StandIn<>(
                now.needs(),
                now.value(),
                now.rule(),
                now.tolerance(),
                now.surmise(),
                Optional.of(new Beside<>(other, value))));
    }

    private Slot<V> standIn(StandIn<V> value) {
        return new Slot<>(key, content, false, told, Optional.of(value), instead);
    }

    public String key() {
        return key;
    }

    public Content<V> content() {
        return content;
    }

    /** Whether a car cannot do without. */
    public boolean required() {
        return required;
    }

    public String meaning() {
        return told.meaning;
    }

    /** How a shop measures it; empty where nothing is to be said. */
    public String how() {
        return told.how;
    }

    /** Tolerance of a shop's measurement, where the person gave none. */
    public Amount tolerance() {
        return told.tolerance;
    }

    public Optional<Range> usual() {
        return told.usual;
    }

    public Optional<Amount> step() {
        return told.step;
    }

    public Range bounds() {
        return told.bounds;
    }

    /** Why the bounds are where they are; empty where nothing is to be said. */
    public String why() {
        return told.why;
    }

    public Optional<StandIn<V>> standIn() {
        return standIn;
    }

    /** Whether it belongs to links that are measured by points. */
    public boolean isByPoints() {
        return told.byPoints;
    }

    /** What it takes to give a car another value. */
    public Work work() {
        return told.work;
    }

    /** How the old value comes back. */
    public WayBack wayBack() {
        return told.wayBack.orElse(told.work == Work.SETTING ? WayBack.TURNED_BACK : WayBack.NONE);
    }

    /** The slots of which any may be given instead of this one. */
    public List<Instead> instead() {
        return instead;
    }

    @Override
    public String toString() {
        return key;
    }
}
