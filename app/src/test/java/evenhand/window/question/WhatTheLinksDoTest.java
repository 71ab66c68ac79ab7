package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.chart.Chart;
import evenhand.chart.Part;
import evenhand.drawing.Drawing;
import evenhand.drawing.Item;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

class WhatTheLinksDoTest {
    private static final String PLACE = "links/place rear bump and droop";

    private static Asks tourer() throws Exception {
        return Asks.demo("sluice-tourer").act(new TrialAct.Activate("As measured"));
    }

    /** Dampers that are closed 41 mm up, and lower links whose joints give no more than 6 deg. */
    private static Asks tight() throws Exception {
        return Asks.demo(
                        "sluice-tourer",
                        text -> text.replace("\"closedLength\": \"290 mm\"", "\"closedLength\": \"325 mm\"")
                                .replace("\"jointLimit\": \"15 deg\"", "\"jointLimit\": \"6 deg\""))
                .act(new TrialAct.Activate("As measured"));
    }

    @Test
    void theAxleIsShownWhereTheTrackStandsInWordsFiguresAndDrawing() throws Exception {
        Reply rest = tourer().reply("links");
        Reply bump = tourer().wish(PLACE, "40 mm").reply("links");
        assertThat(rest.headlines().get(0)).contains("rear roll centre stands 295.4 mm", "falls 1.30 mm");
        assertThat(bump.headlines().get(0)).isEqualTo(rest.headlines().get(0));
        assertThat(rest.headlines().get(1)).startsWith("At rest, the roll centre stands 295.4 mm");
        assertThat(bump.headlines().get(1)).startsWith("At 40 mm of bump, the roll centre stands 243.5 mm");
        assertThat(Asks.row(rest.figures(), "At rest", "pinion slope").get(0)).isEqualTo("1.00");
        assertThat(Asks.row(bump.figures(), "At 40 mm of bump", "pinion slope").get(0))
                .isEqualTo("−1.50");
        assertThat(bump.drawings()).hasSize(3);
        Drawing behind = bump.drawings().get(0).drawing();
        assertThat(behind.title()).isEqualTo("The rear links from behind, at 40 mm of bump");
        assertThat(behind.marks().get(0).words()).isEqualTo("roll centre 243 mm");
        double ground = ground(behind) - ground(rest.drawings().get(0).drawing());
        assertThat(ground).isCloseTo(0.040, within(1e-9));
        assertThat(behind.world()).isEqualTo(rest.drawings().get(0).drawing().world());
    }

    private static double ground(Drawing behind) {
        return behind.items().stream()
                .filter(item -> item instanceof Item.Outline outline && outline.ink() == Item.Ink.GROUND)
                .map(item -> ((Item.Outline) item).path().getBounds2D().getCenterY())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void chosenFiguresAreDrawnOverTheMotionForEverySetupThatIsShown() throws Exception {
        Reply reply = tourer().wish("links/motion live", "roll")
                .wish("links/first live", "damper length")
                .wish("links/place rear roll", "2 deg")
                .reply("links");
        Chart chart = reply.charts().get(0);
        assertThat(chart.title()).isEqualTo("Damper length of the left wheel over roll");
        assertThat(chart.across().title()).isEqualTo("right side down, deg");
        assertThat(chart.up().title()).isEqualTo("damper length of the left wheel, mm");
        assertThat(chart.lines().stream().map(Part.Line::name).toList())
                .containsExactly("As measured", "Pivot 30 mm lower");
        List<Part.Point> points = chart.lines().get(0).points();
        assertThat(points.get(0).x()).isCloseTo(-4, within(1e-9));
        assertThat(points.get(0).y())
                .as("left side down")
                .isLessThan(points.get(points.size() - 1).y());
        assertThat(chart.rules().stream()
                        .filter(rule -> rule.along() == Part.Rule.Along.ACROSS)
                        .map(Part.Rule::value)
                        .toList())
                .containsExactly(2.0);
        assertThat(reply.charts().get(1).title()).isEqualTo("Axle steer over roll");
    }

    @Test
    void whatEndsTheTravelIsMarkedSaidAndColouredBeyondItsPlace() throws Exception {
        Reply before = tight().wish(PLACE, "39 mm").reply("links");
        Reply beyond = tight().wish(PLACE, "41 mm").reply("links");
        assertThat(before.headlines().get(2)).isEqualTo("In bump the left damper is closed at 39.7 mm.");
        assertThat(before.headlines().get(1)).doesNotContain("limit");
        assertThat(beyond.headlines().get(1)).endsWith("Beyond a limit here: both dampers closed.");
        List<Part.Mark> marks = beyond.charts().get(0).marks();
        assertThat(marks.get(0).words()).isEqualTo("both dampers closed");
        assertThat(marks.get(0).at().x()).isCloseTo(39.7, within(0.05));
        assertThat(stopped(before)).isZero();
        assertThat(stopped(beyond)).as("rod and body of two dampers").isEqualTo(4);
        assertThat(Asks.row(beyond.figures(), "What ends the travel first", "bump")
                        .get(0))
                .isEqualTo("39.7, both dampers closed");
    }

    private static long stopped(Reply reply) {
        return reply.drawings().get(0).drawing().items().stream()
                .filter(item -> item instanceof Item.Outline outline && outline.ink() == Item.Ink.STOPPED)
                .count();
    }

    @Test
    void wheelsAreSteeredByTheRack() throws Exception {
        Reply reply = tourer().wish("links/axle", "front")
                .wish("links/motion steered", "steer")
                .wish("links/place front steer", "-20 deg")
                .in(Units.IMPERIAL)
                .reply("links");
        assertThat(reply.headlines().get(1)).startsWith("Steered 20 deg to the right, the roll centre stands");
        assertThat(reply.charts().get(0).title()).isEqualTo("Share of Ackermann over steer");
        assertThat(Asks.row(reply.figures(), "Steered 20 deg to the right", "rack to the left")
                        .get(0))
                .isEqualTo("1.747");
        assertThat(reply.drawings().get(2).drawing().title())
                .isEqualTo("The front links from above, steered 20 deg to the right");
    }

    @Test
    void anAxleThatNobodyMeasuredIsAnsweredWithWhatToMeasure() throws Exception {
        Reply leaves = Asks.demo(
                        "harbour-saloon",
                        text -> text.replace(
                                "{\"kind\": \"watt\", \"height\": \"246 mm ± 3 mm\", \"carriedBy\": \"body\"}",
                                "{\"kind\": \"leaf springs\", \"height\": \"246 mm ± 3 mm\"}"))
                .reply("links");
        assertThat(leaves.headlines().get(0)).startsWith("The rear axle has no links by points");
        assertThat(Asks.all(leaves)).contains("Each leaf spring: its front eye", "as \"links\" in car.rear");
        Reply wheels = Asks.demo("harbour-saloon").wish("links/axle", "front").reply("links");
        assertThat(Asks.all(wheels)).contains("The front wheels have no links", "ball joint", "car.front");
        assertThat(wheels.charts()).isEmpty();
        assertThat(wheels.drawings()).isEmpty();
    }
}
