package evenhand.report;

import evenhand.report.Block.Column;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.scenario.Scenario;
import evenhand.words.Edition;
import evenhand.words.TestedWords;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** From which text of which file a paper was made: whoever has it and the program can make it again. */
final class MadeFrom {
    /** So many digits tell any two files of a shop apart. */
    private static final int DIGITS = 16;

    static final String NOTHING_DRAWN = "nothing";

    private MadeFrom() {}

    /** Name of the file, without the folder it stands in. */
    static String file(Scenario scenario) {
        Path name = Path.of(scenario.file()).getFileName();
        return name == null ? scenario.file() : name.toString();
    }

    /** The beginning of the SHA-256 of its text in UTF-8. */
    static String digest(Scenario scenario) {
        return "SHA-256 " + whole(scenario).substring(0, DIGITS);
    }

    /** The SHA-256 of the file as it was read. */
    private static String whole(Scenario scenario) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256")
                            .digest(scenario.text().getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /**
     * What ends a paper for whoever has to answer for it.
     *
     * @param drawn what was drawn at random, and from which seed
     */
    static Section section(Scenario scenario, String drawn) {
        List<Row> rows = new ArrayList<>(List.of(
                Row.of("scenario file, as it was read", file(scenario)),
                Row.of("its SHA-256", whole(scenario)),
                Row.of("program", "Evenhand " + Edition.words()),
                Row.of("SHA-256 of its archive", Edition.archive().orElse("none: it did not run from an archive")),
                Row.of("drawn at random", drawn)));
        scenario.tested().ifPresent(tested -> rows.add(Row.of("corrected by road tests", TestedWords.inALine(tested))));
        return new Section(
                "What this was made from",
                false,
                List.of(
                        new Table(List.of(Column.words("", 2), Column.words("", 7.5)), rows),
                        Text.quiet(
                                "Whoever has this file and this program makes the same paper again. Worked out by Evenhand "
                                        + Edition.words() + ".")));
    }
}
