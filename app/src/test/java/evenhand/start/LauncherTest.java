package evenhand.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The launcher for a shell, with a Java that only writes down how it was started: when archives of classes are made, and by whom. */
class LauncherTest {
    /** s. */
    private static final int LONGEST = 120;

    private static final String JAVA = """
            #!/bin/sh
            case "$*" in
                *-version*) cat "$STUB/build" >&2; exit 0 ;;
            esac
            echo "$*" >>"$STUB/calls"
            case "$*" in
                *-Xshare:dump*)
                    for word in "$@"; do
                        case $word in -XX:SharedArchiveFile=*) archive=${word#*=} ;; esac
                    done
                    echo half >"$archive"
                    sleep "${STUB_DUMP:-0}"
                    echo whole >"$archive" ;;
                *Rehearsal*) exec sleep 60 ;;
                *-XX:DumpLoadedClassList=*) ;;
                *" window"*) exec sleep 60 ;;
                *) echo '{"evenhand": 1}' ;;
            esac
            """;

    /** It builds, or fails with what is written beside it, with half a jar made. */
    private static final String MAVEN = """
            #!/bin/sh
            echo "$*" >>"$STUB/builds"
            echo "Downloading from central: https://example.invalid/a.jar"
            echo "[INFO] --- maven-compiler-plugin:3.16.0:compile (default-compile) @ evenhand-model ---"
            sleep "${STUB_BUILD:-0}"
            mkdir -p app/target/lib
            echo half >app/target/lib/a.jar
            echo half >app/target/evenhand.jar
            cat "$STUB/fails" 2>/dev/null && exit 1
            echo whole >app/target/evenhand.jar
            """;

    /** What happens in a tree of its own. */
    private interface Story {
        void in(Tree tree) throws Exception;
    }

    private static final Map<String, Story> FIRST_STARTS = Map.of(
            "ofTwoFirstStartsOneBuildsAndBothAnswer", Tree::ofTwoFirstStartsOneBuildsAndBothAnswer,
            "withoutAConnectionItSaysSoInALine", Tree::withoutAConnectionItSaysSoInALine,
            "aFullDiskIsToldInALineAndLeavesNothingHalfDone", Tree::aFullDiskIsToldInALineAndLeavesNothingHalfDone,
            "whatABuilderThatWasKilledLeftIsBuiltAnew", Tree::whatABuilderThatWasKilledLeftIsBuiltAnew,
            "anotherFailureIsShown", Tree::anotherFailureIsShown,
            "aWrongHomeOfJavaIsNamed", Tree::aWrongHomeOfJavaIsNamed,
            "anOlderJavaIsNamed", Tree::anOlderJavaIsNamed);

    private static final Map<String, Story> STORIES = Map.of(
            "theAnswerComesFirstAndTheArchiveIsMadeBehindIt", Tree::theAnswerComesFirstAndTheArchiveIsMadeBehindIt,
            "warningsOfJavaItselfGoToStandardError", Tree::warningsOfJavaItselfGoToStandardError,
            "anotherBuildOfJavaIsNotShownTheArchiveAndMakesItsOwn",
                    Tree::anotherBuildOfJavaIsNotShownTheArchiveAndMakesItsOwn,
            "ofManyStartsAtOnceOneMakesTheArchive", Tree::ofManyStartsAtOnceOneMakesTheArchive,
            "whatAKilledMakerLeftIsTakenAwayAndNeverUsed", Tree::whatAKilledMakerLeftIsTakenAwayAndNeverUsed,
            "ofTwoWindowsOneRehearsesAndNothingGoesOnWhenTheyAreClosed",
                    Tree::ofTwoWindowsOneRehearsesAndNothingGoesOnWhenTheyAreClosed);

