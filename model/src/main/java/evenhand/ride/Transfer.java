package evenhand.ride;

/**
 * What a sine of the road does to a {@link QuarterCar}: size of the response over height of the road, at a frequency.
 * {@link #at} sets the fields and allocates nothing. One per thread.
 *
 * <pre>  z/r = kt·(ks + iωc)/D     (w − z)/r = −kt·ms·ω²/D     (r − w)/r = (D − kt·(ks + iωc − ms·ω²))/D  </pre>
 * D = ms·mu·ω⁴ − ((ks + kt)·ms + ks·mu)·ω² + ks·kt + iωc·(kt − (ms + mu)·ω²).
 *
 * <p>Source: Wong 2008 ch. 7; Gillespie 1992 ch. 5.
 */
public final class Transfer {
    /** |body acceleration| over road height, squared, 1/s⁴. */
    public double bodyAccelerationSquared;

    /** |wheel travel against the body| over road height, squared. */
    public double suspensionTravelSquared;

    /** |tyre deflection| over road height, squared. */
    public double tyreDeflectionSquared;

    private final double ms;
    private final double ks;
    private final double kt;
    private final double c;
    private final double product; // ms·mu
    private final double both; // ms + mu
    private final double middle; // (ks + kt)·ms + ks·mu

    public Transfer(QuarterCar car) {
        ms = car.sprungMass();
        ks = car.wheelRate();
        kt = car.tyreRate();
        c = car.dampingRate();
        product = ms * car.unsprungMass();
        both = ms + car.unsprungMass();
        middle = (ks + kt) * ms + ks * car.unsprungMass();
    }

    /** Sets the responses at a frequency, Hz. */
    public void at(double frequency) {
        double w = 2 * Math.PI * frequency;
        double w2 = w * w;
        double w4 = w2 * w2;
        double real = product * w4 - middle * w2 + ks * kt;
        double imaginary = w * c * (kt - both * w2);
        double overSize = 1 / (real * real + imaginary * imaginary);
        double tyreReal = w2 * (product * w2 - ks * both);
        double tyreImaginary = w * w2 * c * both;
        bodyAccelerationSquared = w4 * kt * kt * (ks * ks + c * c * w2) * overSize;
        suspensionTravelSquared = kt * kt * ms * ms * w4 * overSize;
        tyreDeflectionSquared = (tyreReal * tyreReal + tyreImaginary * tyreImaginary) * overSize;
    }

    /** |body acceleration| over road height, 1/s². */
    public double bodyAcceleration() {
        return Math.sqrt(bodyAccelerationSquared);
    }

    /** |wheel travel against the body| over road height. */
    public double suspensionTravel() {
        return Math.sqrt(suspensionTravelSquared);
    }

    /** |tyre deflection| over road height. */
    public double tyreDeflection() {
        return Math.sqrt(tyreDeflectionSquared);
    }
}
