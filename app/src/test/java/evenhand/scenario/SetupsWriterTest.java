package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SetupsWriterTest {
    private static final String TEXT = Samples.text();
    private static final List<String> NAMES = names(TEXT);

    private static List<String> names(String text) {
        return Samples.read(text).setups().stream().map(Setup::name).toList();
    }

    private static String withoutSetups() {
        int from = TEXT.indexOf("\"setups\"");
        return TEXT.substring(0, TEXT.lastIndexOf(',', from)) + "\n}\n";
    }

    @Test
    void aCopyStandsRightBehindItsOriginalAndIsTheSameCar() {
        for (String name : NAMES) {
            String edited = SetupsWriter.duplicate(TEXT, name, "Copy of \"it\"");
            List<String> expected = new ArrayList<>(NAMES);
            expected.add(NAMES.indexOf(name) + 1, "Copy of \"it\"");
            assertThat(names(edited)).isEqualTo(expected);
            assertThat(Samples.read(edited)
                            .setup("Copy of \"it\"")
                            .orElseThrow()
                            .car())
                    .isEqualTo(Samples.read(TEXT).setup(name).orElseThrow().car());
            assertThat(SetupsWriter.delete(edited, "Copy of \"it\"")).isEqualTo(TEXT);
        }
    }

    @Test
    void aRenamedSetupTakesThoseBasedOnItAlong() {
        for (String name : NAMES) {
            String edited = SetupsWriter.rename(TEXT, name, "Another \\ name");
            assertThat(Samples.read(edited).setups().stream().map(Setup::car).toList())
                    .isEqualTo(
                            Samples.read(TEXT).setups().stream().map(Setup::car).toList());
            assertThat(SetupsWriter.rename(edited, "Another \\ name", name)).isEqualTo(TEXT);
        }
    }

    private static Map<String, Integer> looks(String text) {
        Map<String, Integer> looks = new HashMap<>();
        Samples.read(text).setups().forEach(setup -> looks.put(setup.name(), setup.look()));
        return looks;
    }

    /** Colour, line and marker went by the place in the list. */
    @Test
    void aSetupLooksAsItDidWhateverBecomesOfTheOthers() {
        Map<String, Integer> before = looks(TEXT);
        assertThat(before.values())
                .containsExactlyInAnyOrder(
                        IntStream.range(0, NAMES.size()).boxed().toArray(Integer[]::new));
        for (String name : NAMES) {
            for (int to = 0; to < NAMES.size(); to++) {
                assertThat(looks(SetupsWriter.move(TEXT, name, to))).isEqualTo(before);
            }
            Map<String, Integer> copied = looks(SetupsWriter.duplicate(TEXT, name, "Copy"));
            assertThat(copied.get("Copy")).isEqualTo(NAMES.size());
            assertThat(copied).containsAllEntriesOf(before);
            Map<String, Integer> added =
                    looks(ScenarioWriter.addSetup(TEXT, "Added", Optional.empty(), Optional.empty(), Map.of()));
            assertThat(added).containsAllEntriesOf(before);
            if (SetupsWriter.basedOn(TEXT, name).isEmpty()) {
                Map<String, Integer> left = new HashMap<>(before);
                left.remove(name);
                String without = SetupsWriter.delete(TEXT, name);
                assertThat(looks(without)).isEqualTo(left);
                String again = ScenarioWriter.addSetup(without, "Added", Optional.empty(), Optional.empty(), Map.of());
                assertThat(looks(again)).containsAllEntriesOf(left).containsEntry("Added", before.get(name));
            }
        }
        String many = TEXT;
        for (int i = 0; i < 12; i++) {
            many = ScenarioWriter.addSetup(many, "Added " + i, Optional.empty(), Optional.empty(), Map.of());
        }
        assertThat(looks(many).values()).doesNotHaveDuplicates();
    }

    @Test
    void aMovedSetupGoesBackToWhereItWasByteForByte() {
        String windows = TEXT.replace("\n", "\r\n");
        for (String name : NAMES) {
            for (int to = 0; to < NAMES.size(); to++) {
                String edited = SetupsWriter.move(windows, name, to);
                List<String> expected = new ArrayList<>(NAMES);
                Collections.rotate(
                        expected.subList(Math.min(to, NAMES.indexOf(name)), Math.max(to, NAMES.indexOf(name)) + 1),
                        to < NAMES.indexOf(name) ? 1 : -1);
                assertThat(names(edited)).isEqualTo(expected);
                assertThat(SetupsWriter.move(edited, name, NAMES.indexOf(name))).isEqualTo(windows);
            }
        }
    }

    @Test
    void aSetupThatOthersAreBasedOnStays() {
        String base = Samples.read(TEXT).setups().stream()
                .flatMap(setup -> setup.basedOn().stream())
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> SetupsWriter.delete(TEXT, base))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("base them on another first");
    }

    @Test
    void aNoteComesAndGoesWithoutTrace() {
        String edited = SetupsWriter.note(TEXT, "As bought", Optional.of("two\nlines"));
        assertThat(Samples.read(edited).setup("As bought").orElseThrow().note()).contains("two\nlines");
        assertThat(SetupsWriter.note(edited, "As bought", Optional.empty())).isEqualTo(TEXT);
    }

    @Test
    void aChangeTakenBackLeavesTheSetupAsItWas() {
        for (String path : List.of("front.rollSteer", "rear.spring.rate", "rollingResistance")) {
            String edited = ScenarioWriter.set(
                    TEXT, Optional.of("As bought"), path, path.endsWith("rate") ? "30 N/mm" : "0.01");
            assertThat(edited).isNotEqualTo(TEXT);
            assertThat(SetupsWriter.takeBack(edited, "As bought", path)).isEqualTo(TEXT);
        }
        String two = ScenarioWriter.set(TEXT, Optional.of("As bought"), "rear.spring.rate", "30 N/mm");
        two = ScenarioWriter.set(two, Optional.of("As bought"), "rear.track", "1400 mm");
        assertThat(SetupsWriter.takeBack(two, "As bought", "rear.spring.rate"))
                .isEqualTo(ScenarioWriter.set(TEXT, Optional.of("As bought"), "rear.track", "1400 mm"));
        assertThat(SetupsWriter.takeBack(two, "As bought", "rear.spring.base")).isEqualTo(two);
    }

    @Test
    void theOnlySetupOfAFileWithoutAnyIsWrittenDownByTheFirstEdit() {
        String bare = withoutSetups();
        assertThat(names(bare)).containsExactly(Setup.AS_GIVEN);
        assertThat(names(SetupsWriter.rename(bare, Setup.AS_GIVEN, "Found"))).containsExactly("Found");
        assertThat(names(SetupsWriter.duplicate(bare, Setup.AS_GIVEN, "Next"))).containsExactly(Setup.AS_GIVEN, "Next");
        assertThatThrownBy(() -> SetupsWriter.delete(bare, Setup.AS_GIVEN)).hasMessageContaining("only set-up");
    }

    @Test
    void aValueTakenOutOfTheCarIsEstimatedAgain() {
        String edited = ScenarioWriter.remove(TEXT, "front.tyre.curvature");
        assertThat(edited).isNotEqualTo(TEXT);
        assertThat(Samples.read(edited).setups().get(0).values())
                .anyMatch(value -> value.path().equals("front.tyre.curvature")
                        && value.origin() == evenhand.catalogue.Adjustable.Origin.ESTIMATED);
    }
}
