package evenhand.scenario;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.linkage.AxleState;
import evenhand.linkage.AxleState.LiveFigures;
import evenhand.linkage.AxleState.ShaftFigures;
import evenhand.linkage.AxleState.WheelFigures;
import evenhand.linkage.Hold;
import evenhand.linkage.LinkAnswer;
import evenhand.linkage.LinkSlopes;
import evenhand.linkage.Ranges;
import evenhand.linkage.Travel;
import evenhand.linkage.TravelAnswer;
import evenhand.quantity.Dimension;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** What is out of the ordinary about links at rest and at both ends of the travel. All bounds are common practice, no source. */
final class LinkChecks {
    /** Longer than any travel, so that of its rows only rest and both ends are asked, m. */
    private static final double TO_THE_ENDS = 1;

    private static final double MUCH_BIND = 20 / Math.toRadians(1);
    private static final double SHARE_OF_SPRINGS = 0.1;
    private static final double FAR_OFF = 0.005;
    private static final double STEEP = Math.toRadians(10);
    private static final double MUCH_JOINT = Math.toRadians(3);
    private static final double MUCH_JOINT_AT_THE_ENDS = Math.toRadians(5);

    /** Either way, what the sliding joint of most shafts has, m. */
    private static final double MUCH_PLUNGE = 0.020;

    /** What a rod end gives without spacers; an eye in rubber rather less. */
    private static final double MUCH_EYE = Math.toRadians(12);

    private static final String LESS_JOINT = "; turn the pinion by the links, or pack up the gearbox";

    private final BiConsumer<String, String> warn;

    private LinkChecks(BiConsumer<String, String> warn) {
        this.warn = warn;
    }

    /**
     * Says what is unusual.
     *
     * @param warn takes the path and what is the matter there
     */
    static void of(Car car, BiConsumer<String, String> warn) {
        LinkChecks checks = new LinkChecks(warn);
        Car settled = car.settled();
        for (End end : End.values()) {
            Optional<LinkedAxle> linked = car.linked(end);
            if (linked.isPresent()) {
                Ranges its = Ranges.of(settled.axle(end).stops());
                Ranges ends = new Ranges(its.bump(), its.droop(), 0, 0, TO_THE_ENDS);
                if (Travel.of(linked.get(), ends) instanceof TravelAnswer.Followed followed) {
                    checks.axle(
                            end.key(),
                            linked.get(),
                            followed,
                            car.axle(end).spring().rate());
                }
            }
        }
    }

