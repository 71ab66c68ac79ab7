package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What every command answers about every demo car is what it answered when the digests were written: as JSON and in words about all of
 * them; in every form, and in the other units, about one whose numbers are in millimetres and one in inches.
 *
 * <p>Where an answer is meant to change, write them anew, look at what changed, and commit them with the change:
 *
 * <pre>
 *   mvn -pl model,app -am test -Dtest=KeptAnswersTest -Dsurefire.failIfNoSpecifiedTests=false -Danswers.keep=true
 *   git diff app/src/test/resources/answers.sha256
 * </pre>
 *
 * {@code -Danswers.to=FOLDER} also writes each answer into a file of its own, byte by byte, so that two folders, from
 * before and after, show the difference.
 *
 * <p>A digest is of the text with its numbers rounded: machines differ in the last digits of a sine.
 */
class KeptAnswersTest {
    private static final Path DIGESTS = Path.of("src/test/resources/answers.sha256");
    private static final Path DEMO_CARS = Path.of("../scenarios");
    private static final String PROFILE = "../validation/data/road-profile-quarter-metre.csv";
    /** Short: a car that is followed over it needs its time for every metre. */
    private static final String LANE = "src/test/resources/roads/lane.csv";

    private static final Pattern UNROUNDED = Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?");
    private static final MathContext ROUNDED = new MathContext(5, RoundingMode.HALF_EVEN);
    /** What is smaller than this is a balance's rest. */
    private static final double NOTHING = 1e-9;

    private static final List<String> JSON = List.of("--json");
    private static final List<String> CSV = List.of("--csv");
    private static final List<String> INCHES = List.of("--csv", "--units", "imperial");
    private static final List<String> PEOPLE = List.of();
    private static final List<String> FULL = List.of("--full");
    private static final List<String> PEOPLE_IN_INCHES = List.of("--units", "imperial");

    private static final List<List<String>> ALL_FORMS = List.of(JSON, CSV, INCHES, PEOPLE, PEOPLE_IN_INCHES);
    private static final List<List<String>> JSON_AND_WORDS = List.of(JSON, PEOPLE);

    /** One written in millimetres, one in inches: what another form says of a car is not of that car alone. */
    private static final List<String> CARS_IN_ALL_FORMS = List.of("slipper-coupe.json", "tinkers-lane-roadster.json");

