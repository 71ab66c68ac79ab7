package evenhand.bump;

import evenhand.car.Car;
import evenhand.road.Profile;
import java.util.Optional;

/** Drives a car's both axles over an event, one after the other, and sees what its seat does until it is at rest again. */
final class SeatOver implements HalfCarInTime.Watch {
    /** Rest is looked for so often, s. */
    private static final double LOOK = 0.1;

    /** Even steps of the record fall due a little before a step's end by rounding, s. */
    private static final double ROUNDING = 1e-12;

    /** Seen so often, s: the parabola through three places is then good to 1e-5 of the peak. */
    private static final double SEEN_EVERY = Series.FINEST / 4;

    private final double rearPart; // how far back between the axles it stands
    private final Crest crest = new Crest();
    private final Rows rows = new Rows(1, Series.FINEST);
    private double before;
    private double beforeTime;

    private SeatOver(Car car) {
        rearPart = car.seatBehindFront() / car.wheelbase();
    }

    /** Nothing where it cannot be followed. */
    static Optional<SeatMotion> of(
            Car car,
            WheelStation front,
            WheelStation rear,
            Profile underFront,
            Profile underRear,
            double speed,
            Runnable goOn) {
        SeatOver seat = new SeatOver(car);
        HalfCarInTime half = new HalfCarInTime(car, new OnWheels(front), new OnWheels(rear), goOn);
        half.watch(seat, SEEN_EVERY);
        if (!half.over(underFront, underRear, speed)) {
            return Optional.empty();
        }
        double over = half.time();
        double energy = half.energy();
        boolean followed = half.onTo(over + Crossing.GRIP_AFTER);
        boolean settled = Crossing.atRest(half.energy(), energy);
        while (followed && !settled && half.time() < over + Crossing.GRIP_AFTER + Crossing.LONGEST_REST) {
            followed = half.onTo(half.time() + LOOK);
            settled = Crossing.atRest(half.energy(), energy);
        }
        return followed
                ? Optional.of(new SeatMotion(
                        car.seatBehindFront(),
                        seat.crest.greatest(),
                        settled,
                        new SeatMotion.Series(seat.rows.times(), seat.rows.column(0))))
                : Optional.empty();
    }

    private boolean isDue(double time) {
        return rows.due() <= time + ROUNDING;
    }

    @Override
    public void begin() {
        crest.begin();
    }

    @Override
    public void see(double time, double front, double rear, double frontPull, double rearPull) {
        double pull = frontPull + (rearPull - frontPull) * rearPart;
        crest.see(time, pull);
        while (isDue(time)) {
            double part = time > beforeTime ? (rows.due() - beforeTime) / (time - beforeTime) : 1;
            rows.put(0, before + part * (pull - before));
            rows.next();
        }
        before = pull;
        beforeTime = time;
    }
}
