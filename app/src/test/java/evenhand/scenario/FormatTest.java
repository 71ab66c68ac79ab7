package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.quantity.Quantity;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The format as others rely on it. Page and schema are written anew by
 *
 * <pre>
 *   mvn -pl model,app -am test -Dtest=FormatTest -Dsurefire.failIfNoSpecifiedTests=false -Dformat.write=true
 * </pre>
 */
class FormatTest {
    private static final Path PAGE = Path.of("../scenarios/FORMAT.md");
    private static final Path SCHEMA = Path.of("../scenarios/format/scenario.schema.json");
    private static final Path EXAMPLES = Path.of("../scenarios/format");
    private static final Path KEPT = Path.of("src/test/resources/format-1");

    @Test
    void thePageSaysWhatTheCatalogueSays() throws IOException {
        holds(PAGE, FormatPage.text());
    }

    @Test
    void thePublishedSchemaIsTheOneThatIsPrinted() throws IOException {
        holds(SCHEMA, SchemaWriter.schema());
    }

    private static void holds(Path file, String text) throws IOException {
        if (Boolean.getBoolean("format.write")) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        }
        assertThat(Files.readString(file).replace("\r\n", "\n")).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"smallest-car.json", "two-setups.json"})
    void theExamplesAreValidAndRead(String name) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(SCHEMA), InputFormat.JSON);
        Path example = EXAMPLES.resolve(name);
        assertThat(schema.validate(Files.readString(example), InputFormat.JSON)).isEmpty();
        Reading reading = ScenarioReader.read(example);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.scenario().orElseThrow().warnings()).isEmpty();
    }

    /** Nothing of the smallest can be left out without a problem or a warning. */
    @Test
    void theSmallestExampleHasNothingToSpare() throws IOException {
        List<String> lines = Files.readAllLines(EXAMPLES.resolve("smallest-car.json"));
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).matches(" +\"\\w+\": (\".*\"|[0-9.]+),?")
                    && !lines.get(i).contains("\"title\"")) {
                List<String> without = new ArrayList<>(lines);
                without.remove(i);
                String text = String.join("\n", without).replaceAll(",(\\s*})", "$1");
                Reading reading = ScenarioReader.read("x.json", text);
                assertThat(reading.problems().isEmpty()
                                && reading.scenario().orElseThrow().warnings().isEmpty())
                        .as(lines.get(i))
                        .isFalse();
            }
        }
    }

    /**
     * Files as they were written for the format of this number are read for ever, as the same cars. Neither they nor what they mean
     * is ever changed; files that show what came later are added.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/format-1/meaning.csv")
    void whatCouldBeReadOnceIsReadForEverAsTheSameCar(String name, int numbers, String meaning) {
        Reading reading = ScenarioReader.read(KEPT.resolve(name));
        assertThat(reading.problems()).isEmpty();
        List<String> meant = new ArrayList<>();
        for (Setup setup : reading.scenario().orElseThrow().setups()) {
            numbers(setup.name(), setup.entries(), meant);
        }
        assertThat(meant.size() + " " + digest(meant)).isEqualTo(numbers + " " + meaning);
    }

    @Test
    void everyKeptFileIsRead() throws IOException {
        try (Stream<Path> kept = Files.list(KEPT)) {
            assertThat(kept.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".json")))
                    .hasSizeGreaterThanOrEqualTo(8)
                    .allSatisfy(name -> assertThat(Files.readString(KEPT.resolve("meaning.csv")))
                            .contains(name));
        }
    }

    /** Every number that was given, in SI: "As bought.front.track 1.43 0.002". */
    private static void numbers(String path, Entry entry, List<String> into) {
        if (entry instanceof Entry.Measured measured) {
            number(path, measured.quantity(), into);
        } else if (entry instanceof Entries entries) {
            entries.given().entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .forEach(one -> numbers(path + "." + one.getKey(), one.getValue(), into));
        } else if (entry instanceof Entry.Listed listed) {
            listed.items().forEach(item -> numbers(path, item, into));
        } else if (entry instanceof Entry.Drawn drawn) {
            for (Entry.Drawn.Point point : drawn.points()) {
                number(path, point.at(), into);
                number(path, point.force(), into);
            }
        } else if (entry instanceof Entry.Numbers list) {
            list.numbers().forEach(quantity -> number(path, quantity, into));
        } else {
            into.add(path + " " + entry.text());
        }
    }

    private static void number(String path, Quantity quantity, List<String> into) {
        into.add(path + " " + rounded(quantity.si()) + " " + rounded(quantity.tolerance()));
    }

    private static String rounded(double number) {
        return new BigDecimal(number)
                .round(new MathContext(12))
                .stripTrailingZeros()
                .toString();
    }

    private static String digest(List<String> lines) {
        try {
            byte[] bytes = MessageDigest.getInstance("SHA-256")
                    .digest(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(bytes, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
