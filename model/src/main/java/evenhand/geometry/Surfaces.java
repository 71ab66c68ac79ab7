package evenhand.geometry;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Smooth figures of two variables over a box, as sums of products of Chebyshev polynomials:
 *
 * <pre>  f(x, y) = Σ c_ij·T_i(ξ)·T_j(η)  </pre>
 * ξ, η the place in the box from −1 to 1. Beyond the box each polynomial goes on along its tangent, so that a figure and its
 * slopes have no jump there. Immutable; a {@link Reading} evaluates it and allocates nothing.
 *
 * <p>Source: Trefethen, Approximation Theory and Approximation Practice, 2013, ch. 3 and 4 (from memory).
 */
public final class Surfaces {
    /** Terms are left out that are smaller than this part of what the fit may leave out anyway. */
    private static final double NOTHING = 0.2;

    /** Terms that differ by no more are alike. */
    private static final double ALIKE = 1e-9;

    /** Where figures are known: both ends of both variables. */
    public record Box(double lowX, double highX, double lowY, double highY) {}

    /** What knows the figures exactly. */
    @FunctionalInterface
    public interface Source {
        /** Sets the figures at a place; false where there is none. */
        boolean at(double x, double y, double[] figures);
    }

    /**
     * What came of a fit.
     *
     * @param tail of each figure the greatest term of the two highest orders in either variable: about what the fit leaves out
     * @param ordersX how many polynomials of x are worth it: two more than have a term greater than what may be left out
     */
    public record Fit(Surfaces surfaces, double[] tail, int ordersX) {}

    /** One figure: its terms by order in x, those of an order in y from {@code first} on in steps of one or two. */
    private record Figure(int[] first, int[] step, double[][] terms) {
        double term(int i, int j) {
            if (i >= terms.length) {
                return 0;
            }
            int n = (j - first[i]) / step[i];
            return j >= first[i] && (j - first[i]) % step[i] == 0 && n < terms[i].length ? terms[i][n] : 0;
        }
    }

    private final Box box;
    private final int ordersX;
    private final int ordersY;
    private final Figure[] figures;

    private Surfaces(Box box, int ordersX, int ordersY, Figure[] figures) {
        this.box = box;
        this.ordersX = ordersX;
        this.ordersY = ordersY;
        this.figures = figures;
    }

    /**
     * Fits figures at the zeros of the first polynomial left out, row by row there and back, so that each place is asked from
     * its neighbour.
     *
     * @param ordersX how many polynomials of x, and so of places along x
     * @param ordersY of y; one for figures of x alone
     * @param leftOut what may be left out of each figure
     * @return none where the source knows no figures at one of the places
     */
    public static Optional<Fit> fit(Box box, int ordersX, int ordersY, double[] leftOut, Source source) {
        int count = leftOut.length;
        double[][] values = new double[count][ordersX * ordersY];
        double[] here = new double[count];
        for (int i = 0; i < ordersX; i++) {
            double x = place(box.lowX, box.highX, i, ordersX);
            for (int step = 0; step < ordersY; step++) {
                int j = i % 2 == 0 ? step : ordersY - 1 - step;
                if (!source.at(x, place(box.lowY, box.highY, j, ordersY), here)) {
                    return Optional.empty();
                }
                for (int k = 0; k < count; k++) {
                    values[k][i * ordersY + j] = here[k];
                }
            }
        }
        Figure[] figures = new Figure[count];
        double[] tail = new double[count];
        int worth = 1;
        double[] acrossX = cosines(ordersX);
        double[] acrossY = cosines(ordersY);
        for (int k = 0; k < count; k++) {
            double[] terms = terms(values[k], acrossX, ordersX, acrossY, ordersY);
            tail[k] = tail(terms, ordersX, ordersY);
            worth = Math.max(worth, ordersX(terms, ordersX, ordersY, leftOut[k]));
            figures[k] = figure(terms, ordersX, ordersY, NOTHING * leftOut[k]);
        }
        return Optional.of(new Fit(new Surfaces(box, ordersX(figures), ordersY(figures), figures), tail, worth + 2));
    }

    private static int ordersX(double[] terms, int ordersX, int ordersY, double leftOut) {
        for (int at = ordersX * ordersY - 1; at >= 0; at--) {
            if (Math.abs(terms[at]) > leftOut) {
                return at / ordersY + 1;
            }
        }
        return 0;
    }

    /** These figures and, behind them, others of the same box, or of the same x alone. */
    public Surfaces with(Surfaces others) {
        if (box.lowX != others.box.lowX || box.highX != others.box.highX) {
            throw new IllegalArgumentException("figures of different boxes");
        }
        Figure[] all = Arrays.copyOf(figures, figures.length + others.figures.length);
        System.arraycopy(others.figures, 0, all, figures.length, others.figures.length);
        return new Surfaces(box, ordersX(all), ordersY(all), all);
    }

    public Box box() {
        return box;
    }

    /** How many polynomials of x have any term; at least one. */
    private static int ordersX(Figure[] figures) {
        int orders = 1;
        for (Figure figure : figures) {
            for (int i = 0; i < figure.terms.length; i++) {
                if (figure.terms[i].length > 0) {
                    orders = Math.max(orders, i + 1);
                }
            }
        }
        return orders;
    }

