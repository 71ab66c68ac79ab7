package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.Status;
import evenhand.words.Units;
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
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    /** A form by its options, and as a command gives it. */
    private record In(List<String> options, FormOptions.Form form, Units units) {}

    private static final In JSON = new In(List.of("--json"), FormOptions.Form.JSON, Units.METRIC);
    private static final In CSV = new In(List.of("--csv"), FormOptions.Form.CSV, Units.METRIC);
    private static final In INCHES =
            new In(List.of("--csv", "--units", "imperial"), FormOptions.Form.CSV, Units.IMPERIAL);
    private static final In PEOPLE = new In(List.of(), FormOptions.Form.PEOPLE, Units.METRIC);
    private static final In PEOPLE_IN_INCHES =
            new In(List.of("--units", "imperial"), FormOptions.Form.PEOPLE, Units.IMPERIAL);

    private static final List<In> ALL_FORMS = List.of(JSON, CSV, INCHES, PEOPLE, PEOPLE_IN_INCHES);
    private static final List<In> JSON_AND_WORDS = List.of(JSON, PEOPLE);

    /** A question and the forms that its answer is wanted in. */
    private record Asked(List<String> words, List<In> forms) {
        private String[] line(In form) {
            return Stream.concat(words.stream(), form.options().stream()).toArray(String[]::new);
        }

        /**
         * The answers, worked out once: what is wrong with a file is told before each. A command of one form, and one that is
         * refused, is run for each.
         */
        private List<Run> runs() {
            Run.Kept before = Run.kept();
            Optional<AskedInForms> command = Evenhand.inForms(before.console(), line(forms.get(0)));
            Answer answer;
            try {
                if (command.isEmpty()) {
                    return eachByItself();
                }
                answer = command.get().answer(before.console());
            } catch (Mistake e) {
                return eachByItself();
            }
            return forms.stream()
                    .map(form -> {
                        Run.Kept run = Run.kept();
                        Status status = answer.give(form.form(), run.console(), form.units());
                        return new Run(status, run.out(), before.err() + run.err());
                    })
                    .toList();
        }

        private List<Run> eachByItself() {
            return forms.stream().map(form -> Run.of(line(form))).toList();
        }
    }

    /** One written in millimetres, one in inches: what another form says of a car is not of that car alone. */
    private static final List<String> CARS_IN_ALL_FORMS = List.of("slipper-coupe.json", "tinkers-lane-roadster.json");

    private static List<Asked> asked() throws IOException {
        List<Asked> asked = new ArrayList<>();
        List<Path> cars;
        try (var files = Files.list(DEMO_CARS)) {
            cars = files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
        for (Path car : cars) {
            String file = car.toString().replace('\\', '/');
            boolean all = CARS_IN_ALL_FORMS.contains(car.getFileName().toString());
            List<In> forms = all ? ALL_FORMS : JSON_AND_WORDS;
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
        String crooked = "../scenarios/quarry-special.json";
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
        inAllForms(asked, "loads", "../scenarios/sluice-tourer.json");
        in(
                asked,
                JSON_AND_WORDS,
                "loads",
                "../scenarios/tinkers-lane-roadster.json",
                "--in",
                "Pothole",
                "--part",
                "rear");
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
            in(asked, List.of(PEOPLE), command, saloon, "--full");
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
        in(asked, ALL_FORMS, "level", crooked);
        in(asked, ALL_FORMS, "log", crooked, "--date", "2027-03-20");
        in(asked, JSON_AND_WORDS, "level", crooked, "--bars", "hooked", "--load", "Driver aboard", "--cross", "45 %");
        in(asked, List.of(JSON), "check", "src/test/resources/broken/comment.json");
        in(asked, List.of(JSON), "check", "src/test/resources/broken/damper-numbers.json");
        return asked;
    }

    private static void finding(
            List<Asked> asked, List<In> forms, String file, String path, String from, String to, String aim) {
        in(asked, forms, "find", file, "--change", path, "--from", from, "--to", to, "--aim", aim);
    }

    private static void inAllForms(List<Asked> asked, String... words) {
        in(asked, ALL_FORMS, words);
    }

    private static void in(List<Asked> asked, List<In> forms, String... words) {
        asked.add(new Asked(List.of(words), forms));
    }

    @Test
    void everyCommandAnswersAsWhenItsAnswersWereKept() throws IOException {
        Map<String, String> digests = new TreeMap<>();
        for (Asked one : asked()) {
            List<Run> runs = one.runs();
            for (int i = 0; i < runs.size(); i++) {
                List<String> words = List.of(one.line(one.forms().get(i)));
                Run run = runs.get(i);
                String answer = run.out() + "\n" + run.err() + run.status() + "\n";
                digests.put(String.join(" ", words), digest(rounded(answer)));
                if (keepsToOneScreen(words)) {
                    OtherTurnTest.assertFitsAScreen(run, String.join(" ", words));
                }
                writeOut(String.join(" ", words), answer);
            }
        }
        if (Boolean.getBoolean("answers.keep")) {
            StringBuilder text = new StringBuilder();
            digests.forEach((line, digest) ->
                    text.append(digest).append("  ").append(line).append('\n'));
            Files.writeString(DIGESTS, text);
        }
        assertThat(digests).isEqualTo(kept());
    }

    /** What is kept above is what the options of each form bring. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "balance",
                "compare",
                "effects",
                "ride",
                "lower|--to|20 mm",
                "bump|--over|kerb 30 mm",
                "doubt|--samples|10",
                "brakes",
                "drive",
                "find|--change|rear.spring.rate|--from|20 N/mm|--to|40 N/mm|--aim|roll gradient 6 deg/g at 0.4 g"
            })
    void theOptionsOfAFormBringIt(String question, @TempDir Path folder) {
        List<String> words = new ArrayList<>(List.of(question.split("\\|", -1)));
        words.add(1, Run.car(folder).toString());
        bringTheirForms(words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"roughness|" + PROFILE, "travel|../scenarios/sluice-tourer.json"})
    void theOptionsOfAFormBringItOfWhatIsInItsFile(String question) {
        bringTheirForms(List.of(question.split("\\|", -1)));
    }

    private static void bringTheirForms(List<String> words) {
        Asked asked = new Asked(words, ALL_FORMS);
        assertThat(asked.runs()).isEqualTo(asked.eachByItself()).doesNotHaveDuplicates();
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
