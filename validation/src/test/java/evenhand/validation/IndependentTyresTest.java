package evenhand.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import evenhand.catalogue.Adjustable;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.Setup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Holds what is estimated of a tyre by its size against the answers of an independent program. */
class IndependentTyresTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Five figures are given. */
    private static final double PRINTED = 3e-5;

    @TestFactory
    Stream<DynamicTest> everyEstimateAgreesWithTheIndependentProgram() throws IOException {
        CsvSchema schema = CsvSchema.emptySchema().withHeader().withComments();
        List<Map<String, String>> rows;
        try (var read = new CsvMapper()
                .readerForMapOf(String.class)
                .with(schema)
                .<Map<String, String>>readValues(
                        beside("independent/seat").resolveSibling("tyres.csv").toFile())) {
            rows = read.readAll();
        }
        assertThat(rows).hasSize(22);
        return rows.stream().map(row -> DynamicTest.dynamicTest(row.toString(), () -> compare(row)));
    }

    private static void compare(Map<String, String> row) throws IOException {
        Map<String, Adjustable> estimated = shod(row).estimated().stream()
                .filter(one -> one.path().startsWith("front.tyre."))
                .collect(Collectors.toMap(one -> one.path().substring("front.tyre.".length()), Function.identity()));
        assertThat(estimated.containsKey("referenceLoad"))
                .isEqualTo(row.get("given").isEmpty());
        if (row.get("given").isEmpty()) {
            agrees(estimated, "referenceLoad", row, "load", 1);
        }
        agrees(estimated, "verticalRate", row, "rate", 1e3);
        agrees(estimated, "corneringStiffness", row, "stiffness", 180 / Math.PI);
        agrees(estimated, "pneumaticTrail", row, "trail", 1e-3);
    }

    private static void agrees(
            Map<String, Adjustable> estimated, String key, Map<String, String> row, String column, double unit) {
        double expected = Double.parseDouble(row.get(column)) * unit;
        assertThat(estimated).containsKey(key);
        assertThat(estimated.get(key).si()).as(key).isCloseTo(expected, within(PRINTED * expected));
    }

    /** A car on such tyres in front. */
    private static Setup shod(Map<String, String> row) throws IOException {
        ObjectNode file = (ObjectNode) JSON.readTree(
                beside("independent/seat").resolve("postman-leaf.json").toFile());
        ObjectNode tyre = ((ObjectNode) file.at("/car/front")).putObject("tyre");
        tyre.put("size", row.get("size")).put("kind", row.get("kind")).put("pressure", row.get("pressure") + " bar");
        if (!row.get("rim").isEmpty()) {
            tyre.put("rimWidth", row.get("rim") + " mm");
        }
        if (!row.get("given").isEmpty()) {
            tyre.put("referenceLoad", row.get("given") + " N");
        }
        var reading = ScenarioReader.read("shod.json", JSON.writeValueAsString(file));
        assertThat(reading.problems()).isEmpty();
        return reading.scenario().orElseThrow().setups().get(0);
    }

    private static Path beside(String folder) {
        Path inside = Path.of(folder).toAbsolutePath();
        return Files.isDirectory(inside) ? inside : Path.of("validation").resolve(folder);
    }
}
