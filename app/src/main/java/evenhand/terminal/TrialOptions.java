package evenhand.terminal;

import evenhand.answers.Trial;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Options of the steady turn that set-ups are judged in. */
final class TrialOptions {
    @Option(
            names = "--pace",
            paramLabel = "PACE",
            description = "A lateral acceleration to judge at, for example \"0.5 g\"; may be given more than once."
                    + " Otherwise 0.2 g and 0.5 g. The limit is always judged.")
    private List<String> paces = new ArrayList<>();

    @Option(
            names = "--radius",
            paramLabel = "LENGTH",
            defaultValue = "40 m",
            description = "Radius of the circle. Otherwise ${DEFAULT-VALUE}.")
    private String radius = "40 m";

    @Option(
            names = "--turn",
            paramLabel = "left|right",
            defaultValue = "left",
            description = "Which way it turns. Otherwise ${DEFAULT-VALUE}.")
    private String turn = "left";

    @Option(
            names = "--road",
            paramLabel = "A..H|FILE.csv",
            defaultValue = "B",
            description =
                    "Class of the road that the ride is judged on, or a measured profile, where there are dampers. Otherwise"
                            + " ${DEFAULT-VALUE}.")
    private String road = "B";

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            defaultValue = "80 km/h",
            description = "How fast on it. Otherwise ${DEFAULT-VALUE}.")
    private String speed = "80 km/h";

    Trial trial() throws Mistake {
        return new Trial(
                        OptionText.paces(paces.isEmpty() ? List.of("0.2 g", "0.5 g") : paces),
                        OptionText.radius(radius),
                        OptionText.direction(turn))
                .on(AskedRoad.sound(road).road(), OptionText.speed(speed));
    }
}
