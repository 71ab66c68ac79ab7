package evenhand.report;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.report.SetupSheet.Group;
import evenhand.report.SetupSheet.Item;
import evenhand.ride.Standing;
import evenhand.scenario.Setup;
import evenhand.scenario.ShopRecord;
import evenhand.turn.Wheel;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what a set-up sheet says off one set-up. */
final class SheetReadings {
    /** What stands where a weight would be that nobody weighed: halves of a sum are no corner weights. */
    static final String NOT_WEIGHED = "not weighed";

    /** What stands where a height would be that nobody asked for. */
    static final String NOT_ASKED = "none asked for";

    /** A perch is left alone below it, m. */
    private static final double NO_MOVE = 0.0005;

    private final ShopRecord record;
    private final Setup setup;
    private final Units units;
    private final Car car;
    private final List<Item> all = new ArrayList<>();
    private Group group = Group.CAR;
    private Optional<End> end = Optional.empty();
    private Optional<Side> side = Optional.empty();

    SheetReadings(ShopRecord record, Setup setup, Units units) {
        this.record = record;
        this.setup = setup;
        this.units = units;
        car = setup.car().settled();
    }

    List<Item> all() {
        whole();
        group = Group.CORNER;
        for (End one : End.values()) {
            at(one);
            corners();
            wheel(car.axle(one), setup.car().axle(one), Standing.of(car, one));
        }
        group = Group.AXLE;
        AxleReadings axles = new AxleReadings(this, units);
        for (End one : End.values()) {
            at(one);
            axles.of(car, one, setup.car().linked(one));
        }
        LinkReadings links = new LinkReadings(this, units);
        for (End one : End.values()) {
            at(one);
            links.of(setup.car(), one);
        }
        askedWithin();
        return all;
    }

    /** What has a tolerance of its own in the file and is not yet on the sheet. */
    private void askedWithin() {
        for (Adjustable value : setup.values()) {
            if (!record.tolerances().containsKey(value.path())
                    || all.stream().anyMatch(item -> item.path().equals(value.path()))) {
                continue;
            }
            end = Arrays.stream(End.values())
                    .filter(one -> value.path().startsWith(one.key() + "."))
                    .findFirst();
            in(end.isPresent() ? Group.AXLE : Group.CAR, Optional.empty());
            String key = value.path().substring(path("").length());
            int digits = value.dimension() == Dimension.LENGTH ? digits() : 2;
            measure(LinkReadings.words(key), key, value.si(), value.dimension(), digits, true);
        }
    }

    private void at(End one) {
        end = Optional.of(one);
        side = Optional.empty();
    }

    /** Where the next readings stand. */
    void in(Group other, Optional<Side> on) {
        group = other;
        side = on;
    }

    private void whole() {
        Unit unit = units.of(Dimension.MASS);
        add(
                "mass",
                "whole car",
                Numbers.fixed(unit.fromSi(car.weights().mass()), 0) + " " + unit.symbol() + ", front "
                        + Numbers.percent(car.weights().frontFraction(), 1),
                within("mass", Dimension.MASS, 0),
                true);
        if (car.weights() instanceof Weights.Corners corners) {
            add(
                    "crossWeight",
                    "cross weight",
                    Numbers.percent((corners.frontLeft() + corners.rearRight()) / corners.mass(), 1),
                    within("crossWeight", Dimension.RATIO, 1),
                    true);
        } else {
            add("crossWeight", "cross weight", NOT_WEIGHED, Optional.empty(), true);
        }
        length("wheelbase", "wheelbase", car.wheelbase());
    }

    private void corners() {
        End at = end.orElseThrow();
        for (Side one : Side.values()) {
            side = Optional.of(one);
            Wheel wheel = Wheel.of(at, one);
            height(wheel, record.rideHeights().get(wheel));
            String key = "cornerWeights." + wheel.key();
            if (car.weights() instanceof Weights.Corners) {
                int digits = units == Units.METRIC ? 1 : 0;
                addPath(
                        key,
                        "corner weight",
                        units.show(car.staticLoad(at, one) / Weights.GRAVITY, Dimension.MASS, digits),
                        withinPath(key, Dimension.MASS, digits),
                        true);
            } else {
                addPath(key, "corner weight", NOT_WEIGHED, Optional.empty(), true);
            }
        }
        side = Optional.empty();
    }

    private void height(Wheel wheel, @org.jspecify.annotations.Nullable Quantity asked) {
        String key = "rideHeights." + wheel.key();
        String what = "ride height, wheel centre to arch";
        if (asked == null) {
            addPath(key, what, NOT_ASKED, Optional.empty(), true);
            return;
        }
        int digits = units == Units.METRIC ? 0 : 2;
        Optional<Within> within = asked.hasTolerance()
                ? Optional.of(new Within(half(asked.tolerance(), Dimension.LENGTH, digits), false))
                : withinPath(key, Dimension.LENGTH, digits);
        addPath(key, what, units.show(asked.si(), Dimension.LENGTH, digits), within, true);
    }

