package evenhand.scenario;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.linkage.AxleState.LiveFigures;
import evenhand.linkage.AxleState.ShaftFigures;
import evenhand.linkage.Hold;
import evenhand.linkage.LinkAnswer;
import evenhand.linkage.LinkSlopes;
import evenhand.linkage.Ranges;
import evenhand.linkage.Travel;
import evenhand.linkage.TravelAnswer;
import evenhand.quantity.Dimension;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is out of the ordinary about links at rest. All bounds are common practice, no source. */
final class LinkChecks {
    /** Only rest is looked at. */
    private static final Ranges REST = new Ranges(0, 0, 0, 0, 0.01);

    private static final double MUCH_BIND = 20 / Math.toRadians(1);
    private static final double SHARE_OF_SPRINGS = 0.1;
    private static final double FAR_OFF = 0.005;
    private static final double STEEP = Math.toRadians(10);
    private static final double MUCH_JOINT = Math.toRadians(3);

    private final Map<String, String> found = new LinkedHashMap<>();

    private LinkChecks() {}

    /** What is unusual, and where, by path. */
    static Map<String, String> of(Car car) {
        LinkChecks checks = new LinkChecks();
        for (End end : End.values()) {
            Optional<LinkedAxle> linked = car.linked(end);
            if (linked.isPresent() && Travel.of(linked.get(), REST) instanceof TravelAnswer.Followed followed) {
                checks.axle(
                        end.key(),
                        linked.get(),
                        followed,
                        car.axle(end).spring().rate());
            }
        }
        return checks.found;
    }

    private void axle(String end, LinkedAxle linked, TravelAnswer.Followed followed, double springRate) {
        String links = end + ".links";
        followed.hold()
                .filter(Hold::hardly)
                .ifPresent(hold -> found.put(
                        links,
                        said(
                                        "hardly hold the axle: a millimetre in one of" + " them moves it by %.0f mm (",
                                        hold.worst())
                                + hold.where().key() + ")"));
        OptionalDouble roll = followed.bindRollStiffness();
        OptionalDouble heave = followed.bindHeaveRate();
        if (roll.isPresent() && roll.getAsDouble() > MUCH_BIND) {
            found.put(
                    links,
                    said(
                            "binds in roll: more links than the axle needs add %.0f N*m/deg to its roll stiffness",
                            Dimension.ROLL_STIFFNESS.metric().fromSi(roll.getAsDouble())));
        } else if (heave.isPresent() && heave.getAsDouble() > SHARE_OF_SPRINGS * 2 * springRate) {
            found.put(
                    links,
                    said(
                            "binds in heave: more links than the axle needs add %.1f N/mm to its springs",
                            Dimension.STIFFNESS.metric().fromSi(heave.getAsDouble())));
        }
        OptionalDouble stands = followed.standsAt();
        if (stands.isPresent() && Math.abs(stands.getAsDouble()) > FAR_OFF) {
            found.put(
                    end + ".spring.freeLength",
                    said(
                            "by it, the rate and the car's weight the axle would stand %.0f mm "
                                    + (stands.getAsDouble() > 0 ? "lower" : "higher")
                                    + " than the points are drawn; are they right?",
                            Dimension.LENGTH.metric().fromSi(Math.abs(stands.getAsDouble()))));
        }
        if (linked instanceof LinkedLiveAxle) {
            followed.links().forEach(link -> steep(end, link));
        }
        followed.rest().live().flatMap(LiveFigures::shaft).ifPresent(shaft -> joints(end, shaft));
    }

    /** A rod across the car that is not level moves the axle sideways. */
    private void steep(String end, LinkAnswer link) {
        if (link.slopes() instanceof LinkSlopes.Across across && Math.abs(across.rearSlope()) > STEEP) {
            found.put(
                    end + ".lateralLocator" + (link.name().equals("panhardRod") ? "" : "." + link.name()),
                    said(
                            "stands %.0f deg off level at rest: it moves the axle sideways as the car rises and falls",
                            Math.toDegrees(Math.abs(across.rearSlope()))));
        }
    }

    private void joints(String end, ShaftFigures shaft) {
        double most = shaft.greatestJointAngle();
        if (most > MUCH_JOINT) {
            found.put(
                    end + ".propShaft",
                    said("has a joint at %.1f deg at rest, where most have 3 deg at most", Math.toDegrees(most)));
        }
    }

    private static String said(String words, double number) {
        return String.format(Locale.ROOT, words, number);
    }
}
