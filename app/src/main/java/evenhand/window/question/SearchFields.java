package evenhand.window.question;

import evenhand.answers.Aim;
import evenhand.answers.Trial;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.choice.Span;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.FormField;
import evenhand.window.desk.Knob;
import evenhand.window.desk.Question.Field;
import evenhand.words.AimText;
import evenhand.words.ChangeWords;
import evenhand.words.GridText;
import evenhand.words.LinkAimWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The fields of a search: which changes, in which ranges and steps, and what for. One change at first; "and" adds a second, and
 * that a third. The ends of a range are asked of each adjustment, so that what was written for one is not lost with another.
 */
final class SearchFields {
    private static final int MOST_CHANGES = 3;
    private static final int STEPS_EACH_WAY = 5;
    private static final String NOTHING = "nothing else";

    /** The stiffest bar that a search begins with where there is none, N·m/rad: as heavy as road cars have. Common practice. */
    private static final double HEAVY_BAR = Unit.of("N*m/deg").toSi(200);

    private static final Field AIM = new Field("aim", "so that", List.of(), "understeer near the limit 0 deg/g")
            .hinting("understeer 0.8 deg/g at 0.5 g")
            .beginningALine();
    private static final Field KEEPS = Field.empty("keeps", "keeping", "nothing, or for example: limit at least 0.8 g");
    /**
     * What is asked for.
     *
     * @param car that is searched: with a bar of no stiffness where one that is not fitted may change
     * @param steps that can be built, in the order of the changes
     */
    record Wanted(Entries car, List<Span> spans, Aim aim, List<Aim> keeps, List<OptionalDouble> steps, Trial trial) {
        /** The same of one change in another range. */
        Wanted in(Span span, OptionalDouble step) {
            return new Wanted(car, List.of(span), aim, keeps, List.of(step), trial);
        }
    }

    private static final String NOT_FITTED = ", not fitted";

    private final Asking asking;
    private final Setup setup;
    private final List<String> noBars;

    SearchFields(Asking asking) {
        this.asking = asking;
        this.setup = asking.work().activeSetup();
        this.noBars = Knobs.barsNotFitted(setup);
    }

    /** Paths of what may change: what the car has, then bars that it could have. */
    private List<String> changes() {
        return Stream.concat(
                        Knobs.here(
                                setup,
                                Stream.of(
                                                Knobs.springsAndBars(setup),
                                                Knobs.rollCentres(setup),
                                                Knobs.heights(),
                                                Knobs.linkSettings(setup))
                                        .flatMap(List::stream))
                                .stream(),
                        noBars.stream())
                .toList();
    }

    /** "rear bar roll stiffness, not fitted". */
    private String name(String path) {
        return ChangeWords.name(path) + (noBars.contains(path) ? NOT_FITTED : "");
    }

    /** A name that was chosen before its bar was fitted is still that bar's. */
    private static String bare(String name) {
        return name.endsWith(NOT_FITTED) ? name.substring(0, name.length() - NOT_FITTED.length()) : name;
    }

    /** The field that chooses one more change, besides those that are chosen. */
    private Field choice(List<String> chosen) {
        List<String> left = new ArrayList<>(changes());
        left.removeAll(chosen);
        List<String> names = new ArrayList<>(left.stream().map(this::name).toList());
        if (chosen.isEmpty()) {
            String bar = "rear.bar.rollStiffness";
            String start = left.contains(bar) && !noBars.contains(bar) ? bar : "rear.spring.rate";
            return new Field("change", "change", names, ChangeWords.name(start));
        }
        names.add(0, NOTHING);
        return new Field("and " + chosen.size(), "and", names, NOTHING);
    }

    private String wish(Field field) {
        return asking.wish(field.key()).orElse(field.start());
    }

    /** Paths of what is chosen to change, at least one. */
    private List<String> chosen() {
        List<String> chosen = new ArrayList<>();
        while (chosen.size() < MOST_CHANGES) {
            String name = bare(wish(choice(chosen)));
            List<String> paths = changes().stream()
                    .filter(path ->
                            !chosen.contains(path) && ChangeWords.name(path).equals(name))
                    .toList();
            if (paths.isEmpty() && !chosen.isEmpty()) {
                break;
            }
            chosen.add(paths.isEmpty() ? changes().get(0) : paths.get(0));
        }
        return chosen;
    }

