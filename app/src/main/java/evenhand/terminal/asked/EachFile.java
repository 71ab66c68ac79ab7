package evenhand.terminal.asked;

/** A command about a file. Where several are named, each is answered as if it had been named alone. */
public interface EachFile extends Asked {
    /** What is said of the names of scenario files. */
    String SCENARIOS = "The scenario file; of several each is answered by itself. A - is standard input.";

    FormOptions forms();

    /** Refuses what can be done for one file only, where several are named. */
    default void ofSeveral() throws Mistake {}
}
