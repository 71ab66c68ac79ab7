package evenhand.terminal;

import evenhand.answers.Trial;
import java.util.List;
import picocli.CommandLine.Option;

/** Options of the circle that is driven. */
final class CircleOptions {
    private static final String USUAL_RADIUS = (int) Trial.USUAL_RADIUS + " m";

    @Option(
            names = "--radius",
            paramLabel = "LENGTH",
            defaultValue = USUAL_RADIUS,
            description = "Radius of the circle. Otherwise ${DEFAULT-VALUE}.")
    private String radius = USUAL_RADIUS;

    @Option(
            names = "--turn",
            paramLabel = "left|right",
            defaultValue = "left",
            description = "Which way it turns. Otherwise ${DEFAULT-VALUE}.")
    private String turn = "left";

    /** The trial at these paces, m/s². */
    Trial trial(List<Double> paces) throws Mistake {
        return new Trial(paces, OptionText.radius(radius), OptionText.direction(turn));
    }
}
