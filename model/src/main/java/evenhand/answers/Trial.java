package evenhand.answers;

import evenhand.car.Car;
import evenhand.car.LoadCase;
import evenhand.load.Laden;
import evenhand.ride.Ride;
import evenhand.ride.Road;
import evenhand.ride.RoadClass;
import evenhand.turn.Direction;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import java.util.ArrayList;
import java.util.Collection;
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
        return ask(car, judged());
    }

    /** The same, as far as some figures are read from it: a ride that none of them judges is left out. */
    public Answers ask(Car car, Collection<Judged> figures) {
        Laden laden = Laden.of(car, load);
        if (laden instanceof Laden.NoRest none) {
            String why = none.text();
            return new Answers(new TurnAnswer.NoTurn(TurnAnswer.Reason.NO_EQUILIBRIUM, why), Optional.empty());
        }
        Car standing = ((Laden.AtRest) laden).car();
        boolean rides = figures.stream().anyMatch(figure -> figure.criterion().ofRide());
        Optional<Ride> ride =
                rides && Ride.of(standing, road, speed) instanceof Ride found ? Optional.of(found) : Optional.empty();
        return new Answers(SteadyTurn.atPaces(standing, paces, radius, direction), ride);
    }
}
