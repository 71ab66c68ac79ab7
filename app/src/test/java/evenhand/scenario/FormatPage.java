package evenhand.scenario;

import evenhand.catalogue.Amount;
import evenhand.catalogue.Content;
import evenhand.catalogue.Range;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.Numbers;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The format of a scenario file as a page to read: every key of every object, from the shapes that read the file. */
final class FormatPage {
    private static final int DIGITS = 4;
    private static final int PLACES_SHOWN = 4;

    private static final String HEAD = """
            # The scenario file

            One car as it was measured, its set-ups, and what else belongs to the job: a JSON file in UTF-8. Every key that there is
            stands below, with its meaning, how it is written, what is usual, how a shop measures it (and how far off that usually is,
            two standard deviations), and what holds where it is left out. This page and
            [the JSON Schema](format/scenario.schema.json) are made from the same declarations that read the file. The schema knows the
            keys, how each is written and which are needed; how large a number may be and what hangs together over several keys, only
            `evenhand check` knows.

            [smallest-car.json](format/smallest-car.json) is the least that has an answer,
            [two-setups.json](format/two-setups.json) shows set-ups, a load and a list; the demo cars beside this page are the larger examples.

            ## How it is written

            - A quantity is a text with its unit, and a tolerance where one is known: `"1420 mm"`, `"520 mm ± 20 mm"`, `"24 N/mm ± 5 %"`.
              The tolerance is the half-width that you would bet 20 to 1 on. A ratio or a count is a number, or a text where it has a
              tolerance: `0.55`, `"0.545 ± 0.005"`, `"55 %"`. Numbers have a decimal point.
            - Units are never guessed: a bare number where a quantity belongs is an error that says how to write it.
            - Heights are above the ground, the car at rest; masses and heights are of the car as it was weighed.
            - A key that is not known is an error that names the nearest known one; nothing is passed over in silence.
            - `changes` of a set-up is a JSON Merge Patch (RFC 7396) on `car`: only what differs, `null` removes, lists are replaced whole, and
              where a `kind` or `layout` changes, its object is replaced whole.

            ## The number of the format

            `"evenhand": 1` is the number of the format, not of the program.

            - It goes up when a file that could be read would have to be refused, or would be read as another car. It does not go up for new
              keys: an older program refuses a key that it does not know, and names it.
            - Whatever could be read once can be read for ever, as the same car: each program reads all numbers that there have been. Copies
              of files of each number are kept with the program's tests, with what they mean.
            - A number that is not known is refused, with those that are.
            - What is written back keeps the number that the file has.
            """;

    private final StringBuilder page = new StringBuilder();
    private final Map<String, Shape<?>> shapes = new LinkedHashMap<>();
    private final Map<String, Set<String>> places = new LinkedHashMap<>();
    private final Set<Dimension> measured = new LinkedHashSet<>();

    private FormatPage() {}

    static String text() {
        return new FormatPage().write();
    }

    private String write() {
        collect();
        page.append(HEAD);
        List<StringBuilder> sections = new ArrayList<>();
        shapes.forEach((name, shape) -> sections.add(section(name, shape)));
        units();
        sections.forEach(page::append);
        return page.toString();
    }

    /** All objects, the outer before the inner, and where they may stand. */
    private void collect() {
        record Step(Shape<?> shape, String place) {}
        Deque<Step> open = new ArrayDeque<>(List.of(new Step(FileCatalogue.FILE, "")));
        while (!open.isEmpty()) {
            Step step = open.removeFirst();
            Shape<?> shape = step.shape();
            shapes.putIfAbsent(shape.name(), shape);
            if (!places.computeIfAbsent(shape.name(), name -> new LinkedHashSet<>())
                    .add(step.place())) {
                continue;
            }
            for (Slot<?> slot : slots(shape)) {
                String place = step.place().isEmpty() ? slot.key() : step.place() + "." + slot.key();
                if (slot.content() instanceof Content.Group<?> group) {
                    open.addLast(new Step(group.shape(), place));
                } else if (slot.content() instanceof Content.Groups<?> groups) {
                    open.addLast(new Step(groups.shape(), place + "[]"));
                }
            }
            if (shape instanceof Shape.ByName<?> byName) {
                open.addLast(new Step(byName.each(), step.place() + ".NAME"));
            }
        }
    }

    private static Collection<Slot<?>> slots(Shape<?> shape) {
        if (shape instanceof Shape.Plain<?> plain) {
            return plain.slots();
        }
        Map<String, Slot<?>> all = new LinkedHashMap<>();
        if (shape instanceof Shape.Kinds<?> kinds) {
            for (Shape.Plain<?> kind : kinds.kinds().values()) {
                kind.slots().forEach(slot -> all.putIfAbsent(slot.key(), slot));
            }
        }
        return all.values();
    }

