package evenhand.ride;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.suspension.WheelDamper;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the dampers of an axle can be set to, and what each of it gives on a road.
 *
 * @param settings that have a name, and the dampers as they are where no name is set; the least firm first
 * @param softest damper of the least weighted acceleration, whatever it is; none where that lies beyond the sweep
 * @param steadiest damper of the least change of the tyre's load; none where that lies beyond the sweep
 */
public record DamperChoice(
        List<Fitted> settings, Optional<DampingSweep.Point> softest, Optional<DampingSweep.Point> steadiest) {
    /** A smaller damping ratio of the body is too little to hold it on a wavy road. Common practice. */
    public static final double LEAST_RATIO = 0.2;

    /**
     * One pair of curves.
     *
     * @param name of the setting; none of curves that have no name
     * @param set whether it is set now
     * @param point where it lies on the sweep
     * @param bySpeed its damping at {@link AxleRide#USUAL_DAMPER_SPEED}, bump and rebound apart
     */
    public record Fitted(
            Optional<String> name,
            boolean set,
            Damper.Forces forces,
            AxleRide.Damped damped,
            DampingSweep.Point point,
            DampingAtSpeed bySpeed) {
        public double bodyRatio() {
            return point.dampingRatio();
        }

        public double hopRatio() {
            return damped.modes().hop().dampingRatio();
        }
    }

    public DamperChoice {
        settings = List.copyOf(settings);
    }

    /**
     * The choice at one axle.
     *
     * @param car settled, that the ride is of
     */
    public static DamperChoice of(Car car, AxleRide axle, Road road, double speed) {
        List<Fitted> settings = new ArrayList<>();
        Axle built = car.axle(axle.end());
        built.damper().ifPresent(damper -> {
            for (Damper.Setting one : damper.settings()) {
                boolean set = damper.setting().filter(one.name()::equals).isPresent();
                fitted(built, axle, damper, Optional.of(one.name()), set, one.forces(), road, speed)
                        .ifPresent(settings::add);
            }
            if (damper.setting().isEmpty()) {
                damper.forces()
                        .flatMap(own -> fitted(built, axle, damper, Optional.empty(), true, own, road, speed))
                        .ifPresent(settings::add);
            }
        });
        settings.sort(Comparator.comparingDouble(one -> one.point().dampingRate()));
        return new DamperChoice(
                settings, DampingSweep.softest(axle, road, speed), DampingSweep.steadiest(axle, road, speed));
    }

    /** Curves that are flat at the usual speed give no answer. */
    private static Optional<Fitted> fitted(
            Axle built,
            AxleRide axle,
            Damper damper,
            Optional<String> name,
            boolean set,
            Damper.Forces forces,
            Road road,
            double speed) {
        WheelDamper wheel = WheelDamper.of(built, damper, forces);
        return AxleRide.damped(built, axle.undamped(), wheel, road, speed)
                .map(damped -> new Fitted(
                        name,
                        set,
                        forces,
                        damped,
                        DampingSweep.of(axle, damped),
                        DampingAtSpeed.of(
                                axle.undamped(),
                                axle.rates(),
                                wheel,
                                damped.rollShare(),
                                AxleRide.USUAL_DAMPER_SPEED)));
    }

    /** What is set now. */
    public Optional<Fitted> now() {
        return settings.stream().filter(Fitted::set).findFirst();
    }

    /** Of those that hold the body, the one with the least weighted acceleration; the firmest where none holds it. */
    public Optional<Fitted> forComfort() {
        return settings.stream()
                .filter(one -> one.bodyRatio() >= LEAST_RATIO)
                .min(Comparator.comparingDouble(one -> one.point().weightedAcceleration()))
                .or(this::firmest);
    }

    /** The one with the least change of the tyre's load. */
    public Optional<Fitted> forGrip() {
        return settings.stream()
                .min(Comparator.comparingDouble(one -> one.point().tyreLoadVariation()));
    }

    private Optional<Fitted> firmest() {
        return settings.isEmpty() ? Optional.empty() : Optional.of(settings.get(settings.size() - 1));
    }

    /** The next one less firm than what is set now. */
    public Optional<Fitted> lessFirm() {
        return beside(-1);
    }

    /** The next firmer one. */
    public Optional<Fitted> firmer() {
        return beside(1);
    }

    private Optional<Fitted> beside(int step) {
        return now().map(now -> settings.indexOf(now) + step)
                .filter(i -> i >= 0 && i < settings.size())
                .map(settings::get);
    }
}
