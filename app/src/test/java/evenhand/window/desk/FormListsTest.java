package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.scenario.Scenario;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Lists in the form: curves, readings, damper settings, load cases, free words. */
class FormListsTest {
    private static final Target CAR = new Target(Form.Home.CAR, Optional.empty());
    private static final Target JOB = new Target(Form.Home.JOB, Optional.empty());

    private static FormField field(Bench bench, String path) {
        return Form.of(bench.desk().work().scenario()).field(path).orElseThrow();
    }

    private static List<List<String>> rows(Bench bench, String path) {
        return new ArrayList<>(field(bench, path).grid().orElseThrow().rows());
    }

    private static Optional<String> rows(Bench bench, Target target, String path, List<List<String>> wanted) {
        FormField field = field(bench, path);
        return bench.act(target.rows(field, field.grid().orElseThrow(), wanted));
    }

    private static String text(Bench bench) {
        return bench.desk().work().scenario().text();
    }

    @Test
    void everyListOfEveryDemoCarHasItsTableOrItsSections() {
        for (String demo : Demos.NAMES) {
            Scenario job = Desks.demo(demo).work().scenario();
            Form form = Form.of(job);
            List<String> lists = new ArrayList<>();
            collect("", job.car(), lists);
            if (!job.loadCases().isEmpty()) {
                lists.add("loadCases");
            }
            assertThat(lists).as(demo).isNotEmpty();
            for (String list : lists) {
                boolean table = form.field(list).flatMap(FormField::grid).isPresent();
                boolean sections = form.sections().stream()
                        .anyMatch(section -> section.path().equals(list) && section.size() > 0);
                assertThat(table || sections).as(demo + " " + list).isTrue();
            }
        }
    }

    private static void collect(String path, Entries entries, List<String> lists) {
        entries.given().forEach((key, entry) -> {
            String here = path.isEmpty() ? key : path + "." + key;
            if (entry instanceof Entries below) {
                collect(here, below, lists);
            } else if (entry instanceof Entry.Drawn || entry instanceof Entry.Listed) {
                lists.add(here);
            }
        });
    }

    @Test
    void aPointThatIsAddedGoesToItsPlaceInTheCurve() {
        Bench bench = Desks.bench("harbour-saloon");
        String path = "front.bumpStop.curve";
        List<List<String>> rows = rows(bench, path);
        int before = rows.size();
        rows.add(List.of("5 mm", "100 N"));
        assertThat(rows(bench, CAR, path, rows)).isEmpty();
        assertThat(rows(bench, path)).hasSize(before + 1);
        assertThat(rows(bench, path).get(1)).containsExactly("5 mm", "100 N");
        bench.undo();
        assertThat(rows(bench, path)).hasSize(before);
    }

    @Test
    void aCurveThatFallsIsRefusedWithItsReasonAndStaysAsItWas() {
        Bench bench = Desks.bench("harbour-saloon");
        String before = text(bench);
        List<List<String>> rows = rows(bench, "front.bumpStop.curve");
        rows.set(rows.size() - 1, List.of(rows.get(rows.size() - 1).get(0), "1 N"));
        assertThat(rows(bench, CAR, "front.bumpStop.curve", rows))
                .hasValueSatisfying(
                        why -> assertThat(why).doesNotContain("car.front").isNotBlank());
        assertThat(text(bench)).isEqualTo(before);
    }

    @Test
    void oneCellOfAReadingChangesNothingElseInTheFile() {
        Bench bench = Desks.bench("quarry-special");
        String before = text(bench);
        List<List<String>> rows = rows(bench, "axleLift.readings");
        assertThat(rows).hasSizeGreaterThan(2);
        rows.set(1, List.of("455 mm", rows.get(1).get(1)));
        assertThat(rows(bench, CAR, "axleLift.readings", rows)).isEmpty();
        assertThat(text(bench)).isEqualTo(before.replace("\"450 mm\"", "\"455 mm\""));
    }

    @Test
    void aReadingIsAddedAndTakenOutAndEachIsOneUndo() {
        Bench bench = Desks.bench("quarry-special");
        String before = text(bench);
        double height = bench.desk().work().activeSetup().car().cgHeight();
        List<List<String>> rows = rows(bench, "axleLift.readings");
        List<List<String>> more = new ArrayList<>(rows);
        more.add(List.of("700 mm", "31 kg ± 1 kg"));
        assertThat(rows(bench, CAR, "axleLift.readings", more)).isEmpty();
        String added = text(bench);
        assertThat(added).contains("{\"rise\": \"700 mm\", \"otherAxleGain\": \"31 kg ± 1 kg\"}");
        assertThat(bench.desk().work().activeSetup().car().cgHeight()).isNotEqualTo(height);
        more.remove(0);
        assertThat(rows(bench, CAR, "axleLift.readings", more)).isEmpty();
        assertThat(rows(bench, "axleLift.readings")).isEqualTo(more);
        bench.undo();
        assertThat(text(bench)).isEqualTo(added);
        bench.undo();
        assertThat(text(bench)).isEqualTo(before);
    }

