package evenhand.ride;

/**
 * One wheel and what stands on it: two masses on two springs and a damper, linear, the tyre without damping.
 *
 * <pre>  ms·z'' = ks·(w − z) + c·(w' − z')     mu·w'' = kt·(r − w) − ks·(w − z) − c·(w' − z')  </pre>
 * z body, w wheel, r road, up positive, from rest.
 *
 * <p>Source: Gillespie 1992 ch. 5; Wong 2008 ch. 7.
 *
 * @param sprungMass ms, kg
 * @param unsprungMass mu, kg
 * @param wheelRate ks, N/m
 * @param tyreRate kt, N/m
 * @param dampingRate c at the wheel, N·s/m; zero without a damper
 */
public record QuarterCar(
        double sprungMass, double unsprungMass, double wheelRate, double tyreRate, double dampingRate) {
    public QuarterCar {
        if (!(sprungMass > 0 && unsprungMass > 0 && wheelRate > 0 && tyreRate > 0 && dampingRate >= 0)) {
            throw new IllegalArgumentException("masses and rates must be above zero, damping not below");
        }
    }

    /** The same with another damper. */
    public QuarterCar damped(double rate) {
        return new QuarterCar(sprungMass, unsprungMass, wheelRate, tyreRate, rate);
    }

    /** The same without damper. */
    public QuarterCar undamped() {
        return damped(0);
    }

    /** How it swings by itself. */
    public Modes modes() {
        return Modes.of(this);
    }

    /** Damping rate that is just critical for the sprung mass on the wheel rate alone, 2·√(ks·ms), N·s/m. */
    public double criticalDampingRate() {
        return 2 * Math.sqrt(wheelRate * sprungMass);
    }
}
