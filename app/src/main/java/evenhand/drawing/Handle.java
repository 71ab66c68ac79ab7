package evenhand.drawing;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Range;
import evenhand.words.ChangeWords;
import java.util.List;
import java.util.Optional;

/**
 * A place in a drawing that can be pulled to change a value. It moves along one direction, as far as the value in metres.
 *
 * @param path of the value in the car
 * @param words what it is: "rear lateral locator height"
 * @param x where it is, m
 * @param z where it is, m
 * @param upwards 1 where it goes up with the value, −1 where it goes down
 * @param value SI
 * @param step one usual step, SI
 * @param usual usual range, where one is declared
 * @param bounds the value stays within them
 */
public record Handle(
        String path,
        String words,
        double x,
        double z,
        int upwards,
        double value,
        double step,
        Optional<Range> usual,
        Range bounds) {
    /** The handle of a value of this car, if the car has it. */
    static Optional<Handle> of(List<Adjustable> values, String path, double x, double z, int upwards) {
        return values.stream()
                .filter(value -> value.path().equals(path))
                .findFirst()
                .map(value -> new Handle(
                        path,
                        ChangeWords.name(path),
                        x,
                        z,
                        upwards,
                        value.si(),
                        value.step(),
                        value.slot().usual(),
                        value.slot().bounds()));
    }

    /** The value when it is pulled up by so many metres: to a tenth of its step, within its bounds. */
    public double pulled(double up) {
        double fine = step / 10;
        return up == 0 ? value : bounds.cut(fine * Math.round((value + upwards * up) / fine));
    }

    /** The value after some steps upwards in the picture, within its bounds. */
    public double stepped(double steps) {
        return bounds.cut(value + upwards * steps * step);
    }

    /** Where it would be with another value, m. */
    double heightAt(double other) {
        return z + upwards * (other - value);
    }
}
