package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Holds {@code balance --json} of cars whose links are given by points against an independent program that solves them anew. */
class IndependentLinkedTurnTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String EXPECTED = ".expected.json";

    @TestFactory
    Stream<DynamicTest> everyFigureAgreesWithTheMechanismSolvedInEveryState() throws IOException {
        Path folder = IndependentAnswersTest.folder().resolve("linkturn");
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.getFileName().toString().endsWith(EXPECTED))
                    .sorted()
                    .toList();
        }
        assertThat(files).hasSizeGreaterThanOrEqualTo(10);
        List<DynamicTest> tests = new ArrayList<>();
        for (Path file : files) {
            String name = file.getFileName().toString().replace(EXPECTED, "");
            String car = folder.resolve(name + ".json").toString();
            JsonNode left = JSON.readTree(IndependentAnswersTest.balance(
                    car, "left", "40 m", "--pace", "0.1 g", "--pace", "0.3 g", "--pace", "0.5 g"));
            JsonNode right = JSON.readTree(IndependentAnswersTest.balance(
                    car, "right", "40 m", "--pace", "0.1 g", "--pace", "0.3 g", "--pace", "0.5 g"));
            for (JsonNode expected : JSON.readTree(file.toFile()).get("setups")) {
                String turn = expected.get("turn").asText();
                String setup = expected.get("name").asText();
                JsonNode ours = IndependentAnswersTest.named(turn.equals("left") ? left : right, setup);
                tests.add(DynamicTest.dynamicTest(name + ", " + setup + ", " + turn, () -> {
                    IndependentAnswersTest.compare(
                            IndependentAnswersTest.LINKED + "/paces", expected.get("paces"), ours.get("paces"));
                    if (expected.has("limit")) {
                        IndependentAnswersTest.compare(
                                IndependentAnswersTest.LINKED + "/limit", expected.get("limit"), ours.get("limit"));
                    }
                }));
            }
        }
        return tests.stream();
    }
}
