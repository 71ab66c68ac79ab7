package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SchemaWriterTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaWriter.schema(), InputFormat.JSON);

    @Test
    void theFileWithEveryKeyIsValid() {
        assertThat(SCHEMA.validate(Samples.text(), InputFormat.JSON)).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> everyScenarioThatShipsIsValidAndReads() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of("../scenarios"))) {
            files = all.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
        return files.stream()
                .map(file -> dynamicTest(file.getFileName().toString(), () -> {
                    assertThat(SCHEMA.validate(Files.readString(file), InputFormat.JSON))
                            .isEmpty();
                    assertThat(ScenarioReader.read(file).problems()).isEmpty();
                }));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "track-without-unit",
                "text-without-unit",
                "unknown-keys",
                "unknown-words",
                "missing-keys",
                "missing-front",
                "version",
                "version-in-quotes",
                "weight-fraction",
                "corners-and-mass",
                "other-layout",
                "no-version",
                "mass-twice",
                "height-twice",
                "patch-value",
                "patch-removes-unknown",
                "curve-no-pairs",
                "decimal-comma",
                "pounds-per-inch",
                "wrong-dimension",
                "tolerance",
                "damper-numbers",
                "not-objects",
                "null-value"
            })
    void brokenFilesAreNot(String name) throws IOException {
        String text = Files.readString(Path.of("src/test/resources/broken", name + ".json"));
        assertThat(SCHEMA.validate(text, InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void oneWithAPointIsTheFormatOneToSchemaAndReader() {
        String text = Samples.text().replace("\"evenhand\": 1,", "\"evenhand\": 1.0,");
        assertThat(text).contains("1.0,");
        assertThat(SCHEMA.validate(text, InputFormat.JSON)).isEmpty();
        assertThat(ScenarioReader.read("x.json", text).problems()).isEmpty();
    }

    @Test
    void aDampersCurveHasNoPointYetOrTwo() throws IOException {
        String two = "[[\"0 m/s\", \"0 N\"], [\"0.1 m/s\", \"250 N\"]]";
        String damper = "\"damper\": {\"bump\": %s, \"rebound\": []}, \"unsprungMass\"";
        String text = Files.readString(Path.of("src/test/resources/broken/curve-no-pairs.json"))
                .replace("[\"0 mm\", \"0 N\"]", "[[\"0 mm\", \"0 N\"], [\"20 mm\", \"900 N\"]]");
        assertThat(SCHEMA.validate(text.replaceFirst("\"unsprungMass\"", damper.formatted(two)), InputFormat.JSON))
                .isEmpty();
        assertThat(SCHEMA.validate(
                        text.replaceFirst("\"unsprungMass\"", damper.formatted("[[\"0 m/s\", \"0 N\"]]")),
                        InputFormat.JSON))
                .isNotEmpty();
    }

    @Test
    void itIsTheSameEveryTime() {
        assertThat(SchemaWriter.schema()).isEqualTo(SchemaWriter.schema());
    }
}