    /** All at once, for they mostly wait for what a launcher leaves behind it. */
    @TestFactory
    List<DynamicTest> stories(@TempDir Path folder) throws IOException {
        assumeThat(Files.isExecutable(Path.of("/bin/sh"))).isTrue();
        Map<String, Story> all = new LinkedHashMap<>(STORIES);
        all.putAll(FIRST_STARTS);
        ExecutorService atOnce = Executors.newFixedThreadPool(all.size());
        List<DynamicTest> tests = new ArrayList<>();
        for (Map.Entry<String, Story> story : all.entrySet()) {
            Tree tree = new Tree(Files.createDirectory(folder.resolve(story.getKey())));
            Future<?> told = atOnce.submit(() -> {
                story.getValue().in(tree);
                return tree;
            });
            tests.add(DynamicTest.dynamicTest(story.getKey(), () -> {
                try {
                    told.get(LONGEST, TimeUnit.SECONDS);
                } catch (ExecutionException failed) {
                    throw failed.getCause();
                }
            }));
        }
        atOnce.shutdown();
        return tests;
    }

    /** A program that was moved to another place. */
    private static final class Tree {
        private final Path folder;
        private final Path target;
        private final Path calls;

        Tree(Path folder) throws IOException {
            this.folder = folder;
            Path app = Files.createDirectories(folder.resolve("a tree").resolve("app"));
            Files.copy(Path.of("evenhand"), app.resolve("evenhand"));
            target = Files.createDirectory(app.resolve("target"));
            Files.writeString(target.resolve("evenhand.jar"), "");
            Files.writeString(
                    Files.createDirectory(folder.resolve("a tree/scenarios")).resolve("car.json"), "{}");
            Path bin = Files.createDirectories(folder.resolve("java/bin"));
            Path java = Files.writeString(bin.resolve("java"), JAVA);
            Path maven = Files.writeString(bin.resolve("mvn"), MAVEN);
            Path javac = Files.writeString(bin.resolve("javac"), "");
            for (Path program : List.of(java, maven, javac)) {
                Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
            }
            Files.writeString(folder.resolve("build"), "17.0.1+1 of one maker\n");
            calls = Files.writeString(folder.resolve("calls"), "");
        }

        private Process start(Map<String, String> environment, String... arguments) throws IOException {
            List<String> command = new ArrayList<>(
                    List.of("/bin/sh", target.resolveSibling("evenhand").toString()));
            command.addAll(List.of(arguments));
            ProcessBuilder builder = new ProcessBuilder(command);
            builder.environment().remove("DISPLAY");
            builder.environment().put("JAVA_HOME", folder.resolve("java").toString());
            builder.environment().put("STUB", folder.toString());
            builder.environment().compute("PATH", (name, path) -> folder.resolve("java/bin") + ":" + path);
            builder.environment().putAll(environment);
            return builder.start();
        }

        private String answer(String... arguments) throws Exception {
            Process process = start(Map.of(), arguments);
            String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(process.waitFor()).isZero();
            assertThat(err).isEmpty();
            return out;
        }

        private Process firstStart(Map<String, String> environment) throws IOException {
            return start(environment, "check", "car.json");
        }

        private static String complaints(Process process) throws IOException {
            return new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        }

        /** What a first start that fails says last, and that it leaves nothing that a later one would take for whole. */
        private String failing(Map<String, String> environment) throws Exception {
            Process process = firstStart(environment);
            List<String> said = complaints(process).lines().toList();
            assertThat(process.waitFor()).isEqualTo(2);
            assertThat(target.resolve("evenhand.jar")).doesNotExist();
            assertThat(target.resolve("lib")).doesNotExist();
            assertThat(target.resolveSibling(".building")).doesNotExist();
            assertThat(said.subList(0, said.size() - 1))
                    .allMatch(line -> line.startsWith("evenhand: first use: ") || line.startsWith("[ERROR]"));
            return said.get(said.size() - 1);
        }

        private void ofTwoFirstStartsOneBuildsAndBothAnswer() throws Exception {
            Files.delete(target.resolve("evenhand.jar"));
            Process one = firstStart(Map.of("STUB_BUILD", "2"));
            Process other = firstStart(Map.of("STUB_BUILD", "2"));
            List<String> said = List.of(complaints(one), complaints(other));
            for (Process process : List.of(one, other)) {
                assertThat(process.waitFor()).isZero();
                assertThat(process.getInputStream()).hasContent("{\"evenhand\": 1}");
            }
            assertThat(Files.readAllLines(folder.resolve("builds"))).hasSize(1);
            assertThat(said)
                    .containsOnlyOnce("""
                            evenhand: first use: building, which takes a minute or so
                            evenhand: first use: fetching what it is built with and of
                            evenhand: first use: compiling the model
                            """)
                    .anyMatch(
                            words -> words.matches("evenhand: is being built for its first use, by process \\d+, which"
                                    + " takes a minute or so; waiting for that\n"));
        }

