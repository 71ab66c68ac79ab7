package evenhand.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EditionTest {
    @Test
    void theCommitIsSaidWhereItIsKnown() throws IOException {
        assertThat(said("version=0.1.0\ncommit=1a2b3c4d5e6f\n")).isEqualTo("0.1.0 (commit 1a2b3c4d5e6f)");
        assertThat(said("version=0.1.0\ncommit=1a2b3c4d5e6f\nchanged=true\n"))
                .isEqualTo("0.1.0 (commit 1a2b3c4d5e6f, changed since)");
        assertThat(said("version=0.1.0\n")).isEqualTo("0.1.0");
        assertThat(said("")).isEqualTo("in development");
    }

    private static String said(String written) throws IOException {
        Properties properties = new Properties();
        properties.load(new StringReader(written));
        return Edition.words(properties);
    }

    @Test
    void theProgramsArchiveIsToldByItsDigest(@TempDir Path folder) throws IOException {
        Path archive = Files.writeString(folder.resolve("a.jar"), "abc");
        assertThat(Edition.digest(archive))
                .hasValue("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(Edition.digest(folder)).isEmpty();
    }
}
