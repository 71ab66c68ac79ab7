package evenhand.car.links;

import java.util.List;
import java.util.Optional;

/** Springs, dampers and bar by points, and the gaps to be watched, each where it is given. */
public record Mounts(
        Optional<SpringLine> spring, Optional<Dampers> damper, Optional<Pair<BarArm>> bar, List<Clearance> clearances) {
    public static final Mounts NONE = new Mounts(Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    public Mounts {
        clearances = List.copyOf(clearances);
    }
}
