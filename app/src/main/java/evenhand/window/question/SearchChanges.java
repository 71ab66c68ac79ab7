package evenhand.window.question;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Amount;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Range;
import evenhand.choice.Span;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.FormField;
import evenhand.window.desk.Knob;
import evenhand.window.desk.PointRow;
import evenhand.window.desk.Question.Field;
import evenhand.words.ChangeWords;
import evenhand.words.GridText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Which changes a search may make, in which ranges and steps. One change at first; "and" adds a second, and that a third. The ends
 * of a range are asked of each adjustment, so that what was written for one is not lost with another.
 */
final class SearchChanges {
    private static final int MOST = 3;
    private static final int STEPS_EACH_WAY = 5;
    private static final String NOTHING = "nothing else";

    /** As far as a bracket is moved at once, m. Common practice. */
    private static final double BRACKET_STEP = 0.01;

    /** The stiffest bar that a search begins with where there is none, N·m/rad: as heavy as road cars have. Common practice. */
    private static final double HEAVY_BAR = Unit.of("N*m/deg").toSi(200);

    /**
     * What a change is chosen from.
     *
     * @param parts paths by the part that they belong to; where there is one part alone, it is not asked for
     * @param start the path that is proposed first
     * @param name of a path within its part, unique there
     */
    record Offer(Map<String, List<String>> parts, String start, UnaryOperator<String> name) {
        List<String> paths() {
            return parts.values().stream().flatMap(List::stream).toList();
        }

        String part(String path) {
            return parts.entrySet().stream()
                    .filter(part -> part.getValue().contains(path))
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElse("");
        }

        boolean isParted() {
            return parts.size() > 1;
        }

        /** What is left besides what is chosen. */
        Map<String, List<String>> besides(List<String> chosen) {
            Map<String, List<String>> left = new LinkedHashMap<>();
            parts.forEach((part, paths) -> {
                List<String> own =
                        paths.stream().filter(path -> !chosen.contains(path)).toList();
                if (!own.isEmpty()) {
                    left.put(part, own);
                }
            });
            return left;
        }
    }

    private final Asking asking;
    private final Setup setup;
    private final List<String> noBars;
    private final Offer offer;

    SearchChanges(Asking asking, Offer offer) {
        this.asking = asking;
        this.setup = asking.work().activeSetup();
        this.noBars = Knobs.barsNotFitted(setup);
        this.offer = offer;
    }

    private String wish(Field field) {
        return asking.wish(field.key()).orElse(field.start());
    }

    /** The field that chooses one more part, or one more change where there are no parts. */
    private Field choice(List<String> chosen) {
        Map<String, List<String>> left = offer.besides(chosen);
        List<String> names = new ArrayList<>(
                offer.isParted()
                        ? left.keySet()
                        : left.values().stream()
                                .flatMap(List::stream)
                                .map(offer.name())
                                .toList());
        if (chosen.isEmpty()) {
            String start =
                    offer.isParted() ? offer.part(offer.start()) : offer.name().apply(offer.start());
            return new Field("change", "change", names, start);
        }
        names.add(0, NOTHING);
        return new Field("and " + chosen.size(), "and", names, NOTHING);
    }

    /** The field that chooses a value of a part. */
    private Field value(List<String> chosen, String part) {
        List<String> paths = offer.besides(chosen).getOrDefault(part, List.of());
        String start = paths.contains(offer.start()) ? offer.start() : paths.get(0);
        return new Field(
                "value " + chosen.size() + " " + part,
                "its",
                paths.stream().map(offer.name()).toList(),
                offer.name().apply(start));
    }

    /** The part that is chosen next; none where nothing more is to change. */
    private Optional<String> part(List<String> chosen) {
        Map<String, List<String>> left = offer.besides(chosen);
        String wished = wish(choice(chosen));
        return left.containsKey(wished)
                ? Optional.of(wished)
                : chosen.isEmpty() ? left.keySet().stream().findFirst() : Optional.empty();
    }

    private Optional<String> next(List<String> chosen) {
        Map<String, List<String>> left = offer.besides(chosen);
        if (left.isEmpty()) {
            return Optional.empty();
        }
        if (offer.isParted()) {
            return part(chosen).map(part -> {
                List<String> own = left.getOrDefault(part, List.of());
                return named(own, wish(value(chosen, part))).orElse(own.get(0));
            });
        }
        List<String> paths = left.values().stream().flatMap(List::stream).toList();
        Optional<String> named = named(paths, wish(choice(chosen)));
        return named.isEmpty() && chosen.isEmpty() ? Optional.of(paths.get(0)) : named;
    }

    private Optional<String> named(List<String> paths, String name) {
        return paths.stream()
                .filter(path -> offer.name().apply(path).equals(name)
                        || ChangeWords.name(path).equals(bare(name)))
                .findFirst();
    }

    /** A name that was chosen before its bar was fitted is still that bar's. */
    private static String bare(String name) {
        return name.endsWith(Knobs.NOT_FITTED) ? name.substring(0, name.length() - Knobs.NOT_FITTED.length()) : name;
    }

    /** Paths of what is chosen to change, at least one. */
    List<String> chosen() {
        List<String> chosen = new ArrayList<>();
        while (chosen.size() < MOST) {
            Optional<String> next = next(chosen);
            if (next.isEmpty()) {
                break;
            }
            chosen.add(next.get());
        }
        return chosen;
    }

