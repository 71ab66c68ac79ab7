package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {
    @TempDir
    Path folder;

    @Test
    void helpNamesEveryCommand() {
        Run run = Run.of("--help");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.out())
                .contains(
                        "Usage: evenhand",
                        "balance",
                        "compare",
                        "effects",
                        "find",
                        "doubt",
                        "ride",
                        "bump",
                        "roughness",
                        "lower",
                        "check",
                        "window",
                        "schema",
                        "Examples");
        assertThat(run.err()).isEmpty();
    }

    /** The terminal by itself, as these tests have it, has none. */
    @Test
    void withoutArgumentsItAsksForTheWindow() {
        Run run = Run.of();
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().strip())
                .startsWith("evenhand window: there is no window here")
                .doesNotContain("\n");
    }

    @Test
    void theWindowIsOpenedInTheUnitsThatAreWanted() {
        List<String> opened = new ArrayList<>();
        Evenhand.Opener window = (file, units) -> {
            opened.add(file.map(Path::toString).orElse("-") + " "
                    + units.map(Enum::name).orElse("-"));
            return Optional.empty();
        };
        Console console =
                new Console(OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), false, 80, false);
        assertThat(Evenhand.run(window, console, "window", "--units", "imperial"))
                .isEqualTo(Status.DONE);
        assertThat(Evenhand.run(window, console, "window", "car.json", "--units", "metric"))
                .isEqualTo(Status.DONE);
        assertThat(Evenhand.run(window, console)).isEqualTo(Status.DONE);
        assertThat(Evenhand.run(window, console, "window", "--units", "furlongs"))
                .isEqualTo(Status.WRONG);
        assertThat(opened).containsExactly("- IMPERIAL", "car.json METRIC", "- -");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "balance",
                "compare",
                "effects",
                "find",
                "doubt",
                "roadtest",
                "ride",
                "bump",
                "roughness",
                "lower",
                "check",
                "schema"
            })
    void everyCommandHasHelpWithAnExampleThatFitsAnEightyColumnTerminal(String command) {
        Run run = Run.of(command, "--help");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.out()).contains("Usage: evenhand " + command, "Example", "  app/evenhand " + command, "--units");
        assertThat(run.lines()).allMatch(line -> line.length() <= 80);
    }

    /** As they would be pasted in the folder of the program; the window has nobody here to close it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "balance",
                "compare",
                "effects",
                "find",
                "doubt",
                "roadtest",
                "ride",
                "bump",
                "roughness",
                "lower",
                "check",
                "report",
                "schema"
            })
    void everyExampleOfTheHelpWorks(String command) {
        String help = Run.of((command + " --help").strip().split(" ")).out();
        List<String> examples = Pattern.compile("(?m)^  app/evenhand (.*)$")
                .matcher(help.replace("\\\n", " "))
                .results()
                .map(example -> example.group(1).replaceFirst(" > .*", ""))
                .toList();
        assertThat(examples).isNotEmpty();
        assertThat(help)
                .as("an example that goes on in the next line says so by a backslash")
                .doesNotContainPattern("(?m)^  app/evenhand (?:.*\\\\\\n)*.*[^\\\\\\n]\\n {4,}\\S");
        for (String example : examples) {
            Run run = Run.of(
                    example.startsWith("doubt") || example.startsWith("roadtest")
                            ? withFewSamples(words(example))
                            : words(example));
            assertThat(run.err()).as(example).isEmpty();
            assertThat(run.status()).as(example).isEqualTo(Status.DONE);
        }
    }

    /** Whether an example can be understood and answered does not depend on how many cars are sampled. */
    private static String[] withFewSamples(String... words) {
        List<String> few = new ArrayList<>(List.of(words));
        int given = few.indexOf("--samples");
        if (given < 0) {
            few.add("--samples");
            few.add("20");
        } else {
            assertThat(Integer.parseInt(few.set(given + 1, "20"))).isBetween(10, 100_000);
        }
        return few.toArray(String[]::new);
    }

    /** The words of an example, as a shell parts them, with the folders that they stand for here. */
    private String[] words(String example) {
        return Pattern.compile("\"([^\"]*)\"|\\S+")
                .matcher(example)
                .results()
                .map(word -> word.group(1) == null ? word.group() : word.group(1))
                .flatMap(word -> word.equals("scenarios/*.json")
                        ? Stream.of("scenarios/slipper-coupe.json", "scenarios/postman-leaf.json")
                        : Stream.of(word))
                .map(word -> word.matches("(scenarios|validation)/.*") ? "../" + word : word)
                .map(word -> word.matches("[a-z]+\\.(pdf|html)")
                        ? folder.resolve(word).toString()
                        : word)
                .map(word -> word.equals(".") ? folder.toString() : word)
                .toArray(String[]::new);
    }

    @Test
    void anUnknownCommandGetsOneLineWithTheNearestOne() {
        Run run = Run.of("blance");
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .isEqualTo(
                        "evenhand: there is no command \"blance\"; did you mean \"balance\"? (\"evenhand --help\" says"
                                + " what there is)\n");
    }

    @Test
    void anUnknownOptionGetsOneLine() {
        assertWrong(Run.of("balance", Run.car(folder).toString(), "--jsno"), "there is no option \"--jsno\"");
    }

    /** What is asked for may stand there, mistyped. */
    @Test
    void anUnknownOptionIsToldBeforeWhatIsMissing() {
        String car = Run.car(folder).toString();
        assertWrong(
                Run.of("find", car, "--chnge", "rear.spring.rate", "--aim", "limit 1 g"),
                "evenhand find: there is no option \"--chnge\"; did you mean \"--change\"?");
        assertWrong(Run.of("bump", car, "--ovr", "step 20 mm"), "no option \"--ovr\"; did you mean \"--over\"?");
        assertWrong(Run.of("balance", "--jsno"), "there is no option \"--jsno\"");
    }

    @Test
    void anOptionThatIsMissingIsToldApartFromOneWithoutItsValue() {
        String car = Run.car(folder).toString();
        assertWrong(Run.of("find", car, "--aim", "limit 1 g"), "evenhand find: --change PATH is missing (");
        assertWrong(Run.of("bump", car), "evenhand bump: --over PROFILE is missing (");
        assertWrong(Run.of("bump", car, "--over"), "evenhand bump: --over needs a value, PROFILE (");
    }

    @Test
    void anOptionThatIsThereTwiceAndASwitchWithAValueAreNamed() {
        String car = Run.car(folder).toString();
        assertWrong(
                Run.of("balance", car, "--turn", "left", "--turn", "right"),
                "evenhand balance: --turn is there twice; leave out one (");
        assertWrong(
                Run.of("balance", car, "--json", "--json"), "evenhand balance: --json is there twice; leave out one (");
        assertWrong(
                Run.of("balance", car, "--json=yes"),
                "evenhand balance: --json takes no value; leave out what is behind it (");
    }

    @Test
    void nothingIsProposedThatIsNoSlip() {
        assertThat(Run.of("frobnicate").err())
                .startsWith("evenhand: there is no command \"frobnicate\" (")
                .doesNotContain("did you mean");
        assertWrong(Run.of("balance", "--set"), "did you mean \"--setup\"?");
    }

    @Test
    void aMissingFileNameIsAskedFor() {
        assertWrong(Run.of("balance"), "which file?");
        assertWrong(Run.of("check"), "which file?");
    }

    @Test
    void aSecondFileOfTheWindowIsTooMany() {
        String car = Run.car(folder).toString();
        assertWrong(Run.of("window", car, "other.json"), "\"other.json\" is one thing too many");
    }

    @Test
    void everyOptionThatCannotBeUnderstoodSaysHowToWriteIt() {
        String car = Run.car(folder).toString();
        assertWrong(
                Run.of("balance", car, "--pace", "0.5"),
                "evenhand balance: --pace \"0.5\": needs a unit, for example \"0.5 g\"");
        assertWrong(Run.of("balance", car, "--pace", "-0.5 g"), "must be above zero");
        assertWrong(
                Run.of("balance", car, "--radius", "40"),
                "--radius \"40\": needs a unit, for example \"40 m\" or \"130 ft\"");
        assertWrong(
                Run.of("balance", car, "--pace", "0.3 g ± 0.1 g"),
                "--pace \"0.3 g ± 0.1 g\": takes no tolerance; leave out the ±");
        assertWrong(Run.of("balance", ""), "evenhand balance: the name of the file is empty");
        assertWrong(Run.of("balance", car, "--radius", "1 m"), "must lie between \"4 m\" and");
        assertWrong(Run.of("balance", car, "--turn", "up"), "--turn \"up\": write left, right or both");
        assertWrong(
                Run.of("balance", car, "--radius", "40 m", "--radius", "40 m"),
                "--radius \"40 m\": is given twice; name each circle once");
        assertWrong(Run.of("balance", car, "--units", "feet"), "--units \"feet\": write metric or imperial");
        assertWrong(Run.of("balance", car, "--json", "--csv"), "write one of them");
        assertWrong(Run.of("balance", car, "--pace"), "--pace needs a value");
        assertWrong(
                Run.of("balance", car, "--setup", "as bought"),
                "there is no set-up \"as bought\" in the file, only \"As bought\", \"Flatter, stiffer\", \"Jelly\";"
                        + " did you mean \"As bought\"?");
        assertWrong(Run.of("balance", car, "--setup", "nothing like it"), "\"Jelly\"\n");
        assertWrong(Run.of("balance", car, "--radius", "1 ft"), "must lie between \"13.2 ft\" and \"3280000 ft\"");
    }

    @Test
    void theTurnMayBeWrittenInCapitals() {
        String car = Run.car(folder).toString();
        assertThat(Run.of("balance", car, "--turn", "RIGHT").out())
                .isEqualTo(Run.of("balance", car, "--turn", "right").out());
    }

    @Test
    void commandsWithoutUnitsDoNotPromiseThem() {
        assertThat(Run.of("check", "--help").out()).doesNotContain("CSV").contains("--units");
        assertThat(Run.of("schema", "--help").out()).doesNotContain("CSV").contains("--units");
        assertThat(Run.of("balance", "--help").out()).contains("Units of tables, words and CSV");
    }

    @Test
    void aFileThatIsNotThereIsSaidToBeSo() {
        assertWrong(Run.of("balance", folder.resolve("none.json").toString()), "none.json: is not there");
    }

    @Test
    void aNameThatNoFileCanHaveIsNoDefect() {
        assertWrong(Run.of("balance", "a\u0000b"), "cannot be a file's here");
    }

    @Test
    void aNameThatBeginsWithAnAtSignIsAName() {
        assertWrong(Run.of("balance", "@none.json"), "@none.json: is not there");
    }

    /** A terminal would obey the one and turn round the line at the other. */
    @Test
    void whatNobodySeesInANameIsShownByItsNumber() {
        for (String command : List.of("balance", "ride", "check")) {
            Run run = Run.of(command, folder.resolve("x\u009b2J\u202e.json").toString());
            assertThat(run.status()).isEqualTo(Status.WRONG);
            assertThat(run.out() + run.err())
                    .contains("x\\u009b2J\\u202e.json: is not there")
                    .doesNotContain("\u009b", "\u202e");
        }
        String car = Run.file(folder, "\u202efdp.json", Run.CAR).toString();
        assertThat(Run.of("check", car).out())
                .contains("\\u202efdp.json: can be read")
                .doesNotContain("\u202e");
        assertThat(Run.of("check", car, "--json").out())
                .contains("\\u202efdp.json\"")
                .doesNotContain("\u202e");
        assertWrong(
                Run.of("balance", Run.car(folder).toString(), "--setup", "As\u009bbought\u200b"),
                "there is no set-up \"As\\u009bbought\\u200b\"");
    }

    @Test
    void whoeverStopsReadingEndsTheProgramQuietly() {
        Run run = Run.into(failing("Broken pipe"), "balance", Run.car(folder).toString());
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.err()).isEmpty();
    }

    @Test
    void anAnswerThatCannotBeWrittenIsNoSuccess() {
        assertWrong(
                Run.into(
                        failing("No space left on device"),
                        "balance",
                        Run.car(folder).toString()),
                "evenhand: cannot write the answer: No space left on device");
    }

    @Test
    void aDefectIsToldInOneLineWithoutATrace() {
        OutputStream defect = new OutputStream() {
            @Override
            public void write(int b) {
                throw new IllegalStateException("two\nlines");
            }
        };
        Run run = Run.into(defect, "--help");
        assertThat(run.status()).isEqualTo(Status.DEFECT);
        assertThat(run.err()).startsWith("evenhand: internal error").containsOnlyOnce("\n");
    }

    @Test
    void coloursAreForTerminalsThatWantThemAndTheTextIsTheSameWithout() {
        assertThat(colour(true, Map.of())).isTrue();
        assertThat(colour(true, Map.of("NO_COLOR", "1"))).isFalse();
        assertThat(colour(true, Map.of("TERM", "dumb"))).isFalse();
        assertThat(colour(false, Map.of())).isFalse();

        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Evenhand.run(
                new Console(out, OutputStream.nullOutputStream(), true, 100, false),
                "balance",
                Run.car(folder).toString());
        String coloured = out.toString(StandardCharsets.UTF_8);
        assertThat(coloured).contains("\u001b[1m");
        assertThat(coloured.replaceAll("\u001b\\[\\d+m", ""))
                .isEqualTo(Run.of("balance", Run.car(folder).toString()).out());
    }

    private static boolean colour(boolean terminal, Map<String, String> environment) {
        OutputStream nowhere = OutputStream.nullOutputStream();
        return Console.of(nowhere, nowhere, terminal, environment).colour();
    }

    private static OutputStream failing(String why) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(why);
            }
        };
    }

    private static void assertWrong(Run run, String message) {
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(message).endsWith("\n").containsOnlyOnce("\n");
    }
}