    private StringBuilder section(String name, Shape<?> shape) {
        StringBuilder text = new StringBuilder("\n## ").append(name).append("\n");
        List<String> at =
                places.get(name).stream().filter(place -> !place.isEmpty()).toList();
        if (!at.isEmpty()) {
            text.append("\nStands at ")
                    .append(at.stream()
                            .limit(PLACES_SHOWN)
                            .map(FormatPage::code)
                            .collect(Collectors.joining(", ")))
                    .append(at.size() > PLACES_SHOWN ? " and " + (at.size() - PLACES_SHOWN) + " other places" : "")
                    .append(".\n");
        }
        if (shape instanceof Shape.Plain<?> plain) {
            table(text, plain.slots());
        } else if (shape instanceof Shape.ByName<?> byName) {
            text.append("\nEach ")
                    .append(byName.meaning())
                    .append(", under a name of your own: ")
                    .append(link(byName.each()))
                    .append(".\n");
        } else if (shape instanceof Shape.Kinds<?> kinds) {
            text.append("\n")
                    .append(code(kinds.key()))
                    .append(" says which: ")
                    .append(kinds.meaning())
                    .append(".\n");
            kinds.kinds().forEach((word, kind) -> {
                text.append("\n### ")
                        .append(kinds.key())
                        .append(" ")
                        .append(code('"' + word + '"'))
                        .append("\n");
                if (kind.slots().isEmpty()) {
                    text.append("\nHas no keys of its own.\n");
                } else {
                    table(text, kind.slots());
                }
            });
        }
        return text;
    }

    private void table(StringBuilder text, List<Slot<?>> slots) {
        text.append("\n| key | meaning | written as | usual | measured | left out |\n|---|---|---|---|---|---|\n");
        for (Slot<?> slot : slots) {
            text.append("| ")
                    .append(String.join(
                            " | ",
                            code(slot.key()),
                            cell(slot.meaning()),
                            cell(written(slot)),
                            cell(usual(slot)),
                            cell(how(slot)),
                            cell(leftOut(slot))))
                    .append(" |\n");
        }
    }

    private String written(Slot<?> slot) {
        return written(slot.content());
    }

    private String written(Content<?> content) {
        if (content instanceof Content.Measure measure) {
            return measure(measure.dimension())
                    + (measure.bare() && measure.dimension() != Dimension.RATIO ? ", or a bare number in SI" : "");
        } else if (content instanceof Content.Tolerance tolerance) {
            return "a half-width alone, `\"± 1 "
                    + tolerance.dimension().metric().symbol() + "\"`";
        } else if (content instanceof Content.Choice<?> choice) {
            return words(choice.words().keySet());
        } else if (content instanceof Content.Flag) {
            return "`true` or `false`";
        } else if (content instanceof Content.Text) {
            return "text";
        } else if (content instanceof Content.Texts) {
            return "object of texts, under free words";
        } else if (content instanceof Content.Points<?> points) {
            measured.add(points.of().at());
            measured.add(points.of().up());
            return "list of pairs, " + points.of().across() + " and "
                    + points.of().upwards() + ", `" + points.of().example() + "`";
        } else if (content instanceof Content.Numbers numbers) {
            measured.add(numbers.dimension());
            return (numbers.count() > 0 ? "list of " + numbers.count() + " numbers, " : "list of numbers, ")
                    + code(numbers.example());
        } else if (content instanceof Content.Names names) {
            return "list of texts, " + code(names.example());
        } else if (content instanceof Content.Shares shares) {
            return "list of pairs, " + code(shares.example());
        } else if (content instanceof Content.WordOr<?, ?> either) {
            return words(either.words().keySet()) + ", or " + written(either.otherwise());
        } else if (content instanceof Content.Group<?> group) {
            return "object: " + link(group.shape());
        } else if (content instanceof Content.Groups<?> groups) {
            return "list of objects: " + link(groups.shape());
        } else if (content instanceof Content.Changes<?> changes) {
            return "merge patch on " + link(changes.shape());
        } else if (content instanceof Content.Version version) {
            return code(String.valueOf(version.known()));
        }
        throw new IllegalStateException("nothing is said of " + content);
    }

    private String measure(Dimension dimension) {
        measured.add(dimension);
        return dimension == Dimension.RATIO
                ? "number"
                : dimension.words() + ", " + code(dimension.metric().symbol());
    }

