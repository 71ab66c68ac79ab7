package evenhand.bump;

import java.util.Arrays;
import java.util.List;

/**
 * Rows of numbers at even steps of time. It holds at most {@value Series#MOST}: the step is doubled as often as a long
 * event needs. Allocates when they have doubled, and nothing otherwise.
 */
final class Rows {
    private static final int FEW = 1_000;

    private final int columns;
    private final double finest;
    private double[] rows;
    private int count;
    private int every = 1; // finest steps from row to row

    /** @param finest step, s */
    Rows(int columns, double finest) {
        this.columns = columns;
        this.finest = finest;
        rows = new double[columns * FEW];
    }

    /** When the next row is due, s. */
    double due() {
        return (double) count * every * finest;
    }

    /** Puts a number into the row that is due. */
    void put(int column, double value) {
        rows[columns * count + column] = value;
    }

    /** The row is full. */
    void next() {
        count++;
        if (count == Series.MOST) {
            thin();
        } else if (columns * count == rows.length) {
            rows = Arrays.copyOf(rows, Math.min(2 * rows.length, columns * Series.MOST));
        }
    }

    private void thin() {
        count = Series.MOST / 2;
        every *= 2;
        for (int i = 1; i < count; i++) {
            System.arraycopy(rows, 2 * i * columns, rows, i * columns, columns);
        }
    }

    List<Double> times() {
        Double[] time = new Double[count];
        for (int i = 0; i < count; i++) {
            time[i] = (double) i * every * finest;
        }
        return Arrays.asList(time);
    }

    List<Double> column(int column) {
        Double[] values = new Double[count];
        for (int i = 0; i < count; i++) {
            values[i] = rows[columns * i + column];
        }
        return Arrays.asList(values);
    }
}
