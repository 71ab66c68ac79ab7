package evenhand.terminal.asked;

import evenhand.turn.Along;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options of a speed that changes in the bend. */
public final class AlongOptions {
    @Option(
            names = "--along",
            paramLabel = "ACCELERATION",
            description =
                    "Acceleration along the path at that moment, for example \"-0.2 g\" (lifting off) or \"0.1 g\""
                            + " (power); the driven axle does it. Otherwise the speed stays.")
    private Optional<String> along = Optional.empty();

    @Option(names = "--brakes", description = "With --along below zero: the brakes do it, the clutch down.")
    private boolean brakes;

    /** What changes the speed, where it is asked for. */
    public Optional<Along> along() throws Mistake {
        if (along.isEmpty()) {
            if (brakes) {
                throw new Mistake("--brakes: say how hard with --along, for example --along \"-0.3 g\"");
            }
            return Optional.empty();
        }
        double acceleration = OptionText.along(along.get());
        if (brakes && acceleration >= 0) {
            throw new Mistake("--brakes: brakes only slow, and --along \"" + along.get()
                    + "\" does not; write it below zero, for example \"-0.3 g\"");
        }
        return Optional.of(new Along(acceleration, brakes ? Along.By.BRAKES : Along.By.ENGINE));
    }
}
