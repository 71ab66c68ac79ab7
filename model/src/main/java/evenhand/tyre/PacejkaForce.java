package evenhand.tyre;

import static evenhand.tyre.PacejkaCoefficients.Name.*;

/**
 * The published coefficient set in pure side slip, turned to Evenhand's signs: slip positive when it makes force to
 * the left (ISO slip angle taken negative), lean positive to the right (ISO inclination angle).
 *
 * <p>Source: Pacejka 2012 eqs. 4.E19 to 4.E49, scaling factors one, α* = tan α, γ* = sin γ, no turn slip, rated
 * pressure, forward running.
 */
final class PacejkaForce extends SideForce {
    /** Keeps K from zero in B = K/(C·D) and in SHy, as εK of the source; N/rad. */
    private static final double LEAST_STIFFNESS = 1e-3;

    /** Step of the slopes' differences, rad and part of the load. */
    private static final double STEP = 1e-6;

    private final double[] values = new double[PacejkaCoefficients.Name.values().length];
    private final double camberThrustRatio;
    private final double fz0;
    private final double radius;

    private double fy;
    private double trailNow;
    private double residual;
    private double peakNow;

    PacejkaForce(PacejkaCoefficients coefficients) {
        for (PacejkaCoefficients.Name name : PacejkaCoefficients.Name.values()) {
            values[name.ordinal()] = coefficients.of(name);
        }
        camberThrustRatio = coefficients.camberThrustRatio();
        fz0 = coefficients.referenceLoad();
        radius = coefficients.of(R0);
    }

    private double of(PacejkaCoefficients.Name name) {
        return values[name.ordinal()];
    }

    @Override
    public void at(double slip, double lean, double load) {
        enteredSlip = slip - camberThrustRatio * lean;
        if (load <= 0) {
            unloaded();
            return;
        }
        // Slopes by central differences: the set is smooth between its sign changes, and a relative error of 1e-9
        // only costs Newton's method a hair of its speed.
        evaluate(slip + STEP, lean, load);
        double forceUp = fy;
        double trailUp = trailNow;
        double residualUp = residual;
        evaluate(slip - STEP, lean, load);
        forceBySlip = (forceUp - fy) / (2 * STEP);
        trailBySlip = (trailUp - trailNow) / (2 * STEP);
        residualMomentBySlip = (residualUp - residual) / (2 * STEP);

        evaluate(slip, lean + STEP, load);
        forceUp = fy;
        trailUp = trailNow;
        residualUp = residual;
        double peakUp = peakNow;
        evaluate(slip, lean - STEP, load);
        forceByLean = (forceUp - fy) / (2 * STEP);
        trailByLean = (trailUp - trailNow) / (2 * STEP);
        residualMomentByLean = (residualUp - residual) / (2 * STEP);
        peakByLean = (peakUp - peakNow) / (2 * STEP);

        double step = STEP * load;
        evaluate(slip, lean, load + step);
        forceUp = fy;
        trailUp = trailNow;
        residualUp = residual;
        peakUp = peakNow;
        evaluate(slip, lean, load - step);
        forceByLoad = (forceUp - fy) / (2 * step);
        trailByLoad = (trailUp - trailNow) / (2 * step);
        residualMomentByLoad = (residualUp - residual) / (2 * step);
        peakByLoad = (peakUp - peakNow) / (2 * step);

        evaluate(slip, lean, load);
        force = fy;
        trail = trailNow;
        residualMoment = residual;
        peak = peakNow;
    }

    private void evaluate(double slip, double lean, double load) {
        double dfz = (load - fz0) / fz0;
        double tan = -Math.tan(slip); // α* of ISO
        double gamma = Math.sin(lean);
        double gamma2 = gamma * gamma;

        double stiffness = of(pKy1)
                * fz0
                * (1 - of(pKy3) * Math.abs(gamma))
                * Math.sin(of(pKy4) * Math.atan(load / fz0 / (of(pKy2) + of(pKy5) * gamma2)));
        double camberStiffness = load * (of(pKy6) + of(pKy7) * dfz);
        double shiftVertical = load * (of(pVy1) + of(pVy2) * dfz);
        double shiftVerticalByCamber = load * (of(pVy3) + of(pVy4) * dfz) * gamma;
        double shiftHorizontal = of(pHy1)
                + of(pHy2) * dfz
                + (camberStiffness * gamma - shiftVerticalByCamber) / (stiffness - LEAST_STIFFNESS);
        shiftVertical += shiftVerticalByCamber;

        double x = tan + shiftHorizontal;
        double mu = (of(pDy1) + of(pDy2) * dfz) * (1 - of(pDy3) * gamma2);
        double d = mu * load;
        double shape = of(pCy1);
        double e =
                (of(pEy1) + of(pEy2) * dfz) * (1 + of(pEy5) * gamma2 - (of(pEy3) + of(pEy4) * gamma) * Math.signum(x));
        e = Math.min(e, 1);
        double b = stiffness / (shape * d);
        double bx = b * x;
        fy = d * Math.sin(shape * Math.atan(bx - e * (bx - Math.atan(bx)))) + shiftVertical;
        // The most on the side that this tyre pushes to.
        peakNow = Math.abs(d) + (fy < 0 ? -1 : 1) * shiftVertical;
        aligning(load, dfz, tan, gamma, gamma2, stiffness, shiftHorizontal, shiftVertical, b * shape);
    }

    private void aligning(
            double load,
            double dfz,
            double tan,
            double gamma,
            double gamma2,
            double stiffness,
            double shiftHorizontal,
            double shiftVertical,
            double bTimesC) {
        double lean = Math.abs(gamma);
        double alphaT = tan + of(qHz1) + of(qHz2) * dfz + (of(qHz3) + of(qHz4) * dfz) * gamma;
        double bt = (of(qBz1) + of(qBz2) * dfz + of(qBz3) * dfz * dfz) * (1 + of(qBz5) * lean + of(qBz6) * gamma2);
        double ct = of(qCz1);
        double dt = load * (radius / fz0) * (of(qDz1) + of(qDz2) * dfz) * (1 + of(qDz3) * lean + of(qDz4) * gamma2);
        double et = (of(qEz1) + of(qEz2) * dfz + of(qEz3) * dfz * dfz)
                * (1 + (of(qEz4) + of(qEz5) * gamma) * (2 / Math.PI) * Math.atan(bt * ct * alphaT));
        et = Math.min(et, 1);
        double cos = Math.cos(Math.atan(tan));
        double y = bt * alphaT;
        trailNow = dt * Math.cos(ct * Math.atan(y - et * (y - Math.atan(y)))) * cos;

        double alphaR = tan + shiftHorizontal + shiftVertical / (stiffness - LEAST_STIFFNESS);
        double br = of(qBz9) + of(qBz10) * bTimesC;
        double dr = load
                * radius
                * (of(qDz6)
                        + of(qDz7) * dfz
                        + (of(qDz8) + of(qDz9) * dfz) * gamma
                        + (of(qDz10) + of(qDz11) * dfz) * gamma * lean);
        residual = dr * Math.cos(Math.atan(br * alphaR)) * cos;
    }
}
