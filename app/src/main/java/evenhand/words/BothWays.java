package evenhand.words;

import evenhand.turn.Direction;

/** How the ways round are told apart. */
public final class BothWays {
    /** What a line opens with that nobody may miss. */
    public static final String WARNING = "! ";

    private BothWays() {}

    /** "turning right". */
    public static String turning(Direction direction) {
        return "turning " + direction.key();
    }
}
