package evenhand.report;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.handsums.HandSums;
import evenhand.handsums.HandSums.AxleSums;
import evenhand.quantity.Dimension;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** Writes down the steps of one part of the working of a car's hand sums. */
final class Pencil {
    /** Digits that count in what is put in, and in what comes out. */
    private static final int DIGITS_IN = 7;

    private static final int DIGITS_OUT = 5;

    /** Less than this, N or N·m, is nothing: what is solved is so to some billionths of the car's weight. */
    static final double NOTHING = 1e-3;

    private final Car car;
    private final HandSums sums;
    private final List<Working.Step> steps = new ArrayList<>();

    Pencil(Car car, HandSums sums) {
        this.car = car;
        this.sums = sums;
    }

    Car car() {
        return car;
    }

    HandSums sums() {
        return sums;
    }

    AxleSums axle(End end) {
        return end == End.FRONT ? sums.front() : sums.rear();
    }

    /** The letter of an axle in a symbol. */
    static String letter(End end) {
        return end == End.FRONT ? "f" : "r";
    }

    /** Load of an axle at rest, N. */
    double restLoad(End end) {
        return car.axleLoad(end);
    }

    /** Pneumatic trail of an axle's tyres at rest, m. */
    double trail(End end) {
        return car.axle(end).tyre().lateral().pneumaticTrail(restLoad(end) / 2);
    }

    /** Moment of an axle that does not pass through its springs, N·m. */
    double outside(End end) {
        return axle(end).geometricMoment() + axle(end).unsprungMoment();
    }

    void step(String what, String formula, String numbers, double value, String unit) {
        steps.add(new Working.Step(what, formula, numbers, value, unit));
    }

    /** A balance: the sum is what is left over, which is nothing in a state that was solved exactly. */
    void left(String what, String formula, String numbers, double value, String unit) {
        steps.add(new Working.Step(what, formula, numbers, Math.abs(value) < NOTHING ? 0 : value, unit));
    }

    /** What was written down. */
    Working.Part part(String title, String source) {
        return new Working.Part(title, source, steps);
    }

    /** A result as it is printed. */
    static String result(double value) {
        return digits(value, DIGITS_OUT);
    }

    /** With so many digits that count, however small it is. */
    private static String digits(double value, int count) {
        return new BigDecimal(value)
                .round(new MathContext(count))
                .stripTrailingZeros()
                .toPlainString()
                .replace('-', '−');
    }

    /** A number as it is put in. */
    static String n(double value) {
        String text = digits(value, DIGITS_IN);
        return text.startsWith("−") ? "(" + text + ")" : text;
    }

    static String squared(String text) {
        return text + " × " + text;
    }

    static double degrees(double angle) {
        return Dimension.ANGLE.metric().fromSi(angle);
    }
}