    List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        List<String> chosen = chosen();
        for (int i = 0; i < chosen.size(); i++) {
            List<String> before = chosen.subList(0, i);
            Field choice = choice(before);
            fields.add(i == 0 && !offer.isParted() ? choice : choice.beginningALine());
            if (offer.isParted()) {
                fields.add(value(before, offer.part(chosen.get(i))));
            }
            Adjustable now = adjustable(chosen.get(i));
            fields.add(from(now));
            fields.add(to(now));
        }
        if (chosen.size() < Math.min(MOST, offer.paths().size())) {
            fields.add(choice(chosen));
        }
        return fields;
    }

    /** The steps that a shop can set, where no others are asked for. */
    Field grid() {
        return Field.empty(
                "grid",
                "in steps of",
                chosen().stream()
                        .map(this::adjustable)
                        .map(now -> FormField.show(Knob.fineStep(now, asking.units()), now.dimension(), asking.units()))
                        .distinct()
                        .collect(Collectors.joining("; ")));
    }

    /** The car with room for what may change: a bar that is not fitted has no stiffness. */
    Entries car() {
        Entries car = setup.entries();
        for (String path : chosen()) {
            car = Span.fitting(car, path);
        }
        return car;
    }

    private Adjustable adjustable(String path) {
        List<Adjustable> values =
                noBars.contains(path) ? Catalogue.adjustments(Span.fitting(setup.entries(), path)) : setup.values();
        Adjustable value = values.stream()
                .filter(one -> one.path().equals(path))
                .findFirst()
                .orElseThrow();
        return PointRow.isCoordinate(path) && value.slot().step().isEmpty() ? asABracketIsMoved(value) : value;
    }

    /** A coordinate can be nearly anything, so that a part of what is usual is no step for it. */
    private static Adjustable asABracketIsMoved(Adjustable value) {
        return new Adjustable(
                value.path(),
                value.slot().usualStep(Amount.of(BRACKET_STEP)),
                value.si(),
                value.tolerance(),
                value.origin(),
                value.rule(),
                value.unit());
    }

    private Field from(Adjustable now) {
        return end("from", now, -STEPS_EACH_WAY);
    }

    private Field to(Adjustable now) {
        return end("to", now, STEPS_EACH_WAY);
    }

    private Field end(String words, Adjustable now, int steps) {
        return Field.empty(
                words + " " + now.path(), words, FormField.show(usualEnd(now, steps), now.dimension(), asking.units()));
    }

    /**
     * How far a thread or shims go: what is usual; else so many usual steps from where it stands, to a round number, as far as a car
     * can have that.
     */
    private double usualEnd(Adjustable now, int steps) {
        if (noBars.contains(now.path())) {
            return steps < 0 ? 0 : HEAVY_BAR;
        }
        double coarse = Knob.coarseStep(now, asking.units());
        Optional<Range> usual = now.slot().usual();
        if (usual.isPresent() && (now.path().endsWith(".longer") || now.path().endsWith(".shim"))) {
            double end = steps < 0
                    ? Math.min(usual.get().low(), now.si())
                    : Math.max(usual.get().high(), now.si());
            return now.slot().bounds().cut(coarse * Math.rint(end / coarse));
        }
        return now.slot().bounds().cut(coarse * Math.rint((now.si() + steps * now.step()) / coarse));
    }

    /** The ranges that stand in the fields. */
    List<Span> spans(Entries car) {
        return chosen().stream().map(path -> span(car, path)).toList();
    }

    List<OptionalDouble> steps(List<Span> spans) {
        Field grid = grid();
        List<String> asked = SearchFields.pieces(wish(grid));
        if (asked.isEmpty()) {
            return spans.stream().map(this::usualStep).toList();
        }
        try {
            return GridText.read(asked.stream().map(GridText.Written::forAll).toList(), spans);
        } catch (InvalidValue step) {
            throw SearchFields.wrong(grid, step.component(), String.valueOf(step.getMessage()));
        }
    }

    /** None where a range is too narrow for it. */
    private OptionalDouble usualStep(Span span) {
        double step = Knob.fineStep(adjustable(span.path()), asking.units());
        return span.holds(step) ? OptionalDouble.of(step) : OptionalDouble.empty();
    }

    private Span span(Entries car, String path) {
        Adjustable now = adjustable(path);
        double from = number(from(now), now, -STEPS_EACH_WAY);
        double to = number(to(now), now, STEPS_EACH_WAY);
        String name = ChangeWords.name(path);
        if (!(from < to)) {
            throw new InvalidValue(
                    "to " + path,
                    "\"from\" and \"to\" of the " + name + ": the range "
                            + FormField.show(from, now.dimension(), asking.units()) + " to "
                            + FormField.show(to, now.dimension(), asking.units())
                            + " ends before it begins; put the lower value first.");
        }
        try {
            return Span.of(car, path, from, to);
        } catch (InvalidValue beyond) {
            throw new InvalidValue(path, "\"from\" and \"to\": the " + name + " " + beyond.getMessage() + ".");
        }
    }

    private double number(Field field, Adjustable now, int steps) {
        String text = wish(field).strip();
        try {
            return text.isEmpty()
                    ? usualEnd(now, steps)
                    : Quantity.parse(text, now.dimension()).si();
        } catch (QuantityException wrong) {
            String what = String.valueOf(wrong.getMessage());
            throw new InvalidValue(
                    field.key(),
                    "\"" + field.words() + "\" of the " + ChangeWords.name(now.path()) + ": "
                            + (what.startsWith("\"") ? "" : "\"" + text + "\" ") + what + ".");
        }
    }
}
