package evenhand.tyre;

import static evenhand.quantity.InvalidValue.require;

import java.util.EnumMap;
import java.util.Map;

/**
 * The published coefficient set for pure side slip, ISO sign, by the names printed in Pacejka 2012 (eqs. 4.E19 to
 * 4.E49; scaling factors one, rated pressure, spin and speed terms left out). Absent ones are zero, as a measured set
 * leaves out what it found to be nothing. Evaluated by {@link SideForce}.
 */
public record PacejkaCoefficients(Map<Name, Double> values) implements LateralLaw {
    /** The names as printed; Fz0 in N, R0 in m, the others without unit. */
    public enum Name {
        Fz0,
        R0,
        pCy1,
        pDy1,
        pDy2,
        pDy3,
        pEy1,
        pEy2,
        pEy3,
        pEy4,
        pEy5,
        pKy1,
        pKy2,
        pKy3,
        pKy4,
        pKy5,
        pKy6,
        pKy7,
        pHy1,
        pHy2,
        pVy1,
        pVy2,
        pVy3,
        pVy4,
        qBz1,
        qBz2,
        qBz3,
        qBz5,
        qBz6,
        qBz9,
        qBz10,
        qCz1,
        qDz1,
        qDz2,
        qDz3,
        qDz4,
        qDz6,
        qDz7,
        qDz8,
        qDz9,
        qDz10,
        qDz11,
        qEz1,
        qEz2,
        qEz3,
        qEz4,
        qEz5,
        qHz1,
        qHz2,
        qHz3,
        qHz4
    }

    public PacejkaCoefficients {
        EnumMap<Name, Double> copy = new EnumMap<>(Name.class);
        copy.putAll(values);
        copy.putIfAbsent(Name.pKy4, 2.0);
        values = java.util.Collections.unmodifiableMap(copy);
        require(of(values, Name.Fz0) > 0, "Fz0", "must be given, above zero");
        require(of(values, Name.pCy1) >= 1 && of(values, Name.pCy1) < 2, "pCy1", "must be given, from 1 to below 2");
        require(of(values, Name.pDy1) != 0, "pDy1", "must be given: it is the friction at the rated load");
        require(
                of(values, Name.pKy1) < 0,
                "pKy1",
                "must be given, below zero: ISO slip angles make force against them");
        require(of(values, Name.pKy2) > 0, "pKy2", "must be given, above zero");
        require(of(values, Name.pKy4) > 0, "pKy4", "must be above zero");
        require(of(values, Name.R0) >= 0, "R0", "must be above zero");
        require(
                of(values, Name.R0) > 0 || (of(values, Name.qDz1) == 0 && of(values, Name.qDz6) == 0),
                "R0",
                "must be given with the aligning coefficients");
    }

    private static double of(Map<Name, Double> values, Name name) {
        return values.getOrDefault(name, 0.0);
    }

    /** Value of a coefficient; zero where it is absent. */
    public double of(Name name) {
        return of(values, name);
    }

    @Override
    public double referenceLoad() {
        return of(Name.Fz0);
    }

    /** K = −Kyα0 = −pKy1·Fz0·sin(pKy4·atan(Fz/(pKy2·Fz0))), N/rad, without lean. Source: Pacejka 2012 eq. 4.E25. */
    @Override
    public double corneringStiffness(double load) {
        if (load <= 0) {
            return 0;
        }
        double fz0 = of(Name.Fz0);
        return -of(Name.pKy1) * fz0 * Math.sin(of(Name.pKy4) * Math.atan(load / (of(Name.pKy2) * fz0)));
    }

    @Override
    public double corneringStiffnessByLoad(double load) {
        if (load <= 0) {
            return 0;
        }
        double scale = of(Name.pKy2) * of(Name.Fz0);
        double x = load / scale;
        return -of(Name.pKy1)
                * of(Name.Fz0)
                * Math.cos(of(Name.pKy4) * Math.atan(x))
                * of(Name.pKy4)
                / (1 + x * x)
                / scale;
    }

    /** Dt/Fy slope at no slip: Fz·(R0/Fz0)·(qDz1 + qDz2·dfz), m. Source: Pacejka 2012 eq. 4.E43. */
    @Override
    public double pneumaticTrail(double load) {
        if (load <= 0) {
            return 0;
        }
        double dfz = (load - of(Name.Fz0)) / of(Name.Fz0);
        return load * of(Name.R0) / of(Name.Fz0) * (of(Name.qDz1) + of(Name.qDz2) * dfz);
    }

    /** Camber stiffness pKy6·Fz over cornering stiffness, at the rated load. Source: Pacejka 2012 eq. 4.E30. */
    @Override
    public double camberThrustRatio() {
        return -of(Name.pKy6) * referenceLoad() / corneringStiffness(referenceLoad());
    }
}
