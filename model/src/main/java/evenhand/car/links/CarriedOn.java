package evenhand.car.links;

/** The moving part on which the lower end of a spring, damper or drop link stands. */
public enum CarriedOn {
    AXLE("axle"),
    UPRIGHT("upright"),
    LOWER_ARM("lower arm"),
    UPPER_ARM("upper arm");

    private final String key;

    CarriedOn(String key) {
        this.key = key;
    }

    /** Name in files and sentences. */
    public String key() {
        return key;
    }
}
