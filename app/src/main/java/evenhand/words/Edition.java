package evenhand.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
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

    /** SHA-256 of the archive that it runs from; none where it runs from loose classes. */
    public static Optional<String> archive() {
        CodeSource from = Edition.class.getProtectionDomain().getCodeSource();
        if (from == null || from.getLocation() == null) {
            return Optional.empty();
        }
        try {
            return digest(Path.of(from.getLocation().toURI()));
        } catch (URISyntaxException | IllegalArgumentException | FileSystemNotFoundException noFile) {
            return Optional.empty();
        }
    }

    static Optional<String> digest(Path archive) {
        if (!Files.isRegularFile(archive)) {
            return Optional.empty();
        }
        try (InputStream in =
                new DigestInputStream(Files.newInputStream(archive), MessageDigest.getInstance("SHA-256"))) {
            in.transferTo(OutputStream.nullOutputStream());
            return Optional.of(HexFormat.of()
                    .formatHex(((DigestInputStream) in).getMessageDigest().digest()));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    static String words(Properties written) {
        String version = written.getProperty("version", "in development");
        String commit = written.getProperty("commit", "");
        return commit.isEmpty()
                ? version
                : version + " (commit " + commit + (written.containsKey("changed") ? ", changed since" : "") + ")";
    }
}
