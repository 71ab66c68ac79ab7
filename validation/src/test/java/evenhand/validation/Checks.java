package evenhand.validation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Every check of {@code validation/checks}, in the order of files and entries. */
final class Checks {
    private static final Path FOLDER = Path.of("checks");

    private Checks() {}

    static List<Check> all() {
        List<Check> checks = new ArrayList<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            ObjectMapper mapper = new ObjectMapper();
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                for (JsonNode entry : mapper.readTree(file.toFile())) {
                    checks.add(new Check(file.getFileName().toString(), entry));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return checks;
    }
}
