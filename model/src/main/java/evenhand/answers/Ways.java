package evenhand.answers;

import evenhand.turn.Direction;
import java.util.List;

/** Which way round a car is asked to turn. */
public enum Ways {
    LEFT,
    RIGHT,
    /** To the left first: a shaft's torque, corner weights and one-sided parts make the other way another turn. */
    BOTH;

    /** That way alone. */
    public static Ways of(Direction direction) {
        return direction == Direction.LEFT ? LEFT : RIGHT;
    }

    /** In the order that they are answered. */
    public List<Direction> directions() {
        return switch (this) {
            case LEFT -> List.of(Direction.LEFT);
            case RIGHT -> List.of(Direction.RIGHT);
            case BOTH -> List.of(Direction.LEFT, Direction.RIGHT);
        };
    }

    /** Whether both ways round are asked. */
    public boolean isBoth() {
        return this == BOTH;
    }

    /** The way whose figures stand in the old places of an answer. */
    public Direction first() {
        return directions().get(0);
    }
}
