package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Rule;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

class CurveChartsTest {
    @Test
    void aSearchShowsAimReachAnswerAndWhereItStands() {
        Chart chart = DemoCharts.search(Units.METRIC);
        Unit gradient = Unit.of("deg/g");
        assertThat(chart.rules())
                .extracting(Rule::words)
                .containsExactly("aim 2.81 deg/g", "can be moved down to 0.56 deg/g", "can be moved up to 3.37 deg/g");
        Mark answer = chart.marks().stream()
                .filter(mark -> mark.kind() == Mark.Kind.ANSWER)
                .findFirst()
                .orElseThrow();
        assertThat(answer.words()).isEqualTo("225.0 mm");
        assertThat(answer.at().x()).isCloseTo(225, within(1e-9));
        assertThat(answer.at().y()).isCloseTo(gradient.fromSi(0.005), within(1e-9));
        Mark now = chart.marks().stream()
                .filter(mark -> mark.words().startsWith("now"))
                .findFirst()
                .orElseThrow();
        assertThat(now.words()).isEqualTo("now 210.0 mm");
        assertThat(now.at().y()).isCloseTo(gradient.fromSi(0.0056), within(1e-9));
    }

    @Test
    void causesStandLargestFirst() {
        Chart chart = CurveCharts.causes(
                "Doubt",
                new CurveCharts.Quantity("part of the doubt", Unit.of("deg/g"), 2),
                "Low",
                new SetupStyle(0),
                List.of(
                        new CurveCharts.Cause("track", 0.0001, ""),
                        new CurveCharts.Cause("tyre", -0.002, "estimated"),
                        new CurveCharts.Cause("weight", 0.001, "")),
                2);
        assertThat(((Axis.Rows) chart.up()).rows()).extracting(Axis.Row::words).containsExactly("tyre", "weight");
        assertThat(chart.bars().get(0).words()).isEqualTo("−1.12 deg/g");
    }

    @Test
    void settingsOfADamperLieWhereTheirFiguresAre() {
        Chart chart = CurveCharts.trade(
                "Comfort against grip",
                new CurveCharts.Quantity("acceleration of the body", Unit.of("m/s^2"), 2),
                new CurveCharts.Quantity("variation of load", Unit.of("%"), 1),
                List.of(new CurveCharts.Trade(
                        "Low",
                        new SetupStyle(0),
                        new double[] {1.2, 1.0},
                        new double[] {0.2, 0.3},
                        List.of("firm", "soft"),
                        1)));
        assertThat(chart.marks()).extracting(Mark::words).containsExactly("firm", "soft");
        assertThat(chart.marks()).extracting(Mark::kind).containsExactly(Mark.Kind.EVENT, Mark.Kind.NOW);
        assertThat(chart.marks().get(1).at().y()).isCloseTo(30, within(1e-9));
        assertThat(chart.across().title()).isEqualTo("acceleration of the body, m/s²");
    }

    @Test
    void valuesThatAreNoNumbersAreLeftOut() {
        CurveCharts.Quantity plain = new CurveCharts.Quantity("time", Unit.of("s"), 2);
        Chart chart = CurveCharts.curves(
                "Hump",
                plain,
                plain,
                List.of(new CurveCharts.Curve(
                        "Low", "", new SetupStyle(0), new double[] {0, 1, 2}, new double[] {0, Double.NaN, 4})));
        assertThat(chart.lines().get(0).points()).hasSize(2);
    }
}
