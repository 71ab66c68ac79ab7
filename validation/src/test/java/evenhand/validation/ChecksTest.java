package evenhand.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Published and derived figures against the model. The run leaves a report in {@code validation/target}. */
class ChecksTest {
    private static final List<Check> CHECKS = Checks.all();
    private static final List<Check.Comparison> COMPARED = new ArrayList<>();

    @AfterAll
    static void writeTheReport() throws IOException {
        new Report(COMPARED, Calibration.counted()).write(Path.of("target"));
    }

    @TestFactory
    Stream<DynamicTest> publishedValues() {
        return CHECKS.stream()
                .map(check -> dynamicTest(check.id() + ", " + check.source(), () -> {
                    List<Check.Comparison> comparisons = check.compare();
                    synchronized (COMPARED) {
                        COMPARED.addAll(comparisons);
                    }
                    assertThat(comparisons).as(check.what()).isNotEmpty();
                    assertThat(comparisons.stream().filter(comparison -> !comparison.holds()))
                            .as(check.what())
                            .extracting(Check.Comparison::text)
                            .isEmpty();
                }));
    }

    @Test
    void everyCheckSaysWhatItIsWhereItComesFromAndHowItIsKnown() {
        assertThat(CHECKS).hasSizeGreaterThan(60).allSatisfy(check -> {
            assertThat(check.id()).isNotBlank();
            assertThat(check.what()).as(check.id()).isNotBlank();
            assertThat(check.source()).as(check.id()).isNotBlank();
            assertThat(check.known()).as(check.id()).isIn(Check.WAYS_OF_KNOWING);
            assertThat(check.reasonOfTolerance()).as(check.id()).isNotBlank();
        });
    }

    @Test
    void noTwoChecksHaveOneId() {
        assertThat(CHECKS).extracting(Check::id).doesNotHaveDuplicates();
    }

    @Test
    void everyEvaluatorIsUsed() {
        assertThat(CHECKS).extracting(Check::evaluator).containsAll(Evaluators.BY_NAME.keySet());
    }
}
