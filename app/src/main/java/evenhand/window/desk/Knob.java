package evenhand.window.desk;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Range;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One adjustment of the active set-up as it is turned by hand. Numbers are in the unit that the person used.
 *
 * @param value as it stands
 * @param base where the base set-up has it; none where that has no such value
 * @param given as the person gave it, if he did
 */
public record Knob(Adjustable value, OptionalDouble base, Optional<Quantity> given) {
    /** How far beyond the usual range a track goes, as a part of it. */
    private static final double BEYOND = 0.15;

    /** Parts of the usual step: to the one a shop sets a value, to the other it says a range. */
    private static final double FINE = 0.1;

    private static final double COARSE = 0.5;

    /** The knob of a path; none where the set-up has no such number. */
    public static Optional<Knob> of(Work work, String path) {
        Setup setup = work.activeSetup();
        return find(setup, path)
                .filter(value -> Double.isFinite(value.si()))
                .map(value -> new Knob(
                        value,
                        find(work.baseSetup(), path)
                                .map(other -> OptionalDouble.of(value.unit().fromSi(other.si())))
                                .orElse(OptionalDouble.empty()),
                        value.origin() == Adjustable.Origin.GIVEN
                                ? Catalogue.get(setup.entries(), path)
                                : Optional.empty()));
    }

    private static Optional<Adjustable> find(Setup setup, String path) {
        return setup.values().stream()
                .filter(value -> value.path().equals(path))
                .findFirst();
    }

    public double number() {
        return value.unit().fromSi(value.si());
    }

    /** One step of the keys. */
    public double step() {
        return partOfStep(value, unit(), FINE);
    }

    /** As fine as a shop sets a value that it reads in these units, SI. */
    public static double fineStep(Adjustable value, Units units) {
        Unit unit = FormField.unit(value.dimension(), units);
        return unit.toSi(partOfStep(value, unit, FINE)) - unit.toSi(0);
    }

    /** The round numbers that a range is written down to in these units, SI. */
    public static double coarseStep(Adjustable value, Units units) {
        Unit unit = FormField.unit(value.dimension(), units);
        return unit.toSi(partOfStep(value, unit, COARSE)) - unit.toSi(0);
    }

    /** A part of the shop's usual step, rounded to 1, 2 or 5 of a unit. */
    private static double partOfStep(Adjustable value, Unit unit, double share) {
        double part = share * Math.abs(unit.fromSi(value.step()) - unit.fromSi(0));
        if (!(part > 0)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(part) + 1e-9));
        double lead = part / power;
        return power * (lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10);
    }

    /** The usual range. */
    public Optional<Range> usual() {
        return value.slot().usual().map(range -> new Range(unit().fromSi(range.low()), unit().fromSi(range.high())));
    }

    /** What a track shows: the usual range and some more, what stands now and the base, within what nature allows. */
    public Range shown() {
        double spread = 10 * Math.abs(unit().fromSi(value.step()));
        Range range = usual().orElse(new Range(number() - spread, number() + spread));
        double more = BEYOND * (range.high() - range.low());
        double low = Math.min(range.low() - more, Math.min(number(), base.orElse(number())));
        double high = Math.max(range.high() + more, Math.max(number(), base.orElse(number())));
        Range bounds = value.slot().bounds();
        return new Range(Math.max(low, unit().fromSi(bounds.low())), Math.min(high, unit().fromSi(bounds.high())));
    }

    private Unit unit() {
        return value.unit();
    }

    /** The text that puts it at a number, the person's tolerance kept. */
    public String text(double number) {
        int digits = (int) Math.max(0, 2 - Math.floor(Math.log10(step())));
        double clean =
                new BigDecimal(number).setScale(digits, RoundingMode.HALF_EVEN).doubleValue();
        return Quantity.of(unit().toSi(clean), unit()).text() + tolerance();
    }

    private String tolerance() {
        String typed = given.map(Quantity::text).orElse("").replace("+/-", "±");
        int at = typed.indexOf('±');
        return at < 0 ? "" : " ± " + typed.substring(at + 1).strip();
    }

    /** As it is shown. */
    public String shown(Units units) {
        return FormField.show(value.si(), value.dimension(), units);
    }
}
