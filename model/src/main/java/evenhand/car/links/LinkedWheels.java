package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Side;
import java.util.Optional;

/** Both wheels of an independent axle with the links that guide them. At the front the tie rods steer. */
public record LinkedWheels(Stance stance, WheelLinks links, Mounts mounts, SideView sideView, Optional<Carried> carried)
        implements LinkedAxle {
    public LinkedWheels {
        require(stance.offset() == 0, "offset", "belongs to a live axle");
        boolean strut = links instanceof WheelLinks.StrutAndArm;
        boolean eyes = mounts.damper()
                .map(d -> d.line() instanceof Dampers.BetweenEyes)
                .orElse(false);
        mounts.spring().ifPresent(line -> {
            require(
                    !(line instanceof SpringLine.AroundStrut) || strut,
                    "spring",
                    "stands around a strut, and there is none; give it points, or \"around\": \"damper\"");
            require(
                    !(line instanceof SpringLine.AroundDamper)
                            || mounts.damper().isPresent(),
                    "spring",
                    "stands around a damper without points; give the damper \"top\" and \"bottom\"");
            if (line instanceof SpringLine.BetweenPoints points) {
                for (Side side : Side.values()) {
                    isThere(points.ends().of(side).on(), strut, "spring");
                }
            }
        });
        mounts.damper().ifPresent(dampers -> {
            require(
                    eyes || strut,
                    "damper",
                    "stands around a strut, and there is none; give it \"top\" and \"bottom\"");
            if (dampers.line() instanceof Dampers.BetweenEyes between) {
                for (Side side : Side.values()) {
                    isThere(between.ends().of(side).on(), strut, "damper");
                }
            }
        });
        mounts.bar().ifPresent(bar -> {
            for (Side side : Side.values()) {
                isThere(bar.of(side).on(), strut, "bar");
            }
        });
        for (Clearance clearance : mounts.clearances()) {
            require(
                    clearance.from().on() != Clearance.Part.AXLE
                            && clearance.to().on() != Clearance.Part.AXLE,
                    "clearances",
                    "an independent axle has no \"axle\"; write \"left wheel\" or \"right wheel\"");
        }
    }

    private static void isThere(CarriedOn on, boolean strut, String component) {
        require(
                on != CarriedOn.AXLE,
                component,
                "stands on an axle, and the wheels are independent; write \"upright\" or an arm");
        require(
                on != CarriedOn.UPPER_ARM || !strut,
                component,
                "stands on an upper arm, and there is none; write \"upright\" or \"lower arm\"");
    }

    /** Whether the right wheel with what works on it mirrors the left one. */
    public boolean isAlike() {
        boolean second = links instanceof WheelLinks.DoubleWishbone two
                ? two.upperArm().isAlike()
                : ((WheelLinks.StrutAndArm) links).strut().isAlike();
        boolean springs = mounts.spring().isEmpty()
                || !(mounts.spring().get() instanceof SpringLine.BetweenPoints points)
                || points.ends().isAlike();
        boolean dampers = mounts.damper().isEmpty()
                || !(mounts.damper().get().line() instanceof Dampers.BetweenEyes eyes)
                || eyes.ends().isAlike();
        return links.lowerArm().isAlike() && second && links.tieRod().isAlike() && springs && dampers;
    }

    @Override
    public LinkedWheels down(double by) {
        return new LinkedWheels(stance.down(by), links, mounts, sideView, carried);
    }

    @Override
    public LinkedWheels inCar(SideView seen, Optional<Carried> standing) {
        return new LinkedWheels(stance, links, mounts, seen, standing);
    }
}
