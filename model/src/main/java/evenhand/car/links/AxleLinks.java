package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import java.util.Optional;

/** What holds a live axle fore and aft and against turning about its own line, each where it is there. */
public record AxleLinks(
        Optional<Pair<Link>> lowerLink,
        Optional<Pair<Link>> upperLink,
        Optional<MiddleLink> middleLink,
        Optional<TorqueArm> torqueArm,
        Optional<Pair<Leaf>> leaf) {
    public AxleLinks {
        require(
                leaf.isEmpty()
                        || (lowerLink.isEmpty() && upperLink.isEmpty() && middleLink.isEmpty() && torqueArm.isEmpty()),
                "leaf",
                "leaf springs hold the axle by themselves; take out the other links, or the leaves");
    }

    /** Constraints besides heave and roll that these give: one for each rod, two for the leaves' front halves and one for the pitch. */
    public int count() {
        return (lowerLink.isPresent() ? 2 : 0)
                + (upperLink.isPresent() ? 2 : 0)
                + (middleLink.isPresent() ? 1 : 0)
                + (torqueArm.isPresent() ? 1 : 0)
                + (leaf.isPresent() ? 3 : 0);
    }
}