    List<Field> all() {
        List<Field> fields = new ArrayList<>();
        List<String> chosen = chosen();
        for (int i = 0; i < chosen.size(); i++) {
            Field choice = choice(chosen.subList(0, i));
            fields.add(i == 0 ? choice : choice.beginningALine());
            Adjustable now = adjustable(chosen.get(i));
            fields.add(from(now));
            fields.add(to(now));
        }
        if (chosen.size() < Math.min(MOST_CHANGES, changes().size())) {
            fields.add(choice(chosen));
        }
        fields.addAll(List.of(AIM, KEEPS, grid(chosen)));
        return fields;
    }

    /** The steps that a shop can set, where no others are asked for. */
    private Field grid(List<String> chosen) {
        return Field.empty(
                "grid",
                "in steps of",
                chosen.stream()
                        .map(this::adjustable)
                        .map(now -> FormField.show(Knob.fineStep(now, asking.units()), now.dimension(), asking.units()))
                        .distinct()
                        .collect(Collectors.joining("; ")));
    }

    /** The car with room for what may change: a bar that is not fitted has no stiffness. */
    private Entries fitting(List<String> chosen) {
        Entries car = setup.entries();
        for (String path : chosen) {
            car = Span.fitting(car, path);
        }
        return car;
    }

    private Adjustable adjustable(String path) {
        List<Adjustable> values =
                noBars.contains(path) ? Catalogue.adjustments(Span.fitting(setup.entries(), path)) : setup.values();
        return values.stream()
                .filter(value -> value.path().equals(path))
                .findFirst()
                .orElseThrow();
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

    /** So many usual steps from where it stands, to a round number, as far as a car can have that. */
    private double usualEnd(Adjustable now, int steps) {
        if (noBars.contains(now.path())) {
            return steps < 0 ? 0 : HEAVY_BAR;
        }
        double coarse = Knob.coarseStep(now, asking.units());
        return now.slot().bounds().cut(coarse * Math.rint((now.si() + steps * now.step()) / coarse));
    }

    /**
     * What stands in the fields.
     *
     * @throws InvalidValue if it cannot be read; the message is a sentence that names the field
     */
    Wanted read() {
        Aim aim = aim(AIM, wish(AIM));
        List<Aim> keeps = new ArrayList<>();
        for (String text : pieces(wish(KEEPS))) {
            Aim keep = aim(KEEPS, text);
            if (Stream.concat(Stream.of(aim), keeps.stream()).anyMatch(keep::contradicts)) {
                throw wrong(KEEPS, text, "contradicts what else is asked; no car can do both");
            }
            keeps.add(keep);
        }
        Entries car = fitting(chosen());
        List<Span> spans = chosen().stream().map(path -> span(car, path)).toList();
        Trial trial = asking.work().usualTrial();
        for (Aim one : Stream.concat(Stream.of(aim), keeps.stream()).toList()) {
            trial = trial.with(one.judged());
        }
        return new Wanted(car, spans, aim, keeps, steps(spans), trial);
    }

    private List<OptionalDouble> steps(List<Span> spans) {
        Field grid = grid(spans.stream().map(Span::path).toList());
        List<String> asked = pieces(wish(grid));
        if (asked.isEmpty()) {
            return spans.stream().map(this::usualStep).toList();
        }
        try {
            return GridText.read(asked.stream().map(GridText.Written::forAll).toList(), spans);
        } catch (InvalidValue step) {
            throw wrong(grid, step.component(), String.valueOf(step.getMessage()));
        }
    }

    /** None where a range is too narrow for it. */
    private OptionalDouble usualStep(Span span) {
        double step = Knob.fineStep(span.adjustable(), asking.units());
        return span.holds(step) ? OptionalDouble.of(step) : OptionalDouble.empty();
    }

    /** Apart by semicolons. */
    private static List<String> pieces(String text) {
        return Arrays.stream(text.split(";", -1))
                .map(String::strip)
                .filter(piece -> !piece.isEmpty())
                .toList();
    }

    private Aim aim(Field field, String text) {
        Aim aim;
        try {
            aim = AimText.read(text);
        } catch (InvalidValue wrong) {
            throw wrong(field, text, String.valueOf(wrong.getMessage()));
        }
        Optional<String> missing = LinkAimWords.missing(aim.judged().criterion(), setup.car());
        if (missing.isPresent()) {
            throw wrong(field, text, "cannot be asked: " + missing.get());
        }
        return aim;
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

    private static InvalidValue wrong(Field field, String text, String what) {
        return new InvalidValue(field.key(), "\"" + field.words() + "\": \"" + text + "\" " + what + ".");
    }
}
