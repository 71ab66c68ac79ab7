package evenhand.ride;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.suspension.AxleSuspension;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One axle at rest: what its springs carry, which spring that asks for, and how much travel there is; mean of both sides.
 * Travels and gaps as the file measures them: at the wheel of an independent axle, at the stop of a live one. Each only
 * where its inputs are given.
 *
 * @param springLoad on one spring along its own line, N; zero where it is loose because the stop carries all
 * @param requiredFreeLength free length that gives this ride height: installed length and what the load presses, m
 * @param perchMove how far the spring that is fitted is longer than that, m: its perch has to give way by so much
 * @param coilBindMargin left between the coils, in sum, when metal meets in bump, m; below zero the coils bind first
 * @param bumpTravelToStop m; below zero the car stands so far on its stop
 * @param bumpTravelToMetal m
 * @param droopTravel m
 * @param stopLoadAtRest of one bump stop, N
 * @param preloadInDroop load left on the spring when droop ends, N along its line; below zero it hangs loose
 */
public record Standing(
        double springLoad,
        OptionalDouble requiredFreeLength,
        OptionalDouble perchMove,
        OptionalDouble coilBindMargin,
        OptionalDouble bumpTravelToStop,
        OptionalDouble bumpTravelToMetal,
        OptionalDouble droopTravel,
        OptionalDouble stopLoadAtRest,
        OptionalDouble preloadInDroop) {
    /** One end of a car at its ride height. */
    public static Standing of(Car car, End end) {
        Axle axle = car.axle(end);
        AxleSuspension suspension = AxleSuspension.of(car, end);
        Spring spring = axle.spring();
        double ratio = axle.geometry().springs().ratio();
        double atWheel = (suspension.springLoadAtRest(Side.LEFT) + suspension.springLoadAtRest(Side.RIGHT)) / 2;
        double load = Math.max(0, atWheel) / ratio;
        Stops stops = axle.stops();
        OptionalDouble installed = spring.lengths().installed();
        OptionalDouble solid = spring.lengths().solid();
        OptionalDouble free = spring.lengths().free();
        OptionalDouble required = installed.isPresent()
                ? OptionalDouble.of(installed.getAsDouble() + load / spring.rate())
                : OptionalDouble.empty();
        OptionalDouble toMetal = of(stops.metal().map(Stops.Metal::gap));
        OptionalDouble droop = of(stops.droop().map(Stops.Droop::travel));
        return new Standing(
                load,
                required,
                free.isPresent() && required.isPresent()
                        ? OptionalDouble.of(free.getAsDouble() - required.getAsDouble())
                        : OptionalDouble.empty(),
                installed.isPresent() && solid.isPresent() && toMetal.isPresent()
                        ? OptionalDouble.of(
                                installed.getAsDouble() - solid.getAsDouble() - ratio * toMetal.getAsDouble())
                        : OptionalDouble.empty(),
                of(stops.bump().map(Stops.Bump::gap)),
                toMetal,
                droop,
                stops.bump().isPresent() ? OptionalDouble.of(suspension.stopLoadAtRest()) : OptionalDouble.empty(),
                droop.isPresent()
                        ? OptionalDouble.of(
                                (Math.max(0, atWheel) - suspension.heaveRate() * droop.getAsDouble()) / ratio)
                        : OptionalDouble.empty());
    }

    /** Whether the spring is loose when droop ends; unknown where droop has no end. */
    public Optional<Boolean> looseInDroop() {
        return preloadInDroop.isPresent() ? Optional.of(preloadInDroop.getAsDouble() < 0) : Optional.empty();
    }

    /** Whether the stop carries all that stands on this axle, and the spring nothing. */
    public boolean looseAtRest() {
        return springLoad <= 0;
    }

    /** Whether it stands on its bump stop. */
    public boolean onStop() {
        return bumpTravelToStop.orElse(1) < 0;
    }

    private static OptionalDouble of(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
