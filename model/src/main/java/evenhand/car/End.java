package evenhand.car;

/** An end of the car. */
public enum End {
    FRONT("front"),
    REAR("rear");

    private final String key;

    End(String key) {
        this.key = key;
    }

    /** Name in a file's paths, in answers and in sentences. */
    public String key() {
        return key;
    }
}
