package evenhand.scenario;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Assumed;
import evenhand.catalogue.Built;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Range;
import evenhand.level.Levelling;
import evenhand.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is unusual about a car that can be built. */
final class Checks {
    private static final List<String> TALLER = List.of("tyre.size", "tyre.loadedRadius", "tyre");

    private final String file;
    private final Json json;
    private final List<Warning> warnings = new ArrayList<>();

    Checks(String file, Json json) {
        this.file = file;
        this.json = json;
    }

    List<Warning> of(Entries entries, Built<Car> built, Car car) {
        Map<String, String> slips = Slips.of(car, built.values());
        built.values().stream()
                .filter(value -> value.origin() == Adjustable.Origin.GIVEN && !slips.containsKey(value.path()))
                .forEach(this::usual);
        slips.forEach(this::warn);
        Assumed.of(car, built.values()).forEach(one -> one.caution().ifPresent(caution -> warn(one.path(), caution)));
        LinkChecks.of(car, this::warn);
        MountChecks.of(car, this::warn);
        PointChecks.of(car, built.values()).forEach(this::warn);
        Car settled = car.settled();
        MountChecks.atRest(settled, this::warn);
        for (End end : End.values()) {
            String key = end.name().toLowerCase(Locale.ROOT);
            if (settled.axle(end) instanceof Axle.Live
                    && entries.given().get(key) instanceof Entries axle
                    && axle.given().containsKey("rollCamber")) {
                warn(key + ".rollCamber", "has no effect on a live axle: its wheels lean with the axle");
            }
            rim(key, built);
            stops(key, settled.axle(end));
            spring(key, settled.axle(end).spring().lengths());
        }
        gears(car.drive().gears());
        Levelling.spent(car)
                .ifPresent(spent -> warn(
                        spent.wheel().end().key() + ".lowered",
                        String.format(Locale.ROOT, "uses %.1f mm of thread at the ", 1000 * Math.abs(spent.used()))
                                + spent.wheel().words()
                                + String.format(Locale.ROOT, " perch, where %.1f mm are left", 1000 * spent.left())));
        return List.copyOf(warnings);
    }

    /** The same of a set-up, and what is unusual about its changes. */
    List<Warning> of(Optional<Entries> asGiven, Entries entries, Built<Car> built, Car car) {
        List<Warning> all = new ArrayList<>(of(entries, built, car));
        warnings.clear();
        asGiven.ifPresent(before -> tyres(Catalogue.differences(before, entries)));
        all.addAll(warnings);
        return List.copyOf(all);
    }

    private void gears(List<Double> gears) {
        for (int i = 1; i < gears.size(); i++) {
            if (gears.get(i) >= gears.get(i - 1)) {
                warn("drive.gears", "do not fall from gear to gear; the first is the one for starting");
                return;
            }
        }
    }

    /** Bigger tyres lift everything, but a file gives heights apart. */
    private void tyres(List<Catalogue.Difference> changes) {
        boolean heights = changes.stream().map(Catalogue.Difference::path).anyMatch(Checks::isHeight);
        for (Catalogue.Difference change : changes) {
            if (!heights && TALLER.stream().anyMatch(change.path()::endsWith)) {
                warn(
                        change.path(),
                        "lifts or lowers all that stands on these tyres, but cgHeight and the other heights stay as they were;"
                                + " give those of the car on these tyres");
                return;
            }
        }
    }

    private static boolean isHeight(String path) {
        String last = path.substring(path.lastIndexOf('.') + 1);
        return !path.startsWith("mounts.")
                && (last.toLowerCase(Locale.ROOT).endsWith("height") || last.equals("lowered") || last.equals("up"));
    }

    private void usual(Adjustable value) {
        if (value.slot().usual().isEmpty()) {
            return;
        }
        Range usual = value.slot().usual().get();
        if (!usual.nearlyHolds(value.si())) {
            warn(
                    value.path(),
                    "is unusual: " + Quantity.of(value.si(), value.unit()).text() + ", where most cars have from "
                            + rounded(usual.low(), value) + " to " + rounded(usual.high(), value));
        }
    }

    /** Three digits are enough to compare with. */
    private static String rounded(double si, Adjustable value) {
        double number = value.unit().fromSi(si);
        double digits = new BigDecimal(number).round(new MathContext(3)).doubleValue();
        return Quantity.of(value.unit().toSi(digits), value.unit()).text();
    }

    private void rim(String key, Built<Car> built) {
        boolean isEstimated = built.at(key + ".tyre.corneringStiffness")
                .filter(value -> value.origin() == Adjustable.Origin.ESTIMATED)
                .isPresent();
        if (built.at(key + ".tyre.rimWidth").isPresent() && !isEstimated) {
            warn(key + ".tyre.rimWidth", "has no effect beside a given corneringStiffness or coefficients");
        }
    }

    private void stops(String key, Axle axle) {
        Stops stops = axle.stops();
        if (stops.bump().isPresent() && stops.bump().get().gap() < 0) {
            warn(key + ".bumpStop.gap", "is used up: the car stands on this stop at rest, and the springs carry less");
        }
        if (stops.metal().isPresent() && stops.metal().get().gap() <= 0) {
            warn(key + ".metalStop.gap", "is used up: metal meets metal at rest");
        } else if (stops.metal().isPresent()
                && stops.bump().isPresent()
                && stops.metal().get().gap() <= stops.bump().get().gap()) {
            warn(key + ".bumpStop.gap", "is not less than that of metalStop: metal meets before the rubber touches");
        }
    }

    private void spring(String key, Spring.Lengths lengths) {
        if (lengths.free().orElse(Double.MAX_VALUE) <= lengths.installed().orElse(0)) {
            warn(key + ".spring.freeLength", "is not more than installedLength: the spring would be loose at rest");
        }
    }

    private void warn(String path, String what) {
        Place place = Locator.place(json, path);
        warnings.add(new Warning(file, place.line(), place.column(), place.where(), what));
    }
}
