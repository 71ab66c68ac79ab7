package evenhand.answers;

import evenhand.car.Car;
import evenhand.car.LoadCase;
import evenhand.car.Weights;
import evenhand.load.Laden;
import evenhand.ride.Ride;
import evenhand.ride.Road;
import evenhand.ride.RoadClass;
import evenhand.turn.Direction;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The trial that cars are judged by: a steady turn, and a ride on a road.
 *
 * @param paces lateral accelerations, m/s²
 * @param radius of the circle, m
 * @param road of the ride
 * @param speed on it, m/s
 * @param load what is aboard besides what the car was weighed with
 */
public record Trial(
        List<Double> paces, double radius, Direction direction, Road road, double speed, Optional<LoadCase> load) {
    /** Lateral acceleration of a gentle bend, 0.2 g, in m/s². */
    public static final double GENTLE = 0.2 * Weights.GRAVITY;
    /** Lateral acceleration of a brisk bend, 0.5 g, in m/s². */
    public static final double BRISK = 0.5 * Weights.GRAVITY;
    /** The paces where none are asked for, m/s². */
    public static final List<Double> USUAL_PACES = List.of(GENTLE, BRISK);
    /** Radius of the circle where none is asked for, m. */
    public static final double USUAL_RADIUS = 40;
    /** Which way it turns where nothing is asked for. */
    public static final Direction USUAL_DIRECTION = Direction.LEFT;
    /** The road where none is asked for. */
    public static final Road USUAL_ROAD = RoadClass.B;
    /** The speed on it, 80 km/h, in m/s. */
    public static final double USUAL_SPEED = 80 / 3.6;

    public Trial {
        paces = List.copyOf(paces);
    }

    /** On the usual road, with nothing more aboard. */
    public Trial(List<Double> paces, double radius, Direction direction) {
        this(paces, radius, direction, USUAL_ROAD, USUAL_SPEED, Optional.empty());
    }

    /** The trial where nothing else is asked for: gentle and brisk, to the left on the usual circle and the usual road. */
    public static Trial usual() {
        return new Trial(USUAL_PACES, USUAL_RADIUS, USUAL_DIRECTION);
    }

    /** What is judged. */
    public List<Judged> judged() {
        return Judged.all(paces);
    }

    /** What is judged of a car that answers so: the ride only where there are dampers. */
    public List<Judged> judged(Answers answers) {
        return judged().stream()
                .filter(one -> !one.criterion().ofRide() || answers.isDamped())
                .toList();
    }

    /** The same trial with a load aboard. */
    public Trial with(Optional<LoadCase> load) {
        return new Trial(paces, radius, direction, road, speed, load);
    }

    /** The same trial on a road at a speed, m/s. */
    public Trial on(Road road, double speed) {
        return new Trial(paces, radius, direction, road, speed, load);
    }

    /** The same trial with one pace more, unless it has it. */
    public Trial at(double pace) {
        List<Double> more = new ArrayList<>(paces);
        if (!more.contains(pace)) {
            more.add(pace);
        }
        return new Trial(more, radius, direction, road, speed, load);
    }

    /** What a car answers, as read from a file: {@code lowered} is carried out here, and the load settles. */
    public Answers ask(Car car) {
        Laden laden = Laden.of(car, load);
        if (laden instanceof Laden.NoRest none) {
            String why = none.text();
            return new Answers(new TurnAnswer.NoTurn(TurnAnswer.Reason.NO_EQUILIBRIUM, why), Optional.empty());
        }
        Car standing = ((Laden.AtRest) laden).car();
        Optional<Ride> ride =
                Ride.of(standing, road, speed) instanceof Ride found ? Optional.of(found) : Optional.empty();
        return new Answers(SteadyTurn.atPaces(standing, paces, radius, direction), ride);
    }
}
