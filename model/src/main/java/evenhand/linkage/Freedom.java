package evenhand.linkage;

/** A way in which links can leave an axle free to move, besides heave and roll. */
public enum Freedom {
    SIDEWAYS("sideways"),
    FORE_AND_AFT("fore and aft"),
    PITCH("pitch"),
    YAW("yaw");

    private final String key;

    Freedom(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
