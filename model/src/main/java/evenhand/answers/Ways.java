package evenhand.answers;

import evenhand.turn.Direction;
import java.util.List;

/** Which way round a car is asked to turn. */
public enum Ways {
    LEFT(List.of(Direction.LEFT)),
    RIGHT(List.of(Direction.RIGHT)),
    /** To the left first: a shaft's torque, corner weights and one-sided parts make the other way another turn. */
    BOTH(List.of(Direction.LEFT, Direction.RIGHT));

    private final List<Direction> directions;

    Ways(List<Direction> directions) {
        this.directions = directions;
    }

    /** That way alone. */
    public static Ways of(Direction direction) {
        return direction == Direction.LEFT ? LEFT : RIGHT;
    }

    /** In the order that they are answered. */
    public List<Direction> directions() {
        return directions;
    }

    /** The way whose figures stand in the old places of an answer. */
    public Direction first() {
        return directions.get(0);
    }
}
