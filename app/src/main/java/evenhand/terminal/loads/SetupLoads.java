package evenhand.terminal.loads;

import evenhand.car.LoadCase;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.scenario.Setup;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SharedParts;
import evenhand.words.loads.LoadedSetup;
import evenhand.words.loads.LoadedSetup.Loaded;
import evenhand.words.loads.LoadsAsked;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A set-up and what its parts carry, or why nobody can say.
 *
 * @param estimatedUse numbers of hard use that the file does not give
 */
record SetupLoads(
        Setup setup, Optional<Loaded> loaded, Optional<SetupAnswer.NoAnswer> noAnswer, List<Adjustable> estimatedUse)
        implements SetupAnswer {
    static SetupLoads of(Setup setup, Optional<LoadCase> load, LoadsAsked asked, List<Adjustable> estimatedUse) {
        LoadedSetup answer = LoadedSetup.of(setup, load, asked);
        return answer instanceof LoadedSetup.NoAnswer none
                ? new SetupLoads(
                        setup,
                        Optional.empty(),
                        Optional.of(new SetupAnswer.NoAnswer(none.reason(), none.text())),
                        estimatedUse)
                : new SetupLoads(setup, Optional.of((Loaded) answer), Optional.empty(), estimatedUse);
    }

    @Override
    public SharedParts.Remarks remarks() {
        Set<Adjustable> estimated = new LinkedHashSet<>(estimatedUse);
        estimated.addAll(setup.estimated());
        estimated.addAll(Catalogue.estimatedForBrakes(setup.entries(), setup.car()));
        estimated.addAll(Catalogue.estimatedForDrive(setup.entries(), setup.car()));
        return SharedParts.Remarks.of(
                setup, new ArrayList<>(estimated), loaded.map(Loaded::leftOut).orElse(List.of()));
    }
}
