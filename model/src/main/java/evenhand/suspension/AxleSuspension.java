package evenhand.suspension;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Stops;
import evenhand.car.Weights;
import evenhand.geometry.Lever;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.RollArm;
import evenhand.geometry.WheelPairMotion;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Vertical force and roll moment between the body and one axle, by mean travel, suspension roll and roll-centre height.
 *
 * <p>An independent axle's springs and stops act at the wheels, half the track from the middle. A live axle's springs
 * act where their line stands at the height of the roll centre, its stops at their own base. Forces count from the rest
 * load: springs at rest carry just what stands on them, whichever way the cross weight lies. {@link #at} sets the fields
 * and allocates nothing. One per thread. The formulas of rates and moments are those of {@link SpringRates}, the arms those
 * of {@link RollArm}; springs and links known by points are those of {@link SpringsOnLinks}.
 *
 * <p>Source: Milliken &amp; Milliken 1995 ch. 16 (rates, leaning springs); Gillespie 1992 ch. 6 (roll stiffness of a
 * solid axle by its spring base).
 */
public final class AxleSuspension {
    /** Rate of metal on metal, N/m: not hard, but as bodies and brackets give. Common practice, no source. */
    public static final double METAL_RATE = 5e6;

    /** Sum of both sides, N, upwards on the body, and its slopes. */
    public double force;

    public double forceByTravel;
    public double forceByRoll;
    public double forceByRollCentre;

    /** Moment against the roll, N·m, from rest, and its slopes. */
    public double moment;

    public double momentByTravel;
    public double momentByRoll;
    public double momentByRollCentre;

    /**
     * Which straight piece each spring and stop works on; it changes where a slope jumps. A number with one digit for each
     * of them in the base of its own count of pieces, so that no two states share it: below {@link #pieceCount}.
     */
    public long pieces;

    private final double heaveRate; // of one spring, N/m
    private final double rollRate; // of one spring in roll, at its arm, N/m
    private final RollArm springArm;
    private final double leftRest; // load of the left spring at rest, N
    private final double rightRest;
    private double leftLoad; // the same with what the perches were raised since, N
    private double rightLoad;
    private final double perchRate; // of one spring's load at the wheel by its perch's way along the spring, N/m
    private final double ratio; // of the springs
    private final double standsOnStop; // load of one bump stop at rest, N
    private final double bar; // N·m/rad
    private final double bumpArm; // half the base of the bump stops, m
    private final double bumpGap;
    private final PointLines bumpCurve;
    private final double droopArm;
    private final double droopTravel;
    private final double droopRate;

    private final double metalArm;
    private final double metalGap;

    private final Optional<SpringsOnLinks> onLinks; // springs or binding links that are known by points
    private final boolean byLever; // springs that are known by their leverage

    private double springForce;
    private double springRate;
    private double stopForce;
    private double stopRate;

    private AxleSuspension(Car car, End end) {
        Axle axle = car.axle(end);
        double hung = axle.unsprung().mass() * Weights.GRAVITY / 2;
        double left = car.staticLoad(end, Side.LEFT) - hung;
        double right = car.staticLoad(end, Side.RIGHT) - hung;
        bar = axle.barRollStiffness();

        Stops stops = axle.stops();
        bumpArm = axle.halfBase(stops.bump().map(Stops.Bump::base).orElse(OptionalDouble.empty()));
        bumpGap = stops.bump().map(Stops.Bump::gap).orElse(Double.POSITIVE_INFINITY);
        bumpCurve = new PointLines(stops.bump().map(Stops.Bump::curve).orElse(Curve.NO_FORCE));
        droopArm = axle.halfBase(stops.droop().map(Stops.Droop::base).orElse(OptionalDouble.empty()));
        droopTravel = stops.droop().map(Stops.Droop::travel).orElse(Double.POSITIVE_INFINITY);
        droopRate = stops.droop().map(Stops.Droop::rate).orElse(0.0);
        metalArm = axle.halfBase(stops.metal().map(Stops.Metal::base).orElse(OptionalDouble.empty()));
        metalGap = stops.metal().map(Stops.Metal::gap).orElse(Double.POSITIVE_INFINITY);

        stopForce = 0;
        bump(-bumpGap);
        standsOnStop = stopForce;
        droop(0);
        double hangsOnStop = stopForce; // below zero: it holds the body down, and the springs carry more
        leftRest = left - standsOnStop - hangsOnStop;
        rightRest = right - standsOnStop - hangsOnStop;
        leftLoad = leftRest;
        rightLoad = rightRest;

        Lever springs = axle.geometry().springs();
        ratio = springs.ratio();
        perchRate = SpringRates.perchRate(axle.spring().rate(), ratio);
        springArm = springs.arm();
        rollRate = SpringRates.wheelRate(axle.spring().rate(), springs.ratio());
        onLinks = SpringsOnLinks.of(axle, leftRest, rightRest);
        byLever = axle.motion().isEmpty() || !axle.motion().get().guidesSprings();
        heaveRate = byLever
                ? SpringRates.heaveRate(axle.spring().rate(), springs, (leftRest + rightRest) / 2)
                : onLinks.orElseThrow().heaveRateAtRest();
    }

    /** The suspension at one end of a car, as it stands at rest. */
    public static AxleSuspension of(Car car, End end) {
        return new AxleSuspension(car, end);
    }

    /** What reads the figures of a live axle on links known by points, for whoever asks for the same places. */
    public Optional<LiveAxleMotion.Reading> axleOnLinks() {
        return onLinks.flatMap(SpringsOnLinks::axle);
    }

    /** The same of a wheel on links of its own. */
    public Optional<WheelPairMotion.Reading> wheelOnLinks(Side side) {
        return onLinks.flatMap(links -> links.wheel(side));
    }

    /**
     * Raises the perches from where they stood when the car was weighed: springs carry more by as much as they are pressed, with the
     * body and the wheels held. Moments still count from the rest as weighed.
     *
     * @param left by how much, m along the spring; below zero it was let down
     * @param right the same of the right one
     */
    public void raisePerches(double left, double right) {
        leftLoad = leftRest + perchRate * left;
        rightLoad = rightRest + perchRate * right;
        onLinks.ifPresent(links -> links.raisePerches(left, right));
    }

    /** Half the springs' base at this roll-centre height, m: half the track of an independent axle. */
    public double springArm(double rollCentreHeight) {
        return springArm.at(rollCentreHeight);
    }

    /** Wheel rate in heave, of one side, N/m. */
    public double heaveRate() {
        return heaveRate;
    }

    /** Load on the springs of one side at rest, N; below zero where a stop would carry more than there is. */
    public double springLoadAtRest(Side side) {
        return restLoad(side);
    }

    /** Load on the bump stop of one side at rest, N: zero while there is a gap. */
    public double stopLoadAtRest() {
        return standsOnStop;
    }

    /**
     * Sets force and moment.
     *
     * @param travel mean bump travel of both sides, m
     * @param roll suspension roll, rad, right side down positive
     * @param rollCentreHeight above the ground, m
     */
    public void at(double travel, double roll, double rollCentreHeight) {
        pieces = 0;
        if (byLever) {
            springsByLever(travel, roll, rollCentreHeight);
        } else {
            force = 0;
            forceByTravel = 0;
            forceByRoll = 0;
            forceByRollCentre = 0;
            moment = bar * roll;
            momentByTravel = 0;
            momentByRoll = bar;
            momentByRollCentre = 0;
        }
        if (onLinks.isPresent()) {
            onLinks.get().addTo(this, travel, roll);
        }
        stops(travel, roll, bumpArm, true);
        stops(travel, roll, droopArm, false);
    }

    private void springsByLever(double travel, double roll, double rollCentreHeight) {
        double arm = springArm.at(rollCentreHeight);
        spring(springLoad(leftLoad, travel, roll, arm, Side.LEFT));
        double left = springForce;
        double leftRate = springRate;
        spring(springLoad(rightLoad, travel, roll, arm, Side.RIGHT));
        double right = springForce;
        double rightRate = springRate;
        double difference = right - left - (rightRest - leftRest);
        double rates = leftRate + rightRate;
        double skew = rightRate - leftRate;

        force = left + right;
        forceByTravel = heaveRate * rates;
        forceByRoll = rollRate * arm * skew;
        forceByRollCentre = rollRate * roll * springArm.byHeight() * skew;
        moment = SpringRates.elasticMoment(arm, difference, bar, roll);
        momentByTravel = arm * heaveRate * skew;
        momentByRoll = SpringRates.axleRollStiffness(arm, rollRate * rates, bar);
        momentByRollCentre = springArm.byHeight() * (difference + arm * rollRate * roll * rates);
    }

    /** Adds the bump stops of both sides, or the droop stops. */
    private void stops(double travel, double roll, double arm, boolean inBump) {
        stop(travelAt(travel, roll, arm, Side.LEFT), inBump);
        double left = stopForce;
        double leftRate = stopRate;
        stop(travelAt(travel, roll, arm, Side.RIGHT), inBump);
        force += left + stopForce;
        forceByTravel += leftRate + stopRate;
        forceByRoll += arm * (stopRate - leftRate);
        moment += SpringRates.momentOfPair(arm, stopForce - left);
        momentByTravel += arm * (stopRate - leftRate);
        momentByRoll += SpringRates.rollStiffnessOfPair(arm, leftRate + stopRate);
    }

    /**
     * Bump travel of one side at an arm from the middle, m.
     *
     * <pre>  u_side = u − σ·e·φs  </pre>
     *
     * @param travel u, mean of both sides, m
     * @param roll φs, suspension roll, rad, right side down positive
     * @param arm e, m
     * @param side σ its sign, +1 left, −1 right
     */
    private static double travelAt(double travel, double roll, double arm, Side side) {
        return travel - side.sign() * arm * roll;
    }

    /**
     * Load that a spring would have, could it pull, N.
     *
     * <pre>  S = S0 + k·u − σ·kφ·e·φs  </pre>
     * k rate in heave, kφ in roll, N/m; the others as in {@link #travelAt}.
     *
     * @param atRest S0, N
     */
    private double springLoad(double atRest, double travel, double roll, double arm, Side side) {
        return atRest + heaveRate * travel - side.sign() * rollRate * arm * roll;
    }

    private void stop(double travel, boolean inBump) {
        if (inBump) {
            bump(travel - bumpGap);
        } else {
            droop(travel);
        }
    }

    /** A spring only pushes; one factor tells whether it does. */
    private void spring(double load) {
        boolean pushes = load > 0;
        pieces = 2 * pieces + (pushes ? 1 : 0);
        springRate = pushes ? 1 : 0;
        springForce = pushes ? load : 0;
    }

    /** A bump stop pushes by its curve once its gap is gone. */
    private void bump(double deflection) {
        pieces *= bumpCurve.count() + 1;
        if (!(deflection > 0)) {
            stopForce = 0;
            stopRate = 0;
            return;
        }
        int piece = bumpCurve.pieceAt(deflection);
        pieces += piece;
        stopRate = bumpCurve.slope(piece);
        stopForce = bumpCurve.force(piece, deflection);
    }

    /** A droop stop pulls, F = rate·(u + travel), once the wheel is beyond its droop travel. */
    private void droop(double travel) {
        boolean reached = travel < -droopTravel;
        pieces = 2 * pieces + (reached ? 1 : 0);
        stopRate = reached ? droopRate : 0;
        stopForce = reached ? droopRate * (travel + droopTravel) : 0;
    }

    /** How many states {@link #pieces} can tell apart: springs tight or loose, bump stops on their pieces, droop stops. */
    public long pieceCount() {
        long ofBumpStop = bumpCurve.count() + 1L; // 0: not touched
        return 2 * 2 * ofBumpStop * ofBumpStop * 2 * 2;
    }

    /**
     * Force of the spring and stops of one side, upwards on the body, over mean travel, the roll held. Here metal counts
     * too, where the file says how far away it is: in a bump it is met for a moment, in a steady turn never.
     *
     * @param roll suspension roll, rad
     * @param rollCentreHeight above the ground, m
     */
    public ForceLines side(Side side, double roll, double rollCentreHeight) {
        double bumpMore = travelAt(0, roll, bumpArm, side);
        double droopMore = travelAt(0, roll, droopArm, side);
        double metalMore = travelAt(0, roll, metalArm, side);
        if (byLever) {
            return lines(
                    springLoad(0, roll, rollCentreHeight, side),
                    bumpMore,
                    droopMore,
                    metalMore,
                    bound().map(links -> links.side(side, roll)));
        }
        SpringsOnLinks links = onLinks.orElseThrow();
        return stopLines(
                bumpMore, droopMore, metalMore, Optional.of(links.side(side, roll)), links.looseAt(side, roll));
    }

    /** The same of half the axle in heave, at the mean load of both sides. */
    public ForceLines half() {
        if (byLever) {
            return lines((leftLoad + rightLoad) / 2, 0, 0, 0, bound().map(SpringsOnLinks::half));
        }
        SpringsOnLinks links = onLinks.orElseThrow();
        return stopLines(0, 0, 0, Optional.of(links.half()), links.looseAt(Side.LEFT, 0), links.looseAt(Side.RIGHT, 0));
    }

    /** Links that bind beside springs that are known by their leverage. */
    private Optional<SpringsOnLinks> bound() {
        return onLinks.filter(SpringsOnLinks::pushes);
    }

    /**
     * Springs by their leverage, and stops. Arguments: load of the spring at no travel, how much more than the mean the stops of
     * this side travel, and what else pushes.
     */
    private ForceLines lines(
            double rest, double bumpMore, double droopMore, double metalMore, Optional<CurvedForce> besides) {
        return lines(
                travel -> {
                    spring(rest + heaveRate * travel);
                    return springForce;
                },
                bumpMore,
                droopMore,
                metalMore,
                besides,
                -rest / heaveRate);
    }

    /** Stops alone, with springs known by points, and where those go loose. */
    private ForceLines stopLines(
            double bumpMore, double droopMore, double metalMore, Optional<CurvedForce> springs, double... loose) {
        return lines(travel -> 0, bumpMore, droopMore, metalMore, springs, loose);
    }

    private ForceLines lines(
            DoubleUnaryOperator springs,
            double bumpMore,
            double droopMore,
            double metalMore,
            Optional<CurvedForce> besides,
            double... loose) {
        double[] corners = Arrays.copyOf(loose, bumpCurve.count() + 3 + loose.length);
        int corner = loose.length;
        for (int i = 0; i <= bumpCurve.count(); i++) {
            corners[corner++] = bumpGap + bumpCurve.end(i) - bumpMore;
        }
        corners[corner++] = -droopTravel - droopMore;
        corners[corner] = metalGap - metalMore;
        return ForceLines.with(
                besides,
                travel -> {
                    bump(travel + bumpMore - bumpGap);
                    double force = springs.applyAsDouble(travel) + stopForce;
                    droop(travel + droopMore);
                    return force + stopForce + METAL_RATE * Math.max(0, travel + metalMore - metalGap);
                },
                corners);
    }

    /** How far metal of one side is beyond its gap, m; below zero before, −∞ where the file does not say. */
    public double metalDeflection(double travel, double roll, Side side) {
        return travelAt(travel, roll, metalArm, side) - metalGap;
    }

    /** Deflection of the bump stop of one side, m; below zero while there is a gap, −∞ without one. */
    public double bumpDeflection(double travel, double roll, Side side) {
        return travelAt(travel, roll, bumpArm, side) - bumpGap;
    }

    /** How far one side is beyond its droop travel, m; below zero before, −∞ without a limit. */
    public double droopExcess(double travel, double roll, Side side) {
        return -droopTravel - travelAt(travel, roll, droopArm, side);
    }

    /** Load that the spring of one side would have, could it pull, N; it is loose below zero. */
    public double springLoad(double travel, double roll, double rollCentreHeight, Side side) {
        return byLever
                ? springLoad(loadNow(side), travel, roll, springArm(rollCentreHeight), side)
                : onLinks.orElseThrow().load(travel, roll, side);
    }

    /**
     * Force along a spring's own line that it would have, could it pull, N.
     *
     * <pre>  S/MR + k·MR·u_side  </pre>
     * S its load at the wheel with neither travel nor roll, u_side bump travel at its arm. Of one that leans this is what its length
     * makes of it; what it pushes upwards grows less.
     */
    public double springForce(double travel, double roll, double rollCentreHeight, Side side) {
        return byLever
                ? loadNow(side) / ratio + perchRate * travelAt(travel, roll, springArm.at(rollCentreHeight), side)
                : onLinks.orElseThrow().pull(travel, roll, side);
    }

    private double loadNow(Side side) {
        return side == Side.LEFT ? leftLoad : rightLoad;
    }

    private double restLoad(Side side) {
        return side == Side.LEFT ? leftRest : rightRest;
    }
}