    private static String usual(Slot<?> slot) {
        Optional<Range> usual = slot.usual();
        return usual.isEmpty()
                ? ""
                : shown(slot, usual.get().low()) + " to "
                        + shown(slot, usual.get().high());
    }

    private static String how(Slot<?> slot) {
        String off = amount(slot, slot.tolerance());
        return slot.how() + (slot.how().isEmpty() || off.isEmpty() ? "" : ", ") + off;
    }

    private static String amount(Slot<?> slot, Amount amount) {
        List<String> parts = new ArrayList<>();
        if (amount.fixed() > 0) {
            parts.add(shown(slot, amount.fixed()));
        }
        if (amount.part() > 0) {
            parts.add(Numbers.significant(100 * amount.part(), DIGITS) + " %");
        }
        return parts.isEmpty() ? "" : "± " + String.join(" and ", parts);
    }

    private static String leftOut(Slot<?> slot) {
        String instead =
                slot.instead().stream().map(other -> code(other.slot().key())).collect(Collectors.joining(" or "));
        if (slot.required()) {
            return instead.isEmpty() ? "**needed**" : "needed, unless " + instead + " is given";
        }
        String alone = instead.isEmpty() ? "" : "; not beside " + instead;
        if (slot.standIn().isEmpty()) {
            return "may be" + alone;
        }
        return standIn(slot, slot.standIn().get()) + alone;
    }

    private static <V> String standIn(Slot<?> slot, Slot.StandIn<V> standIn) {
        if (standIn.rule().isPresent()) {
            String off = amount(slot, standIn.tolerance());
            return "estimated " + standIn.rule().get() + (off.isEmpty() ? "" : " (" + off + ")")
                    + standIn.beside()
                            .map(beside -> "; " + constant(slot, beside.value()) + " beside "
                                    + code(beside.slot().key()))
                            .orElse("");
        }
        if (!standIn.needs().isEmpty()) {
            return "from "
                    + standIn.needs().stream().map(need -> code(need.key())).collect(Collectors.joining(", "));
        }
        return constant(slot, standIn.value().apply(null)); // what needs nothing asks nothing
    }

    /** What a value is in a file. */
    private static String constant(Slot<?> slot, Object value) {
        if (value instanceof Double number) {
            return Double.isInfinite(number) ? "none" : shown(slot, number);
        }
        Map<String, ?> words = slot.content() instanceof Content.Choice<?> choice
                ? choice.words()
                : slot.content() instanceof Content.WordOr<?, ?> either ? either.words() : Map.of();
        for (Map.Entry<String, ?> word : words.entrySet()) {
            if (word.getValue().equals(value)) {
                return code('"' + word.getKey() + '"');
            }
        }
        if (value instanceof Boolean || (value instanceof String text && !text.isEmpty())) {
            return code(String.valueOf(value));
        }
        return "none";
    }

    private static String shown(Slot<?> slot, double si) {
        Dimension dimension = dimension(slot.content());
        Unit unit = dimension.metric();
        String number = Numbers.significant(unit.fromSi(si), DIGITS);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    private static Dimension dimension(Content<?> content) {
        if (content instanceof Content.Measure measure) {
            return measure.dimension();
        } else if (content instanceof Content.Tolerance tolerance) {
            return tolerance.dimension();
        } else if (content instanceof Content.Numbers numbers) {
            return numbers.dimension();
        } else if (content instanceof Content.WordOr<?, ?> either) {
            return dimension(either.otherwise());
        }
        return Dimension.RATIO;
    }

    private void units() {
        page.append("\n## Units\n\n| what | units | for example |\n|---|---|---|\n");
        for (Dimension dimension : Dimension.values()) {
            if (measured.contains(dimension)) {
                page.append("| ")
                        .append(dimension.words())
                        .append(" | ")
                        .append(dimension.units().stream()
                                .map(Unit::symbol)
                                .map(symbol -> symbol.isEmpty() ? "none" : code(symbol))
                                .collect(Collectors.joining(" ")))
                        .append(" | ")
                        .append(code(dimension.example().replace(" or ", "` or `")))
                        .append(" |\n");
            }
        }
    }

    private static String words(Set<String> words) {
        return words.stream().map(word -> code('"' + word + '"')).collect(Collectors.joining(" or "));
    }

    private static String link(Shape<?> shape) {
        return "[" + shape.name() + "](#" + shape.name().toLowerCase(Locale.ROOT) + ")";
    }

    private static String code(String text) {
        return "`" + text + "`";
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }
}
