package evenhand.answers;

import evenhand.car.Car;
import evenhand.car.LoadCase;
import evenhand.load.Laden;
import evenhand.turn.Direction;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.Optional;

/**
 * The trial that cars are judged by: a steady turn.
 *
 * @param paces lateral accelerations, m/s²
 * @param radius m
 * @param load what is aboard besides what the car was weighed with
 */
public record Trial(List<Double> paces, double radius, Direction direction, Optional<LoadCase> load) {
    public Trial {
        paces = List.copyOf(paces);
    }

    /** What is judged. */
    public List<Judged> judged() {
        return Judged.all(paces);
    }

    /** The same trial with a load aboard. */
    public Trial with(Optional<LoadCase> load) {
        return new Trial(paces, radius, direction, load);
    }

    /** What a car answers, as read from a file: {@code lowered} is carried out here, and the load settles. */
    public Answers ask(Car car) {
        Laden laden = Laden.of(car, load);
        return new Answers(
                laden instanceof Laden.AtRest rest
                        ? SteadyTurn.atPaces(rest.car(), paces, radius, direction)
                        : new TurnAnswer.NoTurn(TurnAnswer.Reason.NO_EQUILIBRIUM, ((Laden.NoRest) laden).text()));
    }
}
