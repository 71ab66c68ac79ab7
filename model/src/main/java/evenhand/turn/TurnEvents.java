package evenhand.turn;

import static evenhand.turn.Equilibrium.ACCELERATION;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What happens on the way to the limit. Each kind has a figure that passes upwards through zero when it happens; where
 * that is between two states of the branch, the place is closed in on along the arc.
 */
final class TurnEvents {
    /** Four per wheel: stop, droop, loose, lifted; then two roll centres, then steer. */
    private static final int PER_WHEEL = 4;

    private static final int FRONT_ROLL_CENTRE = 4 * PER_WHEEL;
    private static final int REAR_ROLL_CENTRE = FRONT_ROLL_CENTRE + 1;
    private static final int REVERSAL = REAR_ROLL_CENTRE + 1;
    private static final int FIGURES = REVERSAL + 1;

    /** Arc length at which to look again: a figure that passes zero twice within it is taken for one that does not. */
    private static final double LOOK = 0.06;

    private static final double CLOSE_TRAVEL = 1e-7; // m
    private static final double CLOSE_LOAD = 1e-2; // N

    private static final double SAME = 1e-5 * Weights.GRAVITY;

    private static final TurnEvent.Kind[] OF_WHEEL = {
        TurnEvent.Kind.STOP_TOUCHED,
        TurnEvent.Kind.DROOP_REACHED,
        TurnEvent.Kind.SPRING_LOOSE,
        TurnEvent.Kind.WHEEL_LIFTED
    };

    private final Equilibrium equilibrium;
    private final Branch branch;

    TurnEvents(Equilibrium equilibrium, Branch branch) {
        this.equilibrium = equilibrium;
        this.branch = branch;
    }

    List<TurnEvent> find() {
        List<TurnEvent> events = new ArrayList<>();
        double[] before = new double[FIGURES];
        double[] after = new double[FIGURES];
        branch.atState(0);
        figures(before);
        for (int k = 0; k + 1 < branch.count(); k++) {
            int parts = Math.max(1, (int) Math.ceil(branch.length(k) / LOOK));
            double from = 0;
            for (int part = 1; part <= parts; part++) {
                double to = branch.length(k) * part / parts;
                if (part == parts) {
                    branch.atState(k + 1);
                } else if (!branch.atArc(k, to)) {
                    continue;
                }
                figures(after);
                for (int i = 0; i < FIGURES; i++) {
                    boolean upwards = before[i] <= 0 && after[i] > 0;
                    boolean downwards = before[i] > 0 && after[i] <= 0;
                    boolean eitherWay = i == FRONT_ROLL_CENTRE || i == REAR_ROLL_CENTRE;
                    if (upwards || (eitherWay && downwards)) {
                        TurnEvent event = event(i, closeIn(k, from, to, i, downwards));
                        if (events.stream().noneMatch(known -> same(known, event))) {
                            events.add(event);
                        }
                    }
                }
                System.arraycopy(after, 0, before, 0, FIGURES);
                from = to;
            }
        }
        boolean followedToLostHold = branch.losesHold() && branch.limitAt() == branch.count() - 1;
        if (!followedToLostHold) { // what makes a corner there happens beyond
            atTheCorner(before, events);
        }
        return events;
    }

    /** Where the limit itself is a corner, what makes the corner has happened to within rounding. */
    private void atTheCorner(double[] atLimit, List<TurnEvent> events) {
        for (int i = 0; i < FRONT_ROLL_CENTRE; i++) {
            double close = i % PER_WHEEL < 2 ? CLOSE_TRAVEL : CLOSE_LOAD;
            if (atLimit[i] <= 0 && atLimit[i] > -close) {
                TurnEvent event = event(i, branch.end());
                if (events.stream().noneMatch(known -> same(known, event))) {
                    events.add(event);
                }
            }
        }
    }

    /** Where the branch turns at a corner its last states lie on both sides of it: that is one event. */
    private static boolean same(TurnEvent known, TurnEvent event) {
        return known.kind() == event.kind()
                && known.wheel().equals(event.wheel())
                && known.axle().equals(event.axle())
                && Math.abs(known.lateralAcceleration() - event.lateralAcceleration()) < SAME;
    }

    private double closeIn(int k, double from, double to, int figure, boolean positiveBefore) {
        double low = from;
        double high = to;
        double[] here = new double[FIGURES];
        double acceleration = branch.acceleration(k);
        for (int i = 0; i < 60 && high - low > 1e-9; i++) {
            double middle = (low + high) / 2;
            if (branch.atArc(k, middle)) {
                figures(here);
                acceleration = branch.state[ACCELERATION];
                if ((here[figure] > 0) == positiveBefore) {
                    low = middle;
                } else {
                    high = middle;
                }
            } else {
                high = middle;
            }
        }
        return acceleration;
    }

    private void figures(double[] into) {
        for (int wheel = 0; wheel < 4; wheel++) {
            AxleInTurn axle = wheel < 2 ? equilibrium.front : equilibrium.rear;
            Side side = wheel % 2 == 0 ? Side.LEFT : Side.RIGHT;
            int at = PER_WHEEL * wheel;
            into[at] = axle.suspension.bumpDeflection(axle.travel, axle.suspensionRoll, side);
            into[at + 1] = axle.suspension.droopExcess(axle.travel, axle.suspensionRoll, side);
            into[at + 2] = -axle.suspension.springLoad(axle.travel, axle.suspensionRoll, axle.rollCentre, side);
            into[at + 3] = axle.wheel(side).lift(branch.state[Equilibrium.FRONT_LEFT_RISE + wheel]);
        }
        into[FRONT_ROLL_CENTRE] = equilibrium.front.rollCentre;
        into[REAR_ROLL_CENTRE] = equilibrium.rear.rollCentre;
        into[REVERSAL] = -branch.tangent[Equilibrium.STEER];
    }

    private static TurnEvent event(int figure, double acceleration) {
        if (figure == REVERSAL) {
            return new TurnEvent(acceleration, TurnEvent.Kind.STEER_REVERSAL, Optional.empty(), Optional.empty());
        }
        if (figure >= FRONT_ROLL_CENTRE) {
            End axle = figure == FRONT_ROLL_CENTRE ? End.FRONT : End.REAR;
            return new TurnEvent(
                    acceleration, TurnEvent.Kind.ROLL_CENTRE_THROUGH_GROUND, Optional.of(axle), Optional.empty());
        }
        Wheel wheel = Wheel.values()[figure / PER_WHEEL];
        return new TurnEvent(acceleration, OF_WHEEL[figure % PER_WHEEL], Optional.of(wheel.end()), Optional.of(wheel));
    }
}