    @Test
    void aReadingThatCannotBeIsRefusedAtItsCell() {
        Bench bench = Desks.bench("quarry-special");
        List<List<String>> rows = rows(bench, "axleLift.readings");
        rows.set(2, List.of("60 m", rows.get(2).get(1)));
        assertThat(rows(bench, CAR, "axleLift.readings", rows))
                .hasValueSatisfying(why -> assertThat(why).startsWith("must be at most"));
    }

    @Test
    void aBareNumberGetsTheUnitThatStandsOverItsColumn() {
        Bench bench = Desks.bench("tinkers-lane-roadster");
        Grid written = field(bench, "front.damper.bump").grid().orElseThrow();
        assertThat(written.head(0, Units.METRIC)).isEqualTo("speed, in/s");
        assertThat(written.complete(0, "30", Units.METRIC)).isEqualTo("30 in/s");
        Grid empty = new Grid(written.kind(), written.columns(), List.of());
        assertThat(empty.head(0, Units.METRIC)).isEqualTo("speed, m/s");
        assertThat(empty.complete(1, " 250 ", Units.IMPERIAL)).isEqualTo("250 lbf");
        assertThat(empty.complete(1, "250 N", Units.IMPERIAL)).isEqualTo("250 N");
        assertThat(empty.columns().get(1).problem("soft")).isPresent();
        assertThat(empty.columns().get(1).problem("250 mm")).isPresent();
        assertThat(empty.columns().get(1).problem("250 N ± 5 N")).isEmpty();
    }

    @Test
    void aDamperSettingOfOneSetupAloneLeavesTheCarsAsTheyAre() {
        Bench bench = Desks.bench("tinkers-lane-roadster");
        String setup = bench.desk().work().active();
        Entries before = bench.desk().work().scenario().car();
        Target alone = new Target(Form.Home.CAR, Optional.of(setup));
        Form form = Form.of(bench.desk().work().activeSetup());
        FormField bump = form.field("front.damper.settings[1].bump").orElseThrow();
        Grid grid = bump.grid().orElseThrow();
        List<List<String>> rows = new ArrayList<>(grid.rows());
        rows.set(1, List.of(rows.get(1).get(0), "61 lbf"));
        Desks.done(bench, alone.rows(bump, grid, rows));
        assertThat(bench.desk().work().scenario().car()).isEqualTo(before);
        Form now = Form.of(bench.desk().work().activeSetup());
        assertThat(now.field("front.damper.settings[1].bump")
                        .flatMap(FormField::grid)
                        .orElseThrow()
                        .rows())
                .isEqualTo(rows);
        assertThat(now.field("front.damper.settings[0].name").flatMap(FormField::given))
                .isEqualTo(form.field("front.damper.settings[0].name").flatMap(FormField::given));
        Desks.done(bench, alone.remove("front.damper.settings[2]"));
        assertThat(Form.of(bench.desk().work().activeSetup()).field("front.damper.settings[2].name"))
                .isEmpty();
        assertThat(bench.desk().work().scenario().car()).isEqualTo(before);
    }

    @Test
    void aDamperSettingIsDraftedAsAnItemOfItsList() {
        Bench bench = Desks.bench("tinkers-lane-roadster");
        Form.Section list = Form.of(bench.desk().work().scenario()).sections().stream()
                .filter(section -> section.path().equals("front.damper.settings"))
                .findFirst()
                .orElseThrow();
        Draft draft = Draft.EMPTY.with(list.added() + ".name", "track day");
        Entries car = bench.desk().work().scenario().car();
        List<FormField> wanted = Drafting.drafted(Form.Home.CAR, car, list.added(), draft);
        assertThat(wanted).extracting(FormField::label).containsExactly("name", "bump", "rebound");
        Act unready = CAR.json(list.added(), draft.object(list.added()), List.of());
        assertThat(bench.act(unready)).hasValueSatisfying(why -> assertThat(why).contains("is missing"));
        for (FormField curve : wanted.subList(1, 3)) {
            Grid grid = curve.grid().orElseThrow();
            draft = draft.with(
                    curve.path(), grid.json(List.of(List.of("10 in/s", "200 lbf"), List.of("0 in/s", "0 lbf"))));
        }
        assertThat(Drafting.drafted(Form.Home.CAR, car, list.added(), draft)
                        .get(1)
                        .grid()
                        .orElseThrow()
                        .rows())
                .containsExactly(List.of("0 in/s", "0 lbf"), List.of("10 in/s", "200 lbf"));
        Desks.done(bench, CAR.json(list.added(), draft.object(list.added()), List.of()));
        assertThat(field(bench, list.added() + ".name").given()).contains("track day");
    }

