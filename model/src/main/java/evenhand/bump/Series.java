package evenhand.bump;

import java.util.List;

/**
 * What happened, at even steps of time from the moment at which the wheel meets the event. SI. It holds at most {@value
 * #MOST} rows: the step is {@value #FINEST} s, doubled as often as a long event needs.
 *
 * @param time s
 * @param road height under the wheel, m
 * @param bodyAcceleration upwards, m/s²
 * @param travel bump travel of the wheel, m
 * @param tyreLoad N
 * @param wheel how far the middle of the wheel has moved upwards since, m
 */
public record Series(
        List<Double> time,
        List<Double> road,
        List<Double> bodyAcceleration,
        List<Double> travel,
        List<Double> tyreLoad,
        List<Double> wheel) {
    public static final int MOST = 10_000;
    public static final double FINEST = 1e-3;

    public Series {
        time = List.copyOf(time);
        road = List.copyOf(road);
        bodyAcceleration = List.copyOf(bodyAcceleration);
        travel = List.copyOf(travel);
        tyreLoad = List.copyOf(tyreLoad);
        wheel = List.copyOf(wheel);
    }

    /** Collects the rows. */
    static final class Recorder {
        private static final int COLUMNS = 5;

        private final Rows rows;

        Recorder(double finest) {
            rows = new Rows(COLUMNS, finest);
        }

        /** When the next row is due, s. */
        double due() {
            return rows.due();
        }

        void add(double road, double bodyAcceleration, double travel, double tyreLoad, double wheel) {
            rows.put(0, road);
            rows.put(1, bodyAcceleration);
            rows.put(2, travel);
            rows.put(3, tyreLoad);
            rows.put(4, wheel);
            rows.next();
        }

        Series series() {
            return new Series(
                    rows.times(), rows.column(0), rows.column(1), rows.column(2), rows.column(3), rows.column(4));
        }
    }
}
