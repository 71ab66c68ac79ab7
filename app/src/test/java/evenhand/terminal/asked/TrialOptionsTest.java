package evenhand.terminal.asked;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

class TrialOptionsTest {
    @Test
    void whatIsSaidToBeUsualIsAskedWhereNothingIsGiven() throws Mistake {
        CommandSpec spec = CommandSpec.forAnnotatedObject(new TrialOptions());
        assertThat(spec.findOption("--pace").description()[0])
                .contains("Otherwise " + Units.pace(Trial.GENTLE) + " and " + Units.pace(Trial.BRISK) + ".");
        TrialOptions options = new TrialOptions();
        new CommandLine(options).parseArgs();
        assertThat(options.trial()).isEqualTo(new Trial(Trial.USUAL_PACES, List.of(Trial.USUAL_RADIUS), Ways.BOTH));
    }

    @Test
    void theUsualTrialIsWhatItsWordsAreReadAs() throws Mistake {
        TrialOptions options = new TrialOptions();
        new CommandLine(options).parseArgs("--pace", "0.2 g", "--pace", "0.5 g", "--radius", "40 m", "--turn", "left");
        assertThat(options.trial()).isEqualTo(Trial.usual());
    }
}
