package evenhand.turn;

import evenhand.car.BrakeForces;
import evenhand.car.Car;
import evenhand.car.End;

/**
 * What the brakes give one axle of the turn: half of it at each wheel, with slopes over what the axle feels. Their effort is the
 * unknown that otherwise is the drive force: force of the master cylinder's rod, or of all brakes where only their share is
 * known, N. Set by {@link #at}, allocates nothing.
 */
final class BrakesInTurn {
    /** Force along the wheel at each wheel, below zero, N. */
    double force;

    final double[] forceBy = new double[AxleInTurn.UNKNOWNS];

    /** Which piece of the way from the pedal holds: 4 bites, 8 held back by the valve as well. */
    int piece;

    private final BrakeForces forces;
    private final boolean front;

    BrakesInTurn(Car car, End end) {
        forces = BrakeForces.of(car);
        front = end == End.FRONT;
    }

    /** The effort that gives a sum of both axles' forces, N, the axles at rest. */
    double effortFor(double sum) {
        forces.reach(sum, 0);
        return forces.hasParts() ? forces.rod : sum;
    }

    /**
     * Sets force and slopes.
     *
     * @param effort N
     * @param travel mean bump travel of the axle: a valve that feels the load stands at the rear one, m
     */
    void at(double effort, double travel) {
        forces.apply(effort, front ? 0 : travel);
        force = -(front ? forces.front : forces.rear) / 2;
        double byTravel = front ? 0 : -forces.rearByTravel / 2;
        forceBy[AxleInTurn.DRIVE] = -(front ? forces.frontByEffort : forces.rearByEffort) / 2;
        forceBy[AxleInTurn.HEAVE] = -byTravel;
        forceBy[AxleInTurn.LEFT_RISE] = byTravel / 2;
        forceBy[AxleInTurn.RIGHT_RISE] = byTravel / 2;
        piece = (front ? forces.frontBites() : forces.rearBites()) ? 4 : 0;
        piece += !front && forces.isHeld() ? 8 : 0;
    }
}
