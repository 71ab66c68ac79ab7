package evenhand.scenario;

import java.util.Optional;

/** Which very car it is, and whose. */
public record Vehicle(Optional<String> registration, Optional<String> chassisNumber, Optional<String> owner) {
    public static final Vehicle UNKNOWN = new Vehicle(Optional.empty(), Optional.empty(), Optional.empty());
}
