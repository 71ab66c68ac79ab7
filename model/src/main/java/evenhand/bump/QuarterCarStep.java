package evenhand.bump;

import static evenhand.bump.DormandPrince.ERROR;
import static evenhand.bump.DormandPrince.PLACES;
import static evenhand.bump.DormandPrince.STAGES;
import static evenhand.bump.DormandPrince.TIMES;
import static evenhand.bump.DormandPrince.WEIGHTS;

import evenhand.road.Piece;
import evenhand.suspension.DamperLines;
import evenhand.suspension.ForceLines;

/**
 * One step in time of a {@link WheelStation} over a smooth stretch of road, on one straight piece of spring and damper
 * and with the tyre on the ground or off it throughout: within a step nothing bends. Where it would have bent is for
 * {@link Crossing} to find.
 *
 * <p>The beginning of the step stands in the fields without a prefix, what {@link #attempt} found at its end in those
 * that begin with {@code next}; {@link #keep} makes the end the beginning. Nothing is allocated.
 */
final class QuarterCarStep {
    final WheelStation station;

    double time;
    double body;
    double bodySpeed;
    double bodyPull; // acceleration
    double wheel;
    double wheelSpeed;
    double wheelPull;
    double roadHeight;
    double roadRise; // per s

    double nextBody;
    double nextBodySpeed;
    double nextBodyPull;
    double nextWheel;
    double nextWheelSpeed;
    double nextWheelPull;
    double nextRoadHeight;
    double nextRoadRise;

    /** Work that the road did and that the damper took, J, up to the beginning of the step. */
    double roadWork;

    double damped;

    int springPiece;
    int damperPiece;
    boolean onGround;

    private final ForceLines spring;
    private final DamperLines damper;
    private final double bodyMass;
    private final double wheelMass;
    private final double tyreRate;
    private final double springAtRest;
    private final double tyreAtRest;
    private final double tolerance;
    private final double speedTolerance;

    private Piece road;
    private double speed;
    private double roadOrigin; // x − speed·time

    private final double[] bodySpeeds = new double[STAGES];
    private final double[] bodyPulls = new double[STAGES];
    private final double[] wheelSpeeds = new double[STAGES];
    private final double[] wheelPulls = new double[STAGES];
    private final double[] roadPowers = new double[STAGES];
    private final double[] damperPowers = new double[STAGES];
    private double nextRoadWork;
    private double nextDamped;

    /** Speeds may be wrong by the tolerance of places times this, 1/s: a wheel's hop. */
    private static final double SPEED_SCALE = 60;

    /**
     * @param tolerance error of a step in the places of body and wheel, m
     */
    QuarterCarStep(WheelStation station, double tolerance) {
        this.station = station;
        this.tolerance = tolerance;
        speedTolerance = SPEED_SCALE * tolerance;
        spring = station.suspension();
        damper = station.damper();
        bodyMass = station.bodyMass();
        wheelMass = station.wheelMass();
        tyreRate = station.tyreRate();
        springAtRest = spring.force(station.travel());
        tyreAtRest = Math.max(0, station.tyreHeld());
        springPiece = spring.pieceAt(station.travel());
        damperPiece = damper.pieceAt(damper.over(station.travel(), 0));
        road = new Piece.Line(0, 1, 0, 0);
    }

    /** Another stretch of road from here on; where the road jumps, the tyre takes the work of it. */
    void enter(Piece stretch, double drivingSpeed, double from) {
        double before = tyreEnergy(deflection());
        road = stretch;
        speed = drivingSpeed;
        roadOrigin = from - drivingSpeed * time;
        roadHeight = stretch.height(from);
        roadRise = stretch.slope(from) * drivingSpeed;
        roadWork += tyreEnergy(deflection()) - before;
        onGround = deflection() > 0;
        bend();
    }

    /** The pieces have changed: their lines, and the accelerations at the beginning of the step. */
    void bend() {
        stage(0, body, bodySpeed, wheel, wheelSpeed, roadHeight, roadRise);
        bodyPull = bodyPulls[0];
        wheelPull = wheelPulls[0];
    }

    private void stage(
            int s, double body, double bodySpeed, double wheel, double wheelSpeed, double height, double rise) {
        double closing = wheelSpeed - bodySpeed;
        double travel = station.travel() + wheel - body;
        double damping = damper.force(damperPiece, travel, closing);
        double push = spring.force(springPiece, travel) + damping - springAtRest;
        double tyre = onGround ? station.tyreHeld() + tyreRate * (height - wheel) : 0;
        bodySpeeds[s] = bodySpeed;
        wheelSpeeds[s] = wheelSpeed;
        bodyPulls[s] = push / bodyMass;
        wheelPulls[s] = (tyre - tyreAtRest - push) / wheelMass;
        roadPowers[s] = tyre * rise;
        damperPowers[s] = damping * closing;
    }

