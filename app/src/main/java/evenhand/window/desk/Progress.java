package evenhand.window.desk;

/** What long work looks at and tells between two cars. */
public interface Progress {
    /** Whether the work is no longer wanted. */
    boolean isCancelled();

    /** How much of it is done, from 0 to 1. */
    void at(double share);
}
