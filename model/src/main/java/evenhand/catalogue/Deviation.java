package evenhand.catalogue;

/** What a number of a car is instead of what was measured or estimated: drawn, set by a search, or learnt on the road. */
@FunctionalInterface
public interface Deviation {
    /** Every number is what was measured or estimated. */
    Deviation NONE = Adjustable::si;

    /** The value to build with, SI, within the slot's bounds. */
    double of(Adjustable number);
}
