package evenhand.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.Properties;
import org.junit.jupiter.api.Test;

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
}
