package evenhand.structure;

/** What must be known of a case beside its figures. */
public enum Note {
    /** A spring would have to pull: in truth it comes loose, and something else catches the axle. */
    SPRING_PULLS("springPulls"),
    /** It asks for more than the tyres hold. */
    BEYOND_GRIP("beyondGrip"),
    /** The engine gives less than the tyres would hold. */
    ENGINE_LIMITS("engineLimits"),
    /** The tyres hold less than the engine gives. */
    GRIP_LIMITS("gripLimits");

    private final String key;

    Note(String key) {
        this.key = key;
    }

    /** Name in answers. */
    public String key() {
        return key;
    }
}
