package evenhand.scenario;

import evenhand.quantity.InvalidValue;
import java.util.Optional;

/**
 * A complaint or a wish, in the words of whoever brought the car.
 *
 * @param judge what the sums judge it by; none where they cannot
 */
public record Asked(String text, Optional<Judge> judge) {
    public Asked {
        InvalidValue.require(!text.isBlank(), "text", "is empty; write what was asked for");
    }
}
