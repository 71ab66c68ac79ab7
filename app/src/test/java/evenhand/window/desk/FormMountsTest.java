package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.mounts.Facing;
import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.Mount;
import evenhand.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Mounts and hard use in the form: what has a name of its own is added, renamed, changed and taken away. */
class FormMountsTest {
    private static final String SAMPLE = "../app/src/test/resources/samples/mounts";
    private static final Target CAR = new Target(Form.Home.CAR, Optional.empty());
    private static final Target JOB = new Target(Form.Home.JOB, Optional.empty());

    private final Bench bench = Desks.bench(SAMPLE);

    private Scenario job() {
        return bench.desk().work().scenario();
    }

    private Form form() {
        return Form.of(job());
    }

    private FormField field(String path) {
        return form().field(path).orElseThrow();
    }

    private Form.Section section(String path) {
        return form().sections().stream()
                .filter(section -> section.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private Mount mount(String name) {
        return job().setups().get(0).car().mounts().stream()
                .filter(mount -> mount.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void eachMountHasItsSectionsUnderItsOwnName() {
        assertThat(form().sections().stream()
                        .filter(section -> section.role() == Form.Role.NAMED)
                        .map(Form.Section::title))
                .containsExactly("pivotPost", "springTower", "link bracket");
        Form.Section more = section("mounts");
        assertThat(more.role()).isEqualTo(Form.Role.NAMES);
        assertThat(more.added()).isEqualTo("mounts.mount4");
        assertThat(field("mounts.springTower.spread.outer").given()).contains("38 mm");
        assertThat(field("mounts.link bracket.carries").grid().orElseThrow().rows())
                .containsExactly(List.of("rear.links.body"), List.of("rear.springRight.top"));
        assertThat(section("mounts.pivotPost.pin").needed()).isFalse();
        assertThat(PointRow.among(
                        "mounts.pivotPost.between",
                        section("mounts.pivotPost.between").fields(),
                        path -> ""))
                .extracting(PointRow::label)
                .containsExactly("left", "right");
    }

    @Test
    void aMountIsDraftedUnderTheNextNameAndAdded() {
        String path = section("mounts").added();
        List<FormField> wanted = Drafting.drafted(Form.Home.CAR, job().car(), path, Draft.EMPTY);
        assertThat(wanted).extracting(FormField::label).containsExactly("carries", "faces", "rated load");
        Draft draft = Draft.EMPTY
                .with(
                        wanted.get(0).path(),
                        wanted.get(0).grid().orElseThrow().json(List.of(List.of("rear.springLeft.top"))))
                .with(wanted.get(1).path(), wanted.get(1).drafted("0 0 -2"));
        Desks.done(bench, CAR.json(path, draft.object(path), List.of()));
        assertThat(mount("mount4").faces()).isEqualTo(Facing.DOWN);
        assertThat(section("mounts").added()).isEqualTo("mounts.mount5");
        bench.undo();
        assertThat(section("mounts").added()).isEqualTo(path);
    }

    @Test
    void anotherNameReachesEverySetupAndABadOneIsRefused() {
        FormField name = field("mounts.springTower");
        assertThat(name.isOwnName(section("mounts.springTower"))).isTrue();
        assertThat(bench.act(CAR.name("mounts.springTower", "pivotPost")))
                .hasValueSatisfying(why -> assertThat(why).contains("the name of another"));
        assertThat(bench.act(CAR.name("mounts.springTower", "a.b")))
                .hasValueSatisfying(why -> assertThat(why).contains("without dots"));
        Desks.done(bench, CAR.name("mounts.springTower", "tower"));
        assertThat(job().setups())
                .allSatisfy(setup -> assertThat(setup.car().mounts())
                        .extracting(Mount::name)
                        .contains("tower")
                        .doesNotContain("springTower"));
        assertThat(Form.of(job().setups().get(1)).field("mounts.tower"))
                .as("a set-up alone cannot rename what the car has")
                .isEmpty();
    }

    @Test
    void whatASetupTakesAwayTheCarKeeps() {
        Target alone = new Target(Form.Home.CAR, Optional.of("As bought"));
        Desks.done(bench, alone.remove("mounts.pivotPost"));
        assertThat(job().setups().get(0).car().mounts()).extracting(Mount::name).doesNotContain("pivotPost");
        assertThat(job().setups().get(1).car().mounts()).extracting(Mount::name).contains("pivotPost");
        Desks.done(bench, CAR.remove("mounts.pivotPost"));
        assertThat(form().field("mounts.pivotPost.carries")).isEmpty();
    }

    @Test
    void wordsNumbersAndFlagsAreWrittenAsTheFileHasThem() {
        FormField faces = field("mounts.springTower.faces");
        Desks.done(bench, CAR.value(faces, " up ", List.of()));
        assertThat(mount("springTower").faces()).isEqualTo(Facing.UP);
        Desks.done(bench, CAR.value(faces, "0, 3, 4", List.of()));
        assertThat(mount("springTower").faces()).isEqualTo(new Facing(0, 3, 4));
        assertThat(field("mounts.springTower.faces").given()).contains("0, 3, 4");
        assertThat(bench.act(CAR.value(faces, "inwards", List.of()))).isPresent();
        FormField thread = field("mounts.link bracket.pin.threadInPlane");
        assertThat(thread.choices()).containsExactly("true", "false");
        Desks.done(bench, CAR.value(thread, "false", List.of()));
        assertThat(mount("link bracket").pin().orElseThrow().threadInPlane()).isFalse();
        FormField carries = field("mounts.link bracket.carries");
        Desks.done(bench, CAR.rows(carries, carries.grid().orElseThrow(), List.of(List.of("rear.springRight.bottom"))));
        assertThat(mount("link bracket").carries())
                .singleElement()
                .satisfies(end -> assertThat(end.key()).isEqualTo("rear.springRight.bottom"));
    }

    @Test
    void casesOfHardUseAreItemsOfTheJob() {
        FormField of = field("hardUse[9].of");
        List<List<String>> rows = new ArrayList<>(of.grid().orElseThrow().rows());
        assertThat(rows).containsExactly(List.of("Hard corner", "0.7"), List.of("Hard braking", "70 %"));
        rows.set(1, List.of("Pothole", "0.5"));
        Desks.done(bench, JOB.rows(of, of.grid().orElseThrow(), rows));
        assertThat(((HardUse.Combined) job().hardUse().get(9)).of().get(1)).isEqualTo(new HardUse.Part("Pothole", 0.5));
        Desks.done(bench, JOB.value(field("hardUse[1].pace"), "0.4 g", List.of()));
        assertThat(((HardUse.Cornering) job().hardUse().get(1)).pace()).isPresent();
        FormField wheel = field("hardUse[8].wheels.rearLeft");
        assertThat(wheel.grid().orElseThrow().rows())
                .containsExactly(List.of("-5 kN"), List.of("2.5 kN"), List.of("9 kN"));
        String path = section("hardUse").added();
        Draft draft = Draft.EMPTY.with(path + ".kind", "given").with(path + ".name", "Tow eye");
        List<FormField> wanted = Drafting.drafted(Form.Home.JOB, job().given(), path, draft);
        assertThat(wanted).extracting(FormField::path).contains(path + ".wheels.frontLeft", path + ".wheels.rearRight");
        FormField front = wanted.stream()
                .filter(field -> field.path().endsWith("frontLeft"))
                .findFirst()
                .orElseThrow();
        draft = draft.with(
                front.path(),
                front.grid().orElseThrow().json(List.of(List.of("2 kN"), List.of("0 N"), List.of("0 N"))));
        Desks.done(bench, JOB.json(path, draft.object(path), List.of()));
        assertThat(job().hardUse()).hasSize(11);
    }
}
