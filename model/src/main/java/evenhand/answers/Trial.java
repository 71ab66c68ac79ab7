package evenhand.answers;

import evenhand.car.Car;
import evenhand.turn.Direction;
import evenhand.turn.SteadyTurn;
import java.util.List;

/**
 * The trial that cars are judged by: a steady turn.
 *
 * @param paces lateral accelerations, m/s²
 * @param radius m
 */
public record Trial(List<Double> paces, double radius, Direction direction) {
    public Trial {
        paces = List.copyOf(paces);
    }

    /** What is judged. */
    public List<Judged> judged() {
        return Judged.all(paces);
    }

    /** What a car answers, as read from a file: {@code lowered} is carried out here. */
    public Answers ask(Car car) {
        return new Answers(SteadyTurn.atPaces(car.settled(), paces, radius, direction));
    }
}