        private void withoutAConnectionItSaysSoInALine() throws Exception {
            Files.delete(target.resolve("evenhand.jar"));
            Files.writeString(
                    folder.resolve("fails"),
                    "[ERROR] Could not transfer artifact a from/to central: Unknown host example.invalid\n".repeat(30));
            assertThat(failing(Map.of()))
                    .isEqualTo(
                            "evenhand: is not built yet, and what it is built of cannot be fetched: no connection to the"
                                    + " internet; connect once and start again");
        }

        private void aFullDiskIsToldInALineAndLeavesNothingHalfDone() throws Exception {
            Files.delete(target.resolve("evenhand.jar"));
            Files.writeString(folder.resolve("fails"), "[ERROR] a.jar: No space left on device\n");
            assertThat(failing(Map.of())).startsWith("evenhand: the build failed: the disk is full in ");
            Files.delete(folder.resolve("fails"));
            Process again = firstStart(Map.of());
            assertThat(again.waitFor()).isZero();
            assertThat(target.resolve("evenhand.jar")).hasContent("whole");
        }

        private void whatABuilderThatWasKilledLeftIsBuiltAnew() throws Exception {
            Process gone = new ProcessBuilder("/bin/sh", "-c", ":").start();
            gone.waitFor();
            Path left = Files.createDirectory(target.resolveSibling(".building"));
            Files.writeString(left.resolve("pid"), gone.pid() + "\n");
            Files.writeString(target.resolve("evenhand.jar"), "half");
            Process process = firstStart(Map.of());
            assertThat(process.waitFor()).isZero();
            assertThat(target.resolve("evenhand.jar")).hasContent("whole");
        }

        private void anotherFailureIsShown() throws Exception {
            Files.delete(target.resolve("evenhand.jar"));
            Files.writeString(folder.resolve("fails"), "[ERROR] Car.java:[1,1] cannot find symbol\n");
            Process process = firstStart(Map.of());
            assertThat(complaints(process)).endsWith("""
                            [ERROR] Car.java:[1,1] cannot find symbol
                            evenhand: the build failed (the lines above say why)
                            """);
            assertThat(process.waitFor()).isEqualTo(2);
        }

        private void aWrongHomeOfJavaIsNamed() throws Exception {
            Process process = firstStart(Map.of("JAVA_HOME", "/nowhere"));
            assertThat(complaints(process))
                    .isEqualTo(
                            "evenhand: JAVA_HOME is /nowhere, where there is no bin/java; name a folder of Java 17 or"
                                    + " later, or unset it\n");
            assertThat(process.waitFor()).isEqualTo(2);
        }

        private void anOlderJavaIsNamed() throws Exception {
            for (String version : List.of("11.0.2", "1.8.0_412")) {
                Files.writeString(folder.resolve("build"), "openjdk version \"" + version + "\" 2019-01-15\n");
                Process process = firstStart(Map.of());
                assertThat(complaints(process))
                        .isEqualTo("evenhand: needs Java 17 or later, and " + folder.resolve("java/bin/java")
                                + " is Java " + version + "; set JAVA_HOME to a newer one\n");
                assertThat(process.waitFor()).isEqualTo(2);
            }
            Files.writeString(folder.resolve("build"), "openjdk version \"25\" 2025-09-16\n");
            answer("check", "car.json");
        }

        private static void until(String what, BooleanSupplier done) throws InterruptedException {
            for (int i = 0; i < 600 && !done.getAsBoolean(); i++) {
                Thread.sleep(50);
            }
            assertThat(done.getAsBoolean()).as(what).isTrue();
        }

        private void untilArchived() throws InterruptedException {
            until(
                    "an archive is made and its maker gone",
                    () -> Files.exists(target.resolve("evenhand.archive"))
                            && !Files.exists(target.resolve("archiving")));
        }

        private List<String> calls(String word) throws IOException {
            return Files.readAllLines(calls).stream()
                    .filter(call -> call.contains(word))
                    .toList();
        }

