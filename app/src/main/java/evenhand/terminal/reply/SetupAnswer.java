package evenhand.terminal.reply;

import evenhand.scenario.Setup;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.Optional;

/** A set-up and what it answers to a command's question. */
public interface SetupAnswer {
    Setup setup();

    /** What is said of it besides. */
    default SharedParts.Remarks remarks() {
        return SharedParts.Remarks.of(setup(), setup().estimated(), List.of());
    }

    /** Why it has no answer, where it has none. */
    default Optional<NoAnswer> noAnswer() {
        return Optional.empty();
    }

    /** It has no answer. */
    record None(Setup setup, NoAnswer why) implements SetupTurn, SetupRide {
        public None(Setup setup, TurnAnswer.Reason reason, String text) {
            this(setup, new NoAnswer(reason, text));
        }

        public None(Setup setup, TurnAnswer.NoTurn none) {
            this(setup, none.reason(), none.text());
        }

        @Override
        public Optional<NoAnswer> noAnswer() {
            return Optional.of(why);
        }

        /** As the tables say it. */
        public String sentence() {
            return "No answer: " + why.text() + ".";
        }
    }

    /** Why there is no answer, for programs and for people. */
    record NoAnswer(TurnAnswer.Reason reason, String text) {
        public static NoAnswer of(TurnAnswer.NoTurn none) {
            return new NoAnswer(none.reason(), none.text());
        }
    }
}