    /**
     * Goes a step ahead.
     *
     * @return the error over what is allowed
     */
    double attempt(double length) {
        double height = 0;
        double rise = 0;
        for (int s = 1; s < STAGES; s++) {
            double bodyMove = 0;
            double bodyGain = 0;
            double wheelMove = 0;
            double wheelGain = 0;
            for (int j = 0, at = s * STAGES; j < s; j++, at++) {
                double part = PLACES[at];
                bodyMove += part * bodySpeeds[j];
                bodyGain += part * bodyPulls[j];
                wheelMove += part * wheelSpeeds[j];
                wheelGain += part * wheelPulls[j];
            }
            nextBody = body + length * bodyMove;
            nextBodySpeed = bodySpeed + length * bodyGain;
            nextWheel = wheel + length * wheelMove;
            nextWheelSpeed = wheelSpeed + length * wheelGain;
            if (s < STAGES - 1) { // the last stage stands where the one before it does
                double x = roadOrigin + speed * (time + TIMES[s] * length);
                height = road.height(x);
                rise = road.slope(x) * speed;
            }
            stage(s, nextBody, nextBodySpeed, nextWheel, nextWheelSpeed, height, rise);
        }
        nextRoadHeight = height;
        nextRoadRise = rise;
        nextBodyPull = bodyPulls[STAGES - 1];
        nextWheelPull = wheelPulls[STAGES - 1];
        nextRoadWork = length * together(WEIGHTS, roadPowers);
        nextDamped = length * together(WEIGHTS, damperPowers);
        double places =
                Math.max(Math.abs(together(ERROR, bodySpeeds)), Math.abs(together(ERROR, wheelSpeeds))) / tolerance;
        double speeds =
                Math.max(Math.abs(together(ERROR, bodyPulls)), Math.abs(together(ERROR, wheelPulls))) / speedTolerance;
        return length * Math.max(places, speeds);
    }

    /** Σ parts·stages. */
    private static double together(double[] parts, double[] stages) {
        double sum = 0;
        for (int s = 0; s < STAGES; s++) {
            sum += parts[s] * stages[s];
        }
        return sum;
    }

    /** Makes the end of the last attempt the beginning of the next step. */
    void keep(double endTime) {
        time = endTime;
        body = nextBody;
        bodySpeed = nextBodySpeed;
        bodyPull = nextBodyPull;
        wheel = nextWheel;
        wheelSpeed = nextWheelSpeed;
        wheelPull = nextWheelPull;
        roadHeight = nextRoadHeight;
        roadRise = nextRoadRise;
        roadWork += nextRoadWork;
        damped += nextDamped;
        int last = STAGES - 1;
        bodySpeeds[0] = bodySpeeds[last];
        bodyPulls[0] = bodyPulls[last];
        wheelSpeeds[0] = wheelSpeeds[last];
        wheelPulls[0] = wheelPulls[last];
        roadPowers[0] = roadPowers[last];
        damperPowers[0] = damperPowers[last];
    }

    /** Height of the road after a time from the beginning of the step, m. */
    double roadHeight(double later) {
        return road.height(roadOrigin + speed * (time + later));
    }

    double roadRise(double later) {
        return road.slope(roadOrigin + speed * (time + later)) * speed;
    }

    double travel() {
        return station.travel() + wheel - body;
    }

    double travelRate() {
        return wheelSpeed - bodySpeed;
    }

    double nextTravel() {
        return station.travel() + nextWheel - nextBody;
    }

    double travelPull() {
        return wheelPull - bodyPull;
    }

    double nextTravelPull() {
        return nextWheelPull - nextBodyPull;
    }

    double nextTravelRate() {
        return nextWheelSpeed - nextBodySpeed;
    }

    /** How far the tyre is pressed in, m; below zero its distance from the road. */
    double deflection() {
        return roadHeight - wheel + station.tyreHeld() / tyreRate;
    }

    double nextDeflection() {
        return nextRoadHeight - nextWheel + station.tyreHeld() / tyreRate;
    }

    double deflectionRate() {
        return roadRise - wheelSpeed;
    }

    double nextDeflectionRate() {
        return nextRoadRise - nextWheelSpeed;
    }

    /** Load of a tyre pressed in so far, N. */
    double tyreLoad(double deflection) {
        return onGround ? Math.max(0, tyreRate * deflection) : 0;
    }

    /** Acceleration of the body at a travel and its rate, on the pieces of this step. */
    double bodyPull(double travel, double travelRate) {
        return (spring.force(springPiece, travel) + damper.force(damperPiece, travel, travelRate) - springAtRest)
                / bodyMass;
    }

    /** Its rate of change. */
    double bodyJerk(double travel, double travelRate, double travelPull) {
        return (spring.slope(springPiece, travel) * travelRate
                        + damper.forceRate(damperPiece, travel, travelRate, travelPull))
                / bodyMass;
    }

    private double tyreEnergy(double deflection) {
        return deflection > 0 ? tyreRate * deflection * deflection / 2 : 0;
    }

    /** Energy of motion, spring, tyre and heights, less what all of it would be at rest on the road here, J. */
    double energyAboveRest() {
        return energy() - tyreAtRest * roadHeight;
    }

    /** Energy of motion, spring, tyre and heights, less that of the balance in the beginning, J. */
    double energy() {
        return (bodyMass * bodySpeed * bodySpeed + wheelMass * wheelSpeed * wheelSpeed) / 2
                + spring.work(station.travel(), travel())
                - springAtRest * (wheel - body)
                + tyreAtRest * wheel
                + tyreEnergy(deflection())
                - tyreEnergy(station.tyreHeld() / tyreRate);
    }
}
