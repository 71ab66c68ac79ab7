package evenhand.terminal.brakes;

import evenhand.car.LoadCase;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.scenario.Setup;
import evenhand.straight.Braking;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SharedParts;
import evenhand.words.brakes.BrakedSetup;
import evenhand.words.brakes.BrakedSetup.Braked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A set-up and how it brakes, or why nobody can say. */
record SetupBrakes(Setup setup, Optional<Braked> braked, Optional<SetupAnswer.NoAnswer> noAnswer)
        implements SetupAnswer {
    static SetupBrakes of(Setup setup, Optional<LoadCase> load, Braking.Asked asked) {
        BrakedSetup answer = BrakedSetup.of(setup, load, asked);
        return answer instanceof BrakedSetup.NoAnswer none
                ? new SetupBrakes(
                        setup, Optional.empty(), Optional.of(new SetupAnswer.NoAnswer(none.reason(), none.text())))
                : new SetupBrakes(setup, Optional.of((Braked) answer), Optional.empty());
    }

    @Override
    public SharedParts.Remarks remarks() {
        List<Adjustable> estimated = new ArrayList<>(setup.estimated());
        estimated.addAll(Catalogue.estimatedForBrakes(setup.entries(), setup.car()));
        return SharedParts.Remarks.of(setup, estimated, List.of());
    }
}
