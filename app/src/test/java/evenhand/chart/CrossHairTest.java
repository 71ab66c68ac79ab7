package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Part.Line;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Weight;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CrossHairTest {
    private static Chart chart() {
        return new Chart(
                "",
                Axis.Measure.of("lateral acceleration", Unit.of("g"), 2, new Span(0, 1)),
                Axis.Measure.of("roll", Unit.of("deg"), 1, new Span(-5, 5)),
                List.of(
                        new Line(
                                "Low",
                                "",
                                "",
                                new SetupStyle(0),
                                Weight.HEAVY,
                                List.of(new Point(0, 0), new Point(0.5, -2), new Point(0.8, -4))),
                        new Line(
                                "High",
                                "front",
                                "",
                                new SetupStyle(1),
                                Weight.HEAVY,
                                List.of(new Point(0, 0), new Point(0.6, 3)))));
    }

    @Test
    void allLinesAreReadOffAtOnePlaceLargestFirst() {
        CrossHair hair = CrossHair.at(chart(), 0.25);
        assertThat(hair.place()).isEqualTo("0.25 g");
        assertThat(hair.values())
                .extracting(CrossHair.Value::words)
                .containsExactly("High, front 1.3 deg", "Low −1.0 deg");
    }

    @Test
    void aLineInDoubtIsReadOffWithItsBand() {
        Chart sure = chart();
        List<Part> parts = new ArrayList<>(sure.parts());
        parts.add(new Part.Band(
                "Low",
                "",
                new SetupStyle(0),
                List.of(new Point(0, -0.5), new Point(0.5, -3)),
                List.of(new Point(0, 0.5), new Point(0.5, -1))));
        Chart doubted = new Chart("", sure.across(), sure.up(), parts);
        assertThat(CrossHair.at(doubted, 0.25).values())
                .extracting(CrossHair.Value::words)
                .containsExactly("High, front 1.3 deg", "Low −1.0 deg (−1.8 to −0.3 deg)");
        assertThat(CrossHair.at(doubted, 0.7).values())
                .extracting(CrossHair.Value::words)
                .containsExactly("Low −3.3 deg");
    }

    @Test
    void aLineThatHasEndedHasNoValue() {
        assertThat(CrossHair.at(chart(), 0.7).values())
                .extracting(CrossHair.Value::label)
                .containsExactly("Low");
        assertThat(CrossHair.at(chart(), 0.9).values()).isEmpty();
        assertThat(CrossHair.at(chart(), Double.NaN).values()).isEmpty();
    }

    @Test
    void aValueOnAPointIsThatPointsValue() {
        assertThat(CrossHair.value(List.of(new Point(1, 7)), 1)).hasValue(7);
        assertThat(CrossHair.value(List.of(new Point(0, 1), new Point(2, 5)), 2))
                .hasValue(5);
        assertThat(CrossHair.value(List.of(), 0)).isEmpty();
    }

    @Test
    void aLineThatTurnsBackIsNotReadOff() {
        Chart chart = chart();
        Line back = new Line(
                "Trade",
                "",
                "",
                new SetupStyle(2),
                Weight.THREAD,
                List.of(new Point(0.4, 1), new Point(0.1, 2), new Point(0.5, 3)));
        assertThat(CrossHair.at(chart.with(List.of(back)), 0.25)).isEqualTo(CrossHair.at(chart, 0.25));
    }

    @Test
    void theBarsOfARowAreReadOffInWords() {
        Chart bars = DemoCharts.effects("harbour-saloon", 3, evenhand.words.Units.METRIC);
        List<String> words = CrossHair.row(bars, 0.3);
        assertThat(words.get(0)).isEqualTo(((Axis.Rows) bars.up()).rows().get(0).words());
        assertThat(words.get(1)).matches("As bought [+−]\\d\\.\\d\\d deg/g");
        assertThat(words.get(2)).startsWith("also the ");
        assertThat(CrossHair.row(bars, 9)).isEmpty();
    }
}
