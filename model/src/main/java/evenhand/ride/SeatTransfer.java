package evenhand.ride;

import evenhand.car.End;

/**
 * What a sine of the road does to a seat on a {@link HalfCar}: size of its acceleration over height of the road, at a
 * frequency. {@link #at} sets the fields and allocates nothing. One per thread.
 *
 * <pre>
 *  z = zf + (zr − zf)·x/L = (A + B·exp(−iωL/V))/(Pf·Pr − ω⁴·m²·Df·Dr)
 *  A = kt·K·((1 − x/L)·Pr + x/L·ω²·m·Dr) of the front, B = kt·K·(x/L·Pf + (1 − x/L)·ω²·m·Df) of the rear
 *  K = ks + iωc     D = ks + kt − mu·ω² + iωc     P = K·(kt − mu·ω²) − ω²·M·D
 * </pre>
 * per wheel; M, m the masses {@link HalfCar#massOver} and {@link HalfCar#massBetween}. P = 0 is the quarter car with M.
 */
public final class SeatTransfer {
    /** |seat's acceleration| over road height, squared, 1/s⁴. */
    public double accelerationSquared;

    private final double overFront;
    private final double overRear;
    private final double between;
    private final double frontPart; // 1 − x/L
    private final double rearPart; // x/L
    private final QuarterCar front;
    private final QuarterCar rear;

    /**
     * @param behindFront of the seat behind the front axle, m
     */
    public SeatTransfer(HalfCar car, double behindFront) {
        front = car.front();
        rear = car.rear();
        overFront = car.massOver(End.FRONT);
        overRear = car.massOver(End.REAR);
        between = car.massBetween();
        rearPart = behindFront / car.wheelbase();
        frontPart = 1 - rearPart;
    }

    /**
     * Sets the response.
     *
     * @param w angular frequency ω, rad/s
     * @param cos of the angle ωL/V by which the rear comes later
     * @param sin of the same
     */
    public void at(double w, double cos, double sin) {
        double w2 = w * w;
        double ksF = front.wheelRate();
        double cF = w * front.dampingRate();
        double tyreF = front.tyreRate() - front.unsprungMass() * w2;
        double dF = ksF + tyreF;
        double pF = ksF * tyreF - w2 * overFront * dF;
        double qF = cF * (tyreF - w2 * overFront); // imaginary part of P
        double ksR = rear.wheelRate();
        double cR = w * rear.dampingRate();
        double tyreR = rear.tyreRate() - rear.unsprungMass() * w2;
        double dR = ksR + tyreR;
        double pR = ksR * tyreR - w2 * overRear * dR;
        double qR = cR * (tyreR - w2 * overRear);
        double m = w2 * between;
        double m2 = m * m;
        double real = pF * pR - qF * qR - m2 * (dF * dR - cF * cR);
        double imaginary = pF * qR + qF * pR - m2 * (dF * cR + cF * dR);

        double re = frontPart * pR + rearPart * m * dR;
        double im = frontPart * qR + rearPart * m * cR;
        double aRe = front.tyreRate() * (ksF * re - cF * im);
        double aIm = front.tyreRate() * (ksF * im + cF * re);
        re = rearPart * pF + frontPart * m * dF;
        im = rearPart * qF + frontPart * m * cF;
        double bRe = rear.tyreRate() * (ksR * re - cR * im);
        double bIm = rear.tyreRate() * (ksR * im + cR * re);
        re = aRe + bRe * cos + bIm * sin;
        im = aIm + bIm * cos - bRe * sin;
        accelerationSquared = w2 * w2 * (re * re + im * im) / (real * real + imaginary * imaginary);
    }
}
