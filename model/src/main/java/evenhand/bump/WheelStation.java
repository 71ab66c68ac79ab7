package evenhand.bump;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;
import evenhand.suspension.DamperLines;
import evenhand.suspension.ForceLines;
import evenhand.suspension.WheelDamper;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A wheel with what stands on it, in balance: the quarter car as it is before the event. A live axle's is half the axle
 * in heave. In mid-corner the roll is held: both wheels of an axle meet the event together, each with the load, travel
 * and spring that the turn gives it.
 *
 * <pre>
 *  u = travel + w − z                    bump travel, from rest on level ground
 *  m_s·z'' = S(u) + D(u') − S(travel)    body, up
 *  m_u·w'' = T(r − w) − T(0) − S(u) − D(u') + S(travel)
 *  T = max(0, held + k·(r − w))          tyre, no damping of its own
 * </pre>
 * z body, w wheel, r road, m from this balance, up positive. Besides what is written here nothing changes during the
 * event: bars, jacking and the turn itself keep the share that they have.
 *
 * @param bodyMass m_s, what the springs of this side carry at rest over g, kg
 * @param wheelMass m_u, half the axle's unsprung mass, kg
 * @param suspension S, spring and stops over mean travel u, N
 * @param damper D over u', N, where its leverage changes also over mean travel
 * @param tyreRate k, N/m
 * @param tyreHeld load of the tyre in balance, N; below zero a wheel that hangs so far above the road
 * @param travel mean travel of the axle in balance, m
 * @param wheelMore how much more than the mean this wheel travels, by roll, m
 * @param touches mean travel at which the bump stop is touched, m; ∞ without one
 * @param metal mean travel at which metal meets, m; ∞ where it is not known
 * @param droopEnd mean travel at which the droop stop is reached, m; −∞ without one
 * @param grip side force by load, N
 */
record WheelStation(
        double bodyMass,
        double wheelMass,
        ForceLines suspension,
        DamperLines damper,
        double tyreRate,
        double tyreHeld,
        double travel,
        double wheelMore,
        double touches,
        double metal,
        double droopEnd,
        SideGrip grip) {

    /** The mean wheel of an axle as the car stands; nothing where its spring holds it up nowhere. */
    static Optional<WheelStation> atRest(Car car, End end) {
        Axle axle = car.axle(end);
        AxleSuspension suspension = AxleSuspension.of(car, end);
        ForceLines lines = suspension.half();
        double load = car.axleLoad(end) / 2;
        double wheelMass = axle.unsprung().mass() / 2;
        double sprung = load - wheelMass * Weights.GRAVITY;
        OptionalDouble stands = lines.placeOf(sprung);
        if (suspension.heaveRate() <= 0 || stands.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new WheelStation(
                sprung / Weights.GRAVITY,
                wheelMass,
                lines,
                WheelDamper.half(car, end),
                axle.tyre().verticalRate(),
                load,
                stands.getAsDouble(),
                0,
                -suspension.bumpDeflection(0, 0, Side.LEFT),
                -suspension.metalDeflection(0, 0, Side.LEFT),
                suspension.droopExcess(0, 0, Side.LEFT),
                SideGrip.greatest(axle.tyre().lateral())));
    }

    /** A wheel in mid-corner. */
    static Optional<WheelStation> inTurn(Car car, Wheel wheel, TurnRow row) {
        End end = wheel.end();
        boolean front = end == End.FRONT;
        Side side = wheel.side();
        Axle axle = car.axle(end);
        AxleSuspension suspension = AxleSuspension.of(car, end);
        if (suspension.heaveRate() <= 0) {
            return Optional.empty();
        }
        double leftTravel = row.wheel(Wheel.of(end, Side.LEFT)).travel();
        double rightTravel = row.wheel(Wheel.of(end, Side.RIGHT)).travel();
        double travel = (leftTravel + rightTravel) / 2;
        double roll = (rightTravel - leftTravel) / axle.track();
        double rollCentre = front ? row.frontRollCentreHeight() : row.rearRollCentreHeight();
        double load = car.staticLoad(end, side);
        double wheelMass = axle.unsprung().mass() / 2;
        double y = side.sign() * axle.track() / 2;
        double wheelTravel = row.wheel(wheel).travel();
        double rise = wheelTravel
                + (front ? row.frontHeave() : row.rearHeave())
                + y * (front ? row.frontRoll() : row.rearRoll());
        return Optional.of(new WheelStation(
                load / Weights.GRAVITY - wheelMass,
                wheelMass,
                suspension.side(side, roll, rollCentre),
                WheelDamper.side(car, end, side, roll),
                axle.tyre().verticalRate(),
                load - axle.tyre().verticalRate() * rise,
                travel,
                wheelTravel - travel,
                -suspension.bumpDeflection(0, roll, side),
                -suspension.metalDeflection(0, roll, side),
                suspension.droopExcess(0, roll, side),
                SideGrip.atSlip(
                        axle.tyre().lateral(),
                        row.wheel(wheel).slip(),
                        row.wheel(wheel).lean())));
    }
}
