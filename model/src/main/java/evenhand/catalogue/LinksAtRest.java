package evenhand.catalogue;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Bar;
import evenhand.car.Damper;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.geometry.LinkMotion;
import evenhand.linkage.Assembly;
import evenhand.linkage.AxleState;
import evenhand.linkage.AxleState.OwnLinks;
import evenhand.linkage.AxleState.WheelFigures;
import evenhand.linkage.Freedom;
import evenhand.linkage.MotionFit;
import evenhand.linkage.Ranges;
import evenhand.linkage.Reach;
import evenhand.linkage.Remembered;
import evenhand.linkage.Travel;
import evenhand.linkage.WheelPairLinkage;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * The links of an axle at rest, the body not yet let down, and what they make there of the coefficients.
 *
 * @param given the points of an axle that stands
 * @param letDown what they are once the body has come down: a bar's drop links lean otherwise there
 */
record LinksAtRest(
        LinkedAxle given, AxleState state, AxleState letDown, double rollCentreHeight, double rollCentrePerBump) {
    private record Asked(LinkedAxle axle, double lowered) {}

    private static final Remembered<Asked, LinksAtRest> KNOWN = new Remembered<>();

    private static final Remembered<LinkedAxle, OptionalDouble> KNOWN_SHARES = new Remembered<>();

    private static final String LINKS = "links";

    /** Where the share of Ackermann is asked, rad. */
    private static final double MODERATE_STEER = Math.toRadians(5);

    private static final Map<Freedom, String> REMEDIES = Map.of(
            Freedom.SIDEWAYS, "moving sideways; add a lateralLocator, or splay the upper links",
            Freedom.FORE_AND_AFT, "moving fore and aft; add lower links, or leaves",
            Freedom.PITCH, "winding up about its own line; add upper links, a middleLink or a torqueArm",
            Freedom.YAW, "steering; add links that run along the car on either side");

    /**
     * Stands an axle on its links.
     *
     * @param lowered how far its body is to come down later; refused here where the links do not let it, m
     * @throws InvalidValue if it does not stand
     */
    static LinksAtRest of(LinkedAxle linked, double lowered) {
        return KNOWN.of(new Asked(linked, lowered), () -> standing(linked, lowered));
    }

    private static LinksAtRest standing(LinkedAxle linked, double lowered) {
        Assembly assembly = Assembly.of(linked);
        if (!(assembly instanceof Assembly.Standing standing)) {
            throw refused(assembly, linked);
        }
        standing.linkage().rest();
        AxleState state = standing.linkage().state();
        return new LinksAtRest(
                linked,
                state,
                lowered == 0 ? state : letDown(linked, lowered),
                state.rollCentreHeight().orElseGet(() -> meanForceLine(state)),
                Travel.rollCentrePerBump(standing.linkage()).orElse(0));
    }

    private static AxleState letDown(LinkedAxle linked, double lowered) {
        Assembly down = Assembly.of(linked.down(lowered));
        if (!(down instanceof Assembly.Standing standing)) {
            throw refused(down, linked);
        }
        standing.linkage().rest();
        return standing.linkage().state();
    }

    /** Where the force lines of two wheels run side by side, their mean height in the middle, m. */
    private static double meanForceLine(AxleState state) {
        return (slope(state.left()) + slope(state.right())) / 2 * state.track() / 2;
    }

    private static double slope(WheelFigures wheel) {
        return wheel.own().map(OwnLinks::forceLineSlope).orElse(0.0);
    }

    private static InvalidValue refused(Assembly assembly, LinkedAxle linked) {
        if (assembly instanceof Assembly.OutOfReach out) {
            return out.stage() == Reach.Stage.DOWN
                    ? new InvalidValue(
                            AxleCatalogue.LOWERED.key(),
                            String.format(
                                    Locale.ROOT,
                                    "is further than the links let the body go: they end at %.1f mm",
                                    Dimension.LENGTH.metric().fromSi(out.far())))
                    : new InvalidValue(
                            LINKS,
                            String.format(
                                    Locale.ROOT,
                                    "cannot be made so much longer: the axle comes together up to %.0f %% of it; make"
                                            + " \"longer\" less",
                                    100 * out.far()));
        }
        List<Freedom> free = ((Assembly.Free) assembly).ways();
        if (free.isEmpty()) {
            return new InvalidValue(
                    LINKS,
                    linked instanceof LinkedLiveAxle
                            ? "do not come together as measured; check the points"
                            : "hold the wheel twice in one way and not at all in another; check the points of arms and tie rod");
        }
        return new InvalidValue(
                LINKS,
                free.stream()
                        .map(way -> "nothing stops the axle from " + REMEDIES.get(way))
                        .collect(Collectors.joining("; ")));
    }

    /** How far beyond its stops an axle is followed, m: stops give, and metal on metal. */
    private static final double PAST_BUMP = 0.010;

    private static final double PAST_DROOP = 0.020;

    /** What the links do through the travel that the stops leave. */
    LinkMotion motion(Stops stops) {
        return MotionFit.of(
                given,
                () -> ((Assembly.Standing) Assembly.of(given)).linkage(),
                stops.bumpTravel().orElse(Ranges.USUAL.bump()) + PAST_BUMP,
                stops.droop().map(Stops.Droop::travel).orElse(Ranges.USUAL.droop()) + PAST_DROOP);
    }

    /** Mean of both sides. */
    double mean(ToDoubleFunction<WheelFigures> figure) {
        return (figure.applyAsDouble(state.left()) + figure.applyAsDouble(state.right())) / 2;
    }

    private double meanOf(Function<WheelFigures, OptionalDouble> figure) {
        return mean(wheel -> figure.apply(wheel).orElseThrow());
    }

    /** A spring at a wheel by its points. */
    Spring.AtWheel spring(Given.OfSpring<?> given) {
        double ratio = meanOf(WheelFigures::springRatio);
        requireShortens(ratio, "spring");
        return new Spring.AtWheel(given.rate(), ratio, lengths(given));
    }

    /**
     * A spring of a live axle by its points, as one that stands upright and is worked through a ratio: in heave by the ratio i,
     * in roll at the distance from the middle at which it is worked as much.
     *
     * <pre>  base = t·i_r/i  </pre>
     * i_r its ratio with this wheel up by one and the other down by one, t track.
     */
    Spring springOnAxle(Given.OfSpring<?> given, double track) {
        double ratio = meanOf(WheelFigures::springRatio);
        requireShortens(ratio, "spring");
        return new Spring.Upright(
                given.rate(), track * meanOf(WheelFigures::springRollRatio) / ratio, ratio, lengths(given));
    }

    private Spring.Lengths lengths(Given.OfSpring<?> given) {
        return new Spring.Lengths(
                OptionalDouble.of(meanOf(WheelFigures::springLength)),
                given.lengths().free(),
                given.lengths().solid(),
                given.lengths().perches());
    }

    /**
     * Dampers as they are given, or by their points as ones worked through a ratio.
     *
     * @param track of a live axle, m
     */
    Damper damper(Given.OfDamper given, OptionalDouble track) {
        Damper known = given.known();
        if (given.points().isEmpty()) {
            return known;
        }
        double ratio = meanOf(WheelFigures::damperRatio);
        requireShortens(ratio, "damper");
        return new Damper(
                OptionalDouble.of(ratio),
                OptionalDouble.empty(),
                track.isPresent()
                        ? OptionalDouble.of(track.getAsDouble() * meanOf(WheelFigures::damperRollRatio) / ratio)
                        : OptionalDouble.empty(),
                known.forces(),
                known.settings(),
                known.setting());
    }

    private static void requireShortens(double ratio, String part) {
        require(
                ratio > 1e-3,
                "bottom",
                "the " + part + " does not get shorter as the wheel rises; check its top and its bottom");
    }

    /** What a bar of known dimensions takes for its link ratio. */
    double barRatio() {
        require(state.left().barRatio().isPresent(), "bar", "its drop link does not reach from armEnd to linkEnd");
        return (barRatio(letDown.left()) + barRatio(letDown.right())) / 2;
    }

    private double barRatio(WheelFigures wheel) {
        return (given instanceof LinkedLiveAxle ? wheel.barRollRatio() : wheel.barRatio()).orElseThrow();
    }

    Bar bar(Given.OfBar given) {
        return given.made()
                .apply(
                        given.needsRatio() && given.points().isPresent()
                                ? barRatio()
                                : given.linkRatio().orElse(1));
    }

    /**
     * How much more steered links turn the inner wheel than the outer one, at a moderate steer to either side and without the
     * toe at rest, which counts apart: 1 where both aim at one centre. None of links that do not steer.
     */
    static OptionalDouble ackermannShare(LinkedAxle linked) {
        return KNOWN_SHARES.of(linked, () -> share(linked));
    }

    private static OptionalDouble share(LinkedAxle linked) {
        if (!(Assembly.of(linked) instanceof Assembly.Standing standing)
                || !(standing.linkage() instanceof WheelPairLinkage wheels)
                || !wheels.steered()) {
            return OptionalDouble.empty();
        }
        wheels.rest();
        double toe = apart(wheels.state());
        double sum = 0;
        for (int sign = -1; sign <= 1; sign += 2) {
            wheels.rest();
            if (!wheels.moveTo(0, 0, sign * MODERATE_STEER)) {
                return OptionalDouble.empty();
            }
            AxleState state = wheels.state();
            OptionalDouble share = state.steering().orElseThrow().ackermannShare();
            double apart = apart(state);
            sum += share.orElse(0) * (apart == 0 ? 1 : (apart - toe) / apart);
        }
        return OptionalDouble.of(sum / 2);
    }

    /** Steer of the left wheel less that of the right one, rad. */
    private static double apart(AxleState state) {
        return state.left().own().orElseThrow().steer()
                - state.right().own().orElseThrow().steer();
    }
}
