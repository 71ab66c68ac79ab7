package evenhand.window.desk;

/** Something that is done to the desk. */
public sealed interface Act permits EditAct, EntryAct, ReadingAct, SetupAct, TrialAct, LookAct {
    /** The desk afterwards, or why it cannot be done. */
    Outcome on(Desk desk);

    /** What is done, for the words beside undo. */
    String words();

    /** Whether undo takes it back. */
    default boolean isWork() {
        return true;
    }

    /** Whether it goes on with the gesture of the act before: a drag is one act to undo. */
    default boolean sameGesture() {
        return false;
    }
}
