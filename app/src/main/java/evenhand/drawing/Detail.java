package evenhand.drawing;

import evenhand.car.Car;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.Numbers;
import evenhand.words.Units;

/**
 * What a drawing says, and how.
 *
 * @param units for lengths
 * @param load unit of the weight on a tyre: N, kgf or lbf
 * @param dimensions whether wheelbase, track and heights are written
 */
public record Detail(Units units, Unit load, boolean dimensions) {
    /** Newton or pound-force, no dimensions. */
    public static Detail usual(Units units) {
        return new Detail(units, units.of(Dimension.FORCE), false);
    }

    /** "255 mm", "10.04 in". */
    String length(double si) {
        return units.show(si, Dimension.LENGTH, units == Units.METRIC ? 0 : 2);
    }

    /** "0.76 deg tail out"; the angle counts inwards. */
    String sideslip(double si) {
        return units.show(Math.abs(si), Dimension.ANGLE, 2) + (si < 0 ? " tail out" : " nose out");
    }

    /** "2740 N", "279 kgf". */
    String load(double si) {
        return Numbers.fixed(load.fromSi(si), 0) + " " + load.symbol();
    }

    /** A round length for a scale bar: a good part of the car, m. */
    double scaleBar(Car car) {
        if (units == Units.METRIC) {
            return 0.5;
        }
        return Dimension.LENGTH.imperial().toSi(20);
    }
}
