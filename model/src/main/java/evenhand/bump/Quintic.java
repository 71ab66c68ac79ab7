package evenhand.bump;

/**
 * A motion within a step: the polynomial of order 5 with place, speed and acceleration of both ends. Allocates nothing
 * when it is set.
 */
final class Quintic {
    private double c0;
    private double c1;
    private double c2;
    private double c3;
    private double c4;
    private double c5;
    private double length;

    void through(
            double length, double place, double speed, double pull, double endPlace, double endSpeed, double endPull) {
        this.length = length;
        c0 = place;
        c1 = length * speed;
        c2 = length * length * pull / 2;
        double placeLeft = endPlace - c0 - c1 - c2;
        double speedLeft = length * endSpeed - c1 - 2 * c2;
        double pullLeft = length * length * endPull - 2 * c2;
        c3 = 10 * placeLeft - 4 * speedLeft + pullLeft / 2;
        c4 = -15 * placeLeft + 7 * speedLeft - pullLeft;
        c5 = 6 * placeLeft - 3 * speedLeft + pullLeft / 2;
    }

    /** Place at a part of the step from 0 to 1. */
    double place(double part) {
        return c0 + part * (c1 + part * (c2 + part * (c3 + part * (c4 + part * c5))));
    }

    double speed(double part) {
        return (c1 + part * (2 * c2 + part * (3 * c3 + part * (4 * c4 + part * 5 * c5)))) / length;
    }

    /** Second derivative over time. */
    double pull(double part) {
        return (2 * c2 + part * (6 * c3 + part * (12 * c4 + part * 20 * c5))) / (length * length);
    }
}
