package evenhand.chart;

import evenhand.bump.BodyOverHump;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.chart.CurveCharts.Curve;
import evenhand.chart.CurveCharts.Quantity;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.AxleRide;
import evenhand.ride.QuarterCar;
import evenhand.ride.Ride;
import evenhand.ride.SeatRide;
import evenhand.ride.SeatTransfer;
import evenhand.ride.Transfer;
import evenhand.ride.Weighting;
import evenhand.words.EventWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** How set-ups ride: how body and tyres follow the road, what a road does at a speed, and whether the body pitches. */
public final class RideCharts {
    private static final double LOWEST = 0.4; // Hz
    private static final double HIGHEST = 25;
    private static final int POINTS = 160;

    /** Pieces that a third of an octave is cut into. */
    private static final int PIECES = 12;

    private static final Quantity FREQUENCY = new Quantity("frequency", Unit.of("Hz"), 2);

    private RideCharts() {}

    /**
     * A set-up's ride.
     *
     * @param car settled
     */
    public record Riding(String name, SetupStyle style, Car car, Ride ride) {}

    /** What is read from a quarter car at a frequency. */
    private interface Reading {
        double at(Transfer transfer, double frequency);
    }

    /** How far the body moves for each part that the road moves: 100 % is all of it. */
    public static Chart bodyOverRoad(List<Riding> cars) {
        return over(
                cars,
                "How the body follows the road",
                "movement of the body over that of the road",
                (transfer, f) -> transfer.bodyAcceleration() / (4 * Math.PI * Math.PI * f * f));
    }

    /** How far the tyre gives for each part that the road moves; where it gives much, its load changes much. */
    public static Chart tyreOverRoad(List<Riding> cars) {
        return over(
                cars,
                "How much the tyres give",
                "give of the tyre over movement of the road",
                (transfer, f) -> transfer.tyreDeflection());
    }

    private static Chart over(List<Riding> cars, String title, String words, Reading reading) {
        double[] frequency = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            frequency[i] = LOWEST * Math.pow(HIGHEST / LOWEST, i / (POINTS - 1.0));
        }
        List<Curve> curves = new ArrayList<>();
        for (Riding car : cars) {
            for (End end : End.values()) {
                Transfer transfer = new Transfer(quarter(car.ride().axle(end)));
                double[] values = DoubleStream.of(frequency)
                        .map(f -> {
                            transfer.at(f);
                            return reading.at(transfer, f);
                        })
                        .toArray();
                curves.add(new Curve(car.name(), EventWords.end(end), car.style(), frequency, values));
            }
        }
        return CurveCharts.overFrequency(title, FREQUENCY, new Quantity(words, Unit.of("%"), 0), curves);
    }

    /** With its damper, or without where its curves are not known. */
    private static QuarterCar quarter(AxleRide axle) {
        return axle.damped().map(AxleRide.Damped::quarterCar).orElse(axle.undamped());
    }

    /**
     * What the road of each ride does to a seated person: weighted acceleration where the driver's seat is bolted down, r.m.s. in
     * every third of an octave. A car without damper curves at both ends has none.
     */
    public static Chart roadResponse(List<Riding> cars) {
        double[] frequency = new double[18];
        for (int i = 0; i < frequency.length; i++) {
            frequency[i] = 0.5 * Math.pow(2, i / 3.0);
        }
        List<Curve> curves = new ArrayList<>();
        for (Riding car : cars) {
            car.ride().seat().ifPresent(seat -> {
                double[] values = DoubleStream.of(frequency)
                        .map(f -> third(seat, car.ride(), f))
                        .toArray();
                curves.add(new Curve(car.name(), "", car.style(), frequency, values));
            });
        }
        return CurveCharts.overFrequency(
                "What the road does to who sits in it, at the seat's mounting",
                FREQUENCY,
                new Quantity("weighted acceleration in each third of an octave", Unit.of("m/s^2"), 3),
                curves);
    }

    /** Weighted r.m.s. acceleration in the third of an octave about a frequency, m/s². */
    static double third(SeatRide seat, Ride ride, double frequency) {
        SeatTransfer transfer = new SeatTransfer(seat.car(), seat.behindFrontAxle());
        double lag = seat.car().wheelbase() / ride.speed(); // of the rear wheels, s
        double step = Math.log(2) / 3 / PIECES;
        double sum = 0;
        for (int i = 0; i < PIECES; i++) {
            double f = frequency * Math.exp((i + 0.5 - PIECES / 2.0) * step);
            double n = f / ride.speed();
            if (n >= ride.road().lowest() && n <= ride.road().highest()) {
                double w = 2 * Math.PI * f;
                transfer.at(w, Math.cos(w * lag), Math.sin(w * lag));
                sum += step
                        * f
                        * ride.road().density(n)
                        / ride.speed()
                        * transfer.accelerationSquared
                        * Weighting.WK.squared(f);
            }
        }
        return Math.sqrt(sum);
    }

    /**
     * How far the ends of the body go against each other for each part that they go together, left to themselves after a short
     * hump, over the speed that it is taken at.
     *
     * @param passages of each set-up, from slow to fast
     */
    public static Chart pitchOverHump(List<Riding> cars, List<List<BodyOverHump.Passage>> passages, Units units) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < cars.size(); i++) {
            List<BodyOverHump.Passage> own = passages.get(i);
            curves.add(new Curve(
                    cars.get(i).name(),
                    "",
                    cars.get(i).style(),
                    own.stream().mapToDouble(BodyOverHump.Passage::speed).toArray(),
                    own.stream()
                            .mapToDouble(BodyOverHump.Passage::pitchOverBounce)
                            .toArray()));
        }
        return CurveCharts.curves(
                "Whether it pitches after a short hump",
                new Quantity("speed over the hump", units.of(Dimension.SPEED), 0),
                new Quantity("pitch of the body over its bounce", Unit.of(""), 2),
                curves);
    }
}
