package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.Dampers;
import evenhand.linkage.TravelLimit.Kind;
import evenhand.linkage.TravelLimit.Motion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/** Looks along a motion, out from rest, for the first place where each thing to be watched gives out. */
final class LimitSearch {
    /** A look every so often, m of wheel travel: what comes and goes between two looks is missed. */
    private static final double LOOK = 4e-3;

    /** How closely a place is closed in on, m of wheel travel: far below the 1e-6 m that are asked for. */
    private static final double CLOSE = 1e-10;

    /** How closely the end of the reach is; poses near a dead point go as the square root of what is left. */
    private static final double CLOSE_TO_REACH = 1e-9;

    /** A crank turned by more than this is over its centre. */
    private static final double OVER_CENTRE = Math.toRadians(60);

    /** Something that is good while its margin is not below zero. */
    private record Watch(Kind kind, String part, DoubleSupplier margin) {}

    private final AxleLinkage axle;
    private final double halfTrack;
    private final List<Watch> watches = new ArrayList<>();

    LimitSearch(AxleLinkage axle) {
        this.axle = axle;
        halfTrack = axle.given().stance().track() / 2;
        axle.given().mounts().damper().ifPresent(this::watchDampers);
        for (JointedLink link : axle.links()) {
            link.rod
                    .jointLimit()
                    .ifPresent(limit -> watches.add(new Watch(Kind.JOINT, link.name, () -> {
                        link.read();
                        return limit - Math.max(link.bodyAngle, link.movingAngle);
                    })));
        }
        for (Gap gap : axle.gaps()) {
            watches.add(new Watch(Kind.CLEARANCE, gap.given.name(), () -> gap.gap() - gap.given.least()));
        }
    }

    private void watchDampers(Dampers dampers) {
        for (Side side : Side.values()) {
            String part = side == Side.LEFT ? "damperLeft" : "damperRight";
            WheelMounts mounts = axle.mounts(side);
            dampers.closedLength()
                    .ifPresent(closed ->
                            watches.add(new Watch(Kind.DAMPER_CLOSED, part, () -> mounts.damperLength() - closed)));
            dampers.openLength()
                    .ifPresent(
                            open -> watches.add(new Watch(Kind.DAMPER_OPEN, part, () -> open - mounts.damperLength())));
        }
    }

    /** Place along a motion: travel, m, or roll, rad. */
    private boolean moveTo(Motion motion, double size) {
        return (motion.isRoll() ? AxleMotion.ROLL : AxleMotion.HEAVE).moveTo(axle, motion.sign() * size);
    }

    /** All limits of a motion within a range, in the order in which they come. */
    List<TravelLimit> along(Motion motion, double range) {
        double perTravel = motion.isRoll() ? 1 / halfTrack : 1;
        List<TravelLimit> found = new ArrayList<>();
        List<Watch> open = new ArrayList<>();
        axle.rest();
        for (Watch watch : watches) {
            if (watch.margin().getAsDouble() < 0) {
                found.add(limit(motion, 0, watch.kind(), watch.part()));
            } else {
                open.add(watch);
            }
        }
        double at = 0;
        boolean ended = false;
        while (at < range && !ended) {
            double next = Math.min(range, at + LOOK * perTravel);
            if (!moveTo(motion, next)) {
                next = reach(motion, at, next, perTravel);
                ended = true;
            }
            closeIn(motion, at, next, perTravel, open, found);
            moveTo(motion, next);
            at = next;
        }
        if (ended) {
            OptionalDouble crank = axle.crank();
            boolean over = crank.isPresent() && Math.abs(crank.getAsDouble()) > OVER_CENTRE;
            found.add(limit(
                    motion, at, over ? Kind.CRANK_OVER_CENTRE : Kind.CANNOT_REACH, over ? "lateralLocator" : "links"));
        }
        axle.rest();
        found.sort(Comparator.comparingDouble(TravelLimit::at));
        return found;
    }

    private TravelLimit limit(Motion motion, double at, Kind kind, String part) {
        return new TravelLimit(motion, at, kind, part, axle.crank());
    }

    /**
     * The furthest place that the links reach, from one that they do. A step that succeeds is taken again, so that one which
     * failed for its length alone, close to a dead point, cuts nothing off.
     */
    private double reach(Motion motion, double good, double bad, double perTravel) {
        double at = good;
        double stride = (bad - good) / 2;
        while (stride > CLOSE_TO_REACH * perTravel / 4) {
            if (at + stride < bad && moveTo(motion, at + stride)) {
                at += stride;
            } else {
                stride /= 2;
            }
        }
        return at;
    }

    private void closeIn(
            Motion motion, double from, double to, double perTravel, List<Watch> open, List<TravelLimit> found) {
        for (int w = open.size() - 1; w >= 0; w--) {
            Watch watch = open.get(w);
            moveTo(motion, to);
            if (watch.margin().getAsDouble() >= 0) {
                continue;
            }
            double good = from;
            double bad = to;
            while (bad - good > CLOSE * perTravel) {
                double middle = (good + bad) / 2;
                moveTo(motion, middle);
                if (watch.margin().getAsDouble() >= 0) {
                    good = middle;
                } else {
                    bad = middle;
                }
            }
            found.add(limit(motion, (good + bad) / 2, watch.kind(), watch.part()));
            open.remove(w);
        }
    }
}
