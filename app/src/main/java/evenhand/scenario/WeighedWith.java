package evenhand.scenario;

import java.util.Optional;

/** What was in the car when it was weighed, in the words of whoever weighed it: all heights and weights of it are with that. */
public record WeighedWith(Optional<String> fuel, Optional<String> driver, Optional<String> ballast) {
    public static final WeighedWith UNSAID = new WeighedWith(Optional.empty(), Optional.empty(), Optional.empty());
}
