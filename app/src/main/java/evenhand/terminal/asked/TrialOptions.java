package evenhand.terminal.asked;

import evenhand.answers.Trial;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options of the steady turn that set-ups are judged in. */
public final class TrialOptions {
    @Option(
            names = "--pace",
            paramLabel = "PACE",
            description = "A lateral acceleration to judge at, for example \"0.5 g\"; may be given more than once."
                    + " Otherwise 0.2 g and 0.5 g. The limit is always judged.")
    private List<String> paces = new ArrayList<>();

    @Mixin
    private final CircleOptions circle = new CircleOptions();

    public Trial trial() throws Mistake {
        return circle.trial(paces.isEmpty() ? Trial.USUAL_PACES : OptionText.paces(paces));
    }
}
