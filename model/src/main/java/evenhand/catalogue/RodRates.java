package evenhand.catalogue;

import evenhand.car.End;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.car.links.Rod;
import evenhand.quantity.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rates of rods that were not given and yet count, because the axle has more links than it needs. */
final class RodRates {
    /** Constraints that hold a live axle besides heave and roll. */
    private static final int NEEDED = 4;

    private static final String RULE =
            "a rod with its bushes; it counts because the axle has more links than it needs (common practice)";

    /** How far it may be off, as a share. */
    private static final double TOLERANCE = 0.5;

    private RodRates() {}

    static List<Adjustable> estimated(End end, LinkedAxle axle) {
        List<Adjustable> estimated = new ArrayList<>();
        if (axle instanceof LinkedLiveAxle live
                && live.links().leaf().isEmpty()
                && live.links().count() + (live.locator().isPresent() ? 1 : 0) > NEEDED) {
            rods(live).forEach((path, rod) -> {
                if (rod.rate() == Rod.ESTIMATED_RATE) {
                    estimated.add(new Adjustable(
                            Path.join(end.key(), Path.join(path, PointCatalogue.ROD_RATE.key())),
                            PointCatalogue.ROD_RATE,
                            Rod.ESTIMATED_RATE,
                            TOLERANCE * Rod.ESTIMATED_RATE,
                            Adjustable.Origin.ESTIMATED,
                            RULE,
                            Dimension.STIFFNESS.metric()));
                }
            });
        }
        return estimated;
    }

    private static Map<String, Rod> rods(LinkedLiveAxle live) {
        Map<String, Rod> rods = new LinkedHashMap<>();
        AxleLinks links = live.links();
        links.lowerLink()
                .ifPresent(link -> rods.put("links.lowerLink", link.left().rod()));
        links.upperLink()
                .ifPresent(link -> rods.put("links.upperLink", link.left().rod()));
        links.middleLink().ifPresent(link -> rods.put("links.middleLink", link.rod()));
        links.torqueArm().ifPresent(arm -> rods.put("links.torqueArm", arm.dropLink()));
        live.locator().ifPresent(locator -> {
            if (locator instanceof Locator.PanhardPoints panhard) {
                rods.put("lateralLocator", panhard.rod());
            } else if (locator instanceof Locator.WattPoints watt) {
                rods.put("lateralLocator.upperRod", watt.upperRod().rod());
                rods.put("lateralLocator.lowerRod", watt.lowerRod().rod());
            }
        });
        return rods;
    }
}
