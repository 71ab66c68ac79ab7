package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import evenhand.geometry.Lever;
import evenhand.geometry.RollArm;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * The dampers of one axle. Forces of bump and rebound are both positive.
 *
 * @param motionRatio damper travel over wheel travel, where known
 * @param lean inwards going up, rad, of a live axle
 * @param base distance between a live axle's lower damper mounts, m
 * @param forces curves that hold now, where given
 * @param settings named curves
 * @param setting the one that is set
 */
public record Damper(
        OptionalDouble motionRatio,
        OptionalDouble lean,
        OptionalDouble base,
        Optional<Forces> forces,
        List<Setting> settings,
        Optional<String> setting) {
    /**
     * Leverage on an axle: the file's motionRatio; of a live axle's damper that leans cos(lean); 1 where neither is given.
     * Lower mounts stand with those of leaning springs, otherwise at the height of the axle: nothing else is known.
     */
    public Lever lever(Axle axle) {
        double leans = lean.orElse(0);
        double lowerMountHeight = axle.spring() instanceof Spring.Leaning springs
                ? springs.lowerMountHeight()
                : axle.unsprung().height();
        return new Lever(
                motionRatio.orElse(Math.cos(leans)),
                RollArm.leaning(axle.halfBase(base), lowerMountHeight, leans),
                leans,
                OptionalDouble.empty());
    }

    /** Force over speed, in bump and in rebound. */
    public record Forces(Curve bump, Curve rebound) {}

    /** A named pair of curves, for instance "3 clicks". */
    public record Setting(String name, Forces forces) {}

    public Damper {
        settings = List.copyOf(settings);
        require(motionRatio.orElse(1) > 0, "motionRatio", "must be above zero");
        require(Math.abs(lean.orElse(0)) < Math.toRadians(80), "lean", "must be less than 80 deg");
        require(base.orElse(1) > 0, "base", "must be above zero");
        if (setting.isPresent()) {
            String wanted = setting.get();
            require(
                    settings.stream().anyMatch(s -> s.name().equals(wanted)),
                    "setting",
                    settings.isEmpty()
                            ? "names a setting, and this damper has no \"settings\"; give them, or leave it out"
                            : "names no setting of this damper; write "
                                    + settings.stream()
                                            .map(known -> "\"" + known.name() + "\"")
                                            .collect(Collectors.joining(" or ")));
        }
    }

    /**
     * These dampers worked with a leverage.
     *
     * @param track of a live axle, m, for which they have a base of their own
     */
    Damper worked(Lever lever, OptionalDouble track) {
        return new Damper(
                OptionalDouble.of(lever.ratio()),
                lean,
                track.isPresent() ? OptionalDouble.of(2 * lever.arm().atGround()) : base,
                forces,
                settings,
                setting);
    }
}
