package evenhand.validation;

import static java.util.Map.entry;

import java.util.Map;

/** How a check of each kind is put to the model. */
final class Evaluators {
    static final Map<String, Evaluator> BY_NAME = Map.ofEntries(
            entry("units", UnitEvaluators::sizes),
            entry("entries", UnitEvaluators::entries),
            entry("understeer gradient units", UnitEvaluators::gradients),
            entry("static loads", MassEvaluators::staticLoads),
            entry("four scales", MassEvaluators::fourScales),
            entry("sprung mass", MassEvaluators::sprungMass),
            entry("axle lift", MassEvaluators::axleLift),
            entry("lowered car", MassEvaluators::lowered),
            entry("round bar", SuspensionEvaluators::roundBar),
            entry("motion ratio", SuspensionEvaluators::motionRatio),
            entry("leaning springs", SuspensionEvaluators::leaningSprings),
            entry("spring base", SuspensionEvaluators::springBase),
            entry("second spring", SuspensionEvaluators::secondSpring),
            entry("in series", SuspensionEvaluators::inSeries),
            entry("tyre curve", TyreEvaluators::curve),
            entry("pair at one slip", TyreEvaluators::pairAtOneSlip),
            entry("curve shape", TyreEvaluators::shape),
            entry("stiffness by load", TyreEvaluators::stiffnessByLoad),
            entry("greatest of pair", TyreEvaluators::greatestOfPair),
            entry("friction", TyreEvaluators::friction),
            entry("camber thrust", TyreEvaluators::camberThrust),
            entry("brush trail", TyreEvaluators::brush),
            entry("trail by load", TyreEvaluators::trailByLoad),
            entry("tyre size", TyreEvaluators::size),
            entry("published set", TyreEvaluators::publishedSet),
            entry("published force", TyreEvaluators::publishedForce),
            entry("hand sums", TurnEvaluators::sums),
            entry("understeer budget", TurnEvaluators::budget),
            entry("budget in sum", TurnEvaluators::budgetInSum),
            entry("linear car", TurnEvaluators::linearCar),
            entry("yaw gain peak", TurnEvaluators::yawGainPeak),
            entry("neutral steer point", TurnEvaluators::neutralSteerPoint),
            entry("zero sideslip", TurnEvaluators::zeroSideslip),
            entry("circle tests", TurnEvaluators::circleTests),
            entry("ackermann steer", TurnEvaluators::ackermannSteer),
            entry("wheel steer", TurnEvaluators::wheelSteer),
            entry("straight under drag", TurnEvaluators::straightUnderDrag),
            entry("shaft torque", TurnEvaluators::shaftTorque),
            entry("friction ellipse", TurnEvaluators::frictionEllipse),
            entry("axle slips and limits", TurnEvaluators::axleSlipsAndLimits),
            entry("static stability factor", TurnEvaluators::staticStability),
            entry("load transfer in the turn", TurnEvaluators::loadTransferInTheTurn));

    private Evaluators() {}
}
