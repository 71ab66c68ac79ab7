package evenhand.ride;

import evenhand.car.End;

/**
 * Where a {@link HalfCar} swings by itself: roots s of {@code Pf·Pr − s⁴·m²·Df·Dr} with positive imaginary part, by the steps
 * of Ehrlich and Aberth from the modes of its ends, all at once, so that no two run to the same one. They are wanted no
 * closer than an integral's panels need them: to a small part of their distance from the axis of real frequencies. What
 * creeps back without swinging is left out; it is smooth along that axis.
 *
 * <pre>  P = M·mu·s⁴ + c·(M + mu)·s³ + ((ks + kt)·M + ks·mu)·s² + c·kt·s + ks·kt     D = mu·s² + c·s + ks + kt  </pre>
 */
final class HalfCarPoles {
    private static final int MOST = 4;
    private static final int MOST_STEPS = 30;

    /** A root is near enough when a step moved it by this part of its distance from the axis. */
    private static final double NEAR_ENOUGH = 0.1;

    /** Two ends that swing alike start so far apart, as a ratio. */
    private static final double APART = 1.01;

    int count;

    /** Frequency, Hz, and distance from the axis, Hz. */
    final double[] frequency = new double[MOST];

    final double[] away = new double[MOST];

    /** The roots themselves, rad/s. */
    final double[] real = new double[MOST];

    final double[] imaginary = new double[MOST];

    private final double between;
    private final double[][] ends = new double[2][];

    private double valueRe;
    private double valueIm;
    private double slopeRe;
    private double slopeIm;

    /** Starts from the modes of both ends by themselves. */
    HalfCarPoles(HalfCar car, Modes front, Modes rear) {
        between = car.massBetween();
        for (End end : End.values()) {
            QuarterCar one = car.end(end);
            double mass = car.massOver(end);
            double ks = one.wheelRate();
            double kt = one.tyreRate();
            double mu = one.unsprungMass();
            double c = one.dampingRate();
            ends[end.ordinal()] = new double[] {
                ks * kt, c * kt, (ks + kt) * mass + ks * mu, c * (mass + mu), mass * mu, ks + kt, c, mu
            };
            Modes modes = end == End.FRONT ? front : rear;
            start(modes.body(), end);
            start(modes.hop(), end);
        }
        approach();
        for (int k = 0; k < count; k++) {
            frequency[k] = imaginary[k] / (2 * Math.PI);
            away[k] = Math.abs(real[k]) / (2 * Math.PI);
        }
    }

    private void start(Modes.Mode mode, End end) {
        if (mode.dampingRatio() < 1) {
            double w = mode.angularFrequency() * (end == End.REAR ? APART : 1);
            double ratio = mode.dampingRatio();
            real[count] = -w * ratio;
            imaginary[count] = w * Math.sqrt(1 - ratio * ratio);
            count++;
        }
    }

    private void approach() {
        for (int step = 0; step < MOST_STEPS; step++) {
            boolean near = true;
            for (int k = 0; k < count; k++) {
                near &= improve(k);
            }
            if (near) {
                return;
            }
        }
    }

    /** One step of one root, which closes in by the cube of what is left; whether that was near enough. */
    boolean improve(int k) {
        double x = real[k];
        double y = imaginary[k];
        value(x, y);
        // N = P/P', step = N/(1 − N·Σ 1/(s − s_j)) = P/(P' − P·Σ)
        double sumRe = 0;
        double sumIm = -1 / (2 * y); // its own conjugate
        for (int j = 0; j < count; j++) {
            if (j != k) {
                double dx = x - real[j];
                double dy = y - imaginary[j];
                double size = dx * dx + dy * dy;
                sumRe += dx / size;
                sumIm -= dy / size;
                dy = y + imaginary[j];
                size = dx * dx + dy * dy;
                sumRe += dx / size;
                sumIm -= dy / size;
            }
        }
        double underRe = slopeRe - valueRe * sumRe + valueIm * sumIm;
        double underIm = slopeIm - valueRe * sumIm - valueIm * sumRe;
        double size = underRe * underRe + underIm * underIm;
        double stepRe = (valueRe * underRe + valueIm * underIm) / size;
        double stepIm = (valueIm * underRe - valueRe * underIm) / size;
        double nextRe = x - stepRe;
        double nextIm = y - stepIm;
        if (!(Double.isFinite(nextRe) && nextIm > 0)) {
            return true; // it creeps, or cannot be told better: the start serves
        }
        real[k] = nextRe;
        imaginary[k] = nextIm;
        return Math.abs(stepRe) + Math.abs(stepIm) < NEAR_ENOUGH * Math.abs(nextRe);
    }

