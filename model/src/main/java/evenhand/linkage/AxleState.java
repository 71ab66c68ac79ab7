package evenhand.linkage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An axle in one place of its travel. Lengths in m, angles in rad, signs by ISO 8855; absent is what the axle does not have.
 *
 * @param leftTravel rise of the left wheel's centre against the body from rest
 * @param rightTravel of the right one
 * @param steering of an independent front axle
 * @param track distance of both contact points in rear view
 * @param rollCentreHeight distance from the line through both contact points in rear view, up positive; absent where the force
 *     lines of two wheels do not cross
 * @param rollCentreOffset its y in the body, 0 of a live axle
 * @param rollSteer slope of the steer against roll, understeer positive
 * @param rollCamber lean of the wheels against the ground per roll of the body: 1 leans with the body
 * @param antiDive share of the front's load transfer in braking that the links carry
 * @param antiLift the same of the rear in braking; of a driven front in driving
 * @param antiSquat of a driven rear
 */
public record AxleState(
        double leftTravel,
        double rightTravel,
        Optional<Steering> steering,
        double track,
        OptionalDouble rollCentreHeight,
        OptionalDouble rollCentreOffset,
        double rollSteer,
        double rollCamber,
        OptionalDouble antiDive,
        OptionalDouble antiLift,
        OptionalDouble antiSquat,
        WheelFigures left,
        WheelFigures right,
        Optional<LiveFigures> live) {

    /**
     * @param referenceSteer left positive; 0 outside the rows of steer
     * @param rack travel of the rack to the left
     * @param ackermannShare difference of both steer angles over that of an ideal one, where the axle is steered
     */
    public record Steering(double referenceSteer, double rack, OptionalDouble ackermannShare) {}

    /**
     * One wheel with what works on it.
     *
     * @param toe in positive
     * @param camber against the body, top outwards positive
     * @param springLength of the coil
     * @param springRatio −d(length)/d(travel): of the own wheel, of a live axle in heave
     * @param springRollRatio of a live axle: this wheel up by one, the other down by one
     * @param barRatio travel of the arm's end along its arc per travel, unsigned
     * @param barArm turn of the bar's arm from where it was measured, right-handed about y
     * @param upperEye between the damper and the plane square to its bolt, or its stud, unsigned
     */
    public record WheelFigures(
            double toe,
            double camber,
            OptionalDouble springLength,
            OptionalDouble springRatio,
            OptionalDouble springRollRatio,
            OptionalDouble damperLength,
            OptionalDouble damperRatio,
            OptionalDouble damperRollRatio,
            OptionalDouble barRatio,
            OptionalDouble barRollRatio,
            OptionalDouble barArm,
            OptionalDouble upperEye,
            OptionalDouble lowerEye,
            Optional<OwnLinks> own) {}

    /**
     * What a wheel has of its own that is guided by its own links.
     *
     * @param steer left positive
     * @param caster top of the kingpin rearwards positive
     * @param kingpin top inwards positive
     * @param trail contact behind the axis positive
     * @param scrub contact outside the axis positive
     * @param forceLineSlope rise of its force line per metre going inwards
     * @param contactSideSlope side-view force line of a force at the contact, rise per metre going forwards
     * @param wheelSideSlope of a force at the wheel centre
     * @param swingArm of the side view, positive when its centre lies towards the car's middle
     * @param swingCentreHeight above the contact
     */
    public record OwnLinks(
            double steer,
            double caster,
            double kingpin,
            double trail,
            double scrub,
            double forceLineSlope,
            double contactSideSlope,
            double wheelSideSlope,
            OptionalDouble swingArm,
            OptionalDouble swingCentreHeight) {}

    /**
     * What a live axle does as a whole.
     *
     * @param forceLineSlope dz/dy of the line along which a side force does no work
     * @param axleSteer left positive
     * @param sideShift of the wheel centres' middle, left of the car's
     * @param foreAft of the same, forwards from rest
     * @param axlePitch front end up positive
     * @param crank turn of a Watt's crank from where it was measured, top to the right positive
     */
    public record LiveFigures(
            double forceLineSlope,
            double axleSteer,
            double sideShift,
            double foreAft,
            double axlePitch,
            double contactSideSlope,
            double wheelSideSlope,
            OptionalDouble swingArm,
            OptionalDouble swingCentreHeight,
            OptionalDouble crank,
            Optional<ShaftFigures> shaft) {}

    /**
     * The propeller shaft.
     *
     * @param pinionSlope of the pinion's own axis, front end up
     * @param jointAngles front to rear
     * @param residualJointAngle of one joint that would be as uneven as all together
     * @param speedFluctuation peak to peak over mean
     * @param plunge how much shorter the last piece is than at rest
     * @param shaftSlope of the last piece
     */
    public record ShaftFigures(
            double pinionSlope,
            List<Double> jointAngles,
            double residualJointAngle,
            double speedFluctuation,
            double plunge,
            double shaftSlope) {
        public ShaftFigures {
            jointAngles = List.copyOf(jointAngles);
        }

        /** Of all its joints. */
        public double greatestJointAngle() {
            return jointAngles.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        }
    }
}
