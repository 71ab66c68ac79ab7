package evenhand.window.desk;

/** What comes of an act. */
public sealed interface Outcome {
    record Done(Desk desk) implements Outcome {}

    /** Nothing happened, and why, with the remedy. */
    record Refused(String why) implements Outcome {}
}
