package evenhand.scenario;

import static evenhand.quantity.InvalidValue.require;

import evenhand.quantity.Quantity;
import java.util.Optional;

/**
 * A bolt, or all of a kind, that is tightened to a torque.
 *
 * @param what as the book names it when it was tightened
 * @param value the torque
 * @param recheckAfter how far it runs until it is tightened once more
 */
public record Torque(String what, Quantity value, Optional<Quantity> recheckAfter) {
    public Torque {
        require(!what.isBlank(), "what", "is empty; say what is tightened");
        require(value.si() > 0, "value", "must be above zero");
        require(recheckAfter.isEmpty() || recheckAfter.get().si() > 0, "recheckAfter", "must be above zero");
    }
}
