package evenhand.window.question;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.LinkCriteria;
import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Slot;
import evenhand.linkage.LinkPlaces.Where;
import evenhand.quantity.InvalidValue;
import evenhand.scenario.AimReading;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.PointRow;
import evenhand.window.desk.Question.Field;
import evenhand.window.question.SearchChanges.Offer;
import evenhand.window.question.SearchFields.Wanted;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The fields of a search among measured points: the figure of the links that is wanted, where in the travel, and what may change
 * for it, link by link, what is set before what is welded.
 */
final class BracketFields {
    private static final String EXACTLY = "exactly";
    private static final String AT_REST = "at rest";

    /** Last words of what is set or moved on links that have points. */
    private static final Set<String> MOVED = Set.of("longer", "shim", "tilt", "ahead", "out", "left", "up");

    private static final String CRANK = ".crank.";
    private static final String LOWERED = "lowered";
    private static final String HEIGHT = "body height";

    private static final Field KEEPS =
            Field.empty("keeps", "keeping", "nothing, or for example: anti-squat at least 30 %");

    /** What a shop reaches for first, by figure; a car has one of them or none. */
    private static final Map<String, List<String>> FIRST = Map.ofEntries(
            Map.entry("rear roll centre", List.of("lateralLocator.pivot.up", "lateralLocator.body.up")),
            Map.entry("front roll centre", List.of("links.lowerArm.outer.up")),
            Map.entry("roll steer", List.of("links.lowerLink.axle.up", "links.leaf.frontEye.up")),
            Map.entry("anti-squat", List.of("links.lowerLink.body.up")),
            Map.entry("anti-dive", List.of("links.lowerArm.rear.up")),
            Map.entry("anti-lift", List.of("links.lowerLink.body.up", "links.lowerArm.rear.up")),
            Map.entry(
                    "pinion slope",
                    List.of("links.torqueArm.longer", "links.middleLink.longer", "links.upperLink.longer")),
            Map.entry(
                    "joint angle",
                    List.of("links.torqueArm.longer", "links.middleLink.longer", "links.upperLink.longer")),
            Map.entry(
                    "axle sideways",
                    List.of(
                            "lateralLocator.longer",
                            "lateralLocator.upperRod.longer",
                            "lateralLocator.lowerRod.longer")),
            Map.entry("drop link lean", List.of("links.torqueArm.hanger.ahead")),
            Map.entry("eye difference", List.of("damper.bottom.shim")),
            Map.entry("bump steer", List.of("links.tieRod.outer.up")),
            Map.entry("caster", List.of("links.strut.top.ahead", "links.upperArm.outer.ahead")));

    /** Figures that are wanted to be none. */
    private static final Set<String> TO_ZERO =
            Set.of("roll steer", "axle sideways", "drop link lean", "eye difference", "bump steer");

    private final Asking asking;
    private final Setup setup;
    private final Answers answers;

    BracketFields(Asking asking) {
        this.asking = asking;
        this.setup = asking.work().activeSetup();
        this.answers = asking.work().usualTrial().ask(setup.car(), LinkCriteria.JUDGED);
    }

    /** The figures that this car's links have, each at rest; of both axles where both have it. */
    private List<Criterion> figures() {
        List<Criterion> figures = new ArrayList<>();
        for (Criterion plain : LinkCriteria.AT_REST) {
            Optional<End> axle = axle(plain);
            if (axle.isEmpty()) {
                continue;
            }
            figures.add(plain);
            String otherAxle = (axle.get() == End.FRONT ? End.REAR : End.FRONT).key() + " ";
            LinkCriteria.ALL.stream()
                    .filter(other -> other.name().equals(otherAxle + plain.name()))
                    .filter(other -> axle(other).isPresent())
                    .forEach(figures::add);
        }
        return figures;
    }

    /** The axle whose figure it is; none where no axle has it. */
    private Optional<End> axle(Criterion criterion) {
        return criterion.links().flatMap(reading -> reading.axle(answers.links()));
    }

    /** Whether any axle has its links by points. */
    boolean isMeasured() {
        return Stream.of(End.values()).anyMatch(end -> answers.links().axle(end).isPresent());
    }

    private String wish(Field field) {
        return asking.wish(field.key()).orElse(field.start());
    }

    private Field figureField() {
        List<String> names = figures().stream().map(Criterion::name).toList();
        String start = Stream.of("roll steer", "bump steer")
                .filter(names::contains)
                .findFirst()
                .orElse(names.get(0));
        return new Field("figure", "reach", names, start);
    }

    private Criterion atRest() {
        String wished = wish(figureField());
        return figures().stream()
                .filter(one -> one.name().equals(wished))
                .findFirst()
                .orElse(figures().get(0));
    }

    private static final Field PLACE = new Field(
            "place",
            "where",
            Stream.of(Where.values()).map(BracketFields::words).toList(),
            AT_REST);

    private static String words(Where where) {
        return where.words().isEmpty() ? AT_REST : where.words();
    }

    private Criterion criterion() {
        Where where = Arrays.stream(Where.values())
                .filter(one -> words(one).equals(wish(PLACE)))
                .findFirst()
                .orElse(Where.REST);
        return LinkCriteria.in(where, atRest());
    }

