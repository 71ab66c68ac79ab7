package evenhand.forms;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Figure;
import evenhand.quantity.Dimension;
import evenhand.words.Units;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ContentsTest {
    private record Spring(double rate, OptionalDouble length) {}

    private record Axle(String name, Spring spring, Optional<Spring> helper, List<Spring> tried, boolean bent) {}

    private static final Contents<Spring> SPRING = Contents.of(Spring.class)
            .figure(Figure.of("rate", "rate", Dimension.STIFFNESS, "N/m", 0, Spring::rate))
            .numberIfAny("length_m", Spring::length);

    private static final Contents<Axle> AXLE = Contents.of(Axle.class)
            .text("name", Axle::name)
            .part("spring", Axle::spring, SPRING)
            .partIfAny("helper", Axle::helper, SPRING)
            .mark("bent", Axle::bent)
            .texts("notes", axle -> List.of("a", "b"))
            .list("tried", Axle::tried, SPRING);

    private static final Spring LONG = new Spring(-0.0, OptionalDouble.of(0.25));
    private static final Spring UNMEASURED = new Spring(20_000, OptionalDouble.empty());
    private static final Axle FRONT =
            new Axle("front, \"left\"", LONG, Optional.empty(), List.of(LONG, UNMEASURED), false);
    private static final Axle REAR = new Axle("rear", UNMEASURED, Optional.of(LONG), List.of(), true);

    @Test
    void aPartStandsUnderItsKeyAndWhatDoesNotExistIsLeftOut() {
        assertThat(json(FRONT)).isEqualTo("""
                {
                  "evenhand" : 1,
                  "command" : "weigh",
                  "name" : "front, \\"left\\"",
                  "spring" : {
                    "rate_N_per_m" : 0.0,
                    "length_m" : 0.25
                  },
                  "notes" : [ "a", "b" ],
                  "tried" : [ {
                    "rate_N_per_m" : 0.0,
                    "length_m" : 0.25
                  }, {
                    "rate_N_per_m" : 20000.0
                  } ]
                }
                """);
        assertThat(json(REAR)).contains("\"helper\" : {", "\"bent\" : true", "\"tried\" : [ ]");
    }

    @Test
    void inCsvEachPartOfAListHasARowAndWhatDoesNotExistAnEmptyCell() {
        assertThat(CsvForm.write(AXLE, List.of(FRONT, REAR), Units.METRIC).lines())
                .containsExactly(
                        "name,spring.rate_N_per_m,spring.length_m,helper.rate_N_per_m,helper.length_m,bent,rate_N_per_m,length_m",
                        "\"front, \"\"left\"\"\",0.0,0.25,,,,0.0,0.25",
                        "\"front, \"\"left\"\"\",0.0,0.25,,,,20000.0,",
                        "rear,20000.0,,0.0,0.25,true,,");
    }

    @Test
    void aFiguresColumnIsInPoundsAndInchesWhereTheyAreRead() {
        assertThat(CsvForm.write(SPRING, List.of(UNMEASURED), Units.IMPERIAL))
                .startsWith("rate_lbf_per_in,length_m\n114.2");
    }

    /** A spreadsheet would carry out the name of a set-up. */
    @Test
    void aTextThatASpreadsheetWouldTakeForAFormulaIsMadeAText() {
        assertThat(CsvForm.quoted("=HYPERLINK(\"x\")")).isEqualTo("\"'=HYPERLINK(\"\"x\"\")\"");
        assertThat(CsvForm.quoted("+1+cmd|' /C calc'!A0")).isEqualTo("\"'+1+cmd|' /C calc'!A0\"");
        assertThat(CsvForm.quoted("-2 turns")).isEqualTo("\"'-2 turns\"");
        assertThat(CsvForm.quoted("@SUM(A1)")).isEqualTo("\"'@SUM(A1)\"");
        assertThat(CsvForm.quoted("\t=1")).isEqualTo("\"'\t=1\"");
        assertThat(CsvForm.quoted("\r=1")).isEqualTo("\"'\r=1\"");
        assertThat(CsvForm.quoted("-1 A1")).isEqualTo("\"'-1 A1\"");
        assertThat(CsvForm.quoted("a=1")).isEqualTo("a=1");
    }

    @Test
    void aNumberBelowNothingStaysANumberInASpreadsheet() {
        for (String number : List.of("-1.2", "+3", "-1.5e-3", "-0.6 deg", "+2 %", "-30 N*m/deg", "−0.6 deg")) {
            assertThat(CsvForm.quoted(number)).isEqualTo(number);
        }
    }

    private static String json(Axle axle) {
        return new String(JsonForm.write("weigh", AXLE, axle), StandardCharsets.UTF_8);
    }
}