    private void axle(String end, LinkedAxle linked, TravelAnswer.Followed followed, double springRate) {
        String links = end + ".links";
        followed.hold()
                .filter(Hold::hardly)
                .ifPresent(hold -> warn.accept(
                        links,
                        said("hardly hold the axle: a millimetre in one of them moves it by %.0f mm (", hold.worst())
                                + hold.where().key() + "); stand them further apart, or splay them more"));
        OptionalDouble roll = followed.bindRollStiffness();
        OptionalDouble heave = followed.bindHeaveRate();
        if (roll.isPresent() && roll.getAsDouble() > MUCH_BIND) {
            warn.accept(
                    links,
                    said(
                            "binds in roll: more links than the axle needs add %.0f N*m/deg to its roll stiffness;"
                                    + " make parallel ones equal, or take one out",
                            Dimension.ROLL_STIFFNESS.metric().fromSi(roll.getAsDouble())));
        } else if (heave.isPresent() && heave.getAsDouble() > SHARE_OF_SPRINGS * 2 * springRate) {
            warn.accept(
                    links,
                    said(
                            "binds in heave: more links than the axle needs add %.1f N/mm to its springs;"
                                    + " make parallel ones equal, or take one out",
                            Dimension.STIFFNESS.metric().fromSi(heave.getAsDouble())));
        }
        OptionalDouble stands = followed.standsAt();
        if (stands.isPresent() && Math.abs(stands.getAsDouble()) > FAR_OFF) {
            warn.accept(
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
        followed.rest().live().flatMap(LiveFigures::shaft).ifPresent(shaft -> joints(end, shaft, followed));
        plunge(end, followed);
        if (followed.rest().left().upperEye().isPresent()) {
            eye(end + ".damper.top", followed, WheelFigures::upperEye);
            eye(end + ".damper.bottom", followed, WheelFigures::lowerEye);
        }
    }

    /** A rod across the car that is not level moves the axle sideways. */
    private void steep(String end, LinkAnswer link) {
        if (link.slopes() instanceof LinkSlopes.Across across && Math.abs(across.rearSlope()) > STEEP) {
            warn.accept(
                    end + ".lateralLocator" + (link.name().equals("panhardRod") ? "" : "." + link.name()),
                    said(
                            "stands %.0f deg off level at rest: it moves the axle sideways as the car rises and falls;"
                                    + " bring its ends to one height",
                            Math.toDegrees(Math.abs(across.rearSlope()))));
        }
    }

    private void joints(String end, ShaftFigures atRest, TravelAnswer.Followed followed) {
        double most = atRest.greatestJointAngle();
        if (most > MUCH_JOINT) {
            warn.accept(
                    end + ".propShaft",
                    said("has a joint at %.1f deg at rest, where most have 3 deg at most", Math.toDegrees(most))
                            + LESS_JOINT);
            return;
        }
        AxleState row = furthest(followed, LinkChecks::greatestJointAngle);
        if (greatestJointAngle(row) > MUCH_JOINT_AT_THE_ENDS) {
            warn.accept(
                    end + ".propShaft",
                    said("has a joint at %.1f deg ", Math.toDegrees(greatestJointAngle(row)))
                            + place(row)
                            + ", where most have 5 deg at most"
                            + LESS_JOINT);
        }
    }

    private static double greatestJointAngle(AxleState row) {
        return row.live()
                .flatMap(LiveFigures::shaft)
                .map(ShaftFigures::greatestJointAngle)
                .orElse(0.0);
    }

    private void plunge(String end, TravelAnswer.Followed followed) {
        AxleState row = furthest(followed, any -> Math.abs(slid(any)));
        double slid = slid(row);
        if (Math.abs(slid) > MUCH_PLUNGE) {
            warn.accept(
                    end + ".propShaft",
                    said(
                                    slid > 0 ? "is pushed together by %.0f mm " : "is drawn apart by %.0f mm ",
                                    Dimension.LENGTH.metric().fromSi(Math.abs(slid)))
                            + place(row)
                            + ", where most joints slide 20 mm at most; measure what it has left, or limit the travel");
        }
    }

    private static double slid(AxleState row) {
        return row.live().flatMap(LiveFigures::shaft).map(ShaftFigures::plunge).orElse(0.0);
    }

    /** An eye or stud that its damper turns out of its plane, on the side where it is worse. */
    private void eye(String path, TravelAnswer.Followed followed, Function<WheelFigures, OptionalDouble> of) {
        ToDoubleFunction<AxleState> worse = row ->
                Math.max(of.apply(row.left()).orElse(0), of.apply(row.right()).orElse(0));
        AxleState row = furthest(followed, worse);
        double turned = worse.applyAsDouble(row);
        if (turned > MUCH_EYE) {
            warn.accept(
                    path,
                    said("is turned out of its eye by %.0f deg ", Math.toDegrees(turned))
                            + place(row)
                            + ", where most eyes give 12 deg at most; tilt its bracket, or turn its bolt");
        }
    }

    /** The row of heave with the most of something, rest before the ends where they have no more. */
    private static AxleState furthest(TravelAnswer.Followed followed, ToDoubleFunction<AxleState> of) {
        AxleState most = followed.rest();
        for (AxleState row : followed.heave()) {
            most = of.applyAsDouble(row) > of.applyAsDouble(most) ? row : most;
        }
        return most;
    }

    private static String place(AxleState row) {
        double travel = row.leftTravel();
        return travel == 0
                ? "at rest"
                : said("at %.0f mm of ", Dimension.LENGTH.metric().fromSi(Math.abs(travel)))
                        + (travel > 0 ? "bump" : "droop");
    }

    private static String said(String words, double number) {
        return String.format(Locale.ROOT, words, number);
    }
}
