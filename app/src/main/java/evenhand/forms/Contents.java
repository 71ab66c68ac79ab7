package evenhand.forms;

import evenhand.answers.Criterion;
import evenhand.answers.Figure;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;

/**
 * What an answer, or a part of one, consists of: its members in their order, each with its key and where it is read. It is
 * declared once and immutable; {@link JsonForm} and {@link CsvForm} go through it. A part that is declared can stand in any
 * other, under any key:
 *
 * <pre>
 *   static final Contents&lt;Limit&gt; LIMIT = Contents.of(Limit.class)
 *           .figure(...).text("cause", Limit::cause).mark("beyondLimit", Limit::isBeyond);
 *   static final Contents&lt;Turns&gt; TURN = Contents.of(Turns.class)
 *           .part("limit", Turns::limit, LIMIT).partIfAny("otherLimit", Turns::other, LIMIT);
 * </pre>
 *
 * @param <T> the part that the members are read from
 */
public final class Contents<T> {
    private final List<Member<T>> members;

    private Contents(List<Member<T>> members) {
        this.members = List.copyOf(members);
    }

    /** Nothing yet of such a part. */
    public static <T> Contents<T> of(Class<T> part) {
        return new Contents<>(List.of());
    }

    /** The same of a part whose class does not say all of its type. */
    public static <T> Contents<T> ofAny() {
        return new Contents<>(List.of());
    }

    List<Member<T>> members() {
        return members;
    }

    private Contents<T> and(Member<T> member) {
        List<Member<T>> more = new ArrayList<>(members);
        more.add(member);
        return new Contents<>(more);
    }

    /** A figure under its key; left out where it does not exist. */
    public Contents<T> figure(Figure<T> figure) {
        return and(new Member.Value<>(
                units -> figure.key(units.ofColumn(figure)), (part, units) -> figure.in(units.ofColumn(figure), part)));
    }

    public Contents<T> figures(List<Figure<T>> figures) {
        Contents<T> more = this;
        for (Figure<T> figure : figures) {
            more = more.figure(figure);
        }
        return more;
    }

    /** Figures under their names alone: they share the unit in the key of what they stand in. */
    public Contents<T> named(List<Figure<T>> figures) {
        Contents<T> more = this;
        for (Figure<T> figure : figures) {
            more = more.numberIfAny(figure.name(), figure::value);
        }
        return more;
    }

    /** A number in the unit that the key says. */
    public Contents<T> number(String key, ToDoubleFunction<T> reading) {
        return numberIfAny(key, part -> OptionalDouble.of(reading.applyAsDouble(part)));
    }

    public Contents<T> numberIfAny(String key, Function<T, OptionalDouble> reading) {
        return and(new Member.Value<>(units -> key, (part, units) -> reading.apply(part)));
    }

    /** A number whose unit, and with it its key, is another where inches are read. */
    public Contents<T> numberIn(Function<Units, String> key, BiFunction<T, Units, Double> reading) {
        return and(new Member.Value<>(key, (part, units) -> OptionalDouble.of(reading.apply(part, units))));
    }

    /** A number of something that is judged by a criterion, in SI, told in the criterion's unit. */
    public Contents<T> judged(String key, Function<T, Criterion> criterion, ToDoubleFunction<T> si) {
        return judgedIfAny(key, criterion, part -> OptionalDouble.of(si.applyAsDouble(part)));
    }

    public Contents<T> judgedIfAny(String key, Function<T, Criterion> criterion, Function<T, OptionalDouble> si) {
        return and(new Member.Value<>(units -> key, (part, units) -> {
            OptionalDouble value = si.apply(part);
            return value.isPresent()
                    ? OptionalDouble.of(units.of(criterion.apply(part)).fromSi(value.getAsDouble()))
                    : value;
        }));
    }

    public Contents<T> whole(String key, ToLongFunction<T> reading) {
        return wholeIfAny(key, part -> OptionalLong.of(reading.applyAsLong(part)));
    }

    public Contents<T> wholeIfAny(String key, Function<T, OptionalLong> reading) {
        return and(new Member.Whole<>(key, reading));
    }

    public Contents<T> text(String key, Function<T, String> reading) {
        return textIfAny(key, part -> Optional.of(reading.apply(part)));
    }

