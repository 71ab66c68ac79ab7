package evenhand.bump;

import evenhand.bump.StepMotion.Watched;
import evenhand.road.Piece;
import evenhand.road.Profile;
import evenhand.suspension.DamperLines;
import evenhand.suspension.ForceLines;

/**
 * A {@link WheelStation} driven over a road, in time, until it has come to rest behind it.
 *
 * <p>Between corners the equations are smooth, and {@link QuarterCarStep} steps along them with an error estimate. A
 * corner is where the spring goes loose, a stop is touched or bends, metal meets, the damper's curve bends, or the tyre
 * leaves the ground or lands. A step stays on the pieces on which it begins; if at its end, or at a turning point within
 * it, one of the three quantities that choose a piece (travel, its rate, deflection of the tyre) has left its piece, the
 * place where it did so is found on the motion's polynomial of order 5, the step is taken again up to there, and the
 * next one begins on the other piece. Forces are continuous over corners, so that a corner found a little late costs
 * nothing. The ends of the road's smooth stretches are ends of steps too. So no step sees a bend, and the method keeps
 * its order.
 *
 * <p>Nothing is allocated on the way but room for the rows that are recorded. A crossing is good for one drive; one per thread.
 */
final class Crossing {
    /** At rest when the motion has this part of the energy that it had as the event ended: 1 % of its size. */
    private static final double RESTING = 1e-4;

    /** Energy that nobody feels, J. */
    private static final double NO_ENERGY = 1e-9;

    /** An undamped car never comes to rest; so long is waited, s. */
    static final double LONGEST_REST = 10;

    /** Grip is counted until so long after the event, s: the landing belongs to it. */
    static final double GRIP_AFTER = 0.5;

    /** Rest is looked for so often, s. */
    private static final double LOOK = 0.02;

    /** Beyond, something is too stiff or the road too long to be followed. */
    private static final int MOST_STEPS = 5_000_000;

    /** After so many steps it is asked whether to go on. */
    private static final int ASKING = 4096;

    /** A piece is left when its end is passed by so much, m or m/s: what is less is rounding. */
    private static final double PASSED = 1e-12;

    final QuarterCarStep step;
    final Witness witness;
    private final StepMotion motion;
    private final ForceLines spring;
    private final DamperLines damper;
    private final Runnable goOn;
    private final StepLength stepLength = new StepLength();
    private int steps;
    private boolean settled;

    private boolean cornerFound;
    private Watched corner = Watched.TRAVEL;
    private double cornerAt; // part of the step
    private int cornerWay; // up +1, down −1

    /**
     * @param tolerance error of a step, m
     * @param finestRow step of the record, s
     */
    Crossing(WheelStation station, double tolerance, double finestRow) {
        this(station, tolerance, finestRow, () -> {});
    }

    /** @param goOn asked again and again on the way; what it throws ends the drive */
    Crossing(WheelStation station, double tolerance, double finestRow, Runnable goOn) {
        this.goOn = goOn;
        step = new QuarterCarStep(station, tolerance);
        motion = new StepMotion(step);
        witness = new Witness(step, motion, finestRow);
        spring = station.suspension();
        damper = station.damper();
    }

    /**
     * Drives over a road and on until the car is at rest.
     *
     * @return whether it could be followed to the end
     */
    boolean drive(Profile road, double speed) {
        if (!overEvent(road, speed)) {
            return false;
        }
        double over = step.time + GRIP_AFTER;
        step.enter(new Piece.Line(road.length(), Double.MAX_VALUE, road.after(), 0), speed, road.length());
        double energy = step.energyAboveRest();
        boolean followed = until(over);
        witness.countsGrip = false;
        settled = resting(energy);
        for (int look = 1; followed && !settled && step.time < over + LONGEST_REST; look++) {
            followed = until(over + look * LOOK);
            settled = resting(energy);
        }
        return followed;
    }

    /** Drives over a road to its end and no farther. */
    boolean overEvent(Profile road, double speed) {
        for (int i = 0; i < road.pieces().size(); i++) {
            Piece piece = road.pieces().get(i);
            step.enter(piece, speed, piece.from());
            if (!until(piece.to() / speed)) {
                return false;
            }
        }
        return true;
    }

