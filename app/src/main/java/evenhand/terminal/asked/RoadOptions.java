package evenhand.terminal.asked;

import evenhand.answers.Trial;
import picocli.CommandLine.Option;

/** Options of the road that the ride is judged on. */
public final class RoadOptions {
    @Option(
            names = "--road",
            paramLabel = "A..H|FILE.csv",
            defaultValue = "B",
            description =
                    "Class of the road that the ride is judged on, or a measured profile, where there are dampers."
                            + " Otherwise ${DEFAULT-VALUE}.")
    private String road = "B";

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            defaultValue = "80 km/h",
            description = "How fast on it. Otherwise ${DEFAULT-VALUE}.")
    private String speed = "80 km/h";

    /** The trial on this road. */
    public Trial on(Trial trial) throws Mistake {
        return trial.on(AskedRoad.sound(road).road(), OptionText.speed(speed));
    }
}
