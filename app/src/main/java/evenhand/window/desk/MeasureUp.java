package evenhand.window.desk;

import evenhand.car.End;
import evenhand.car.HeightGuess;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Content;
import evenhand.catalogue.Path;
import evenhand.catalogue.Shape;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.scenario.Problem;
import evenhand.scenario.Reading;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.ScenarioWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Measuring a car up, step by step: asks only for what cannot be estimated. May be left and taken up again at any step; what
 * was typed stays. Immutable.
 *
 * @param draft what was typed so far, by path
 * @param weighing how the weight is known
 * @param height how the height of the centre of gravity is known
 */
public record MeasureUp(Draft draft, Weighing weighing, Height height) {
    /** How the weight is known. */
    public enum Weighing {
        CORNERS("four scales, one under each wheel"),
        WHOLE("the whole weight, and what part of it the front carries");

        private final String words;

        Weighing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** How the height of the centre of gravity is known. */
    public enum Height {
        LIFT("lift one axle and weigh the other"),
        ROOF("a guess, from the height of the roof"),
        GUESS("a guess of your own, with its tolerance");

        private final String words;

        Height(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * One step.
     *
     * @param advice what to have at hand
     */
    public record Step(String title, String advice, List<FormField> fields) {
        public Step {
            fields = List.copyOf(fields);
        }
    }

    public static final String TITLE = "title";
    private static final String ROOF = "roofHeight";
    private static final String CG_HEIGHT = "cgHeight";
    private static final String RISE = "axleLift.readings.rise";
    private static final String GAIN = "axleLift.readings.otherAxleGain";
    private static final List<String> TYRE = List.of("size", "kind", "pressure");

    /** With nothing measured yet. */
    public static final MeasureUp NEW = new MeasureUp(
            new Draft(Map.of(
                    "front.layout", "independent", "rear.layout", "live axle", "rear.lateralLocator.kind", "panhard")),
            Weighing.CORNERS,
            Height.LIFT);

    public MeasureUp with(String path, String text) {
        Draft next = draft.with(path, text);
        // What belongs to the kind that was before would be refused.
        if (path.endsWith(".layout") && !draft.get(path).equals(next.get(path))) {
            String axle = path.substring(0, path.lastIndexOf('.'));
            next = next.without(axle + ".lateralLocator")
                    .without(axle + ".rollCentre")
                    .without(axle + ".spring");
            if (text.equals("live axle")) {
                next = next.with(axle + ".lateralLocator.kind", "panhard");
            }
        }
        return new MeasureUp(next, weighing, height);
    }

    public MeasureUp weighed(Weighing next) {
        return new MeasureUp(
                draft.without("cornerWeights").without("mass").without("frontWeightFraction"), next, height);
    }

    public MeasureUp lifted(Height next) {
        return new MeasureUp(draft.without("axleLift").without(CG_HEIGHT).without(ROOF), weighing, next);
    }

    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(
                "The job",
                "What shall it be called? Everything can be changed later, and left out now.",
                List.of(text(TITLE, "title of the job"))));
        steps.add(new Step(
                "Weight",
                "Scales, driver aboard, half a tank, tyres at their pressure. Write a tolerance where you are not sure:"
                        + " 376 kg ± 3 kg.",
                weighing == Weighing.CORNERS
                        ? needed("cornerWeights", group(Catalogue.CAR, "cornerWeights"))
                        : fields("", Catalogue.CAR, Set.of("mass", "frontWeightFraction"))));
        List<FormField> high = new ArrayList<>(fields("", Catalogue.CAR, Set.of("wheelbase")));
        String advice = switch (height) {
            case LIFT -> {
                Shape<?> lift = group(Catalogue.CAR, "axleLift");
                high.addAll(fields("axleLift", lift, Set.of("liftedAxle")));
                high.addAll(needed("axleLift.readings", group(lift, "readings")));
                yield "For the lift: springs blocked, the other axle on its scales, the jack well up.";
            }
            case ROOF -> {
                high.add(text(ROOF, "height of the roof above the ground, for example \"1380 mm\""));
                yield "Measured cars have their weight at 0.38 of the roof's height, to within 7 per cent of it."
                        + " That holds for a car as it left the works: of one that was lowered, give the roof as"
                        + " it was before, and in the form take off the guess what it was lowered by.";
            }
            case GUESS -> {
                high.addAll(fields("", Catalogue.CAR, Set.of(CG_HEIGHT)));
                yield "Write how far off the guess may be: 520 mm ± 40 mm.";
            }
        };
        steps.add(new Step("Length, and height of the weight", "Tape and plumb lines. " + advice, high));
        for (End end : End.values()) {
            axle(end.key(), steps);
        }
        steps.add(new Step(
                "Drive", "Which wheels are driven?", fields("drive", group(Catalogue.CAR, "drive"), Set.of("axle"))));
        return steps;
    }

