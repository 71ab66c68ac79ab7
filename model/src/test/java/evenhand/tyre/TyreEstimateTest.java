package evenhand.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import evenhand.quantity.Unit;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TyreEstimateTest {
    private static TyreSize size(String text) {
        return TyreSize.read(text, Optional.empty()).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "205/60R15, 0.205, 0.60, 15",
        "205/60 R 15, 0.205, 0.60, 15",
        "205 60 15, 0.205, 0.60, 15",
        "205/60/15, 0.205, 0.60, 15",
        "205-60-15, 0.205, 0.60, 15",
        "205/60-15, 0.205, 0.60, 15",
        "205/60x15, 0.205, 0.60, 15",
        " 205 / 60 R15 , 0.205, 0.60, 15",
        "205/60r15 91h, 0.205, 0.60, 15",
        "225/45ZR17 91W, 0.225, 0.45, 17",
        "225/45 ZR 17, 0.225, 0.45, 17",
        "225/45RF17, 0.225, 0.45, 17",
        "185/70 VR 13, 0.185, 0.70, 13",
        "185/70HR13, 0.185, 0.70, 13",
        "195/70R15C 104/102R, 0.195, 0.70, 15",
        "205/55R16XL, 0.205, 0.55, 16",
        "P195/60R15, 0.195, 0.60, 15",
        "190/65R390, 0.190, 0.65, 15.354331",
        "165R13, 0.165, 0.82, 13",
        "165 SR 13, 0.165, 0.82, 13",
        "155SR13, 0.155, 0.82, 13",
        "165HR14, 0.165, 0.82, 14",
        "185 VR 15, 0.185, 0.82, 15",
        "165-13, 0.165, 0.82, 13",
        "165x13, 0.165, 0.82, 13",
        "165R400, 0.165, 0.82, 15.748031",
        "155/80-13, 0.155, 0.80, 13",
        "6.00-15, 0.1524, 0.92, 15",
        "5.60-15, 0.14224, 0.92, 15",
        "5.60 - 15, 0.14224, 0.92, 15",
        "5.60\u201315, 0.14224, 0.92, 15",
        "'5,60-15', 0.14224, 0.92, 15",
        "6.00x16, 0.1524, 0.92, 16",
        "6.00\u00D716, 0.1524, 0.92, 16",
        "6.40 15, 0.16256, 0.92, 15",
        "5.90/15, 0.14986, 0.92, 15",
        "5.20S13, 0.13208, 0.92, 13",
        "6.00R16, 0.1524, 0.82, 16",
        "6.40 HR 15, 0.16256, 0.82, 15"
    })
    void sizesAreReadInEveryUsualSpelling(String text, double width, double aspect, double rim) {
        TyreSize size = size(text);
        assertThat(size.width()).isCloseTo(width, within(1e-12));
        assertThat(size.aspect()).isCloseTo(aspect, within(1e-12));
        assertThat(size.rim()).isCloseTo(rim * 0.0254, within(1e-7));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "205",
                "205/60",
                "205/60R150",
                "999/60R15",
                "fifteen",
                "205/60R15/2",
                "1956515",
                "205/16",
                "205 16",
                "6.00",
                "60-15",
                "20.5/60R15"
            })
    void whatIsNoSizeIsNotRead(String text) {
        assertThat(TyreSize.read(text, Optional.empty())).isEmpty();
    }

    @Test
    void everySizeThatIsOftenMetIsRead() {
        assertThat(TyreSize.OFTEN_MET).allSatisfy(text -> size(text));
    }

    @Test
    void theKindDecidesTheAspectThatASizeDoesNotState() {
        for (TyreKind kind : TyreKind.values()) {
            for (String text : new String[] {"165R13", "5.60-15"}) {
                TyreSize size = TyreSize.read(text, Optional.of(kind)).orElseThrow();
                assertThat(size.statesAspect()).isFalse();
                assertThat(size.aspect()).isEqualTo(kind == TyreKind.CROSS_PLY ? 0.92 : 0.82);
            }
            TyreSize low = TyreSize.read("195/65R15", Optional.of(kind)).orElseThrow();
            assertThat(low.statesAspect()).isTrue();
            assertThat(low.aspect()).isEqualTo(0.65);
        }
    }

    /** Values computed apart from this code, from the relation in the Javadoc: kPa, N/mm. */
    @ParameterizedTest
    @CsvSource({"145/80-13, 165, 143", "185/65-15, 200, 197", "225/45-17, 220, 244", "245/45-16, 180, 212"})
    void theVerticalRateOfARadialFollowsSizeAndPressure(String size, double pressure, double rate) {
        assertThat(TyreEstimate.verticalRate(size(size), TyreKind.TOURING_RADIAL, pressure * 1000))
                .isCloseTo(rate * 1000, within(600.0));
    }

    /**
     * Load indices of standard load tyres beside what the fit gives, size by size. Which index a size has: ETRTO Standards Manual,
     * from memory; what an index carries: the table of ISO 4000-1, as printed by tyre makers.
     */
    @TestFactory
    Stream<DynamicTest> theLoadCapacityStandsBesideThePrintedOne() {
        return Stream.of(
                        "145/80R13 75 387",
                        "155/80R13 79 437",
                        "155/70R13 75 387",
                        "175/70R13 82 475",
                        "185/70R14 88 560",
                        "175/65R14 82 475",
                        "195/65R15 91 615",
                        "185/60R14 82 475",
                        "205/60R15 91 615",
                        "195/50R15 82 475",
                        "205/55R16 91 615",
                        "225/50R16 92 630",
                        "225/45R17 91 615",
                        "225/40R18 88 560",
                        "275/40R18 99 775")
                .map(line -> {
                    String[] parts = line.split(" ", -1);
                    double printed = Double.parseDouble(parts[2]);
                    double fitted = TyreEstimate.loadCapacity(size(parts[0]));
                    String beside = String.format(
                            Locale.ROOT,
                            "%s: printed %s = %.0f kg, fitted %.0f kg, %+.1f %%",
                            parts[0],
                            parts[1],
                            printed,
                            fitted,
                            (fitted / printed - 1) * 100);
                    return dynamicTest(beside, () -> assertThat(fitted).isCloseTo(printed, within(0.06 * printed)));
                });
    }

    /**
     * Computed apart from this code, with a calculator's steps: bar, mm; N, N/deg, mm.
     */
    @ParameterizedTest
    @CsvSource({
        "195/65R15, TOURING_RADIAL, 2.2, 3438.395, 618.911, 27.8647",
        "275/40R18, PERFORMANCE_RADIAL, 2.2, 4465.315, 1125.259, 29.2557",
        "275/40R18, PERFORMANCE_RADIAL, 1.8, 3970.720, 1000.621, 30.0939",
        "5.60-15, CROSS_PLY, 1.8, 2553.820, 264.0650, 25.7365",
        "165R13, TALL_RADIAL, 1.9, 2633.136, 364.9526, 26.8953"
    })
    void aSizeGivesReferenceLoadStiffnessAndTrail(
            String text, TyreKind kind, double bar, double load, double stiffness, double trail) {
        TyreSize size = TyreSize.read(text, Optional.of(kind)).orElseThrow();
        double pressure = Unit.of("bar").toSi(bar);
        double referenceLoad = TyreEstimate.referenceLoad(size, pressure);
        assertThat(referenceLoad).isCloseTo(load, within(0.001));
        assertThat(Unit.of("N/deg")
                        .fromSi(TyreEstimate.corneringStiffness(size, kind, referenceLoad, OptionalDouble.empty())))
                .isCloseTo(stiffness, within(0.001));
        double rate = TyreEstimate.verticalRate(size, kind, pressure);
        assertThat(TyreEstimate.pneumaticTrail(size, referenceLoad, rate)).isCloseTo(trail / 1000, within(1e-6));
    }

    /** A 205/50R15 on 7 in: 1 + 0.5·(177.8/205 − 0.75) = 1.0587; on rims out of all measure a tenth more or less. */
    @Test
    void aWideRimMakesATyreStifferByATenthAtMost() {
        TyreSize size = size("205/50R15");
        assertThat(TyreEstimate.rimCorrection(size, 0.1778)).isCloseTo(1.058659, within(1e-6));
        assertThat(TyreEstimate.rimCorrection(size, 0.75 * 0.205)).isCloseTo(1, within(1e-12));
        assertThat(TyreEstimate.rimCorrection(size, 0.5)).isEqualTo(1.1);
        assertThat(TyreEstimate.rimCorrection(size, 0.07)).isEqualTo(0.9);
        double plain = TyreEstimate.corneringStiffness(size, TyreKind.SEMI_SLICK, 2735.221, OptionalDouble.empty());
        double wide = TyreEstimate.corneringStiffness(size, TyreKind.SEMI_SLICK, 2735.221, OptionalDouble.of(0.1778));
        assertThat(Unit.of("N/deg").fromSi(wide)).isCloseTo(875.215, within(0.001));
        assertThat(wide / plain).isCloseTo(1.058659, within(1e-6));
    }

    @Test
    void aWideTyreHoldsMoreAtTheSameLoadAndASoftOneLess() {
        double load = 4000;
        assertThat(held("225/50R15", 2.2, load)).isGreaterThan(held("195/50R15", 2.2, load));
        assertThat(held("195/50R15", 1.6, load)).isLessThan(held("195/50R15", 2.2, load));
    }

    /** Greatest side force at a load. */
    private static double held(String text, double bar, double load) {
        TyreSize size = size(text);
        TyreKind kind = TyreKind.PERFORMANCE_RADIAL;
        double referenceLoad = TyreEstimate.referenceLoad(size, Unit.of("bar").toSi(bar));
        SideForce tyre = SideForce.of(new MagicFormula(
                referenceLoad,
                TyreEstimate.corneringStiffness(size, kind, referenceLoad, OptionalDouble.empty()),
                TyreEstimate.friction(kind),
                TyreEstimate.frictionLoadSensitivity(kind),
                TyreEstimate.stiffnessPeakLoadRatio(kind),
                TyreEstimate.shape(),
                TyreEstimate.curvature(kind),
                0,
                0,
                0,
                0));
        tyre.at(0.1, 0, load);
        return tyre.peak;
    }

    @Test
    void aCrossPlyIsStifferUprightSofterSidewaysAndMindsItsLeanMore() {
        TyreSize size = size("165R15");
        assertThat(TyreEstimate.verticalRate(size, TyreKind.CROSS_PLY, 2e5))
                .isGreaterThan(TyreEstimate.verticalRate(size, TyreKind.TALL_RADIAL, 2e5));
        assertThat(TyreEstimate.corneringStiffness(size, TyreKind.CROSS_PLY, 3500, OptionalDouble.empty()))
                .isLessThan(TyreEstimate.corneringStiffness(size, TyreKind.TALL_RADIAL, 3500, OptionalDouble.empty()));
        assertThat(TyreEstimate.camberThrustRatio(TyreKind.CROSS_PLY)).isEqualTo(0.18);
        assertThat(TyreEstimate.camberThrustRatio(TyreKind.TALL_RADIAL)).isEqualTo(0.06);
    }
}
