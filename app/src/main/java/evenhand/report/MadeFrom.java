package evenhand.report;

import evenhand.scenario.Scenario;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** From which text of which file a paper was made: whoever has it and the program can make it again. */
final class MadeFrom {
    /** So many digits tell any two files of a shop apart. */
    private static final int DIGITS = 16;

    private MadeFrom() {}

    /** Name of the file, without the folder it stands in. */
    static String file(Scenario scenario) {
        Path name = Path.of(scenario.file()).getFileName();
        return name == null ? scenario.file() : name.toString();
    }

    /** The beginning of the SHA-256 of its text in UTF-8. */
    static String digest(Scenario scenario) {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(scenario.text().getBytes(StandardCharsets.UTF_8));
            return "SHA-256 " + HexFormat.of().formatHex(digest).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