    private void axle(String axle, List<Step> steps) {
        String name = axle.substring(0, 1).toUpperCase(Locale.ROOT) + axle.substring(1);
        Shape<?> shape = group(Catalogue.CAR, axle);
        List<FormField> all = needed(axle, shape);
        List<FormField> springs =
                all.stream().filter(field -> field.path().contains(".spring.")).toList();
        List<FormField> rest = all.stream()
                .filter(field ->
                        !field.path().contains(".spring.") && !field.path().contains(".tyre."))
                .toList();
        steps.add(new Step(
                name + " axle", "Tape, steel rule, the parts' weights. A guess is welcome: 85 kg ± 10 kg.", rest));
        steps.add(new Step(name + " springs", "The maker's rate, or a press and a scale.", springs));
        Shape<?> tyre = group(plain(shape, axle), "tyre");
        steps.add(new Step(
                name + " tyres",
                "From the sidewall, and the gauge. The rest of the tyre is estimated from these and said to be.",
                fields(axle + ".tyre", tyre, Set.copyOf(TYRE))));
    }

    /** The fields that an object cannot do without, in the order of the catalogue. */
    private List<FormField> needed(String path, Shape<?> shape) {
        List<FormField> fields = new ArrayList<>();
        Form.draft(path, shape, draft, false, fields);
        return fields;
    }

    private List<FormField> fields(String path, Shape<?> shape, Set<String> keys) {
        return plain(shape, path).slots().stream()
                .filter(slot -> keys.contains(slot.key()))
                .map(slot -> {
                    String here = Path.join(path, slot.key());
                    return Form.field(here, slot, draft.get(here), Optional.empty(), Optional.empty());
                })
                .toList();
    }

    private Shape.Plain<?> plain(Shape<?> shape, String path) {
        return Form.plain(
                shape,
                shape instanceof Shape.Kinds<?> kinds ? draft.get(Path.join(path, kinds.key())) : Optional.empty());
    }

    private Shape<?> group(Shape<?> shape, String key) {
        Content<?> content = plain(shape, "").slot(key).orElseThrow().content();
        return content instanceof Content.Group<?> one ? one.shape() : ((Content.Groups<?>) content).shape();
    }

    private FormField text(String key, String meaning) {
        return new FormField(key, Optional.empty(), meaning, List.of(), draft.get(key), Optional.empty());
    }

    /** The scenario file that it makes so far. */
    public String text() {
        Draft car = draft.without(TITLE).without("axleLift.readings").without(ROOF);
        if (draft.get(ROOF).isPresent()) {
            car = car.with(CG_HEIGHT, under(draft.get(ROOF).get()));
        }
        if (draft.get(RISE).isPresent() || draft.get(GAIN).isPresent()) {
            Draft reading = Draft.EMPTY
                    .with("rise", draft.get(RISE).orElse(""))
                    .with("otherAxleGain", draft.get(GAIN).orElse(""));
            car = car.with("axleLift.readings", "[" + reading.json() + "]");
        }
        String title = draft.get(TITLE).orElse("A car measured up");
        return ScenarioWriter.format("{\"evenhand\": 1, \"title\": " + ScenarioWriter.quoted(title) + ", \"car\": "
                + car.json() + ", \"setups\": [{\"name\": \"As measured\"}]}");
    }

    /** The guess of the height of the weight under a roof; what is no height stays as it was typed, and is refused as one. */
    private static String under(String roof) {
        try {
            Quantity measured = Quantity.parse(roof, Dimension.LENGTH);
            double guess = HeightGuess.under(measured.si());
            double tolerance = HeightGuess.tolerance(measured.si(), measured.tolerance());
            Unit unit = measured.unit();
            return rounded(guess, 3, unit) + " ± " + rounded(tolerance, 2, unit);
        } catch (QuantityException wrong) {
            return roof;
        }
    }

    private static String rounded(double si, int digits, Unit unit) {
        BigDecimal shown = BigDecimal.valueOf(unit.fromSi(si)).round(new MathContext(digits));
        return shown.toPlainString() + " " + unit.symbol();
    }

    /** What is wrong with the text of a field; empty where it is sound or nothing stands there yet. */
    public Optional<String> problem(FormField field) {
        if (draft.get(field.path()).isEmpty()) {
            return Optional.empty();
        }
        String where = field.path().equals(ROOF)
                ? CG_HEIGHT
                : field.path().replace("axleLift.readings.", "axleLift.readings[0].");
        return read().problems().stream()
                .filter(problem -> problem.where().equals("car." + where))
                .map(Problem::what)
                .findFirst();
    }

    /** The fields in which nothing stands yet. */
    public List<FormField> missing() {
        return steps().stream()
                .flatMap(step -> step.fields().stream())
                .filter(field -> field.given().isEmpty() && !field.path().equals(TITLE))
                .toList();
    }

    /** The scenario as far as it is; sound when everything is there. */
    public Reading read() {
        return ScenarioReader.read("new car", text());
    }
}
