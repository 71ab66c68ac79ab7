package evenhand.road;

import org.hipparchus.linear.MatrixUtils;

/**
 * The quarter car by which roads are judged, at 80 km/h: two masses, the road's slope in, the difference of the slopes
 * of body and wheel out.
 *
 * <pre>
 *  z_s'' = k2·(z_u − z_s) + c·(z_u' − z_s')
 *  μ·z_u'' = k1·(y − z_u) − k2·(z_u − z_s) − c·(z_u' − z_s')
 *  k1 = 653 /s², k2 = 63.3 /s², c = 6 /s, μ = 0.15
 * </pre>
 * Per kg of sprung mass; written for the slopes of the motions along the road, so that the state is body slope, its
 * rate, wheel slope, its rate.
 *
 * <p>Source: Sayers, On the Calculation of International Roughness Index from Longitudinal Road Profile, TRR 1501,
 * 1995; ASTM E1926.
 */
public final class ReferenceCar {
    /** 80 km/h, in m/s. */
    public static final double SPEED = 80 / 3.6;

    static final double TYRE = 653;
    static final double SPRING = 63.3;
    static final double DAMPER = 6;
    static final double WHEEL_MASS = 0.15;
    static final int STATES = 4;

    private ReferenceCar() {}

    /** Rates of change of the state by the state, 1/s. */
    public static double[][] rates() {
        return new double[][] {
            {0, 1, 0, 0},
            {-SPRING, -DAMPER, SPRING, DAMPER},
            {0, 0, 0, 1},
            {SPRING / WHEEL_MASS, DAMPER / WHEEL_MASS, -(TYRE + SPRING) / WHEEL_MASS, -DAMPER / WHEEL_MASS}
        };
    }

    /**
     * What a step along a road of even slope does to the state: four columns for the state before, the fifth for the
     * slope of the road. Exact for any step.
     *
     * @param spacing length of the step, m
     */
    public static double[][] transition(double spacing) {
        double time = spacing / SPEED;
        double[][] rates = rates();
        double[][] augmented = new double[STATES + 1][STATES + 1];
        for (int i = 0; i < STATES; i++) {
            for (int j = 0; j < STATES; j++) {
                augmented[i][j] = rates[i][j] * time;
            }
        }
        augmented[STATES - 1][STATES] = TYRE / WHEEL_MASS * time;
        return MatrixUtils.matrixExponential(MatrixUtils.createRealMatrix(augmented))
                .getData();
    }

    /** Size of the slope difference of body and wheel per slope of a sine-wave road of this wavelength in m. */
    public static double gain(double wavelength) {
        double w = 2 * Math.PI * SPEED / wavelength;
        // (z_s − z_u)/y = k1·w² / D(iw), D the determinant of both equations with z_s'' = −w²·z_s
        double real = SPRING - w * w;
        double below = TYRE - WHEEL_MASS * w * w;
        double determinantReal = real * below - w * w * SPRING;
        double determinantImaginary = DAMPER * w * (below - w * w);
        return TYRE * w * w / Math.hypot(determinantReal, determinantImaginary);
    }
}
