package evenhand.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ThemeTest {
    /**
     * How a person without one kind of cone sees linear RGB. Source: Machado, Oliveira, Fernandes 2009, table of severity 1.0, rows
     * red, green, blue; the first is usual sight.
     */
    private static final double[][] SIGHTS = {
        {1, 0, 0, 0, 1, 0, 0, 0, 1},
        {0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998},
        {0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881},
        {1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900}
    };

    static Stream<Theme> themes() {
        return Stream.of(Theme.light(12), Theme.dark(12), Theme.paper(12));
    }

    @Test
    void contrastIsThatOfTheStandard() {
        assertThat(Theme.contrast(Color.BLACK, Color.WHITE)).isEqualTo(21);
        assertThat(Theme.contrast(Color.WHITE, Color.WHITE)).isEqualTo(1);
        // WCAG technique G18: grey 0x767676 is the lightest that reaches 4.5:1 on white
        assertThat(Theme.contrast(new Color(0x767676), Color.WHITE)).isBetween(4.5, 4.6);
    }

    @ParameterizedTest
    @MethodSource("themes")
    void wordsAndSetupsCanBeReadOnTheirGround(Theme theme) {
        List<Color> inks = new ArrayList<>(theme.setups());
        inks.addAll(List.of(theme.ink(), theme.quiet(), theme.warning()));
        assertThat(inks)
                .allSatisfy(ink -> assertThat(Theme.contrast(ink, theme.background()))
                        .isGreaterThanOrEqualTo(Theme.LEAST_CONTRAST));
    }

    /** A just noticeable difference is 2.3. */
    @ParameterizedTest
    @MethodSource("themes")
    void twelveSetupsStayApartForEveryKindOfSightInColourLineAndMarker(Theme theme) {
        assertThat(theme.setups()).hasSize(12);
        for (int i = 0; i < theme.setups().size(); i++) {
            for (int j = 0; j < i; j++) {
                SetupStyle one = new SetupStyle(i);
                SetupStyle other = new SetupStyle(j);
                double distance = Double.POSITIVE_INFINITY;
                for (double[] sight : SIGHTS) {
                    distance = Math.min(
                            distance, distance(lab(theme.colour(one), sight), lab(theme.colour(other), sight)));
                }
                // the first three, most often seen together, farthest; then the first six
                double least = i < 3 ? 36 : i < 6 ? 27 : 16;
                assertThat(distance).as("%d and %d", j, i).isGreaterThan(least);
                assertThat(one.marker()).isNotEqualTo(other.marker());
                if (distance < 27) {
                    assertThat(one.dash()).as("lines of %d and %d", j, i).isNotEqualTo(other.dash());
                }
            }
        }
    }

    /** Drawn as small as on a line, no two markers cover the same. */
    @Test
    void noTwoMarkersCoverTheSame() {
        List<BitSet> drawn = new ArrayList<>();
        for (Marker marker : Marker.values()) {
            BitSet covered = new BitSet();
            Shape shape = marker.at(8, 8, 9);
            for (int x = 0; x < 16; x++) {
                for (int y = 0; y < 16; y++) {
                    covered.set(16 * y + x, shape.contains(x + 0.5, y + 0.5));
                }
            }
            for (BitSet other : drawn) {
                BitSet differs = (BitSet) covered.clone();
                differs.xor(other);
                assertThat(differs.cardinality()).as(marker.name()).isGreaterThanOrEqualTo(4);
            }
            drawn.add(covered);
        }
    }

    @Test
    void noTwoOfThirtySixSetupsLookAlike() {
        Set<String> looks = new HashSet<>();
        for (int i = 0; i < 36; i++) {
            SetupStyle style = new SetupStyle(i);
            looks.add(style.colour() + " " + style.dash() + " " + style.marker());
        }
        assertThat(looks).hasSize(36);
    }

    @Test
    void theFirstSixSetupsDifferInLineToo() {
        Set<Integer> dashes = new HashSet<>();
        for (int i = 0; i < 6; i++) {
            dashes.add(new SetupStyle(i).dash());
        }
        assertThat(dashes).hasSize(6);
    }

    private static double[] lab(Color colour, double[] sight) {
        double[] rgb = {linear(colour.getRed()), linear(colour.getGreen()), linear(colour.getBlue())};
        double[] seen = new double[3];
        for (int i = 0; i < 3; i++) {
            double sum = 0;
            for (int j = 0; j < 3; j++) {
                sum += sight[3 * i + j] * rgb[j];
            }
            seen[i] = Math.min(1, Math.max(0, sum));
        }
        double x = bent((0.4124 * seen[0] + 0.3576 * seen[1] + 0.1805 * seen[2]) / 0.95047);
        double y = bent(0.2126 * seen[0] + 0.7152 * seen[1] + 0.0722 * seen[2]);
        double z = bent((0.0193 * seen[0] + 0.1192 * seen[1] + 0.9505 * seen[2]) / 1.08883);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double bent(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double linear(int part) {
        double c = part / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static double distance(double[] one, double[] other) {
        return Math.hypot(Math.hypot(one[0] - other[0], one[1] - other[1]), one[2] - other[2]);
    }
}
