package evenhand.catalogue;

/** What a number of a car might be instead of what was measured or estimated. */
@FunctionalInterface
public interface Deviation {
    /** The value to build with, SI, within the slot's bounds. */
    double of(Adjustable number);
}
