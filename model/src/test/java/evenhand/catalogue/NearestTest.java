package evenhand.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenhand.quantity.InvalidValue;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> CAR = keys(Catalogue.CAR);

    private static List<String> keys(Shape<?> shape) {
        return ((Shape.Plain<?>) shape).slots().stream().map(Slot::key).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "weight, mass",
        "cg, cgHeight",
        "cog, cgHeight",
        "weight distribution, frontWeightFraction",
        "corners, cornerWeights",
        "torsional stiffness, chassisTorsionalStiffness",
        "diff, drive.differential",
        "track width, front.track",
        "aero, air",
        "wheelbse, wheelbase"
    })
    void ofTheCar(String written, String key) {
        assertThat(Nearest.key(written, CAR)).isEqualTo(key);
    }

    @ParameterizedTest
    @CsvSource({
        "watts, lateralLocator",
        "watt's linkage, lateralLocator",
        "panhard rod, lateralLocator",
        "rollCenter, lateralLocator",
        "swaybar, bar",
        "anti-roll bar, bar",
        "stabilizer, bar",
        "shock, damper",
        "shock absorber, damper",
        "trackWidth, track",
        "springRatio, spring.motionRatio",
        "spring rate, spring.rate",
        "bump rubber, bumpStop",
        "strap, droopStop",
        "tire, tyre",
        "unsprung weight, unsprungMass",
        "ride height, lowered"
    })
    void ofALiveAxle(String written, String key) {
        assertThat(Nearest.key(written, keys(AxleCatalogue.LIVE))).isEqualTo(key);
    }

    @ParameterizedTest
    @CsvSource({"spring ratio, motionRatio", "leverage, motionRatio", "spring rate, rate", "cant, lean"})
    void ofASpring(String written, String key) {
        assertThat(Nearest.key(written, keys(SpringCatalogue.ON_AXLE))).isEqualTo(key);
    }

    @ParameterizedTest
    @CsvSource({"grip, friction", "trail, pneumaticTrail", "psi, pressure", "rim, rimWidth", "tire size, size"})
    void ofATyre(String written, String key) {
        assertThat(Nearest.key(written, keys(TyreCatalogue.TYRE))).isEqualTo(key);
    }

    @ParameterizedTest
    @CsvSource({"rated, ratedLoad", "holds, carries", "bolt, pin", "washer, spread", "bush, eye", "rails, between"})
    void ofAMount(String written, String key) {
        assertThat(Nearest.key(
                        written, List.of("carries", "faces", "at", "pin", "spread", "eye", "between", "ratedLoad")))
                .isEqualTo(key);
    }

    @Test
    void aWordOfTheTradeStandsForItsKeyAndNotForAPathDownFromIt() {
        assertThat(Nearest.standsFor("weight", "mass")).isTrue();
        assertThat(Nearest.standsFor("Sway Bar", "bar")).isTrue();
        assertThat(Nearest.standsFor("trak", "track")).isTrue();
        assertThat(Nearest.standsFor("weight", "track")).isFalse();
    }

    @Test
    void aPathIsUnderstoodByWordsOfTheTradeToo() {
        assertThatThrownBy(() -> Catalogue.slot(CatalogueTest.car(), "rear.watts.height"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("lateralLocator");
    }

    /** Every key that the list names is one of the catalogue's or of the file's. */
    @Test
    void everyWordOfTheTradeMeansAKeyThatThereIs() {
        assertThat(TradeWords.keys())
                .allSatisfy(key -> assertThat(KnownKeys.all()).contains(key.substring(key.lastIndexOf('.') + 1)));
    }

    private static final class KnownKeys {
        private static List<String> all() {
            Set<String> keys =
                    new HashSet<>(List.of("setups", "loadCases", "hardUse", "changes", "basedOn", "title", "story"));
            add(Catalogue.CAR, keys);
            return List.copyOf(keys);
        }

        private static void add(Shape<?> shape, Set<String> keys) {
            if (shape instanceof Shape.Kinds<?> kinds) {
                keys.add(kinds.key());
                kinds.kinds().values().forEach(kind -> add(kind, keys));
            } else if (shape instanceof Shape.ByName<?> byName) {
                add(byName.each(), keys);
            } else if (shape instanceof Shape.Plain<?> plain) {
                for (Slot<?> slot : plain.slots()) {
                    keys.add(slot.key());
                    if (slot.content() instanceof Content.Group<?> group) {
                        add(group.shape(), keys);
                    } else if (slot.content() instanceof Content.Groups<?> groups) {
                        add(groups.shape(), keys);
                    }
                }
            }
        }
    }
}
