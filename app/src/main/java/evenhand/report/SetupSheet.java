package evenhand.report;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.LateralLocator;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Weights;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.Standing;
import evenhand.scenario.Setup;
import evenhand.turn.Wheel;
import evenhand.words.EventWords;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Everything that is needed to build a set-up on its car again, each with what it was in the set-up before. Heights and gaps are
 * those of the car as it stands at rest, {@code lowered} carried out, with what was aboard when it was weighed.
 *
 * @param weights of the whole car and its corners
 * @param freeWords of the set-up, by their heads
 */
public record SetupSheet(
        Setup setup,
        Optional<Setup> before,
        List<Item> weights,
        List<Item> front,
        List<Item> rear,
        List<Note> freeWords) {
    /**
     * One thing to be set or checked.
     *
     * @param path as in the file; what is worked out has the path of what it follows from
     * @param value with its unit
     * @param tolerance half-width to check it within, with its unit; empty where it is no measure
     * @param before the value in the set-up before; empty where there is none
     */
    public record Item(String path, String what, String value, String tolerance, String before) {
        /** Whether it is another value than before. */
        public boolean changed() {
            return !before.isEmpty() && !before.equals(value);
        }
    }

    /** Free words under their head. */
    public record Note(String head, String text) {}

    public SetupSheet {
        weights = List.copyOf(weights);
        front = List.copyOf(front);
        rear = List.copyOf(rear);
        freeWords = List.copyOf(freeWords);
    }

    /** The sheet of a set-up, against the one before where there is one. */
    public static SetupSheet of(Setup setup, Optional<Setup> before, Units units) {
        Optional<Setup> other = before.filter(one -> !one.equals(setup));
        List<Reading> now = new Readings(setup, units).all();
        List<Reading> was = other.map(one -> new Readings(one, units).all()).orElse(List.of());
        List<Note> notes = new ArrayList<>();
        setup.sheet().forEach((head, text) -> notes.add(new Note(head, text)));
        return new SetupSheet(
                setup,
                other,
                items(now, was, Optional.empty(), other.isPresent()),
                items(now, was, Optional.of(End.FRONT), other.isPresent()),
                items(now, was, Optional.of(End.REAR), other.isPresent()),
                notes);
    }

    /** All items with the end that they stand at. */
    public List<Item> items() {
        List<Item> all = new ArrayList<>(weights);
        all.addAll(front);
        all.addAll(rear);
        return all;
    }

    private static List<Item> items(List<Reading> now, List<Reading> was, Optional<End> end, boolean compared) {
        List<Item> items = new ArrayList<>();
        for (Reading reading : now) {
            if (reading.end().equals(end)) {
                String before = was.stream()
                        .filter(reading::sameThing)
                        .map(Reading::value)
                        .findFirst()
                        .orElse(compared ? "none" : "");
                items.add(new Item(reading.path(), reading.what(), reading.value(), reading.tolerance(), before));
            }
        }
        for (Reading gone : was) {
            if (gone.end().equals(end) && now.stream().noneMatch(gone::sameThing)) {
                items.add(new Item(gone.path(), gone.what(), "none", "", gone.value()));
            }
        }
        return items;
    }

    /** A value of one set-up. */
    private record Reading(Optional<End> end, String path, String what, String value, String tolerance) {
        boolean sameThing(Reading other) {
            return end.equals(other.end) && what.equals(other.what);
        }
    }

    /** Reads what a sheet says off one set-up. */
    private static final class Readings {
        /** A perch is left alone below it, m. */
        private static final double NO_MOVE = 0.0005;

        private final Setup setup;
        private final Units units;
        private final Car car;
        private final List<Reading> all = new ArrayList<>();
        private Optional<End> end = Optional.empty();

        Readings(Setup setup, Units units) {
            this.setup = setup;
            this.units = units;
            car = setup.car().settled();
        }

        List<Reading> all() {
            weights();
            for (End one : End.values()) {
                end = Optional.of(one);
                axle(car.axle(one), setup.car().axle(one), Standing.of(car, one));
            }
            return all;
        }

        private void weights() {
            Unit unit = units.of(Dimension.MASS);
            for (End axle : End.values()) {
                for (Side side : Side.values()) {
                    measure(
                            Wheel.of(axle, side).words() + " corner weight",
                            "cornerWeights." + Wheel.of(axle, side).key(),
                            "mass",
                            car.staticLoad(axle, side) / Weights.GRAVITY,
                            Dimension.MASS,
                            units == Units.METRIC ? 1 : 0);
                }
            }
            words(
                    "whole car",
                    "mass",
                    Numbers.fixed(unit.fromSi(car.weights().mass()), 0) + " " + unit.symbol() + ", front "
                            + Numbers.percent(car.weights().frontFraction(), 1));
            length("wheelbase", "wheelbase", car.wheelbase());
        }

        private void axle(Axle axle, Axle built, Standing standing) {
            length("body let down by its perches", "lowered", built.lowered());
            locator(axle);
            length("track", "track", axle.track());
            spring(axle.spring(), standing);
            bar(axle.bar());
            damper(axle.damper());
            axle.stops().bump().ifPresent(stop -> length("gap to the bump stop", "bumpStop.gap", stop.gap()));
            axle.stops().metal().ifPresent(stop -> length("gap to metal", "metalStop.gap", stop.gap()));
            axle.stops().droop().ifPresent(stop -> length("droop travel", "droopStop.travel", stop.travel()));
            given("bump stop", "bumpStop.curve");
            measure("camber, each wheel", "camber", axle.alignment().camber(), Dimension.ANGLE, 2);
            measure("toe in, each wheel", "toe", axle.alignment().toe(), Dimension.ANGLE, 2);
            given("tyre size", "tyre.size");
            given("tyre kind", "tyre.kind");
            adjustable("tyre.pressure")
                    .ifPresent(value -> measure(
                            "tyre pressure",
                            "tyre.pressure",
                            value.si(),
                            Dimension.PRESSURE,
                            units == Units.METRIC ? 2 : 1));
            length("loaded radius", "tyre.loadedRadius", axle.tyre().loadedRadius());
        }

        private void locator(Axle axle) {
            if (!(axle instanceof Axle.Live live)) {
                length(
                        "roll centre height (worked out, not measured)",
                        "rollCentre.height",
                        axle.geometry().rollCentreHeight());
                return;
            }
            LateralLocator locator = live.lateralLocator();
            if (locator instanceof LateralLocator.WattsLinkage watt) {
                words(
                        "lateral locator",
                        "lateralLocator.kind",
                        "Watt's linkage, crank on the "
                                + (watt.carriedBy() == LateralLocator.CarriedBy.BODY ? "body" : "axle"));
                length("height of the crank's pivot", "lateralLocator.height", locator.height());
            } else if (locator instanceof LateralLocator.PanhardRod) {
                words("lateral locator", "lateralLocator.kind", "Panhard rod");
                length("height of the rod in the middle", "lateralLocator.height", locator.height());
            } else {
                words("lateral locator", "lateralLocator.kind", "leaf springs");
                length("roll centre height", "lateralLocator.height", locator.height());
            }
        }

        private void spring(Spring spring, Standing standing) {
            measure("spring rate", "spring.rate", spring.rate(), Dimension.STIFFNESS, 1);
            if (spring instanceof Spring.AtWheel wheel) {
                ratio("spring travel over wheel travel", "spring.motionRatio", wheel.motionRatio());
            } else if (spring instanceof Spring.Upright upright) {
                length("distance between springs", "spring.base", upright.base());
            } else if (spring instanceof Spring.Leaning leaning) {
                length("distance between lower spring mounts", "spring.base", leaning.base());
                measure("lean of the springs", "spring.lean", leaning.lean(), Dimension.ANGLE, 1);
                length("height of the lower spring mounts", "spring.lowerMountHeight", leaning.lowerMountHeight());
            }
            optional(
                    "spring length, installed",
                    "spring.installedLength",
                    spring.lengths().installed());
            optional(
                    "spring length, free", "spring.freeLength", spring.lengths().free());
            words("load on one spring at rest", "spring.rate", units.show(standing.springLoad(), Dimension.FORCE, 0));
            if (standing.perchMove().isPresent()) {
                double move = standing.perchMove().getAsDouble();
                words(
                        "perch, besides letting down",
                        "spring.installedLength",
                        Math.abs(move) < NO_MOVE
                                ? "as it is"
                                : units.show(Math.abs(move), Dimension.LENGTH, units == Units.METRIC ? 0 : 2)
                                        + (move > 0 ? " down" : " up"));
            }
        }

        private void bar(Optional<Bar> bar) {
            if (bar.isEmpty()) {
                words("anti-roll bar", "bar", "none");
            } else if (bar.get() instanceof Bar.Round round) {
                length("anti-roll bar, diameter", "bar.diameter", round.diameter());
                length("anti-roll bar, arm", "bar.armLength", round.armLength());
                length("anti-roll bar, length that twists", "bar.activeLength", round.activeLength());
                ratio("drop link over wheel travel", "bar.linkRatio", round.linkRatio());
            } else {
                measure(
                        "anti-roll bar",
                        "bar.rollStiffness",
                        ((Bar.Measured) bar.get()).rollStiffness(),
                        Dimension.ROLL_STIFFNESS,
                        0);
            }
        }

        private void damper(Optional<Damper> damper) {
            if (damper.isEmpty()) {
                return;
            }
            Damper given = damper.get();
            words("damper setting", "damper.setting", given.setting().orElse("as it comes"));
            if (given.motionRatio().isPresent()) {
                ratio(
                        "damper travel over wheel travel",
                        "damper.motionRatio",
                        given.motionRatio().getAsDouble());
            }
            if (given.lean().isPresent()) {
                measure("lean of the dampers", "damper.lean", given.lean().getAsDouble(), Dimension.ANGLE, 1);
            }
            optional("distance between lower damper mounts", "damper.base", given.base());
        }

        private void optional(String what, String key, OptionalDouble value) {
            if (value.isPresent()) {
                length(what, key, value.getAsDouble());
            }
        }

        private void length(String what, String key, double si) {
            measure(what, key, si, Dimension.LENGTH, units == Units.METRIC ? 0 : 2);
        }

        private void measure(String what, String key, double si, Dimension dimension, int digits) {
            measure(what, key, key, si, dimension, digits);
        }

        /** @param like where it is not given by itself, a quarter of the tolerance of this */
        private void measure(String what, String key, String like, double si, Dimension dimension, int digits) {
            Unit unit = units.of(dimension);
            String symbol = InPrint.symbol(unit);
            String tolerance = adjustable(key)
                    .map(Readings::half)
                    .or(() -> adjustable(like).map(whole -> half(whole) / 4))
                    .filter(half -> half > 0)
                    .map(half -> "±" + rounded(unit.fromSi(half), digits))
                    .orElse("");
            all.add(new Reading(
                    end, path(key), what, Numbers.fixed(unit.fromSi(si), digits) + " " + symbol, tolerance));
        }

        /** With as many digits behind the point as the value has, or as few as tell it from nothing. */
        private static String rounded(double half, int digits) {
            String fixed = Numbers.fixed(half, digits);
            return fixed.equals(Numbers.fixed(0, digits)) ? Numbers.significant(half, 1) : fixed;
        }

        /** What it is measured to, SI. */
        private static double half(Adjustable value) {
            return value.tolerance() > 0 ? value.tolerance() : value.usualTolerance();
        }

        private void ratio(String what, String key, double value) {
            all.add(new Reading(end, path(key), what, Numbers.fixed(value, 3), ""));
        }

        private void words(String what, String key, String value) {
            all.add(new Reading(end, path(key), what, value, ""));
        }

        /** A word of the file, or a curve, as it was written. */
        private void given(String what, String key) {
            entry(path(key)).ifPresent(text -> all.add(new Reading(end, path(key), what, text, "")));
        }

        private Optional<String> entry(String path) {
            Entries at = setup.entries();
            String[] keys = path.split("\\.", -1);
            for (int i = 0; i < keys.length - 1; i++) {
                if (!(at.get(keys[i]).orElse(null) instanceof Entries next)) {
                    return Optional.empty();
                }
                at = next;
            }
            return at.get(keys[keys.length - 1])
                    .filter(entry -> entry instanceof Entry.Word || entry instanceof Entry.Drawn)
                    .map(Entry::text);
        }

        private String path(String key) {
            return end.map(one -> EventWords.end(one) + ".").orElse("") + key;
        }

        private Optional<Adjustable> adjustable(String key) {
            String path = path(key);
            return setup.values().stream()
                    .filter(value -> value.path().equals(path))
                    .findFirst();
        }
    }
}
