package evenhand.window.desk;

import static java.util.stream.Collectors.joining;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Content;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Nearest;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.scenario.FileCatalogue;
import evenhand.scenario.ScenarioWriter;
import evenhand.words.ChangeWords;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One field of a form, made from the catalogue.
 *
 * @param path of its value, relative to the car
 * @param slot its declaration; none for the word of a kind
 * @param meaning in the words of the trade
 * @param choices words to choose from; none where it is typed
 * @param given as the person gave it
 * @param value as the car was built with it, where it is a number
 * @param grid its rows, where it is a list
 */
public record FormField(
        String path,
        Optional<Slot<?>> slot,
        String meaning,
        List<String> choices,
        Optional<String> given,
        Optional<Adjustable> value,
        Optional<Grid> grid) {
    /** Where what stands in a field comes from. */
    public enum Standing {
        GIVEN,
        ESTIMATED,
        /** Not given, though it moves an answer. */
        TAKEN_AS_NONE,
        /** Not given, and a car is whole without. */
        BLANK
    }

    private static final int DIGITS = 4;
    private static final int EXAMPLE_DIGITS = 2;

    /** So many, that a tape's reading is the same in either system. */
    private static final int GIVEN_DIGITS = 5;

    /** Fewer begin too many words. */
    private static final int FEWEST_LETTERS = 2;

    public FormField {
        choices = List.copyOf(choices);
    }

    /** One that is no list. */
    FormField(
            String path,
            Optional<Slot<?>> slot,
            String meaning,
            List<String> choices,
            Optional<String> given,
            Optional<Adjustable> value) {
        this(path, slot, meaning, choices, given, value, Optional.empty());
    }

    /** The word of a kind. */
    static FormField kind(String path, Shape.Kinds<?> kinds, Optional<String> word) {
        return new FormField(
                path,
                Optional.empty(),
                kinds.meaning(),
                List.copyOf(kinds.kinds().keySet()),
                word,
                Optional.empty());
    }

    static FormField of(String path, Slot<?> slot, Optional<Entry> entry, Optional<Adjustable> value) {
        return of(path, slot, entry.map(Entry::text), value, Grid.of(slot, entry));
    }

    static FormField of(
            String path, Slot<?> slot, Optional<String> given, Optional<Adjustable> value, Optional<Grid> grid) {
        List<String> choices = slot.content() instanceof Content.Choice<?> choice
                ? List.copyOf(choice.words().keySet())
                : slot.content() instanceof Content.Flag ? List.of("true", "false") : List.of();
        return new FormField(path, Optional.of(slot), slot.meaning(), choices, given, value, grid);
    }

    /** The last words of the path: "motion ratio". */
    public String label() {
        String key = path.substring(path.lastIndexOf('.') + 1);
        return ChangeWords.name(key);
    }

    /** Where no heading says of which part it is: "roll centre height"; only the axle is left out. */
    public String labelOfAxle() {
        String own = path.replaceFirst("^(front|rear)\\.", "");
        return own.equals(path) ? label() : ChangeWords.name(own);
    }

    /** What its number measures. */
    Optional<Dimension> dimension() {
        return slot.flatMap(own ->
                own.content() instanceof Content.Measure measure ? Optional.of(measure.dimension()) : Optional.empty());
    }

    /** Whether it holds a number, with its unit where it has one. */
    public boolean isQuantity() {
        return slot.map(own -> own.content() instanceof Content.Measure).orElse(false);
    }

    /** Whether its text may have several lines. */
    public boolean hasLines() {
        return slot.map(FileCatalogue::hasLines).orElse(false);
    }

    /** What was typed as the file writes it: a word or text in quotes, true and false without, numbers as a list. */
    public String json(String text) {
        String stripped = hasLines() ? text : text.strip();
        if (slot.isPresent() && slot.get().content() instanceof Content.Flag) {
            return stripped;
        }
        if (slot.isPresent()
                && slot.get().content() instanceof Content.WordOr<?, ?> either
                && either.otherwise() instanceof Content.Numbers
                && !either.words().containsKey(stripped)
                && stripped.chars().anyMatch(Character::isDigit)) {
            return "["
                    + Stream.of(stripped.replaceAll("[\\[\\]]", "").split("[,;\\s]+", -1))
                            .filter(number -> !number.isEmpty())
                            .map(ScenarioWriter::scalar)
                            .collect(joining(", "))
                    + "]";
        }
        return ScenarioWriter.quoted(stripped);
    }

    /** What was typed as a draft keeps it. */
    public String drafted(String text) {
        String json = text.isBlank() ? "" : json(text);
        return json.startsWith("[") ? json : text;
    }

    /** Whether it holds the name of what it belongs to. */
    public boolean isOwnName(Form.Section section) {
        return section.role() == Form.Role.NAMED && path.equals(section.path());
    }

    /** Whether a car cannot do without. */
    public boolean isNeeded() {
        return slot.map(Slot::required).orElse(true);
    }

    /** What stands in the field while nothing is given: the default or estimate, with its unit. */
    public String standIn(Units units) {
        return value.filter(own -> own.origin() != Adjustable.Origin.GIVEN)
                .map(own -> Double.isInfinite(own.si()) ? "rigid" : show(own.si(), own.dimension(), units))
                .orElse("");
    }

    /** @param none paths of what was not given and is taken as none */
    public Standing standing(Set<String> none) {
        if (given.isPresent()) {
            return Standing.GIVEN;
        }
        boolean estimated =
                value.filter(own -> own.origin() == Adjustable.Origin.ESTIMATED).isPresent();
        return estimated ? Standing.ESTIMATED : none.contains(path) ? Standing.TAKEN_AS_NONE : Standing.BLANK;
    }

    /** What was typed in other units than those of show, as it was typed; else empty. */
    public String typed(Units units) {
        return value.filter(own -> own.origin() == Adjustable.Origin.GIVEN
                        && own.dimension() != Dimension.RATIO
                        && !own.unit()
                                .symbol()
                                .equals(unit(own.dimension(), units).symbol()))
                .flatMap(own -> given)
                .orElse("");
    }

    /** Where a value that was not given comes from. */
    public String rule() {
        return value.filter(own -> own.origin() == Adjustable.Origin.ESTIMATED)
                .map(own -> "estimated " + own.rule())
                .orElse("");
    }

    /** How it is measured; empty where nothing is to be said. */
    public String how() {
        return slot.map(Slot::how).orElse("");
    }

    /** The usual range, with its unit; empty where there is none. */
    public String usual(Units units) {
        if (slot.isEmpty()
                || slot.get().usual().isEmpty()
                || !(slot.get().content() instanceof Content.Measure measure)) {
            return "";
        }
        double low = slot.get().usual().get().low();
        double high = slot.get().usual().get().high();
        Unit unit = unit(measure.dimension(), units);
        return Numbers.significant(unit.fromSi(low), 3) + " to " + show(high, measure.dimension(), units);
    }

    /** How one is written: a round value from the middle of what is usual, with its unit; empty where it is no number. */
    public String example(Units units) {
        if (slot.isEmpty() || !(slot.get().content() instanceof Content.Measure measure)) {
            return "";
        }
        double middle = slot.get()
                .usual()
                .map(range -> (range.low() + range.high()) / 2)
                .orElse(0.0);
        if (middle == 0) {
            return measure.dimension().example();
        }
        Unit unit = unit(measure.dimension(), units);
        double round = new BigDecimal(unit.fromSi(middle))
                .round(new MathContext(EXAMPLE_DIGITS))
                .doubleValue();
        return "\"" + show(unit.toSi(round), measure.dimension(), units) + "\"";
    }

    /** A number in the units of show; a ratio stays a plain number. */
    public static String show(double si, Dimension dimension, Units units) {
        Unit unit = unit(dimension, units);
        String symbol = InPrint.symbol(unit);
        return Numbers.significant(unit.fromSi(si), DIGITS) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    /** What was given, in the units of show: with its tolerance, and as it was typed where that is in them. */
    public String given(Units units) {
        return given.map(text -> isQuantity() ? given(text, dimension(), units) : text)
                .orElse("");
    }

    /** A quantity as somebody typed it, in the units of show; a word stays as it is. */
    static String given(String text, Optional<Dimension> dimension, Units units) {
        if (dimension.isEmpty() || dimension.get() == Dimension.RATIO) {
            return InPrint.given(text);
        }
        try {
            Quantity quantity = Quantity.parse(text.replace("−", "-"), dimension.get());
            Unit unit = unit(dimension.get(), units);
            if (quantity.unit().equals(unit)) {
                return InPrint.given(text);
            }
            double tolerance = unit.fromSi(quantity.tolerance()) - unit.fromSi(0);
            return Numbers.significant(unit.fromSi(quantity.si()), tolerance > 0 ? DIGITS : GIVEN_DIGITS)
                    + (quantity.saysTolerance() ? " ± " + Numbers.significant(tolerance, EXAMPLE_DIGITS) : "")
                    + (unit.symbol().isEmpty() ? "" : " " + InPrint.symbol(unit));
        } catch (QuantityException word) {
            return InPrint.given(text);
        }
    }

    /** The unit that a dimension is typed in. */
    public static Unit unit(Dimension dimension, Units units) {
        return dimension == Dimension.RATIO ? Dimension.RATIO.metric() : units.of(dimension);
    }

    /** Whether a search for words finds it by another word that the trade has for it: "sway bar". */
    public boolean isAlsoCalled(String search) {
        StringBuilder called = new StringBuilder();
        for (String word : search.toLowerCase(java.util.Locale.ROOT).split("[^a-z0-9]+", -1)) {
            if (word.equals("front") || word.equals("rear")) {
                if (!path.startsWith(word)) {
                    return false;
                }
            } else {
                called.append(word);
            }
        }
        return called.length() >= FEWEST_LETTERS
                && upwards(path)
                        .flatMap(above -> Nearest.otherWords(above).stream())
                        .anyMatch(other -> other.startsWith(called.toString()));
    }

    /** A path, and those of the objects that it stands in. */
    private static Stream<String> upwards(String path) {
        return Stream.iterate(path, own -> !own.isEmpty(), own -> own.substring(0, Math.max(0, own.lastIndexOf('.'))));
    }

    /** Whether a search for words finds it: each of them somewhere in its path or meaning. */
    public boolean matches(String search) {
        return matches(ChangeWords.name(path) + " " + path + " " + meaning, search);
    }

    static boolean matches(String words, String search) {
        String all = words.toLowerCase(java.util.Locale.ROOT);
        for (String word : search.strip().toLowerCase(java.util.Locale.ROOT).split("\\s+", -1)) {
            if (!all.contains(word)) {
                return false;
            }
        }
        return true;
    }
}
