package evenhand.window.desk;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.car.HeightGuess;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.tyre.TyreSize;
import evenhand.words.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What stands in for a value that is hard to measure, with the tolerance that it needs, and what that leaves open in the answer.
 * Ranges of road cars by common practice, no source, unless another is given.
 *
 * @param text as it is written into the field: "75 kg ± 30 kg"
 * @param from what it is taken from
 */
public record Guess(String text, String from) {
    private static final Judged NEAR_LIMIT = new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty());

    /** Height of a closed car's roof, and half of what it may be more or less, m. */
    private static final double ROOF = 1.40;

    private static final double ROOF_SPREAD = 0.12;

    /** Part of what an axle carries that its springs do not, with half its range: on links of its own, and live. */
    private static final double[] UNSPRUNG_LINKS = {0.12, 0.04};

    private static final double[] UNSPRUNG_LIVE = {0.20, 0.06};

    /** Natural frequency of the body on its springs, Hz, and the part of the rate that its range is worth. */
    private static final double FREQUENCY = 1.35;

    private static final double RATE_SPREAD = 0.4;

    /** Mass that an axle carries where nothing was weighed yet, kg. */
    private static final double AXLE_LOAD = 550;

    private static final double TRACK = 1.40;

    /** The guess for a field; none where the value is quickly read or measured. */
    public static Optional<Guess> of(FormField field, MeasureUp measured, Units units) {
        String path = field.path();
        int dot = path.indexOf('.');
        String axle = dot < 0 ? "" : path.substring(0, dot);
        Writing in = new Writing(units);
        return switch (path.substring(dot + 1)) {
            case "cgHeight", "readings.rise" ->
                in.guess(
                        HeightGuess.under(ROOF),
                        HeightGuess.tolerance(ROOF, ROOF_SPREAD),
                        Dimension.LENGTH,
                        "a closed car, its roof between 1.28 and 1.52 m high");
            case "frontWeightFraction" -> in.guess(0.53, 0.06, Dimension.RATIO, "an engine in front");
            case "unsprungMass" -> {
                double[] part = measured.isLive(axle) ? UNSPRUNG_LIVE : UNSPRUNG_LINKS;
                double load = measured.axleLoad(axle).orElse(AXLE_LOAD);
                yield in.guess(part[0] * load, part[1] * load, Dimension.MASS, "what the axle carries");
            }
            case "rollCentre.height" -> in.guess(0.06, 0.06, Dimension.LENGTH, "wheels on links of their own");
            case "rollCentre.perBump" -> in.guess(-1.5, 1.0, Dimension.RATIO, "wheels on links of their own");
            case "lateralLocator.height" -> in.guess(0.25, 0.08, Dimension.LENGTH, "live axles");
            case "spring.rate" -> {
                double load = measured.axleLoad(axle).orElse(AXLE_LOAD);
                double sprung = (1 - (measured.isLive(axle) ? UNSPRUNG_LIVE : UNSPRUNG_LINKS)[0]) * load / 2;
                double rate = sprung * Math.pow(2 * Math.PI * FREQUENCY, 2);
                yield in.guess(
                        rate,
                        RATE_SPREAD * rate,
                        Dimension.STIFFNESS,
                        "what the axle carries, the body swinging at 1.1 to 1.6 Hz, the spring at the wheel");
            }
            case "spring.base" -> {
                double track = measured.length(axle + ".track").orElse(TRACK);
                yield in.guess(0.72 * track, 0.08 * track, Dimension.LENGTH, "the track");
            }
            case "tyre.pressure" -> in.guess(2.0e5, 0.3e5, Dimension.PRESSURE, "road tyres");
            default -> Optional.empty();
        };
    }

    /** What may be meant by a field that is empty, and why; the person takes it or not. */
    public static Optional<Guess> proposed(FormField field, MeasureUp measured) {
        String path = field.path();
        if (!field.given().isEmpty()) {
            return Optional.empty();
        }
        if (path.equals("drive.axle")) {
            List<String> live =
                    Stream.of("front", "rear").filter(measured::isLive).toList();
            return live.size() == 1
                    ? Optional.of(new Guess(live.get(0), "a live axle is mostly the one that is driven"))
                    : Optional.empty();
        }
        if (path.equals("axleLift.liftedAxle")) {
            OptionalDouble front = measured.axleLoad("front");
            OptionalDouble rear = measured.axleLoad("rear");
            return front.isEmpty() || rear.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Guess(
                            front.getAsDouble() < rear.getAsDouble() ? "front" : "rear", "the lighter end is lifted"));
        }
        int tyre = path.indexOf(".tyre.");
        if (tyre < 0) {
            return Optional.empty();
        }
        String other = path.startsWith("front") ? "rear" : "front";
        Optional<String> size = measured.draft().get(path.substring(0, tyre) + ".tyre.size");
        Optional<Guess> bySize = path.endsWith(".kind") ? size.flatMap(Guess::kind) : Optional.empty();
        return bySize.or(() ->
                measured.draft().get(other + path.substring(tyre)).map(text -> new Guess(text, "as at the " + other)));
    }

    /** How a tyre of a size is mostly built, by common practice, no source: a size in inches or with a hyphen is of before radials. */
    private static Optional<Guess> kind(String size) {
        return TyreSize.read(size, Optional.empty()).map(read -> {
            boolean radial = size.toUpperCase(Locale.ROOT).contains("R");
            String kind = !radial
                    ? "cross-ply"
                    : read.aspect() > 0.72
                            ? "tall radial"
                            : read.aspect() > 0.57 ? "touring radial" : "performance radial";
            return new Guess(kind, "by its size");
        });
    }

    /** Numbers in the units of show, to two digits: more would say more than is known. */
    private record Writing(Units units) {
        private static final MathContext SAID = new MathContext(2);

        Optional<Guess> guess(double si, double tolerance, Dimension dimension, String from) {
            Unit unit = FormField.unit(dimension, units);
            String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
            String middle = said(unit.fromSi(si));
            String off = said(unit.fromSi(tolerance) - unit.fromSi(0));
            return Optional.of(new Guess(middle + symbol + " ± " + off + symbol, from));
        }

        private static String said(double number) {
            return new BigDecimal(number).round(SAID).stripTrailingZeros().toPlainString();
        }
    }

    /**
     * What it costs: how far the understeer near the limit may lie off because of it, on the car as far as it is known and as usual
     * where it is not, SI. None where such a car has no answer.
     */
    public OptionalDouble cost(FormField field, MeasureUp measured, Units units) {
        try {
            Dimension dimension = field.dimension().orElse(Dimension.LENGTH);
            Quantity own = Quantity.parse(text, dimension);
            double off = own.tolerance();
            String path = field.path().startsWith("axleLift") ? MeasureUp.CG_HEIGHT : field.path();
            MeasureUp whole = measured.filledUp(units);
            OptionalDouble less = near(
                    whole.with(path, Quantity.of(own.si() - off, own.unit()).text()));
            OptionalDouble more = near(
                    whole.with(path, Quantity.of(own.si() + off, own.unit()).text()));
            return less.isPresent() && more.isPresent()
                    ? OptionalDouble.of(Math.abs(more.getAsDouble() - less.getAsDouble()) / 2)
                    : OptionalDouble.empty();
        } catch (QuantityException | IllegalArgumentException wrong) {
            return OptionalDouble.empty();
        }
    }

    private static OptionalDouble near(MeasureUp whole) {
        return whole.read().scenario().map(scenario -> scenario.setups().get(0)).map(Setup::car).stream()
                .mapToDouble(car -> NEAR_LIMIT
                        .si(Trial.usual().ask(car, List.of(NEAR_LIMIT)))
                        .orElse(Double.NaN))
                .filter(Double::isFinite)
                .findFirst();
    }
}
