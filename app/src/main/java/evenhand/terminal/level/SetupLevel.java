package evenhand.terminal.level;

import evenhand.answers.Trial;
import evenhand.scenario.Setup;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.words.level.LevelledSetup;
import evenhand.words.level.LevelledSetup.Levelled;
import evenhand.words.level.Wanted;
import java.util.Optional;

/** A set-up and the turns of its perches, or why nobody can say. */
record SetupLevel(Setup setup, Optional<Levelled> levelled, Optional<SetupAnswer.NoAnswer> noAnswer)
        implements SetupAnswer {
    static SetupLevel of(Setup setup, Wanted wanted, Trial trial) {
        LevelledSetup answer = LevelledSetup.of(setup, wanted, trial);
        return answer instanceof LevelledSetup.NoAnswer none
                ? new SetupLevel(
                        setup, Optional.empty(), Optional.of(new SetupAnswer.NoAnswer(none.reason(), none.text())))
                : new SetupLevel(setup, Optional.of((Levelled) answer), Optional.empty());
    }
}