    private void wheel(Axle axle, Axle built, Standing standing) {
        if (built.lowered() != 0) {
            add(
                    "lowered",
                    "body let down by its perches",
                    units.show(built.lowered(), Dimension.LENGTH, units == Units.METRIC ? 0 : 2),
                    Optional.empty(),
                    false);
        }
        measure("spring rate", "spring.rate", axle.spring().rate(), Dimension.STIFFNESS, 1, false);
        optional(
                "spring length, installed",
                "spring.installedLength",
                axle.spring().lengths().installed());
        if (standing.perchMove().isPresent()) {
            double move = standing.perchMove().getAsDouble();
            add(
                    "spring.installedLength",
                    "perch, besides letting down",
                    Math.abs(move) < NO_MOVE
                            ? "as it is"
                            : units.show(Math.abs(move), Dimension.LENGTH, units == Units.METRIC ? 0 : 2)
                                    + (move > 0 ? " down" : " up"),
                    Optional.empty(),
                    false);
        }
        axle.damper()
                .ifPresent(damper -> add(
                        "damper.setting",
                        "damper setting",
                        damper.setting().orElse("no setting named"),
                        Optional.empty(),
                        !damper.settings().isEmpty()));
        axle.stops().bump().ifPresent(stop -> length("gap to the bump stop", "bumpStop.gap", stop.gap()));
        axle.stops().metal().ifPresent(stop -> length("gap to metal", "metalStop.gap", stop.gap()));
        axle.stops().droop().ifPresent(stop -> length("droop travel", "droopStop.travel", stop.travel()));
        measure("camber", "camber", axle.alignment().camber(), Dimension.ANGLE, 2, true);
        measure("toe in", "toe", axle.alignment().toe(), Dimension.ANGLE, 2, true);
        given("tyre", "tyre.size");
        setup.values().stream()
                .filter(value -> value.path().equals(path("tyre.pressure")))
                .findFirst()
                .ifPresent(value -> measure(
                        "tyre pressure",
                        "tyre.pressure",
                        value.si(),
                        Dimension.PRESSURE,
                        units == Units.METRIC ? 2 : 1,
                        true));
    }

    void optional(String what, String key, OptionalDouble value) {
        if (value.isPresent()) {
            length(what, key, value.getAsDouble());
        }
    }

    int digits() {
        return units == Units.METRIC ? 0 : 2;
    }

    void length(String what, String key, double si) {
        measure(what, key, si, Dimension.LENGTH, digits(), true);
    }

    void measure(String what, String key, double si, Dimension dimension, int digits, boolean measurable) {
        add(key, what, InPrint.symbol(units.show(si, dimension, digits)), within(key, dimension, digits), measurable);
    }

    /** Something to be measured whose value is more than a number. */
    void measure(String what, String key, String value, Dimension dimension, int digits) {
        add(key, what, value, within(key, dimension, digits), true);
    }

    void ratio(String what, String key, double value) {
        word(what, key, Numbers.fixed(value, 3));
    }

    void word(String what, String key, String value) {
        add(key, what, value, Optional.empty(), false);
    }

    /** A word of the file, or a curve, as it was written. */
    void given(String what, String key) {
        entry(path(key)).ifPresent(text -> word(what, key, text));
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

    /** A tolerance as it is set, and whether it is a usual one. */
    record Within(String text, boolean usual) {}

    private Optional<Within> within(String key, Dimension dimension, int digits) {
        return withinPath(path(key), dimension, digits);
    }

    private Optional<Within> withinPath(String path, Dimension dimension, int digits) {
        Double asked = record.tolerances().get(path);
        if (asked != null) {
            return Optional.of(new Within(half(asked, dimension, digits), false));
        }
        OptionalDouble usual = BuildTolerance.usual(path);
        return usual.isPresent()
                ? Optional.of(new Within(half(usual.getAsDouble(), dimension, digits), true))
                : Optional.empty();
    }

    /** With as many digits behind the point as the value has, or as few as tell it from nothing. */
    private String half(double si, Dimension dimension, int digits) {
        double half = units.of(dimension).fromSi(si);
        String fixed = Numbers.fixed(half, digits);
        return "±" + (fixed.equals(Numbers.fixed(0, digits)) ? Numbers.significant(half, 1) : fixed);
    }

    private String path(String key) {
        return end.map(one -> one.key() + ".").orElse("") + key;
    }

    private void add(String key, String what, String value, Optional<Within> within, boolean measurable) {
        addPath(path(key), what, value, within, measurable);
    }

    private void addPath(String path, String what, String value, Optional<Within> within, boolean measurable) {
        all.add(new Item(
                group,
                end,
                side,
                path,
                what,
                value,
                within.map(Within::text).orElse(""),
                within.map(Within::usual).orElse(false),
                measurable,
                ""));
    }
}
