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
import evenhand.words.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

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
    static final String CG_HEIGHT = "cgHeight";
    private static final String RISE = "axleLift.readings.rise";
    private static final String GAIN = "axleLift.readings.otherAxleGain";
    /** Choices that hang on one another: the layout of an axle, and what locates it. */
    private static final int MOST_CHOICES = 3;

    private static final List<String> TYRE = List.of("size", "kind", "pressure");

    private static final String LIVE_AXLE = "live axle";

    /** With nothing measured yet, and nothing chosen. */
    public static final MeasureUp NEW = new MeasureUp(Draft.EMPTY, Weighing.CORNERS, Height.LIFT);

    /** What a car of the usual kind has, where neither a measurement nor a guess is at hand; only to see what a guess costs. */
    private static final Map<String, String> USUAL = Map.ofEntries(
            Map.entry("mass", "1100 kg"),
            Map.entry("frontWeightFraction", "0.53"),
            Map.entry("wheelbase", "2500 mm"),
            Map.entry("track", "1400 mm"),
            Map.entry("layout", "independent"),
            Map.entry("lateralLocator.kind", "panhard"),
            Map.entry("tyre.size", "175/70R14"),
            Map.entry("tyre.kind", "touring radial"),
            Map.entry("drive.axle", "rear"));

    public MeasureUp with(String path, String text) {
        Draft next = draft.with(path, text);
        // What belongs to the kind that was before would be refused.
        if (path.endsWith(".layout") && !draft.get(path).equals(next.get(path))) {
            String axle = path.substring(0, path.lastIndexOf('.'));
            next = next.without(axle + ".lateralLocator")
                    .without(axle + ".rollCentre")
                    .without(axle + ".spring");
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
        List<FormField> all = needed(axle, shape).stream()
                .filter(field -> isDecided(axle, field.path()))
                .toList();
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

    /** Whether it is known that a value of an axle is needed: what hangs on a choice is asked once that is made. */
    private boolean isDecided(String axle, String path) {
        boolean ofLayout = path.startsWith(axle + ".rollCentre.")
                || path.startsWith(axle + ".lateralLocator.")
                || path.equals(axle + ".spring.base");
        if (ofLayout && draft.get(axle + ".layout").isEmpty()) {
            return false;
        }
        String kind = axle + ".lateralLocator.kind";
        return !path.startsWith(axle + ".lateralLocator.")
                || path.equals(kind)
                || draft.get(kind).isPresent();
    }

    boolean isLive(String axle) {
        return draft.get(axle + ".layout").map(LIVE_AXLE::equals).orElse(false);
    }

    /** What an axle carries, kg, if it was weighed. */
    OptionalDouble axleLoad(String axle) {
        if (weighing == Weighing.CORNERS) {
            OptionalDouble left = quantity("cornerWeights." + axle + "Left", Dimension.MASS);
            OptionalDouble right = quantity("cornerWeights." + axle + "Right", Dimension.MASS);
            return left.isPresent() && right.isPresent()
                    ? OptionalDouble.of(left.getAsDouble() + right.getAsDouble())
                    : OptionalDouble.empty();
        }
        OptionalDouble mass = quantity("mass", Dimension.MASS);
        OptionalDouble front = quantity("frontWeightFraction", Dimension.RATIO);
        return mass.isPresent() && front.isPresent()
                ? OptionalDouble.of(
                        mass.getAsDouble() * (axle.equals("front") ? front.getAsDouble() : 1 - front.getAsDouble()))
                : OptionalDouble.empty();
    }

    OptionalDouble length(String path) {
        return quantity(path, Dimension.LENGTH);
    }

    private OptionalDouble quantity(String path, Dimension dimension) {
        try {
            return draft.get(path).isPresent()
                    ? OptionalDouble.of(
                            Quantity.parse(draft.get(path).get(), dimension).si())
                    : OptionalDouble.empty();
        } catch (QuantityException wrong) {
            return OptionalDouble.empty();
        }
    }

    /**
     * The same with a guess in a field; what asks for scales or a jack is asked for in the way that does without.
     *
     * @throws java.util.NoSuchElementException if there is no guess for it
     */
    public MeasureUp guessed(FormField field, Units units) {
        if (field.path().startsWith("cornerWeights")) {
            return weighed(Weighing.WHOLE);
        }
        String text = Guess.of(field, this, units).orElseThrow().text();
        return field.path().startsWith("axleLift") || field.path().equals(ROOF)
                ? lifted(Height.GUESS).with(CG_HEIGHT, text)
                : with(field.path(), text);
    }

    /** A car of which everything is known: what is missing or cannot be read is guessed or as usual. */
    MeasureUp filledUp(Units units) {
        boolean weighed = axleLoad("front").isPresent() && axleLoad("rear").isPresent();
        MeasureUp whole = weighed ? this : weighed(Weighing.WHOLE);
        boolean high = height == Height.GUESS && length(CG_HEIGHT).isPresent();
        whole = high ? whole : whole.lifted(Height.GUESS);
        for (int i = 0; i < MOST_CHOICES; i++) {
            for (FormField field : whole.missing()) {
                String own = field.path().replaceFirst("^(front|rear)\\.", "");
                Optional<String> text = Optional.ofNullable(USUAL.get(own))
                        .or(() -> Optional.ofNullable(USUAL.get(field.path())))
                        .or(() -> Guess.of(field, this, units).map(Guess::text));
                whole = text.isPresent() ? whole.with(field.path(), text.get()) : whole;
            }
        }
        return whole;
    }

    /** The step that asks for a value. */
    public OptionalInt step(String path) {
        List<Step> steps = steps();
        return IntStream.range(0, steps.size())
                .filter(i -> steps.get(i).fields().stream()
                        .anyMatch(field -> field.path().equals(path)))
                .findFirst();
    }

    /** The fields that an object cannot do without, in the order of the catalogue. */
    private List<FormField> needed(String path, Shape<?> shape) {
        List<FormField> fields = new ArrayList<>();
        Drafting.draft(path, shape, draft, false, fields);
        return fields;
    }

    private List<FormField> fields(String path, Shape<?> shape, Set<String> keys) {
        return plain(shape, path).slots().stream()
                .filter(slot -> keys.contains(slot.key()))
                .map(slot -> {
                    String here = Path.join(path, slot.key());
                    return FormField.of(here, slot, draft.get(here), Optional.empty(), Optional.empty());
                })
                .toList();
    }

    private Shape.Plain<?> plain(Shape<?> shape, String path) {
        return FormPlace.plain(
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