    private static int ordersY(Figure[] figures) {
        int orders = 1;
        for (Figure figure : figures) {
            for (int i = 0; i < figure.terms.length; i++) {
                if (figure.terms[i].length > 0) {
                    orders = Math.max(orders, figure.first[i] + (figure.terms[i].length - 1) * figure.step[i] + 1);
                }
            }
        }
        return orders;
    }

    private static double place(double low, double high, int i, int orders) {
        return (low + high) / 2 - (high - low) / 2 * Math.cos(Math.PI * (i + 0.5) / orders);
    }

    private static final Map<Integer, double[]> COSINES = new ConcurrentHashMap<>();

    /** T_i at the places, weighted so that their products with the values add up to the terms. */
    private static double[] cosines(int orders) {
        return COSINES.computeIfAbsent(orders, Surfaces::cosinesOf);
    }

    private static double[] cosinesOf(int orders) {
        double[] weights = new double[orders * orders];
        for (int i = 0; i < orders; i++) {
            for (int k = 0; k < orders; k++) {
                double sign = i % 2 == 0 ? 1 : -1; // places run from −1 upwards
                weights[i * orders + k] = sign * (i == 0 ? 1 : 2) * Math.cos(Math.PI * i * (k + 0.5) / orders) / orders;
            }
        }
        return weights;
    }

    /** First across x, then across y; places are counted on, as in {@link evenhand.linear.LinearSolve}. */
    private static double[] terms(double[] values, double[] acrossX, int ordersX, double[] acrossY, int ordersY) {
        double[] half = new double[ordersX * ordersY];
        for (int i = 0; i < ordersX; i++) {
            int row = i * ordersY;
            for (int k = 0; k < ordersX; k++) {
                double weight = acrossX[i * ordersX + k];
                for (int to = row, from = k * ordersY; to < row + ordersY; to++, from++) {
                    half[to] += weight * values[from];
                }
            }
        }
        double[] terms = new double[ordersX * ordersY];
        for (int i = 0; i < ordersX; i++) {
            int row = i * ordersY;
            for (int j = 0; j < ordersY; j++) {
                double sum = 0;
                for (int at = j * ordersY, from = row; from < row + ordersY; at++, from++) {
                    sum += acrossY[at] * half[from];
                }
                terms[row + j] = sum;
            }
        }
        return terms;
    }

    private static double tail(double[] terms, int ordersX, int ordersY) {
        double tail = 0;
        for (int i = 0; i < ordersX; i++) {
            for (int j = 0; j < ordersY; j++) {
                if (i >= ordersX - 2 || (ordersY > 1 && j >= ordersY - 2)) {
                    tail = Math.max(tail, Math.abs(terms[i * ordersY + j]));
                }
            }
        }
        return tail;
    }

    /** Leaves out what is nothing: behind the last term of an order in x, and every second one where the axle is alike. */
    private static Figure figure(double[] terms, int ordersX, int ordersY, double nothing) {
        int[] first = new int[ordersX];
        int[] step = new int[ordersX];
        double[][] kept = new double[ordersX][];
        for (int i = 0; i < ordersX; i++) {
            int last = -1;
            boolean even = false;
            boolean odd = false;
            for (int j = 0; j < ordersY; j++) {
                if (Math.abs(terms[i * ordersY + j]) > nothing) {
                    last = j;
                    even |= j % 2 == 0;
                    odd |= j % 2 == 1;
                }
            }
            first[i] = odd && !even ? 1 : 0;
            step[i] = odd && even ? 1 : 2;
            int count = last < 0 ? 0 : (last - first[i]) / step[i] + 1;
            kept[i] = new double[count];
            for (int n = 0; n < count; n++) {
                kept[i][n] = terms[i * ordersY + first[i] + n * step[i]];
            }
        }
        int orders = 0;
        for (int i = 0; i < ordersX; i++) {
            orders = kept[i].length > 0 ? i + 1 : orders;
        }
        return new Figure(first, step, Arrays.copyOf(kept, orders));
    }

    /**
     * The same figures seen in a mirror, which turns y round: f_k(x, y) = sign_k·f_from(k)(x, −y). The box must be alike on both
     * sides of y = 0.
     */
    public Surfaces mirrored(int[] from, double[] sign) {
        Figure[] seen = new Figure[figures.length];
        for (int k = 0; k < figures.length; k++) {
            Figure figure = figures[from[k]];
            double[][] terms = new double[figure.terms.length][];
            for (int i = 0; i < terms.length; i++) {
                terms[i] = figure.terms[i].clone();
                for (int n = 0; n < terms[i].length; n++) {
                    terms[i][n] *= (figure.first[i] + n * figure.step[i]) % 2 == 0 ? sign[k] : -sign[k];
                }
            }
            seen[k] = new Figure(figure.first, figure.step, terms);
        }
        return new Surfaces(box, ordersX, ordersY, seen);
    }

