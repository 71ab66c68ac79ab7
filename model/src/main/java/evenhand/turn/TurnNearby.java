package evenhand.turn;

import evenhand.car.Car;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * States of a car's turn at some paces, from which the turns of cars that hardly differ are solved: Newton's method alone, without
 * following the branch. For slopes of what a car shows over its numbers. May be asked by several threads at once.
 */
public final class TurnNearby {
    private final Direction direction;
    private final List<double[]> states;

    private TurnNearby(Direction direction, List<double[]> states) {
        this.direction = direction;
        this.states = List.copyOf(states);
    }

    /**
     * Follows the turn of a car.
     *
     * @param car settled at its ride height
     * @param paces lateral accelerations, m/s², above zero
     * @param radius of the circle, m
     * @return none where one of the paces lies beyond the limit, or the car does not turn
     */
    public static Optional<TurnNearby> of(Car car, List<Double> paces, double radius, Direction direction) {
        List<double[]> states = SteadyTurn.states(car, paces, radius, direction);
        return states.size() == paces.size() ? Optional.of(new TurnNearby(direction, states)) : Optional.empty();
    }

    /**
     * The turn of a car that hardly differs, at paces that hardly differ, in their order; rows without gradients.
     *
     * @return none where it is not to be had from here: then its own branch must be followed
     */
    public Optional<List<TurnRow>> rows(Car car, List<Double> paces, double radius) {
        List<TurnRow> rows = new ArrayList<>();
        SteadyTurn turn = new SteadyTurn(car, radius, direction);
        for (int i = 0; i < paces.size(); i++) {
            Optional<TurnRow> row = turn.rowFrom(states.get(i), paces.get(i));
            if (row.isEmpty()) {
                return Optional.empty();
            }
            rows.add(row.get());
        }
        return Optional.of(rows);
    }
}
