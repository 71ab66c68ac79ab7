package evenhand.drawing;

/**
 * A handle was pulled or stepped.
 *
 * @param path of the value in the car
 * @param value its new value, SI
 * @param phase first, further or last of a gesture; a key is a gesture of its own
 */
public record Pull(String path, double value, Phase phase) {
    /** Where in a gesture. */
    public enum Phase {
        BEGUN,
        GOING_ON,
        DONE
    }
}