    /** Whether another has the same terms over the same box, to what is far below any figure's meaning. */
    public boolean isLike(Surfaces other) {
        if (!box.equals(other.box)) {
            return false;
        }
        for (int k = 0; k < figures.length; k++) {
            for (int i = 0; i < Math.max(ordersX, other.ordersX); i++) {
                for (int j = 0; j < Math.max(ordersY, other.ordersY); j++) {
                    double term = figures[k].term(i, j);
                    if (Math.abs(term - other.figures[k].term(i, j)) > ALIKE * Math.max(1, Math.abs(term))) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** Whether a place lies in the box. */
    public boolean covers(double x, double y) {
        return x >= box.lowX && x <= box.highX && (ordersY == 1 || (y >= box.lowY && y <= box.highY));
    }

    /** How many terms are evaluated in all. */
    int terms() {
        int count = 0;
        for (Figure figure : figures) {
            for (double[] terms : figure.terms) {
                count += terms.length;
            }
        }
        return count;
    }

    /** Makes something that evaluates them. One per thread. */
    public Reading reading() {
        return new Reading();
    }

    /** Evaluates figures at one place at a time. */
    public final class Reading {
        /** The figure read last and its slopes. */
        public double value;

        public double byX;
        public double byY;

        /** Its second slopes, set by {@link #bend} alone. */
        public double byXX;

        public double byXY;
        public double byYY;

        private double placeX = Double.NaN;
        private double placeY = Double.NaN;
        private final double[] x = new double[ordersX];
        private final double[] dx = new double[ordersX];
        private final double[] ddx = new double[ordersX];
        private final double[] y = new double[ordersY];
        private final double[] dy = new double[ordersY];
        private final double[] ddy = new double[ordersY];

        private Reading() {
            y[0] = 1;
        }

        /** Goes to a place; where it is there already it has nothing to do. */
        public void at(double atX, double atY) {
            atX(atX);
            if (atY != placeY) {
                placeY = atY;
                polynomials(atY, box.lowY, box.highY, y, dy, ddy);
            }
        }

        /** The same for figures of x alone. */
        public void atX(double atX) {
            if (atX != placeX) {
                placeX = atX;
                polynomials(atX, box.lowX, box.highX, x, dx, ddx);
            }
        }

        /** Reads a figure and its slopes. */
        public void read(int k) {
            Figure figure = figures[k];
            double sum = 0;
            double sumByX = 0;
            double sumByY = 0;
            for (int i = 0; i < figure.terms.length; i++) {
                double[] terms = figure.terms[i];
                int j = figure.first[i];
                int step = figure.step[i];
                double along = 0;
                double alongByY = 0;
                for (double term : terms) {
                    along += term * y[j];
                    alongByY += term * dy[j];
                    j += step;
                }
                sum += along * x[i];
                sumByX += along * dx[i];
                sumByY += alongByY * x[i];
            }
            value = sum;
            byX = sumByX;
            byY = sumByY;
        }

        /** Reads a figure, its slopes and theirs. */
        public void bend(int k) {
            Figure figure = figures[k];
            double sum = 0;
            double sumByX = 0;
            double sumByY = 0;
            double sumByXX = 0;
            double sumByXY = 0;
            double sumByYY = 0;
            for (int i = 0; i < figure.terms.length; i++) {
                double[] terms = figure.terms[i];
                int j = figure.first[i];
                int step = figure.step[i];
                double along = 0;
                double alongByY = 0;
                double alongByYY = 0;
                for (double term : terms) {
                    along += term * y[j];
                    alongByY += term * dy[j];
                    alongByYY += term * ddy[j];
                    j += step;
                }
                sum += along * x[i];
                sumByX += along * dx[i];
                sumByY += alongByY * x[i];
                sumByXX += along * ddx[i];
                sumByXY += alongByY * dx[i];
                sumByYY += alongByYY * x[i];
            }
            value = sum;
            byX = sumByX;
            byY = sumByY;
            byXX = sumByXX;
            byXY = sumByXY;
            byYY = sumByYY;
        }
    }

    /**
     * T_n and its slopes over the variable itself, by T_n+1 = 2·ξ·T_n − T_n−1 and its derivatives; beyond the box along the
     * tangent at its end.
     */
    private static void polynomials(double at, double low, double high, double[] t, double[] dt, double[] ddt) {
        double scale = 2 / (high - low);
        double xi = (at - low) * scale - 1;
        double within = Math.max(-1, Math.min(1, xi));
        t[0] = 1;
        dt[0] = 0;
        ddt[0] = 0;
        if (t.length == 1) {
            return;
        }
        t[1] = within;
        dt[1] = scale;
        ddt[1] = 0;
        double twice = 2 * within;
        for (int n = 2; n < t.length; n++) {
            t[n] = twice * t[n - 1] - t[n - 2];
            dt[n] = 2 * scale * t[n - 1] + twice * dt[n - 1] - dt[n - 2];
            ddt[n] = 4 * scale * dt[n - 1] + twice * ddt[n - 1] - ddt[n - 2];
        }
        if (xi != within) {
            double over = (xi - within) / scale;
            for (int n = 1; n < t.length; n++) {
                t[n] += dt[n] * over;
                ddt[n] = 0;
            }
        }
    }
}
