package evenhand.ride;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.suspension.AxleSuspension;

/**
 * Rates of one axle at its wheels as the car stands, per wheel, N/m. Springs and stops are one force: a car that stands
 * on its bump stop has the stop's rate in them, and a spring that is loose at rest adds none.
 *
 * <p>Source: Milliken &amp; Milliken 1995 ch. 16; Gillespie 1992 ch. 5 and 6.
 *
 * @param heave both wheels together: the tangent of springs and stops at rest
 * @param ride heave with the tyre in series
 * @param roll opposite wheels, without the bar: 2·K/track², K roll stiffness of springs and stops about the roll centre
 * @param rollWithBar the same with the bar
 * @param tyre vertical rate of a tyre
 */
public record WheelRates(double heave, double ride, double roll, double rollWithBar, double tyre) {
    /** The rates at one end of a car at its ride height. */
    public static WheelRates of(Car car, End end) {
        Axle axle = car.axle(end);
        AxleSuspension suspension = AxleSuspension.of(car, end);
        suspension.at(0, 0, axle.geometry().rollCentreHeight());
        double heave = suspension.forceByTravel / 2;
        double tyre = axle.tyre().verticalRate();
        double perWheel = 2 / (axle.track() * axle.track());
        return new WheelRates(
                heave,
                heave * tyre / (heave + tyre),
                perWheel * (suspension.momentByRoll - axle.barRollStiffness()),
                perWheel * suspension.momentByRoll,
                tyre);
    }

    /** One wheel alone over a bump, without the bar: half heave, half roll. */
    public double oneWheel() {
        return (heave + roll) / 2;
    }
}
