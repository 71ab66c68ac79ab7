package evenhand.words.road;

import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.car.End;
import evenhand.turn.Direction;
import evenhand.turn.Wheel;
import evenhand.words.EventWords;
import java.util.ArrayList;
import java.util.List;

/**
 * A wheel that was driven over an event, by the name that it has there.
 *
 * @param side "inner" or "outer" in a turn; empty straight ahead, where both wheels of an axle are alike
 */
public record BumpWheel(End end, String side, Bump bump) {

    /** Those of an answer, the front first; none where it has no answer. */
    public static List<BumpWheel> of(BumpAnswer answer, Direction direction) {
        List<BumpWheel> wheels = new ArrayList<>();
        if (answer instanceof BumpAnswer.Straight straight) {
            for (End end : End.values()) {
                Bump bump = straight.axles().get(end);
                if (bump != null) {
                    wheels.add(new BumpWheel(end, "", bump));
                }
            }
        } else if (answer instanceof BumpAnswer.InCorner corner) {
            for (Wheel wheel : Wheel.values()) {
                Bump bump = corner.wheels().get(wheel);
                if (bump != null) {
                    boolean inner = wheel.isInside(direction);
                    wheels.add(new BumpWheel(wheel.end(), inner ? "inner" : "outer", bump));
                }
            }
        }
        return wheels;
    }

    /** As it heads its figures: "Outer rear wheel", "Front wheels". */
    public String heading() {
        String words = side.isEmpty() ? EventWords.end(end) + " wheels" : name() + " wheel";
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }

    /** In a sentence, after "the": "outer rear", "front". */
    public String name() {
        return side.isEmpty() ? EventWords.end(end) : side + " " + EventWords.end(end);
    }
}
