package evenhand.quantity;

/** A value that no car can have, said by the record that refuses it. The reader adds where it stands in the file. */
public final class InvalidValue extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String component;

    /**
     * @param component key of the offending value, as it is written in a file
     * @param remedy what is wrong and how to mend it, to follow the place
     */
    public InvalidValue(String component, String remedy) {
        super(remedy);
        this.component = component;
    }

    /** Key of the offending value within its record. */
    public String component() {
        return component;
    }

    /** Throws unless the rule holds. A comparison with NaN is false, so NaN never passes. */
    public static void require(boolean rule, String component, String remedy) {
        if (!rule) {
            throw new InvalidValue(component, remedy);
        }
    }
}