    private static List<List<String>> asked() throws IOException {
        List<List<String>> asked = new ArrayList<>();
        List<Path> cars;
        try (var files = Files.list(DEMO_CARS)) {
            cars = files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
        for (Path car : cars) {
            String file = car.toString().replace('\\', '/');
            boolean all = CARS_IN_ALL_FORMS.contains(car.getFileName().toString());
            List<List<String>> forms = all ? ALL_FORMS : JSON_AND_WORDS;
            in(asked, forms, "balance", file);
            in(asked, List.of(JSON, PEOPLE_IN_INCHES), "compare", file);
            in(asked, forms, "effects", file);
            in(asked, forms, "ride", file);
            in(
                    asked,
                    all ? List.of(JSON, INCHES) : List.of(JSON),
                    "lower",
                    file,
                    "--from",
                    "-10 mm",
                    "--to",
                    "50 mm",
                    "--step",
                    "30 mm");
            in(asked, forms, "bump", file, "--over", "hump 40 mm by 1.2 m");
            in(asked, forms, "bump", file, "--over", "kerb 30 mm", "--pace", "0.5 g");
            in(
                    asked,
                    all ? List.of(JSON, INCHES, PEOPLE) : JSON_AND_WORDS,
                    "doubt",
                    file,
                    "--samples",
                    "10",
                    "--pace",
                    "0.4 g");
            in(asked, List.of(JSON), "balance", file, "--turn", "right", "--pace", "0.9 g", "--radius", "60 m");
            in(asked, List.of(JSON), "ride", file, "--road", "C", "--speed", "60 km/h", "--curves");
            in(asked, List.of(JSON, PEOPLE), "check", file);
            in(asked, all ? ALL_FORMS : List.of(JSON), "brakes", file);
            in(asked, all ? ALL_FORMS : List.of(JSON), "drive", file);
        }
        String saloon = "../scenarios/harbour-saloon.json";
        String estate = "../scenarios/orchard-estate.json";
        in(asked, List.of(PEOPLE), "brakes", saloon, "--no-booster", "--at", "0.5 g", "--friction", "0.2");
        in(asked, List.of(PEOPLE), "drive", saloon, "--speed", "60 km/h");
        in(asked, JSON_AND_WORDS, "brakes", estate, "--load", "Four up");
        in(asked, List.of(JSON, CSV, PEOPLE), "balance", saloon, "--setup", "As bought", "--along", "-0.2 g");
        in(asked, JSON_AND_WORDS, "balance", saloon, "--setup", "As bought", "--along", "-0.3 g", "--brakes");
        for (String command : List.of("balance", "effects", "ride", "lower")) {
            in(asked, JSON_AND_WORDS, command, estate, "--load", "Four up");
        }
        // Few changes: all combinations of many are asked above.
        in(
                asked,
                JSON_AND_WORDS,
                "compare",
                estate,
                "--load",
                "Four up",
                "--base",
                "After",
                "--setup",
                "After, rod 30 mm up");
        in(
                asked,
                List.of(JSON, CSV, PEOPLE),
                "doubt",
                estate,
                "--samples",
                "10",
                "--aim",
                "understeer 3 deg/g at 0.3 g");
        in(asked, List.of(JSON, CSV, PEOPLE), "effects", saloon, "--complaint", "pushes at the limit");
        in(asked, List.of(JSON, CSV, PEOPLE), "lower", saloon, "--keep-reserve", "1.0 g", "--step", "40 mm");
        in(asked, List.of(PEOPLE), "ride", saloon, "--curves");
        in(asked, List.of(JSON, PEOPLE), "ride", saloon, "--road", PROFILE);
        in(asked, List.of(JSON, PEOPLE), "bump", saloon, "--over", LANE);
        inAllForms(asked, "roughness", PROFILE);
        inAllForms(asked, "travel", "../scenarios/sluice-tourer.json");
        finding(
                asked,
                ALL_FORMS,
                saloon,
                "rear.lateralLocator.height",
                "200 mm",
                "340 mm",
                "understeer at most 4 deg/g at 0.5 g");
        finding(
                asked,
                JSON_AND_WORDS,
                estate,
                "front.spring.rate",
                "20 N/mm",
                "60 N/mm",
                "roll gradient 5 deg/g at 0.4 g");
        finding(
                asked,
                JSON_AND_WORDS,
                saloon,
                "rear.spring.rate",
                "20 N/mm",
                "40 N/mm",
                "understeer -20 deg/g at 0.5 g");
        in(
                asked,
                List.of(JSON, CSV, PEOPLE),
                ("find|" + saloon + "|--change|rear.spring.rate|--from|20 N/mm|--to|40 N/mm"
                                + "|--change|front.spring.rate|--from|30 N/mm|--to|80 N/mm"
                                + "|--aim|roll gradient 6 deg/g at 0.5 g|--keep|limit at least 0.6 g")
                        .split("\\|"));
        for (String command : List.of("balance", "compare", "effects", "ride")) {
            in(asked, List.of(FULL), command, saloon);
        }
        in(
                asked,
                List.of(PEOPLE),
                "compare",
                saloon,
                "--base",
                "Pivot low",
                "--setup",
                "Pivot high",
                "--radius",
                "40 m",
                "--radius",
                "15 m");
        for (String command : List.of("balance", "effects")) {
            in(asked, JSON_AND_WORDS, command, saloon, "--radius", "40 m", "--radius", "15 m");
        }
        asked.add(List.of("check", "src/test/resources/broken/comment.json", "--json"));
        asked.add(List.of("check", "src/test/resources/broken/damper-numbers.json", "--json"));
        return asked;
    }

    private static void finding(
            List<List<String>> asked,
            List<List<String>> forms,
            String file,
            String path,
            String from,
            String to,
            String aim) {
        in(asked, forms, "find", file, "--change", path, "--from", from, "--to", to, "--aim", aim);
    }

    private static void inAllForms(List<List<String>> asked, String... words) {
        in(asked, ALL_FORMS, words);
    }

    private static void in(List<List<String>> asked, List<List<String>> forms, String... words) {
        for (List<String> form : forms) {
            List<String> all = new ArrayList<>(List.of(words));
            all.addAll(form);
            asked.add(all);
        }
    }

    @Test
    void everyCommandAnswersAsWhenItsAnswersWereKept() throws IOException {
        Map<String, String> digests = new TreeMap<>();
        for (List<String> words : asked()) {
            Run run = Run.of(words.toArray(String[]::new));
            String answer = run.out() + "\n" + run.err() + run.status() + "\n";
            digests.put(String.join(" ", words), digest(rounded(answer)));
            if (keepsToOneScreen(words)) {
                OtherTurnTest.assertFitsAScreen(run, String.join(" ", words));
            }
            writeOut(String.join(" ", words), answer);
        }
        if (Boolean.getBoolean("answers.keep")) {
            StringBuilder text = new StringBuilder();
            digests.forEach((line, digest) ->
                    text.append(digest).append("  ").append(line).append('\n'));
            Files.writeString(DIGESTS, text);
        }
        assertThat(digests).isEqualTo(kept());
    }

    /** The words of a verdict; here they are there already for every demo car. */
    private static boolean keepsToOneScreen(List<String> words) {
        return List.of("compare", "effects", "doubt").contains(words.get(0))
                && !words.contains("--json")
                && !words.contains("--csv")
                && !words.contains("--full");
    }

    private static Map<String, String> kept() throws IOException {
        Map<String, String> kept = new TreeMap<>();
        for (String line : Files.readAllLines(DIGESTS)) {
            int blanks = line.indexOf("  ");
            kept.put(line.substring(blanks + 2), line.substring(0, blanks));
        }
        return kept;
    }

    private static String rounded(String answer) {
        return UNROUNDED.matcher(answer).replaceAll(match -> {
            String number = match.group();
            if (number.equals("-0.0")) {
                return number; // no answer may have one
            }
            BigDecimal value = new BigDecimal(number);
            return Math.abs(value.doubleValue()) < NOTHING
                    ? "0"
                    : value.round(ROUNDED).stripTrailingZeros().toString();
        });
    }

    private static String digest(String text) {
        try {
            byte[] bytes = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(bytes, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void writeOut(String line, String answer) throws IOException {
        String folder = System.getProperty("answers.to", "");
        if (!folder.isEmpty()) {
            Files.createDirectories(Path.of(folder));
            Files.writeString(Path.of(folder).resolve(line.replaceAll("[^A-Za-z0-9.-]+", "_") + ".txt"), answer);
        }
    }
}