    @Test
    void aLoadCaseThatIsAboardStaysAboardUnderItsNewNameAndGoesWhenItIsTakenOut() {
        Bench bench = Desks.bench("orchard-estate");
        String name = bench.desk().work().scenario().loadCases().get(0).name();
        Desks.done(bench, new TrialAct.ChooseLoad(Optional.of(name)));
        Desks.done(bench, JOB.value(field(bench, "loadCases[0].name"), "Full of apples", List.of()));
        assertThat(bench.desk().work().load()).contains("Full of apples");
        List<List<String>> added = rows(bench, "loadCases[0].added");
        double mass = mass(bench);
        added.add(List.of("one crate more", "22 kg", "2700 mm", "600 mm"));
        assertThat(rows(bench, JOB, "loadCases[0].added", added)).isEmpty();
        assertThat(mass(bench)).isEqualTo(mass + 22);
        Desks.done(bench, JOB.remove("loadCases[0]"));
        assertThat(bench.desk().work().load()).isEmpty();
        assertThat(bench.desk().work().scenario().loadCase("Full of apples")).isEmpty();
    }

    private static double mass(Bench bench) {
        return bench.desk().work().scenario().loadCases().get(0).added().stream()
                .mapToDouble(one -> one.mass())
                .sum();
    }

    @Test
    void wordsForTheSheetBelongToOneSetupAndLeaveItsChangesAlone() {
        Bench bench = Desks.bench("harbour-saloon");
        String setup = bench.desk().work().active();
        Target sheet = new Target(Form.Home.SETUP, Optional.of(setup));
        FormField words =
                Form.of(bench.desk().work().activeSetup()).field("sheet").orElseThrow();
        List<List<String>> rows = List.of(List.of("castor", "4 deg"), List.of("rims", "7 x 15, \"offset\" 35 mm"));
        Entries car = bench.desk().work().activeSetup().entries();
        Desks.done(bench, sheet.rows(words, words.grid().orElseThrow(), rows));
        assertThat(bench.desk().work().activeSetup().sheet())
                .containsExactly(
                        java.util.Map.entry("castor", "4 deg"),
                        java.util.Map.entry("rims", "7 x 15, \"offset\" 35 mm"));
        assertThat(bench.desk().work().activeSetup().entries()).isEqualTo(car);
        Desks.done(bench, sheet.rows(words, words.grid().orElseThrow(), List.of()));
        assertThat(bench.desk().work().activeSetup().sheet()).isEmpty();
    }

    @Test
    void theSameWordTwiceOnTheSheetIsRefused() {
        Bench bench = Desks.bench("harbour-saloon");
        Target sheet =
                new Target(Form.Home.SETUP, Optional.of(bench.desk().work().active()));
        FormField words =
                Form.of(bench.desk().work().activeSetup()).field("sheet").orElseThrow();
        List<List<String>> twice = List.of(List.of("castor", "4 deg"), List.of("castor", "5 deg"));
        assertThat(bench.act(sheet.rows(words, words.grid().orElseThrow(), twice)))
                .isPresent();
    }

    @Test
    void weighingsTakeThePlaceOfAGuessedHeightAndTheOtherWayRound() {
        Bench bench = Desks.bench("harbour-saloon");
        Entries car = bench.desk().work().scenario().car();
        assertThat(car.get("cgHeight")).isPresent();
        String lift =
                "{\"liftedAxle\": \"rear\", \"readings\": [{\"rise\": \"400 mm\", \"otherAxleGain\": \"16 kg\"}]}";
        assertThat(bench.act(CAR.json("axleLift", lift, List.of()))).isPresent();
        Desks.done(bench, CAR.json("axleLift", lift, FormPlace.insteadOf(car, "axleLift")));
        Entries lifted = bench.desk().work().scenario().car();
        assertThat(lifted.get("cgHeight")).isEmpty();
        FormField height = field(bench, "cgHeight");
        Desks.done(bench, CAR.value(height, "540 mm", FormPlace.insteadOf(lifted, "cgHeight")));
        assertThat(bench.desk().work().scenario().car().get("axleLift")).isEmpty();
    }

    @Test
    void aStoryKeepsItsLines() {
        Bench bench = Desks.bench("harbour-saloon");
        FormField story = field(bench, "story");
        assertThat(story.hasLines()).isTrue();
        Desks.done(bench, JOB.value(story, "One line.\nAnother \"line\".", List.of()));
        assertThat(bench.desk().work().scenario().story()).contains("One line.\nAnother \"line\".");
        Desks.done(bench, JOB.value(story, " ", List.of()));
        assertThat(bench.desk().work().scenario().story()).isEmpty();
    }
}
