package evenhand.doubt;

/** Who wants to know how far long work has come, and may stop it. */
@FunctionalInterface
public interface Progress {
    /** Nobody. */
    Progress NONE = (done, of) -> true;

    /**
     * So much of it is done; called from any thread.
     *
     * @return whether to go on
     */
    boolean at(int done, int of);
}
