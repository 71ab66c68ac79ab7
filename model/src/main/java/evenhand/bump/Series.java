package evenhand.bump;

import java.util.Arrays;
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

    /** Collects the rows; allocates when they have doubled, and nothing otherwise. */
    static final class Recorder {
        private static final int COLUMNS = 5;
        private static final int FEW = 1_000;

        private double[] rows = new double[COLUMNS * FEW];
        private final double finest;
        private int count;
        private int every = 1; // finest steps from row to row

        Recorder(double finest) {
            this.finest = finest;
        }

        /** When the next row is due, s. */
        double due() {
            return (double) count * every * finest;
        }

        void add(double road, double bodyAcceleration, double travel, double tyreLoad, double wheel) {
            int at = COLUMNS * count++;
            rows[at] = road;
            rows[at + 1] = bodyAcceleration;
            rows[at + 2] = travel;
            rows[at + 3] = tyreLoad;
            rows[at + 4] = wheel;
            if (count == MOST) {
                thin();
            } else if (COLUMNS * count == rows.length) {
                rows = Arrays.copyOf(rows, Math.min(2 * rows.length, COLUMNS * MOST));
            }
        }

        private void thin() {
            count = MOST / 2;
            every *= 2;
            for (int i = 1; i < count; i++) {
                System.arraycopy(rows, 2 * i * COLUMNS, rows, i * COLUMNS, COLUMNS);
            }
        }

        Series series() {
            Double[] time = new Double[count];
            for (int i = 0; i < count; i++) {
                time[i] = (double) i * every * finest;
            }
            return new Series(Arrays.asList(time), column(0), column(1), column(2), column(3), column(4));
        }

        private List<Double> column(int column) {
            Double[] values = new Double[count];
            for (int i = 0; i < count; i++) {
                values[i] = rows[COLUMNS * i + column];
            }
            return Arrays.asList(values);
        }
    }
}
