package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Chart;
import evenhand.chart.Part;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.WhichCar;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was read on the road. */
class WhatTheRoadSaidTest {
    @Test
    void theVerdictIsLargeAndEachChannelIsDrawnBothWaysRoundWithItsErrors() throws Exception {
        Reply reply = Asks.demo("harbour-saloon").reply("road");
        assertThat(reply.headlines().get(0)).startsWith("The file and the road agree (χ²");
        assertThat(reply.charts()).noneMatch(Chart::isEmpty);
        assertThat(reply.charts().get(0).title()).startsWith("\"First circle\": steering wheel as read");
        Chart wheel = reply.charts().get(0);
        assertThat(wheel.parts().stream().filter(Part.Mark.class::isInstance)).hasSize(8);
        assertThat(wheel.parts().stream()
                        .filter(part ->
                                part instanceof Part.Line line && !line.label().isEmpty())
                        .map(part -> ((Part.Line) part).label()))
                .containsExactlyInAnyOrder(
                        "by the file, left", "corrected, left", "by the file, right", "corrected, right");
        assertThat(reply.charts().get(reply.charts().size() - 1).title()).startsWith("What moved");
        assertThat(reply.next().stream().flatMap(next -> next.act().stream()))
                .containsExactly(new TrialAct.ChooseCar(WhichCar.AS_TESTED), new LookAct.TurnTo(Look.Page.CIRCLE));
        assertThat(Asks.all(reply)).doesNotContain("NaN");
    }

    @Test
    void aFileWithoutReadingsSaysWhatToRead() throws Exception {
        Reply reply = Asks.demo("orchard-estate").reply("road");
        assertThat(reply.headlines().get(0)).startsWith("The file has no road test yet");
        assertThat(reply.next().get(0).act()).contains(new LookAct.TurnTo(Look.Page.CIRCLE));
    }

    /** A log is drawn with what was steady in it; a piece is left out by one act and taken in again by another. */
    @Test
    void aSteadyPieceOfALogIsLeftOutAndTakenInAgain(@TempDir Path folder) throws Exception {
        StringBuilder log = new StringBuilder("time_s,speed_km_per_h,yawRate_deg_per_s,steeringWheel_deg,roll_deg\n");
        for (int i = 0; i < 160; i++) {
            String lap = i < 70 ? ",37,19.6,99,2.4" : i < 90 ? "," + (37 - (i - 70)) + ",5,20,1" : ",37,-19.6,-95,-2.3";
            log.append(i * 0.1).append(lap).append('\n');
        }
        Files.writeString(folder.resolve("laps.csv"), log);
        Asks asks = Asks.file(
                folder.resolve("car.json"),
                Files.readString(Path.of("..", "scenarios", "harbour-saloon.json"))
                        .replace("\"readings\": [", "\"logs\": [{\"file\": \"laps.csv\"}], \"readings\": ["));
        Reply reply = asks.reply("road");
        Chart trace = reply.charts().get(reply.charts().size() - 1);
        assertThat(trace.title()).contains("laps.csv, and what was steady in it");
        List<Reply.Next> pieces = reply.next().stream()
                .filter(next -> next.words().contains("laps.csv"))
                .toList();
        assertThat(pieces).hasSize(2);
        assertThat(pieces.get(0).words())
                .startsWith("leave out laps.csv from 0.0")
                .endsWith("left");
        Reply without = asks.act(pieces.get(0).act().orElseThrow()).reply("road");
        assertThat(asks.work().scenario().text()).contains("\"leftOut\": [\"");
        assertThat(without.headlines()).isNotEqualTo(reply.headlines());
        Reply.Next again = without.next().stream()
                .filter(next -> next.words().startsWith("take in again"))
                .findFirst()
                .orElseThrow();
        asks.act(again.act().orElseThrow());
        assertThat(asks.work().scenario().text()).doesNotContain("leftOut");
    }
}
