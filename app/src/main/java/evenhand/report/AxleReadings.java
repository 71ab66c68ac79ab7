package evenhand.report;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.LateralLocator;
import evenhand.car.Spring;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.quantity.Dimension;
import evenhand.ride.Standing;
import evenhand.words.Units;
import java.util.Optional;

/** Reads off an axle what is set once for both its wheels. */
final class AxleReadings {
    private final SheetReadings sheet;
    private final Units units;

    AxleReadings(SheetReadings sheet, Units units) {
        this.sheet = sheet;
        this.units = units;
    }

    /** Of one end of a car at rest, with its links as they were read. */
    void of(Car car, End end, Optional<LinkedAxle> linked) {
        Axle axle = car.axle(end);
        sheet.length("track", "track", axle.track());
        locator(axle, linked);
        bar(axle.bar());
        spring(axle.spring(), Standing.of(car, end));
        axle.damper().ifPresent(this::damper);
        sheet.given("bump stop", "bumpStop.curve");
        sheet.given("tyre kind", "tyre.kind");
        sheet.length("loaded radius", "tyre.loadedRadius", axle.tyre().loadedRadius());
    }

    private void locator(Axle axle, Optional<LinkedAxle> linked) {
        if (!(axle instanceof Axle.Live live)) {
            workedRollCentre(axle.geometry().rollCentreHeight());
            return;
        }
        LateralLocator locator = live.lateralLocator();
        if (locator instanceof LateralLocator.ByPoints) {
            sheet.word("lateral locator", "lateralLocator.kind", byPoints(linked));
            workedRollCentre(axle.geometry().rollCentreHeight());
        } else if (locator instanceof LateralLocator.WattsLinkage watt) {
            sheet.word(
                    "lateral locator",
                    "lateralLocator.kind",
                    "Watt's linkage, crank on the "
                            + (watt.carriedBy() == LateralLocator.CarriedBy.BODY ? "body" : "axle"));
            sheet.length("height of the crank's pivot", "lateralLocator.height", locator.height());
        } else if (locator instanceof LateralLocator.PanhardRod) {
            sheet.word("lateral locator", "lateralLocator.kind", "Panhard rod");
            sheet.length("height of the rod in the middle", "lateralLocator.height", locator.height());
        } else {
            sheet.word("lateral locator", "lateralLocator.kind", "leaf springs");
            workedRollCentre(locator.height());
        }
    }

    private static String byPoints(Optional<LinkedAxle> linked) {
        Optional<Locator> points =
                linked.flatMap(one -> one instanceof LinkedLiveAxle live ? live.locator() : Optional.empty());
        return points.map(one -> one instanceof Locator.WattPoints
                        ? "Watt's linkage, by its points"
                        : one instanceof Locator.PanhardPoints ? "Panhard rod, by its points" : "as given")
                .orElse("its links alone");
    }

    private void workedRollCentre(double height) {
        sheet.word(
                "roll centre height, worked out",
                "rollCentre.height",
                units.show(height, Dimension.LENGTH, sheet.digits()));
    }

    private void spring(Spring spring, Standing standing) {
        if (spring instanceof Spring.AtWheel wheel) {
            sheet.ratio("spring travel over wheel travel", "spring.motionRatio", wheel.motionRatio());
        } else if (spring instanceof Spring.Upright upright) {
            sheet.length("distance between springs", "spring.base", upright.base());
        } else if (spring instanceof Spring.Leaning leaning) {
            sheet.length("distance between lower spring mounts", "spring.base", leaning.base());
            sheet.measure("lean of the springs", "spring.lean", leaning.lean(), Dimension.ANGLE, 1, true);
            sheet.length("height of the lower spring mounts", "spring.lowerMountHeight", leaning.lowerMountHeight());
        }
        sheet.optional(
                "spring length, free", "spring.freeLength", spring.lengths().free());
        sheet.word(
                "load on one spring at rest, worked out",
                "spring.rate",
                units.show(standing.springLoad(), Dimension.FORCE, 0));
    }

    private void bar(Optional<Bar> bar) {
        if (bar.isEmpty()) {
            sheet.word("anti-roll bar", "bar", "none");
        } else if (bar.get() instanceof Bar.Round round) {
            sheet.measure(
                    "anti-roll bar, diameter",
                    "bar.diameter",
                    round.diameter(),
                    Dimension.LENGTH,
                    sheet.digits() + 1,
                    true);
            sheet.length("anti-roll bar, arm", "bar.armLength", round.armLength());
            sheet.length("anti-roll bar, length that twists", "bar.activeLength", round.activeLength());
            sheet.ratio("drop link over wheel travel", "bar.linkRatio", round.linkRatio());
        } else {
            sheet.measure(
                    "anti-roll bar",
                    "bar.rollStiffness",
                    ((Bar.Measured) bar.get()).rollStiffness(),
                    Dimension.ROLL_STIFFNESS,
                    0,
                    false);
        }
    }

    private void damper(Damper given) {
        if (given.motionRatio().isPresent()) {
            sheet.ratio(
                    "damper travel over wheel travel",
                    "damper.motionRatio",
                    given.motionRatio().getAsDouble());
        }
        if (given.lean().isPresent()) {
            sheet.measure("lean of the dampers", "damper.lean", given.lean().getAsDouble(), Dimension.ANGLE, 1, true);
        }
        sheet.optional("distance between lower damper mounts", "damper.base", given.base());
    }
}
