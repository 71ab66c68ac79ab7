package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Progress;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is written down at the side of the circle. */
class NotedTest {
    private static Desk after(Desk desk, Act act) {
        Outcome outcome = act.on(desk);
        assertThat(outcome).as("%s", outcome).isInstanceOf(Outcome.Done.class);
        return ((Outcome.Done) outcome).desk();
    }

    private static Sheet first(Desk desk) {
        return Sheet.of(desk.work().scenario(), 0);
    }

    @Test
    void bareNumbersGetTheUnitBehindTheirFieldAndSoDoTheirTolerances() {
        Noted noted = Noted.NOTHING
                .with("time", "52")
                .with("steeringWheel", "-94 +- 2")
                .with("roll", "1.5 deg");
        assertThat(noted.isWhole()).isTrue();
        assertThat(noted.json())
                .isEqualTo(
                        "{\"turn\": \"left\", \"laps\": 3, \"time\": \"52 s\", \"steeringWheel\": \"-94 deg ± 2 deg\","
                                + " \"roll\": \"1.5 deg\"}");
        assertThat(noted.next().json()).isEqualTo("{\"turn\": \"left\", \"laps\": 3}");
    }

    @Test
    void nothingIsPutDownBeforeAPaceAndWhatWasReadAreThere() {
        assertThat(Noted.NOTHING.with("time", "52").isWhole()).isFalse();
        assertThat(Noted.NOTHING.with("roll", "2").isWhole()).isFalse();
        assertThat(Noted.NOTHING.with("time", "52").with("roll", "two").isWhole())
                .isFalse();
        assertThat(Noted.NOTHING.as(Noted.Kind.BOUNCE).isWhole()).isFalse();
        assertThat(Noted.NOTHING.as(Noted.Kind.BOUNCE).with("frequency", "1.3").isWhole())
                .isTrue();
    }

    @Test
    void eachKindGoesBehindTheLastOfItsListAndComesOutAgain() throws Exception {
        Desk desk = Desks.demo("harbour-saloon");
        String before = desk.work().scenario().text();
        Noted limit = Noted.NOTHING.as(Noted.Kind.LIMIT).with("time", "12.5").with("firstAxle", "rear");
        Noted bounce = Noted.NOTHING.as(Noted.Kind.BOUNCE).with("axle", "rear").with("nextSwing", "0.15");
        Desk put = after(
                after(desk, new ReadingAct.PutDown(first(desk), limit)), new ReadingAct.PutDown(first(desk), bounce));
        assertThat(first(put).rows())
                .extracting(Sheet.Row::path)
                .contains("roadTests[0].limits[2]", "roadTests[0].bounce[2]");
        assertThat(first(put).rows()).extracting(Sheet.Row::words).contains("rear, next swing 0.15");
        Desk out = after(
                after(put, new ReadingAct.TakeOut("roadTests[0].bounce[2]")),
                new ReadingAct.TakeOut("roadTests[0].limits[2]"));
        assertThat(out.work().scenario().text()).isEqualTo(before);
    }

    @Test
    void aReadingThatMissesIsToldAndThoseBeforeAreJudgedWithoutIt() throws Exception {
        Desk desk = Desks.demo("harbour-saloon");
        Noted wrong = Noted.NOTHING.with("time", "52").with("steeringWheel", "171 ± 2");
        ReadingCheck check = ReadingCheck.of(
                new ReadingCheck.Question(desk.work().scenario(), first(desk), Optional.of(wrong)), Progress.NONE);
        assertThat(check.misfits()).isEmpty();
        assertThat(check.whole()).isEqualTo("So far the file and the road agree.");
        assertThat(check.noted())
                .singleElement()
                .asString()
                .endsWith("It does not fit what was read before: read it again.");
        Desk put = after(desk, new ReadingAct.PutDown(first(desk), wrong));
        ReadingCheck then = ReadingCheck.of(
                new ReadingCheck.Question(put.work().scenario(), first(put), Optional.empty()), Progress.NONE);
        assertThat(then.misfits()).contains("roadTests[0].readings[8]");
        assertThat(then.whole()).startsWith("So far the file and the road do not agree");
    }

    @Test
    void aPaceThatNoCarDrivesIsRefusedInWordsAndATestIsBegunOnlyOnce() throws Exception {
        Desk desk = Desks.demo("harbour-saloon");
        Noted fast = Noted.NOTHING.with("time", "5").with("roll", "2");
        assertThat(ReadingCheck.of(
                                new ReadingCheck.Question(desk.work().scenario(), first(desk), Optional.of(fast)),
                                Progress.NONE)
                        .noted())
                .singleElement()
                .asString()
                .contains("which no road car does");
        assertThat(new ReadingAct.Begin("First circle", "As bought", "30 m").on(desk))
                .isInstanceOf(Outcome.Refused.class);
        assertThat(new ReadingAct.Begin("Second", "As bought", "a ring").on(desk))
                .isInstanceOf(Outcome.Refused.class);
    }
}
