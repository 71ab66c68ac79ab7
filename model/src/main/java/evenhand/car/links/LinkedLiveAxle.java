package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Side;
import java.util.Optional;

/** A live axle with its links, and what holds it sideways where that is more than the links. */
public record LinkedLiveAxle(
        Stance stance,
        AxleLinks links,
        Optional<Locator> locator,
        Mounts mounts,
        Optional<PropShaft> propShaft,
        SideView sideView,
        Optional<Carried> carried)
        implements LinkedAxle {
    public LinkedLiveAxle {
        mounts.spring().ifPresent(line -> {
            require(
                    !(line instanceof SpringLine.AroundStrut),
                    "spring",
                    "stands around a strut, and a live axle has none; give it points, or \"around\": \"damper\"");
            require(
                    !(line instanceof SpringLine.AroundDamper)
                            || mounts.damper().isPresent(),
                    "spring",
                    "stands around a damper without points; give the damper \"top\" and \"bottom\"");
            if (line instanceof SpringLine.BetweenPoints points) {
                for (Side side : Side.values()) {
                    isThere(points.ends().of(side).on(), "spring");
                }
            }
        });
        mounts.damper().ifPresent(dampers -> {
            require(
                    dampers.line() instanceof Dampers.BetweenEyes,
                    "damper",
                    "stands around a strut, and a live axle has none; give it \"top\" and \"bottom\"");
            if (dampers.line() instanceof Dampers.BetweenEyes between) {
                for (Side side : Side.values()) {
                    isThere(between.ends().of(side).on(), "damper");
                }
            }
        });
        mounts.bar().ifPresent(bar -> {
            for (Side side : Side.values()) {
                isThere(bar.of(side).on(), "bar");
            }
        });
        for (Clearance clearance : mounts.clearances()) {
            require(
                    ofAxle(clearance.from().on()) && ofAxle(clearance.to().on()),
                    "clearances",
                    "the wheels of a live axle are part of it; write \"axle\" or \"body\"");
        }
    }

    private static void isThere(CarriedOn on, String component) {
        require(on == CarriedOn.AXLE, component, "stands on a part that a live axle has not; leave \"on\" out");
    }

    private static boolean ofAxle(Clearance.Part part) {
        return part == Clearance.Part.AXLE || part == Clearance.Part.BODY;
    }

    @Override
    public LinkedLiveAxle down(double by) {
        return new LinkedLiveAxle(stance.down(by), links, locator, mounts, propShaft, sideView, carried);
    }

    @Override
    public LinkedLiveAxle inCar(SideView seen, Optional<Carried> standing) {
        return new LinkedLiveAxle(stance, links, locator, mounts, propShaft, seen, standing);
    }
}
