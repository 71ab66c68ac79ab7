package evenhand.choice;

import evenhand.answers.Balance;
import evenhand.answers.Judged;
import evenhand.car.Car;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.Optional;

/**
 * The test that cars are judged by: a steady turn.
 *
 * @param paces lateral accelerations, m/s²
 * @param radius m
 */
public record Circle(List<Double> paces, double radius, Direction direction) {
    public Circle {
        paces = List.copyOf(paces);
    }

    /** What is judged. */
    public List<Judged> judged() {
        return Judged.all(paces);
    }

    /** What a car answers, as read from a file. */
    public TurnAnswer ask(Car car) {
        return Balance.of(car, paces, radius, direction).turn();
    }

    /** What a car answers; nothing where the values make no car. */
    Optional<TurnAnswer> ask(Entries car) {
        return Catalogue.build(car).value().map(this::ask);
    }
}
