package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WholeFileTest {
    @TempDir
    Path folder;

    private static String permissions(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    private static void allow(Path file, String permissions) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
    }

    private static void onlyWhereFilesHavePermissions() {
        assumeThat(FileSystems.getDefault().supportedFileAttributeViews()).contains("posix");
    }

    private List<String> names() throws IOException {
        try (var all = Files.list(folder)) {
            return all.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** It was readable to nobody else. */
    @Test
    void aNewFileHasThePermissionsThatAnyNewFileHas() throws IOException {
        onlyWhereFilesHavePermissions();
        ScenarioFile.save(folder.resolve("car.json"), "{}");
        Path usual = Files.writeString(folder.resolve("usual"), "");
        assertThat(permissions(folder.resolve("car.json"))).isEqualTo(permissions(usual));
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-------", "rw-rw-rw-", "rwxr-x--x"})
    void aFileThatWasThereKeepsItsPermissionsAndSoDoesItsPreviousVersion(String before) throws IOException {
        onlyWhereFilesHavePermissions();
        Path file = Files.writeString(folder.resolve("car.json"), "one");
        allow(file, before);
        ScenarioFile.save(file, "two");
        assertThat(file).hasContent("two");
        assertThat(permissions(file)).isEqualTo(before);
        assertThat(permissions(folder.resolve("car.previous.json"))).isEqualTo(before);
    }

    /** Replacing a file needs no right to write it, only the folder. */
    @Test
    void aWriteProtectedFileIsRefusedAndStaysAsItIs() throws IOException {
        onlyWhereFilesHavePermissions();
        Path file = Files.writeString(folder.resolve("car.json"), "one");
        allow(file, "r--r--r--");
        assertThatThrownBy(() -> ScenarioFile.save(file, "two"))
                .isInstanceOf(IOException.class)
                .satisfies(why -> assertThat(WholeFile.why((IOException) why)).isEqualTo("it is write-protected"));
        assertThat(file).hasContent("one");
        assertThat(names()).containsExactly("car.json");
    }

    @Test
    void whatIsNoOrdinaryFileIsRefused() throws IOException {
        Path device = Path.of("/dev/null");
        assumeThat(Files.exists(device)).isTrue();
        Files.createDirectory(folder.resolve("car.json"));
        for (Path place : List.of(device, folder.resolve("car.json"))) {
            assertThatThrownBy(() -> WholeFile.write(place, new byte[0])).isInstanceOf(IOException.class);
        }
        assertThat(Files.exists(device) && !Files.isRegularFile(device)).isTrue();
    }

    /** Whoever knows the name of the file beside could plant a link there, and have another file overwritten. */
    @Test
    void noLinkThatWasPlantedBesideIsFollowed() throws IOException {
        Path victim = Files.writeString(folder.resolve("victim"), "mine");
        for (String name : List.of(".car.json.part", ".car.json.new", ".evenhand-.part", "car.previous.json")) {
            Files.createSymbolicLink(folder.resolve(name), victim);
        }
        Path file = Files.writeString(folder.resolve("car.json"), "one");
        ScenarioFile.save(file, "two");
        assertThat(victim).hasContent("mine");
        assertThat(file).hasContent("two");
        assertThat(folder.resolve("car.previous.json")).hasContent("one");
        assertThat(Files.isSymbolicLink(folder.resolve("car.previous.json"))).isFalse();
    }

    @Test
    void whatAKilledProgramLeftIsClearedUpByTheNextOneWhenItIsOld() throws IOException {
        FileTime old = FileTime.from(Instant.now().minus(Duration.ofHours(2)));
        Path left = Files.writeString(folder.resolve(".evenhand-0123456789abcdef.part"), "half");
        Path young = Files.writeString(folder.resolve(".evenhand-0123456789abcde0.part"), "half");
        Path foreign = Files.writeString(folder.resolve(".evenhand-mine.part"), "not ours");
        Files.setLastModifiedTime(left, old);
        Files.setLastModifiedTime(foreign, old);
        WholeFile.write(folder.resolve("car.json"), "one".getBytes(StandardCharsets.UTF_8));
        assertThat(left).doesNotExist();
        assertThat(young).exists();
        assertThat(foreign).exists();
        assertThat(folder.resolve("car.json")).hasContent("one");
    }

    @Test
    void aNameAsLongAsTheSystemAllowsCanBeWritten() throws IOException {
        Path file = folder.resolve("n".repeat(250) + ".json");
        WholeFile.write(file, "one".getBytes(StandardCharsets.UTF_8));
        assertThat(file).hasContent("one");
        assertThat(names()).hasSize(1);
    }
}
