package evenhand.terminal.asked;

import evenhand.answers.Trial;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Options of the circles that are driven. */
public final class CircleOptions {
    @Option(
            names = "--radius",
            paramLabel = "LENGTH",
            description = "Radius of a circle; may be given more than once. Otherwise \"40 m\".")
    private List<String> radii = new ArrayList<>();

    @Option(
            names = "--turn",
            paramLabel = "left|right|both",
            defaultValue = "both",
            description = "Which way it turns. Otherwise ${DEFAULT-VALUE}.")
    private String turn = "both";

    /** The trial at these paces, m/s². */
    public Trial trial(List<Double> paces) throws Mistake {
        List<Double> circles = radii.isEmpty() ? List.of(Trial.USUAL_RADIUS) : OptionText.radii(radii);
        return new Trial(paces, circles, OptionText.ways(turn));
    }
}
