package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Hatch;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Weight;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChartCsvTest {
    private static final Axis.Measure G = Axis.Measure.of("lateral acceleration", Unit.of("g"), 3, new Span(0, 1));

    @Test
    void aCurveIsARowPerPointWithTheUnitsInTheHead() {
        Chart chart = new Chart(
                "",
                G,
                Axis.Measure.of("roll", Unit.of("deg"), 1, new Span(0, 1)),
                List.of(
                        new Line(
                                "Low, \"firm\"",
                                "front",
                                "",
                                new SetupStyle(0),
                                Weight.HEAVY,
                                List.of(new Point(0, -0.0), new Point(0.5, 1.25))),
                        new Mark(Mark.Kind.EVENT, "Low", new SetupStyle(0), new Point(0.5, 1.25), "lifts")));
        assertThat(ChartCsv.write(chart))
                .isEqualTo("what,name,part,\"lateral acceleration, g\",\"roll, deg\"\r\n"
                        + "curve,\"Low, \"\"firm\"\"\",front,0.0,0.0\r\n"
                        + "curve,\"Low, \"\"firm\"\"\",front,0.5,1.25\r\n"
                        + "mark,Low,lifts,0.5,1.25\r\n");
    }

    @Test
    void barsAreARowEachFromWhereToWhere() {
        Chart chart = new Chart(
                "",
                G,
                new Axis.Rows("", List.of(new Axis.Row("springs", ""))),
                List.of(new Bar(0, 0, 1, "Low", "bar", new SetupStyle(0), Hatch.FULL, 0.25, 1, "")));
        assertThat(ChartCsv.write(chart))
                .isEqualTo(String.join(
                        "\r\n",
                        "row,name,part,\"from: lateral acceleration, g\",\"to: lateral acceleration, g\"",
                        "springs,Low,bar,0.25,1.0",
                        ""));
    }

    @Test
    void doubtIsWrittenBelowAndAbove() {
        assertThat(ChartCsv.write(DemoCharts.frequencies(Units.METRIC)))
                .contains("doubt from,As bought,front,0.5,100.0\r\n")
                .contains("doubt to,As bought,front,0.5,120.0\r\n");
    }

    @Test
    void aNameIsNoFormula() {
        Chart chart = new Chart(
                "",
                G,
                Axis.Measure.of("roll", Unit.of("deg"), 1, new Span(0, 1)),
                List.of(new Mark(Mark.Kind.EVENT, "=A1", new SetupStyle(0), new Point(0.5, -1.25), "-lifts")));
        assertThat(ChartCsv.write(chart)).endsWith("mark,\"'=A1\",\"'-lifts\",0.5,-1.25\r\n");
    }
}