        private List<String> inTarget() throws IOException {
            try (var all = Files.list(target)) {
                return all.map(file -> file.getFileName().toString()).sorted().toList();
            }
        }

        /** The first command after the tree had moved waited for the archive, minutes on a slow machine. */
        private void theAnswerComesFirstAndTheArchiveIsMadeBehindIt() throws Exception {
            assertThat(answer("check", "car.json", "--json")).isEqualTo("{\"evenhand\": 1}\n");
            assertThat(calls("-jar").get(0)).contains(" check car.json --json").doesNotContain("SharedArchiveFile");
            untilArchived();
            assertThat(inTarget()).containsExactly("evenhand.archive", "evenhand.jar", "evenhand.jsa");
            assertThat(target.resolve("evenhand.jsa")).hasContent("whole");
            Files.writeString(calls, "");
            answer("check", "car.json");
            assertThat(calls(""))
                    .singleElement()
                    .asString()
                    .contains("-XX:SharedArchiveFile=" + target.resolve("evenhand.jsa"));
        }

        /** They came on standard output, into the middle of JSON. */
        private void warningsOfJavaItselfGoToStandardError() throws Exception {
            answer("check", "car.json", "--json");
            assertThat(calls(" check car.json --json").get(0)).contains("-Xlog:disable -Xlog:all=warning:stderr");
        }

        private void anotherBuildOfJavaIsNotShownTheArchiveAndMakesItsOwn() throws Exception {
            answer("check", "car.json");
            untilArchived();
            Files.writeString(folder.resolve("build"), "17.0.1+1 of another maker\n");
            Files.writeString(calls, "");
            answer("check", "car.json");
            assertThat(calls(" check car.json").get(0)).doesNotContain("SharedArchiveFile");
            until("another archive", () -> {
                try {
                    return calls("-Xshare:dump").size() == 1;
                } catch (IOException e) {
                    return false;
                }
            });
            untilArchived();
            Files.writeString(calls, "");
            answer("check", "car.json");
            assertThat(calls("")).singleElement().asString().contains("SharedArchiveFile");
        }

        private void ofManyStartsAtOnceOneMakesTheArchive() throws Exception {
            List<Process> starts = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                starts.add(start(Map.of("STUB_DUMP", "2"), "check", "car.json"));
            }
            for (Process process : starts) {
                assertThat(process.waitFor()).isZero();
            }
            untilArchived();
            Thread.sleep(1_500); // a second maker would begin within a second
            untilArchived();
            assertThat(calls("-Xshare:dump")).hasSize(1);
        }

        private void whatAKilledMakerLeftIsTakenAwayAndNeverUsed() throws Exception {
            Process gone = new ProcessBuilder("/bin/sh", "-c", ":").start();
            gone.waitFor();
            Path left = Files.createDirectory(target.resolve("archiving"));
            Files.writeString(left.resolve("pid"), gone.pid() + "\n");
            Files.writeString(left.resolve("jsa"), "half");
            answer("check", "car.json");
            assertThat(calls("-jar").get(0)).doesNotContain("SharedArchiveFile");
            untilArchived();
            assertThat(target.resolve("evenhand.jsa")).hasContent("whole");
            assertThat(inTarget()).containsExactly("evenhand.archive", "evenhand.jar", "evenhand.jsa");
        }

        /** Each window made one of its own, and went on after it was closed. */
        private void ofTwoWindowsOneRehearsesAndNothingGoesOnWhenTheyAreClosed() throws Exception {
            List<Process> windows =
                    List.of(start(Map.of("DISPLAY", ":9"), "window"), start(Map.of("DISPLAY", ":9"), "window"));
            until("a rehearsal", () -> {
                try {
                    return !calls("Rehearsal").isEmpty();
                } catch (IOException e) {
                    return false;
                }
            });
            Thread.sleep(2_000); // a second one would have begun with the first
            assertThat(calls("Rehearsal")).hasSize(1);
            for (Process window : windows) {
                window.destroy();
                assertThat(window.waitFor(20, TimeUnit.SECONDS)).isTrue();
            }
            until("the maker is gone", () -> !Files.exists(target.resolve("archiving")));
            assertThat(inTarget()).containsExactly("evenhand.jar");
            assertThat(calls("-Xshare:dump")).isEmpty();
        }
    }
}
