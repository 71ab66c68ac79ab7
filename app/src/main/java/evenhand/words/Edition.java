package evenhand.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** Which edition of the program this is, as its build wrote it down. */
public final class Edition {
    private static final String WRITTEN = "/evenhand/edition.properties";

    private Edition() {}

    /** Its version, and the commit where that is known: "0.1.0 (commit 1a2b3c4d5e6f)". */
    public static String words() {
        Properties written = new Properties();
        try (InputStream in = Edition.class.getResourceAsStream(WRITTEN)) {
            if (in != null) {
                written.load(in);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words(written);
    }

    static String words(Properties written) {
        String version = written.getProperty("version", "in development");
        String commit = written.getProperty("commit", "");
        return commit.isEmpty()
                ? version
                : version + " (commit " + commit + (written.containsKey("changed") ? ", changed since" : "") + ")";
    }
}
