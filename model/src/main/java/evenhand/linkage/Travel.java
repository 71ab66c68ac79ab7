package evenhand.linkage;

import evenhand.car.links.LinkedAxle;
import evenhand.linkage.TravelLimit.Motion;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;

/**
 * Follows an axle from rest through its motions, {@link AxleMotion}: heave, roll, the travel of one wheel, and steer.
 */
public final class Travel {
    /** Rows closer than this share of a step to an end of the range are that end. */
    private static final double SAME = 1e-9;

    /** Distance of the poses from which a slope at rest is told that is itself a slope, m. */
    private static final double STENCIL = 2.5e-3;

    private final AxleLinkage axle;
    private final Ranges range;

    private Travel(AxleLinkage axle, Ranges range) {
        this.axle = axle;
        this.range = range;
    }

    /** What an axle does within these ranges. */
    public static TravelAnswer of(LinkedAxle axle, Ranges range) {
        Assembly assembly = Assembly.of(axle);
        if (assembly instanceof Assembly.Standing standing) {
            return new Travel(standing.linkage(), range).follow(standing.hold());
        }
        return assembly instanceof Assembly.Free free
                ? new TravelAnswer.NotHeld(free.ways())
                : new TravelAnswer.OutOfReach(
                        ((Assembly.OutOfReach) assembly).stage(), ((Assembly.OutOfReach) assembly).far());
    }

    private TravelAnswer.Followed follow(Optional<Hold> hold) {
        axle.rest();
        AxleState rest = axle.state();
        List<Double> gapsAtRest = axle.gaps().stream().map(Gap::gap).toList();
        OptionalDouble bindRoll = OptionalDouble.empty();
        OptionalDouble bindHeave = OptionalDouble.empty();
        if (axle instanceof LiveAxleLinkage live && live.overConstrained()) {
            bindRoll = OptionalDouble.of(live.bindRollStiffness());
            bindHeave = OptionalDouble.of(live.bindHeaveRate());
        }
        List<AxleState> heave = rows(AxleMotion.HEAVE, range.step());
        List<AxleState> roll = rows(AxleMotion.ROLL, Ranges.ROLL_STEP);
        List<AxleState> oneWheel = rows(AxleMotion.ONE_WHEEL, range.step());
        List<AxleState> steer = steerRows();
        return new TravelAnswer.Followed(
                range,
                hold,
                rest,
                rollCentrePerBump(axle),
                heave,
                roll,
                oneWheel,
                steer,
                axle.links().stream().map(JointedLink::answer).toList(),
                bindRoll,
                bindHeave,
                standsAt(),
                clearances(gapsAtRest),
                limits());
    }

    private List<AxleState> steerRows() {
        if (!(axle instanceof WheelPairLinkage wheels) || !wheels.steered() || wheels.steerPerRack() == 0) {
            return List.of();
        }
        return rows(AxleMotion.STEER, Ranges.STEER_STEP);
    }

    /** Rows at multiples of a step and at both ends, out from rest on either side until the links reach no further. */
    private List<AxleState> rows(AxleMotion motion, double step) {
        double down = motion.furthest(range, false);
        double up = motion.furthest(range, true);
        boolean joints = motion != AxleMotion.STEER;
        DoublePredicate moveTo = place -> motion.moveTo(axle, place);
        List<AxleState> below = oneWay(places(down, step), -1, joints, moveTo);
        Collections.reverse(below);
        axle.rest();
        List<AxleState> rows = new ArrayList<>(below);
        look(joints);
        rows.add(axle.state());
        rows.addAll(oneWay(places(up, step), 1, joints, moveTo));
        axle.rest();
        return rows;
    }

    private List<AxleState> oneWay(List<Double> places, int sign, boolean joints, DoublePredicate moveTo) {
        axle.rest();
        List<AxleState> rows = new ArrayList<>();
        for (double place : places) {
            if (!moveTo.test(sign * place)) {
                break;
            }
            look(joints);
            rows.add(axle.state());
        }
        return rows;
    }

    private void look(boolean joints) {
        for (Gap gap : axle.gaps()) {
            gap.look();
        }
        if (joints) {
            for (JointedLink link : axle.links()) {
                link.look();
            }
        }
    }

    /** Multiples of a step from the first one up to the end of a range, and the end. */
    private static List<Double> places(double end, double step) {
        List<Double> places = new ArrayList<>();
        for (int i = 1; i * step < end - SAME * step; i++) {
            places.add(i * step);
        }
        if (end > 0) {
            places.add(end);
        }
        return places;
    }

    /**
     * d(roll-centre height)/d(heave) at rest, m/m. The height is a slope itself, so that this is a second derivative of the
     * pose, and of an over-constrained axle, whose slopes already take second derivatives, a third one of the constraints. It is
     * told from eight poses by the central difference of order 8 instead: exact to a polynomial of that order, with an error
     * some (2.5 mm/link length)⁸ and a rounding error below 1e-9.
     */
    public static OptionalDouble rollCentrePerBump(AxleLinkage axle) {
        double[] weights = {4.0 / 5, -1.0 / 5, 4.0 / 105, -1.0 / 280};
        double sum = 0;
        for (int i = 1; i <= weights.length; i++) {
            double above = 0;
            for (int sign = -1; sign <= 1; sign += 2) {
                axle.rest();
                double heave = sign * i * STENCIL;
                OptionalDouble height = axle.moveTo(heave, heave) ? axle.rollCentreHeight() : OptionalDouble.empty();
                if (height.isEmpty()) {
                    axle.rest();
                    return OptionalDouble.empty();
                }
                above += sign * height.getAsDouble();
            }
            sum += weights[i - 1] * above;
        }
        axle.rest();
        return OptionalDouble.of(sum / STENCIL);
    }

    private OptionalDouble standsAt() {
        LinkedAxle given = axle.given();
        boolean drawn =
                given.stance().cameDown() == 0 && given.mounts().spring().isPresent();
        return drawn && given.carried().isPresent()
                ? StandingHeight.of(axle, given.carried().get())
                : OptionalDouble.empty();
    }

    private List<TravelAnswer.GapAnswer> clearances(List<Double> atRest) {
        List<TravelAnswer.GapAnswer> answers = new ArrayList<>();
        for (int i = 0; i < atRest.size(); i++) {
            Gap gap = axle.gaps().get(i);
            answers.add(new TravelAnswer.GapAnswer(gap.given.name(), atRest.get(i), gap.least));
        }
        return answers;
    }

    private List<TravelLimit> limits() {
        LimitSearch search = new LimitSearch(axle);
        List<TravelLimit> limits = new ArrayList<>();
        limits.addAll(search.along(Motion.BUMP, range.bump()));
        limits.addAll(search.along(Motion.DROOP, range.droop()));
        limits.addAll(search.along(Motion.ROLL_RIGHT, range.roll()));
        limits.addAll(search.along(Motion.ROLL_LEFT, range.roll()));
        return limits;
    }
}