    public Contents<T> textIfAny(String key, Function<T, Optional<String>> reading) {
        return and(new Member.Text<>(key, (part, units) -> reading.apply(part)));
    }

    /** A text that is another where inches are read. */
    public Contents<T> textIn(String key, BiFunction<T, Units, String> reading) {
        return and(new Member.Text<>(key, (part, units) -> Optional.of(reading.apply(part, units))));
    }

    /** Sentences as one text. */
    public Contents<T> sentences(String key, Function<T, List<String>> reading) {
        return text(key, part -> String.join(" ", reading.apply(part)));
    }

    /** Yes or no. */
    public Contents<T> flag(String key, Predicate<T> reading) {
        return flagIfAny(key, part -> Optional.of(reading.test(part)));
    }

    public Contents<T> flagIfAny(String key, Function<T, Optional<Boolean>> reading) {
        return and(new Member.Flag<>(key, reading));
    }

    /** Stands there, as yes, only where it holds. */
    public Contents<T> mark(String key, Predicate<T> reading) {
        return flagIfAny(key, part -> reading.test(part) ? Optional.of(true) : Optional.empty());
    }

    /** Texts one after another; these and other plain rows have no column in CSV. */
    public Contents<T> texts(String key, Function<T, List<String>> reading) {
        return and(new Member.Series<>(key, part -> Optional.of(reading.apply(part))));
    }

    /** The same, left out where there are none. */
    public Contents<T> textsIfAny(String key, Function<T, List<String>> reading) {
        return and(new Member.Series<>(
                key, part -> Optional.of(reading.apply(part)).filter(texts -> !texts.isEmpty())));
    }

    public Contents<T> numbers(String key, Function<T, List<Double>> reading) {
        return and(new Member.Series<>(key, part -> Optional.of(reading.apply(part))));
    }

    public Contents<T> numbersIfKnown(String key, Function<T, Optional<List<Double>>> reading) {
        return and(new Member.Series<>(key, reading));
    }

    public Contents<T> numbersIfAny(String key, Function<T, List<Double>> reading) {
        return and(new Member.Series<>(
                key, part -> Optional.of(reading.apply(part)).filter(numbers -> !numbers.isEmpty())));
    }

    /** Places of a curve, each a row of its numbers. */
    public Contents<T> curveIfAny(String key, Function<T, List<List<Double>>> reading) {
        return and(new Member.Series<>(
                key, part -> Optional.of(reading.apply(part)).filter(places -> !places.isEmpty())));
    }

    /** A part under a key. */
    public <P> Contents<T> part(String key, Function<T, P> reading, Contents<P> contents) {
        return partIfAny(key, part -> Optional.of(reading.apply(part)), contents);
    }

    public <P> Contents<T> partIfAny(String key, Function<T, Optional<P>> reading, Contents<P> contents) {
        return and(new Member.Nested<>(key, reading, contents));
    }

    /** The members of a part as if they were this one's own. */
    public <P> Contents<T> with(Function<T, P> reading, Contents<P> contents) {
        return withIfAny(part -> Optional.of(reading.apply(part)), contents);
    }

    public <P> Contents<T> withIfAny(Function<T, Optional<P>> reading, Contents<P> contents) {
        return and(new Member.Nested<>("", reading, contents));
    }

    /** What only one kind of it has. */
    public <P extends T> Contents<T> where(Class<P> kind, Contents<P> contents) {
        return withIfAny(part -> kind.isInstance(part) ? Optional.of(kind.cast(part)) : Optional.empty(), contents);
    }

    /** Parts one after another; in CSV each has a row, and what stands before is said again in it. */
    public <P> Contents<T> list(String key, Function<T, List<P>> reading, Contents<P> contents) {
        return listIfKnown(key, part -> Optional.of(reading.apply(part)), contents);
    }

    /** The same, left out where there are none. */
    public <P> Contents<T> listIfAny(String key, Function<T, List<P>> reading, Contents<P> contents) {
        return listIfKnown(key, part -> Optional.of(reading.apply(part)).filter(parts -> !parts.isEmpty()), contents);
    }

    public <P> Contents<T> listIfKnown(String key, Function<T, Optional<List<P>>> reading, Contents<P> contents) {
        return and(new Member.Many<>(key, reading, contents));
    }
}
