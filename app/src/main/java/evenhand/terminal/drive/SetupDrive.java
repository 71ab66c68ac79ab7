package evenhand.terminal.drive;

import evenhand.car.LoadCase;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.scenario.Setup;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SharedParts;
import evenhand.words.drive.DrivenSetup;
import evenhand.words.drive.DrivenSetup.Driven;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A set-up and how it drives, or why nobody can say. */
record SetupDrive(Setup setup, Optional<Driven> driven, Optional<SetupAnswer.NoAnswer> noAnswer)
        implements SetupAnswer {
    static SetupDrive of(Setup setup, Optional<LoadCase> load, double speed, Setup first) {
        DrivenSetup answer = DrivenSetup.of(setup, load, speed, first);
        return answer instanceof DrivenSetup.NoAnswer none
                ? new SetupDrive(
                        setup, Optional.empty(), Optional.of(new SetupAnswer.NoAnswer(none.reason(), none.text())))
                : new SetupDrive(setup, Optional.of((Driven) answer), Optional.empty());
    }

    @Override
    public SharedParts.Remarks remarks() {
        List<Adjustable> estimated = new ArrayList<>(setup.estimated());
        estimated.addAll(Catalogue.estimatedForDrive(setup.entries(), setup.car()));
        return SharedParts.Remarks.of(setup, estimated, List.of());
    }
}
