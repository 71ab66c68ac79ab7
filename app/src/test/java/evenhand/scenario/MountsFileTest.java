package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import evenhand.car.Car;
import evenhand.car.mounts.Facing;
import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.Mount;
import evenhand.car.mounts.UsualUse;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.quantity.InvalidValue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a file says of mounts and of hard use, read, changed and written. */
class MountsFileTest {
    private static final Path FILE = Path.of("src/test/resources/samples/mounts.json");

    private static String text() {
        try {
            return Files.readString(FILE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final Scenario SAMPLE = Samples.read(text());

    /** 10.2 mm as the reader has it. */
    private static final double HOLE = 10.2 / 1000;

    private static Mount mount(Car car, String name) {
        return car.mounts().stream()
                .filter(mount -> mount.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Car car(int setup) {
        return SAMPLE.setups().get(setup).car();
    }

    @Test
    void everyKeyOfAMountIsRead() {
        Car car = car(0);
        assertThat(car.mounts()).extracting(Mount::name).containsExactly("pivotPost", "springTower", "link bracket");
        Mount post = mount(car, "pivotPost");
        assertThat(post.carries().get(0).key()).isEqualTo("rear.lateralLocator.body");
        assertThat(post.faces()).isEqualTo(Facing.BACK);
        assertThat(post.at().orElseThrow().ahead()).isEqualTo(-0.14);
        assertThat(post.pin())
                .contains(new Mount.Pin(0.02, Mount.Shear.SINGLE, 0.045, 0, false, OptionalDouble.of(640e6)));
        assertThat(post.between().orElseThrow().right().left()).isEqualTo(-0.46);
        Mount tower = mount(car, "springTower");
        assertThat(tower.spread()).contains(new Mount.Washer(0.038, HOLE, OptionalDouble.of(0.001)));
        assertThat(tower.eye().orElseThrow().twist()).isCloseTo(14 * 180 / Math.PI, within(1e-9));
        Mount bracket = mount(car, "link bracket");
        assertThat(bracket.faces()).isEqualTo(new Facing(0, 0.5, -1));
        assertThat(bracket.pin().orElseThrow())
                .isEqualTo(new Mount.Pin(0.014, Mount.Shear.DOUBLE, 0, 0.046, true, OptionalDouble.of(640e6)));
        assertThat(bracket.spread()).contains(new Mount.Plate(0.09, 0.06, 0, OptionalDouble.empty()));
        assertThat(bracket.ratedLoad()).hasValue(22_000);
        assertThat(car.front().stops().bump().orElseThrow().aroundDamper()).isTrue();
        assertThat(car.rear().stops().bump().orElseThrow().aroundDamper()).isTrue();
    }

    @Test
    void aSetupChangesOneValueOfAMountTakesOneAwayAndAddsOne() {
        assertThat(mount(car(1), "springTower").spread())
                .contains(new Mount.Washer(0.06, HOLE, OptionalDouble.of(0.001)));
        assertThat(car(1).mounts()).extracting(Mount::name).containsExactly("pivotPost", "springTower");
        assertThat(car(2).mounts()).extracting(Mount::name).containsExactly("pivotPost", "springTower", "post");
        assertThat(mount(car(2), "springTower").faces()).isEqualTo(Facing.UP);
        Entries before = SAMPLE.setups().get(0).entries();
        Entries after = SAMPLE.setups().get(2).entries();
        List<Catalogue.Difference> differences = Catalogue.differences(before, after);
        assertThat(differences)
                .extracting(Catalogue.Difference::path)
                .containsExactly(
                        "mounts.springTower.faces",
                        "mounts.springTower.spread.outer",
                        "mounts.link bracket",
                        "mounts.post");
        Entries changed = before;
        for (Catalogue.Difference difference : differences) {
            changed = Catalogue.with(changed, difference);
        }
        assertThat(Catalogue.build(changed).value().orElseThrow().mounts())
                .isEqualTo(Catalogue.build(after).value().orElseThrow().mounts());
    }

    @Test
    void aNumberOfAMountIsNamedByItsPathAndHasItsTolerance() {
        Entries car = SAMPLE.car();
        Entries wider = Catalogue.with(car, "mounts.springTower.spread.outer", 0.05);
        assertThat(mount(Catalogue.build(wider).value().orElseThrow(), "springTower")
                        .spread()
                        .orElseThrow()
                        .edge())
                .isCloseTo(Math.PI * 0.05, within(1e-15));
        assertThat(Catalogue.number(car, "car.mounts.link bracket.pin.span")).hasValue(0.046);
        Adjustable twist =
                Catalogue.build(car).at("mounts.springTower.eye.twist").orElseThrow();
        assertThat(twist.tolerance()).isCloseTo(0.2 * twist.si(), within(1e-12 * twist.si()));
        assertThatThrownBy(() -> Catalogue.slot(car, "mounts.springTowr.spread.outer"))
                .isInstanceOf(InvalidValue.class)
                .hasMessage("is unknown; the nearest known key is springTower");
        assertThatThrownBy(() -> Catalogue.slot(car, "mounts")).hasMessageContaining("mounts.NAME.ratedLoad");
        assertThatThrownBy(() -> Catalogue.slot(car, "mounts.springTower.faces"))
                .hasMessageContaining("no single quantity");
    }

    @Test
    void everyKindOfHardUseIsRead() {
        assertThat(SAMPLE.listsHardUse()).isTrue();
        assertThat(SAMPLE.hardUse())
                .extracting(HardUse::kind)
                .containsExactly(
                        "standing",
                        "cornering",
                        "cornering",
                        "braking",
                        "launch",
                        "kerb",
                        "pothole",
                        "hanging",
                        "given",
                        "combined");
        assertThat(SAMPLE.hardUse().get(1)).isEqualTo(new HardUse.Cornering("Hard corner", OptionalDouble.empty(), 1));
        assertThat(((HardUse.Cornering) SAMPLE.hardUse().get(2)).pace().orElseThrow())
                .isCloseTo(4.903325, within(1e-12));
        assertThat(((HardUse.Given) SAMPLE.hardUse().get(8)).wheels())
                .containsEntry("rearLeft", new HardUse.Force(-5000, 2500, 9000));
        assertThat(((HardUse.Combined) SAMPLE.hardUse().get(9)).of())
                .containsExactly(new HardUse.Part("Hard corner", 0.7), new HardUse.Part("Hard braking", 0.7));
        assertThat(SAMPLE.estimatedUse()).extracting(Adjustable::path).containsExactly("hardUse[6].back");
        assertThat(SAMPLE.estimatedUse().get(0).si()).isEqualTo(2);
    }

    @Test
    void aFileWithoutAListIsAskedTheUsualCasesEachWithItsOrigin() {
        Scenario without = Samples.everyKey();
        assertThat(without.listsHardUse()).isFalse();
        assertThat(without.hardUse()).isEqualTo(UsualUse.uses());
        assertThat(without.estimatedUse())
                .extracting(Adjustable::path)
                .containsExactly(
                        "hardUse[2].deceleration",
                        "hardUse[3].shock",
                        "hardUse[4].side",
                        "hardUse[4].up",
                        "hardUse[4].height",
                        "hardUse[5].up",
                        "hardUse[5].back",
                        "hardUse[6].times");
        assertThat(without.estimatedUse())
                .allSatisfy(value -> assertThat(value.rule())
                        .isEqualTo(UsualUse.ALL
                                .get(Integer.parseInt(value.path().substring(8, 9)))
                                .origin()));
    }

    @Test
    void standingIsLookedAtWhetherItIsListedOrNot() {
        String only = "\"hardUse\": [{\"name\": \"Standing\", \"kind\": \"kerb\"}],\n  \"setups\"";
        String text = text().replaceAll("(?s)\"hardUse\": \\[.*\\],\\s*\"setups\"", only);
        assertThat(Samples.read(text).hardUse())
                .containsExactly(
                        new HardUse.Standing("Standing at rest", 1), new HardUse.Kerb("Standing", 2, 1, 0.05, 1));
    }

    @Test
    void whatIsUnusualOrLeftOutIsAWarningWithItsPlace() {
        String text = text().replace("\"overhang\": \"45 mm\"", "\"overhang\": \"70 mm\"")
                .replace("\"tightenedAt\": \"0 mm\"", "\"tightenedAt\": \"-60 mm\"")
                .replace("\"sheet\": \"1.0 mm\"", "\"sheet\": \"8 mm\"");
        List<String> warnings =
                Samples.read(text).warnings().stream().map(Warning::toString).toList();
        assertThat(warnings)
                .anySatisfy(line -> assertThat(line)
                        .startsWith("x.json:28:69: car.mounts.pivotPost.pin.overhang: is more than three diameters"))
                .anySatisfy(
                        line -> assertThat(line)
                                .contains(
                                        "car.mounts.springTower.spread.sheet: is unusual: 8 mm, where most cars have from 0.6 mm"))
                .anySatisfy(line -> assertThat(line).contains("car.mounts.springTower.eye.tightenedAt: is in droop"))
                .anySatisfy(line -> assertThat(line).contains("hardUse[7]: is left out at the front axle"));
        assertThat(SAMPLE.warnings()).noneMatch(warning -> warning.where().startsWith("car.mounts"));
        String thin = text().replace("\"diameter\": \"14 mm\"", "\"diameter\": \"6 mm\"")
                .replace("\"span\": \"46 mm\"", "\"span\": \"460 mm\"");
        assertThat(Samples.read(thin).warnings())
                .anySatisfy(warning -> assertThat(warning.toString())
                        .contains("car.mounts.link bracket.pin: would yield with the car at rest:"));
        String bare = text().replaceFirst("\"bumpStop\": .*\\R", "");
        assertThat(Samples.read(bare.replace("\"front.springLeft.top\"", "\"front.springLeft.top\""))
                        .warnings())
                .anySatisfy(warning -> assertThat(warning.toString())
                        .contains("hardUse[6]: is left out at the front axle, whose travel ends nowhere"));
    }

    @Test
    void anotherNameIsTakenOnByEverySetupAndNothingElseMoves() {
        String renamed = ScenarioWriter.rename(text(), "mounts.springTower", "tower left");
        assertThat(renamed).isEqualTo(text().replace("\"springTower\"", "\"tower left\""));
        assertThat(mount(Samples.read(renamed).setups().get(1).car(), "tower left")
                        .spread())
                .isEqualTo(mount(car(1), "springTower").spread());
        assertThatThrownBy(() -> ScenarioWriter.rename(text(), "mounts.springTower", "pivotPost"))
                .hasMessageContaining("the name of another");
        assertThatThrownBy(() -> ScenarioWriter.rename(text(), "mounts.springTower", "post"))
                .hasMessageContaining("the name of another");
        assertThatThrownBy(() -> ScenarioWriter.rename(text(), "mounts.springTower", "low.tower"))
                .hasMessageContaining("without dots");
    }

    @Test
    void oneValueOfAMountIsWrittenAloneAndAMountIsAddedAndTakenOut() {
        String wider = ScenarioWriter.set(text(), Optional.empty(), "mounts.springTower.spread.outer", "45 mm");
        assertThat(wider).isEqualTo(text().replaceFirst("\"outer\": \"38 mm\"", "\"outer\": \"45 mm\""));
        String more = ScenarioWriter.setJson(
                text(),
                Optional.empty(),
                "mounts.new post",
                "{\"carries\": [\"rear.springLeft.top\"], \"faces\": \"up\"}");
        assertThat(Samples.read(more).setups().get(0).car().mounts()).hasSize(4);
        assertThat(Samples.read(ScenarioWriter.remove(more, "mounts.new post"))
                        .setups()
                        .get(0)
                        .car()
                        .mounts())
                .isEqualTo(car(0).mounts());
    }

    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaWriter.schema(), InputFormat.JSON);

    @Test
    void theSampleIsValid() {
        assertThat(SCHEMA.validate(text(), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"faces\": \"back\" -> \"faces\": \"sideways\"",
                "\"faces\": [0, 0.5, -1] -> \"faces\": [0, 0.5]",
                "\"threadInPlane\": true -> \"threadInPlane\": \"yes\"",
                "\"pivotPost\": -> \"pivot.Post\":",
                "\"ratedLoad\": \"22 kN\" -> \"ratedLoad\": 22000",
                "\"carries\": [\"rear.springLeft.top\"] -> \"carries\": []",
                "\"pace\": \"limit\" -> \"pace\": \"the limit\"",
                "\"kind\": \"kerb\" -> \"kind\": \"wall\"",
                "[\"-5 kN\", \"2.5 kN\", \"9 kN\"] -> [\"-5 kN\", \"9 kN\"]",
                "[\"Hard corner\", 0.7] -> [\"Hard corner\"]",
                "\"around\": \"damper\" -> \"around\": \"spring\""
            })
    void whatTheReaderRefusesTheSchemaRefusesToo(String edit) {
        String[] halves = edit.split(" -> ", -1);
        assertThat(text()).contains(halves[0]);
        String wrong = text().replace(halves[0], halves[1]);
        assertThat(SCHEMA.validate(wrong, InputFormat.JSON)).isNotEmpty();
        assertThat(ScenarioReader.read("x.json", wrong).problems()).isNotEmpty();
    }

    @Test
    void aFileCutAnywhereInItsMountsOrItsHardUseGivesAMessage() {
        String text = text();
        for (int at = text.indexOf("\"mounts\""); at < text.length() - 1; at += 7) {
            assertThat(ScenarioReader.read("x.json", text.substring(0, at)).problems())
                    .isNotEmpty();
        }
    }
}
