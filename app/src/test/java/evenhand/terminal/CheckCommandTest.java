package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.terminal.asked.Status;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
    @TempDir
    Path folder;

    @Test
    void aSoundFileIsSaidToBeSoAfterItsWarnings() {
        Path car = Run.car(folder);
        Run run = Run.of("check", car.toString());
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.lines()).last().isEqualTo(car + ": can be read, with 2 warnings");
        assertThat(run.lines().get(0))
                .contains("setups[2].changes.front.spring.rate: is unusual")
                .endsWith("(warning)");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void problemsAreAnswersOfCheckWithPlaceAndRemedy() {
        Path broken = broken();
        Run run = Run.of("check", broken.toString());
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).startsWith(broken + ":8:41: car.front.track: needs a unit, for example ");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void theSameProblemsAreComplaintsOfTheOtherCommands() {
        Path broken = broken();
        Run run = Run.of("balance", broken.toString());
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo(Run.of("check", broken.toString()).out());
    }

    @Test
    void oneBrokenFileAmongSoundOnesMakesTheStatusAndEveryFileIsReported() {
        Run run = Run.of("check", Run.car(folder).toString(), broken().toString());
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).contains("mule.json: can be read").contains("broken.json:8:41");
    }

    @Test
    void inJsonEachFileHasItsProblemsAndWarnings() {
        String json = Run.of("check", "--json", broken().toString()).out().replaceAll("\\s+", " ");
        assertThat(json)
                .startsWith("{ \"evenhand\" : 1, \"command\" : \"check\", \"files\" : [ { \"file\" : ")
                .contains("\"ok\" : false, \"problems\" : [ { \"line\" : 8, \"column\" : 41, \"where\" :"
                        + " \"car.front.track\", \"what\" : \"needs a unit")
                .contains("\"warnings\" : [");
    }

    @Test
    void aFileThatIsNotThereHasNoPlaceInIt() {
        Run run = Run.of("check", "--json", folder.resolve("none.json").toString());
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out())
                .contains("\"what\" : \"is not there")
                .doesNotContain("\"line\"", "\"column\"", "\"where\"");
    }

    @Test
    void theSchemaIsPrintedAsItIs() {
        Run run = Run.of("schema");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.out())
                .startsWith("{")
                .contains("https://json-schema.org/draft/2020-12/schema")
                .endsWith("}\n");
    }

    private Path broken() {
        return Run.file(folder, "broken.json", Run.CAR.replaceFirst("\"track\": \"1430 mm\"", "\"track\": 1430"));
    }
}