    private static final Field SENSE = new Field("sense", "to be", List.of(EXACTLY, "at least", "at most"), EXACTLY);

    /** The figure's name without its axle. */
    private static String bare(Criterion criterion) {
        String name = criterion.name();
        return FIRST.containsKey(name) ? name : name.replaceFirst("^(front|rear) ", "");
    }

    /** What the figure is to be; at first none where that is wanted, or what it is. */
    private Field valueField() {
        Criterion criterion = criterion();
        Judged judged = new Judged(criterion, OptionalDouble.empty());
        OptionalDouble now = judged.si(answers);
        String unit = asking.units().of(criterion).symbol();
        String is = now.isPresent()
                ? JudgedWords.cell(criterion, now.getAsDouble(), asking.units()).replace("−", "-")
                : "";
        String start = TO_ZERO.contains(bare(atRest())) ? "0" : is;
        return new Field(
                        "value " + criterion.name() + ", " + unit,
                        "value",
                        List.of(),
                        start.isEmpty() ? "" : start + " " + unit)
                .hinting(is.isEmpty() ? "a value with its unit" : "now " + is + " " + unit);
    }

    /** What may change: links of the axle whose figure it is. */
    private Offer offer() {
        End end = axle(atRest()).orElse(End.REAR);
        Map<String, List<Adjustable>> parts = new LinkedHashMap<>();
        setup.values().stream()
                .filter(value -> value.path().startsWith(end.key() + "."))
                .filter(value -> isMoved(value.path().substring(end.key().length() + 1)))
                .forEach(value -> parts.computeIfAbsent(part(value.path()), part -> new ArrayList<>())
                        .add(value));
        Map<String, List<String>> paths = new LinkedHashMap<>();
        parts.entrySet().stream()
                .sorted(Comparator.comparing(part -> part.getValue().stream().noneMatch(BracketFields::isSet)))
                .forEach(part -> paths.put(
                        part.getKey(),
                        part.getValue().stream()
                                .sorted(Comparator.comparing(value -> !isSet(value)))
                                .map(Adjustable::path)
                                .toList()));
        List<String> all = paths.values().stream().flatMap(List::stream).toList();
        String start = FIRST.getOrDefault(bare(atRest()), List.of()).stream()
                .map(path -> end.key() + "." + path)
                .filter(all::contains)
                .findFirst()
                .orElse(all.get(0));
        return new Offer(
                paths,
                start,
                path -> value(setup.values().stream()
                        .filter(value -> value.path().equals(path))
                        .findFirst()
                        .orElseThrow()));
    }

    private static boolean isMoved(String own) {
        boolean ofLinks = Stream.of("links.", "lateralLocator.", "damper.", "spring.", "bar.", "propShaft.")
                .anyMatch(own::startsWith);
        String last = own.substring(own.lastIndexOf('.') + 1);
        return own.equals(LOWERED)
                || own.equals("propShaft.gearboxSlope")
                || (ofLinks && (MOVED.contains(last) || own.contains(CRANK)));
    }

    private static boolean isSet(Adjustable value) {
        return value.slot().work() == Slot.Work.SETTING;
    }

    /** "rear lower link" of a path. */
    private static String part(String path) {
        List<String> keys = List.of(path.split("\\.", -1));
        if (keys.get(1).equals(LOWERED)) {
            return keys.get(0) + " " + HEIGHT;
        }
        return ChangeWords.name(keys.get(0) + "." + keys.get(keys.get(1).equals("links") ? 2 : 1));
    }

    /** "longer", "bracket: body up" of a value within its part. */
    private static String value(Adjustable value) {
        List<String> keys = List.of(value.path().split("\\.", -1));
        if (keys.get(1).equals(LOWERED)) {
            return LOWERED;
        }
        String own = PointRow.words(String.join(".", keys.subList(keys.get(1).equals("links") ? 3 : 2, keys.size())));
        return isSet(value) ? own : "bracket: " + own;
    }

    private SearchChanges changes() {
        return new SearchChanges(asking, offer());
    }

    List<Field> all() {
        if (!isMeasured()) {
            return List.of();
        }
        List<Field> fields = new ArrayList<>(List.of(figureField(), PLACE, SENSE, valueField(), KEEPS));
        SearchChanges changes = changes();
        fields.addAll(changes.fields());
        fields.add(changes.grid());
        return fields;
    }

    /**
     * What stands in the fields.
     *
     * @throws InvalidValue if it cannot be read; the message is a sentence that names the field
     */
    Wanted read() {
        Field field = valueField();
        String typed = wish(field).strip().replace('−', '-');
        Criterion criterion = criterion();
        Units units = asking.units();
        String unit = units.of(criterion).symbol();
        String value = typed.matches("[-+]?\\d+([.]\\d+)?") && !unit.isEmpty() ? typed + " " + unit : typed;
        String sense = wish(SENSE);
        Aim aim;
        try {
            aim = AimReading.read(criterion.name() + " " + (sense.equals(EXACTLY) ? "" : sense + " ") + value);
        } catch (InvalidValue wrong) {
            throw new InvalidValue(
                    field.key(), "\"" + criterion.name() + "\": \"" + typed + "\" " + wrong.getMessage() + ".");
        }
        return SearchFields.read(asking, aim, KEEPS, changes());
    }
}
