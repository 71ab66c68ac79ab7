package evenhand.linkage;

/**
 * How far an axle came on its way from where it was measured to rest.
 *
 * @param stage where it stopped
 * @param far share of what links were to be made longer that can be made; or how far the body can come down, m
 */
public record Reach(Stage stage, double far) {
    /** The way to rest: links are made longer, then the body comes down. */
    public enum Stage {
        LONGER,
        DOWN,
        REST
    }

    boolean isRest() {
        return stage == Stage.REST;
    }
}
