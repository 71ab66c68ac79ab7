package evenhand.turn;

import evenhand.car.Air;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;

/** The seven balances of a left turn, put together again from what an answer shows. */
final class Balances {
    private Balances() {}

    /** Largest of what is left over: forces over the car's weight, moments over weight times a metre. */
    static double worst(Car car, TurnRow row, double radius) {
        double g = Weights.GRAVITY;
        double mass = car.weights().mass();
        double ay = row.lateralAcceleration() * Math.cos(row.sideslip());
        double ax = -row.lateralAcceleration() * Math.sin(row.sideslip());
        double v2 = row.speed() * row.speed();
        double drag = Air.DENSITY / 2 * car.air().dragArea() * v2;
        double moved = mass * ax * car.cgHeight()
                + drag * Math.cos(row.sideslip()) * car.air().dragHeight().orElse(car.cgHeight());
        double worst = 0;
        double forward = -drag * Math.cos(row.sideslip()) - mass * ax;
        double sideways = -drag * Math.sin(row.sideslip()) - mass * ay;
        double yaw = 0;
        double offset = 0;
        for (Wheel wheel : Wheel.values()) {
            double y = wheel.side().sign() * car.axle(wheel.end()).track() / 2;
            offset += y * car.staticLoad(wheel.end(), wheel.side()) / (mass * g);
        }
        double torqueSum = 0;
        double[] rolls = {row.frontRoll(), row.rearRoll()};
        double[] heaves = {row.frontHeave(), row.rearHeave()};
        double[] centres = {row.frontRollCentreHeight(), row.rearRollCentreHeight()};
        Axle driven = car.axle(car.drive().axle());
        double torque = driven instanceof Axle.Live && car.drive().finalDrive().isPresent()
                ? row.driveForce()
                        * driven.tyre().loadedRadius()
                        / car.drive().finalDrive().getAsDouble()
                        * (car.drive().shaftTurns() == Drive.ShaftTurns.ANTICLOCKWISE ? 1 : -1)
                : 0;
        double hs = car.sprung().height();
        double[] bodyRoll = new double[2];
        for (End end : End.values()) {
            int i = end == End.FRONT ? 0 : 1;
            Axle axle = car.axle(end);
            double x = end == End.FRONT ? car.cgBehindFront() : car.cgBehindFront() - car.wheelbase();
            WheelState left = row.wheels().get(2 * i);
            WheelState right = row.wheels().get(2 * i + 1);
            double half = axle.track() / 2;
            double side = left.lateralForce() + right.lateralForce();
            forward += left.longitudinalForce() + right.longitudinalForce();
            sideways += side;
            yaw += x * side
                    - (half - offset) * left.longitudinalForce()
                    + (half + offset) * right.longitudinalForce()
                    + left.aligningMoment()
                    + right.aligningMoment();
            double travel = (left.travel() + right.travel()) / 2;
            double roll = (right.travel() - left.travel()) / axle.track();
            double tilt = rolls[i] - roll;
            AxleSuspension suspension = AxleSuspension.of(car, end);
            suspension.at(travel, roll, centres[i]);
            double z = centres[i];
            double jacking = axle instanceof Axle.Live
                    ? 0
                    : -(2 * z / axle.track()) * (left.lateralForce() - right.lateralForce());
            double push = suspension.force + jacking;
            double moment = suspension.moment;
            double heightMoment = (side - axle.unsprung().mass() * ay) * z;
            if (axle.motion().isPresent()) {
                ByMechanism direct = ByMechanism.of(car, end, row, ay);
                push = direct.force();
                moment = direct.moment();
                heightMoment = direct.heightMoment();
                worst = Math.max(worst, Math.abs(direct.meanHeight() - z) * mass * g);
            }
            double sprung = car.sprung().mass() * car.sprung().share(end);
            double mu = axle.unsprung().mass();
            double lift = Air.DENSITY
                    / 2
                    * v2
                    * (end == End.FRONT ? car.air().frontLiftArea() : car.air().rearLiftArea());
            double vertical = push - (sprung * g + (i == 0 ? -1 : 1) * moved / car.wheelbase() - lift);
            double tyres = left.load() + right.load() - push - mu * g;
            double link = side - mu * ay;
            double arm = hs + heaves[i] - z;
            bodyRoll[i] =
                    moment - link * (arm + z) + heightMoment - sprung * g * arm * rolls[i] - (i == 0 ? torque : 0);
            double rest = car.staticLoad(end, Side.RIGHT) - car.staticLoad(end, Side.LEFT);
            double axleRoll = half * (right.load() - left.load() - rest)
                    - moment
                    - heightMoment
                    - sprung * g * z * tilt
                    - mu * (ay + g * tilt) * axle.unsprung().height()
                    + (car.drive().axle() == end ? torque : 0);
            worst = Math.max(worst, Math.abs(vertical));
            worst = Math.max(worst, Math.abs(tyres));
            worst = Math.max(worst, Math.abs(axleRoll));
            torqueSum += bodyRoll[i];
        }
        if (Double.isInfinite(car.chassisTorsionalStiffness())) {
            worst = Math.max(worst, Math.abs(torqueSum));
            worst = Math.max(worst, mass * g * Math.abs(rolls[0] - rolls[1]));
        } else {
            double twist = car.chassisTorsionalStiffness() * (rolls[1] - rolls[0]);
            worst = Math.max(worst, Math.abs(bodyRoll[0] - twist));
            worst = Math.max(worst, Math.abs(bodyRoll[1] + twist));
        }
        worst = Math.max(worst, Math.abs(forward));
        worst = Math.max(worst, Math.abs(sideways));
        worst = Math.max(worst, Math.abs(yaw));
        return worst / (mass * g);
    }
}
