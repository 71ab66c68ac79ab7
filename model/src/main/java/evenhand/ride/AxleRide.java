package evenhand.ride;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.suspension.WheelDamper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The ride of one axle, per wheel; a live axle by half of it in heave.
 *
 * @param end which axle
 * @param rates at the wheels
 * @param undamped the two masses without damper: sprung load at rest over g on the wheel rate, half the unsprung mass on
 *     the tyre
 * @param undampedModes their own frequencies
 * @param damped the two masses with the equivalent linear damper; none without damper curves
 * @param standing loads and travels at rest
 * @param staticLoad of one tyre, mean of both sides, N
 * @param tramp of a live axle
 */
public record AxleRide(
        End end,
        WheelRates rates,
        QuarterCar undamped,
        Modes undampedModes,
        Optional<Damped> damped,
        Standing standing,
        double staticLoad,
        Optional<AxleTramp> tramp) {
    /** Damper speed at which the equivalent rate is taken, m/s. */
    public static final double USUAL_DAMPER_SPEED = 0.1;

    /**
     * What there is only with a damper.
     *
     * @param quarterCar with its equivalent linear rate
     * @param modes its damped modes
     * @param rollShare damping rate in roll over that in heave, both per wheel at the track: (2·e/t)²
     * @param road what the road does to it
     */
    public record Damped(QuarterCar quarterCar, Modes modes, double rollShare, RoadResponse road) {}

    /** A damper setting with a name, and what it gives on the road. */
    public record Setting(String name, boolean set, Damped damped) {}

    static AxleRide of(Car car, End end, WheelRates rates, Road road, double speed) {
        Axle axle = car.axle(end);
        QuarterCar undamped = new QuarterCar(
                sprungLoad(car, end) / Weights.GRAVITY, axle.unsprung().mass() / 2, rates.heave(), rates.tyre(), 0);
        return new AxleRide(
                end,
                rates,
                undamped,
                undamped.modes(),
                WheelDamper.of(car, end).flatMap(damper -> damped(axle, undamped, damper, road, speed)),
                Standing.of(car, end),
                car.axleLoad(end) / 2,
                AxleTramp.of(car, end, rates, USUAL_DAMPER_SPEED));
    }

    /** A damper whose curves are flat at this speed gives no damping, and no answer to a road. */
    static Optional<Damped> damped(Axle axle, QuarterCar undamped, WheelDamper damper, Road road, double speed) {
        double rate = damper.linearRate(USUAL_DAMPER_SPEED);
        if (!(rate > 0)) {
            return Optional.empty();
        }
        QuarterCar quarterCar = undamped.damped(rate);
        return Optional.of(new Damped(
                quarterCar, quarterCar.modes(), rollShare(axle, damper), RoadResponse.of(quarterCar, road, speed)));
    }

    private static double rollShare(Axle axle, WheelDamper damper) {
        double share = 2 * damper.rollArm(axle.geometry().rollCentreHeight()) / axle.track();
        return share * share;
    }

    /** What stands on springs and stops of one wheel at rest, mean of both sides, N. */
    private static double sprungLoad(Car car, End end) {
        return (car.axleLoad(end) - car.axle(end).unsprung().mass() * Weights.GRAVITY) / 2;
    }

    /** How far the springs give under what stands on them, by the wheel rate at rest, m. */
    public double staticDeflection() {
        return undamped.sprungMass() * Weights.GRAVITY / rates.heave();
    }

    /** Undamped frequency of the body, Hz. */
    public double bodyFrequency() {
        return undampedModes.body().frequency();
    }

    /** Undamped frequency of the wheel's hop, Hz. */
    public double hopFrequency() {
        return undampedModes.hop().frequency();
    }

    /** Damping ratio of the body. */
    public OptionalDouble dampingRatio() {
        return damped.isPresent()
                ? OptionalDouble.of(damped.get().modes().body().dampingRatio())
                : OptionalDouble.empty();
    }

    /** Weighted r.m.s. acceleration of the body over this axle on the road, m/s². */
    public OptionalDouble comfort() {
        return damped.isPresent()
                ? OptionalDouble.of(damped.get().road().weightedAcceleration())
                : OptionalDouble.empty();
    }

    /** R.m.s. change of a tyre's load on the road over its load at rest. */
    public OptionalDouble tyreLoadVariation() {
        return damped.isPresent() ? OptionalDouble.of(loadVariation(damped.get().road())) : OptionalDouble.empty();
    }

    /** The same of any answer to a road. */
    public double loadVariation(RoadResponse road) {
        return road.tyreDeflection() * rates.tyre() / staticLoad;
    }

    /** Damping by damper speed, {@link DampingAtSpeed#SPEEDS}; nothing without damper curves. */
    public List<DampingAtSpeed> dampingBySpeed(Car car) {
        Optional<WheelDamper> damper = WheelDamper.of(car, end);
        if (damper.isEmpty() || damped.isEmpty()) {
            return List.of();
        }
        double rollShare = damped.get().rollShare();
        return DampingAtSpeed.SPEEDS.stream()
                .map(speed -> DampingAtSpeed.of(undamped, rates, damper.get(), rollShare, speed))
                .toList();
    }

    /** What each named setting of the damper gives on this road, in the order of the file. */
    public List<Setting> settings(Car car, Road road, double speed) {
        Axle axle = car.axle(end);
        List<Setting> answers = new ArrayList<>();
        if (axle.damper().isPresent()) {
            Damper damper = axle.damper().get();
            for (Damper.Setting setting : damper.settings()) {
                damped(axle, undamped, WheelDamper.of(axle, damper, setting.forces()), road, speed)
                        .ifPresent(one -> answers.add(new Setting(
                                setting.name(),
                                damper.setting().filter(setting.name()::equals).isPresent(),
                                one)));
            }
        }
        return answers;
    }
}