    private boolean resting(double energy) {
        return atRest(step.energyAboveRest(), energy);
    }

    /** Whether what moves counts as being at rest: energy above rest that is left, and that as the event ended, J. */
    static boolean atRest(double left, double asItEnded) {
        return left <= Math.max(NO_ENERGY, RESTING * asItEnded);
    }

    /** Whether it came to rest behind the event. */
    boolean settled() {
        return settled;
    }

    int steps() {
        return steps;
    }

    private boolean until(double end) {
        witness.start();
        while (step.time < end) {
            if (++steps > MOST_STEPS) {
                return false;
            }
            if (steps % ASKING == 1) {
                goOn.run();
            }
            double left = end - step.time;
            boolean last = stepLength.reaches(left);
            double length = last ? left : stepLength.next();
            double error = step.attempt(length);
            if (!(error <= 1)) {
                stepLength.refused(length, error);
                continue;
            }
            motion.set(length);
            findCorner();
            if (cornerFound) {
                upToCorner(cornerAt * length);
                continue;
            }
            witness.see();
            step.keep(last ? end : step.time + length);
            stepLength.kept(length, error, last);
        }
        return true;
    }

    private void upToCorner(double length) {
        if (length > 0) {
            step.attempt(length);
            motion.set(length);
            witness.see();
            step.keep(step.time + length);
        }
        switch (corner) {
            case TRAVEL -> step.springPiece += cornerWay;
            case TRAVEL_RATE -> step.damperPiece += cornerWay;
            default -> step.onGround = cornerWay > 0;
        }
        step.bend();
    }

    /** The first corner within the step, if there is one. */
    private void findCorner() {
        cornerFound = false;
        watch(
                Watched.TRAVEL,
                Watched.TRAVEL_RATE,
                step.travel(),
                step.nextTravel(),
                step.travelRate(),
                step.nextTravelRate(),
                spring.low(step.springPiece),
                spring.high(step.springPiece));
        watch(
                Watched.TRAVEL_RATE,
                Watched.TRAVEL_PULL,
                step.travelRate(),
                step.nextTravelRate(),
                step.travelPull(),
                step.nextTravelPull(),
                damper.low(step.damperPiece, step.travel()),
                damper.high(step.damperPiece, step.travel()));
        watch(
                Watched.DEFLECTION,
                Watched.DEFLECTION_RATE,
                step.deflection(),
                step.nextDeflection(),
                step.deflectionRate(),
                step.nextDeflectionRate(),
                step.onGround ? 0 : Double.NEGATIVE_INFINITY,
                step.onGround ? Double.POSITIVE_INFINITY : 0);
    }

    private void watch(
            Watched what,
            Watched rate,
            double start,
            double end,
            double startRate,
            double endRate,
            double low,
            double high) {
        double reach = motion.reach(startRate, endRate);
        if (Math.max(start, end) + reach < high && Math.min(start, end) - reach > low) {
            return;
        }
        double above = passed(high, 1);
        double below = passed(low, -1);
        double until = 1;
        double there = end;
        if (StepMotion.turns(startRate, endRate)) {
            double turn = motion.turningPoint(rate);
            double turned = motion.at(what, turn);
            if (turned > above || turned < below) {
                until = turn;
                there = turned;
            }
        }
        if (there > above) {
            corner(what, above, 1, start, until);
        } else if (there < below) {
            corner(what, below, -1, start, until);
        }
    }

    /** Where an end of a piece counts as passed, upwards +1 or downwards −1. */
    private static double passed(double end, int way) {
        return end + way * PASSED;
    }

    private void corner(Watched what, double bound, int way, double start, double until) {
        boolean stillInside = way > 0 ? start < bound : start > bound;
        double part = stillInside ? motion.root(what, bound, until) : 0;
        if (!cornerFound || part < cornerAt) {
            cornerFound = true;
            cornerAt = part;
            corner = what;
            cornerWay = way;
        }
    }
}
