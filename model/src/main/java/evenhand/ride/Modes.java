package evenhand.ride;

import java.util.OptionalDouble;

/**
 * The two ways in which a {@link QuarterCar} swings by itself, the slower one being the body's and the faster one the
 * wheel's hop.
 *
 * <p>The characteristic polynomial ms·mu·s⁴ + c·(ms + mu)·s³ + ((ks + kt)·ms + ks·mu)·s² + c·kt·s + ks·kt is parted into
 * two real quadratics s² + 2·ζω·s + ω². The resolvent cubic's greatest root pairs conjugate roots, and four real ones
 * the slow with the slow, so that a strongly damped mode keeps its place: it has a ratio above one and no damped
 * frequency. Bairstow's steps take the rounding off.
 */
public record Modes(Mode body, Mode hop) {
    private static final int MOST_STEPS = 200;
    private static final int POLISHING_STEPS = 4;

    /**
     * One mode.
     *
     * @param angularFrequency |λ| = ω, rad/s
     * @param dampingRatio −Re λ/|λ| of a mode that swings; of one that creeps back the mean of its two rates over |λ|,
     *     one or more
     */
    public record Mode(double angularFrequency, double dampingRatio) {
        /** |λ|/2π, Hz; of an undamped car the frequency that it swings with. */
        public double frequency() {
            return angularFrequency / (2 * Math.PI);
        }

        /** Im λ/2π, Hz; none of a mode that creeps back without swinging. */
        public OptionalDouble dampedFrequency() {
            return dampingRatio < 1
                    ? OptionalDouble.of(frequency() * Math.sqrt(1 - dampingRatio * dampingRatio))
                    : OptionalDouble.empty();
        }
    }

    static Modes of(QuarterCar car) {
        double ms = car.sprungMass();
        double mu = car.unsprungMass();
        double ks = car.wheelRate();
        double kt = car.tyreRate();
        double c = car.dampingRate();
        // Time is counted so that the last coefficient is one; the first is divided out.
        double scale = Math.sqrt(Math.sqrt(ks / ms * kt / mu));
        double a3 = c * (ms + mu) / (ms * mu) / scale;
        double a2 = ((ks + kt) / mu + ks / ms) / (scale * scale);
        double a1 = c * kt / (ms * mu) / (scale * scale * scale);

        double sum = greatestRoot(-a2, a1 * a3 - 4, 4 * a2 - a3 * a3 - a1 * a1); // ω²₁ + ω²₂
        double fast = greater(sum, 1);
        double slow = 1 / fast;
        double greater = greater(a3, a2 - sum);
        double lesser = a3 - greater;
        // Each is 2·ζω of one quadratic; of which, the linear coefficient tells.
        double slowDamping =
                Math.abs(greater * slow + lesser * fast - a1) <= Math.abs(greater * fast + lesser * slow - a1)
                        ? lesser
                        : greater;
        for (int i = 0; i < POLISHING_STEPS; i++) {
            // Bairstow: what is left over when the polynomial is divided by the slow quadratic.
            double fastDamping = a3 - slowDamping;
            fast = a2 - slow - slowDamping * fastDamping;
            double linear = a1 - slowDamping * fast - slow * fastDamping;
            double constant = 1 - slow * fast;
            double difference = slowDamping - fastDamping;
            double apart = slow - fast;
            double linearByDamping = apart - slowDamping * difference;
            double determinant = linearByDamping * apart + slow * difference * difference;
            if (!(Math.abs(determinant) > 1e-9)) {
                break; // both modes are one, as exactly as they can be told apart
            }
            slowDamping -= (linear * apart - difference * constant) / determinant;
            slow -= (linearByDamping * constant + slow * difference * linear) / determinant;
        }
        Mode one = mode(slow, slowDamping, scale);
        Mode other = mode(1 / slow, a3 - slowDamping, scale);
        return slow <= 1 ? new Modes(one, other) : new Modes(other, one);
    }

    /** The greater of two numbers with this sum and this product; half the sum where rounding makes them none. */
    private static double greater(double sum, double product) {
        return (sum + Math.sqrt(Math.max(0, sum * sum - 4 * product))) / 2;
    }

    private static Mode mode(double square, double damping, double scale) {
        double angular = Math.sqrt(square);
        return new Mode(angular * scale, damping / (2 * angular));
    }

    /**
     * Greatest real root of y³ + a·y² + b·y + c, which is two or more. Newton's method from above goes straight down to the
     * greatest of three roots; where it shoots past a single one, halving brings it back.
     */
    private static double greatestRoot(double a, double b, double c) {
        double low = 2;
        double high = 1 + Math.max(Math.abs(a), Math.max(Math.abs(b), Math.abs(c)));
        double y = high;
        for (int i = 0; i < MOST_STEPS; i++) {
            double value = ((y + a) * y + b) * y + c;
            double next = y - value / ((3 * y + 2 * a) * y + b);
            if (value > 0) {
                high = y;
            } else {
                low = y;
            }
            if (!(next >= low && next <= high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - y) <= 1e-16 * y) {
                break;
            }
            y = next;
        }
        return y;
    }
}