    /** The polynomial and its slope at s = x + iy. */
    private void value(double x, double y) {
        double[] f = ends[0];
        double[] r = ends[1];
        double s2Re = x * x - y * y;
        double s2Im = 2 * x * y;
        double s3Re = s2Re * x - s2Im * y;
        double s3Im = s2Re * y + s2Im * x;
        double s4Re = s2Re * s2Re - s2Im * s2Im;
        double s4Im = 2 * s2Re * s2Im;
        double pfRe = f[0] + f[1] * x + f[2] * s2Re + f[3] * s3Re + f[4] * s4Re;
        double pfIm = f[1] * y + f[2] * s2Im + f[3] * s3Im + f[4] * s4Im;
        double prRe = r[0] + r[1] * x + r[2] * s2Re + r[3] * s3Re + r[4] * s4Re;
        double prIm = r[1] * y + r[2] * s2Im + r[3] * s3Im + r[4] * s4Im;
        double dpfRe = f[1] + 2 * f[2] * x + 3 * f[3] * s2Re + 4 * f[4] * s3Re;
        double dpfIm = 2 * f[2] * y + 3 * f[3] * s2Im + 4 * f[4] * s3Im;
        double dprRe = r[1] + 2 * r[2] * x + 3 * r[3] * s2Re + 4 * r[4] * s3Re;
        double dprIm = 2 * r[2] * y + 3 * r[3] * s2Im + 4 * r[4] * s3Im;
        double dfRe = f[5] + f[6] * x + f[7] * s2Re;
        double dfIm = f[6] * y + f[7] * s2Im;
        double drRe = r[5] + r[6] * x + r[7] * s2Re;
        double drIm = r[6] * y + r[7] * s2Im;
        // E = Df·Dr and its slope
        double eRe = dfRe * drRe - dfIm * drIm;
        double eIm = dfRe * drIm + dfIm * drRe;
        double gfRe = f[6] + 2 * f[7] * x;
        double gfIm = 2 * f[7] * y;
        double grRe = r[6] + 2 * r[7] * x;
        double grIm = 2 * r[7] * y;
        double geRe = gfRe * drRe - gfIm * drIm + dfRe * grRe - dfIm * grIm;
        double geIm = gfRe * drIm + gfIm * drRe + dfRe * grIm + dfIm * grRe;
        double m2 = between * between;
        valueRe = pfRe * prRe - pfIm * prIm - m2 * (s4Re * eRe - s4Im * eIm);
        valueIm = pfRe * prIm + pfIm * prRe - m2 * (s4Re * eIm + s4Im * eRe);
        slopeRe = dpfRe * prRe
                - dpfIm * prIm
                + pfRe * dprRe
                - pfIm * dprIm
                - m2 * (4 * (s3Re * eRe - s3Im * eIm) + s4Re * geRe - s4Im * geIm);
        slopeIm = dpfRe * prIm
                + dpfIm * prRe
                + pfRe * dprIm
                + pfIm * dprRe
                - m2 * (4 * (s3Re * eIm + s3Im * eRe) + s4Re * geIm + s4Im * geRe);
    }
}
