package evenhand.doubt;

import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Deviation;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Slot;
import evenhand.choice.Effect;
import evenhand.choice.Lever;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A car that is off is asked like a car in whose file the other numbers stand. */
class OffCarTest {
    private static final Trial TRIAL = Trials.at(0.5);
    private static final Judged UNDERSTEER = judged(Criterion.UNDERSTEER, 0.5);
    private static final Judged ROLL = judged(Criterion.ROLL_GRADIENT, 0.5);
    private static final Judged LIMIT = judged(Criterion.LIMIT);
    private static final String SPRING = "front.spring.rate";
    private static final String HEIGHT = "cgHeight";
    private static final Entries CAR = CatalogueTest.car();

    /** Off in a number that is given and in one that others are estimated from. */
    private static final Deviation OFF = number -> number.path().equals(SPRING) ? 1.1 * number.si() : shifted(number);

    private static double shifted(Adjustable number) {
        return number.path().equals(HEIGHT) ? number.si() + 0.03 : number.si();
    }

    private static final Entries WRITTEN = written(CAR);

    private static Entries written(Entries car) {
        double rate = 1.1 * Catalogue.number(CAR, SPRING).orElseThrow();
        double height = Catalogue.number(CAR, HEIGHT).orElseThrow() + 0.03;
        return Catalogue.with(Catalogue.with(car, SPRING, rate), HEIGHT, height);
    }

    @Test
    void itIsBuiltAndChangedAsItIs() {
        Entries off = CAR.off(OFF);
        assertThat(Catalogue.build(off).value())
                .isEqualTo(Catalogue.build(WRITTEN).value());
        assertThat(Catalogue.build(off).value())
                .isNotEqualTo(Catalogue.build(CAR).value());
        Entries wider = Catalogue.with(off, "front.track", 1.6);
        assertThat(Catalogue.build(wider).value())
                .isEqualTo(Catalogue.build(Catalogue.with(WRITTEN, "front.track", 1.6))
                        .value());
    }

    @Test
    void aStepStartsFromWhatTheNumberIs() {
        for (List<Effect.Step> ways : Effect.ways(CAR.off(OFF))) {
            Effect.Step step = ways.get(0);
            if (step instanceof Effect.ByNumber number && number.adjustable().origin() == Adjustable.Origin.GIVEN) {
                double there = Catalogue.number(WRITTEN, step.path()).orElseThrow() + number.size();
                assertThat(Effect.after(CAR.off(OFF), step))
                        .as(step.path())
                        .isEqualTo(Catalogue.build(Catalogue.with(WRITTEN, step.path(), there))
                                .value());
            }
        }
    }

    @Test
    void leversAreThoseOfTheCarThatIs() {
        List<Lever> off = Lever.strongest(
                CAR.off(OFF), TRIAL, UNDERSTEER, Slot.Work.REBUILDING, Lever.Way.EITHER, 3, Progress.NONE);
        List<Lever> written =
                Lever.strongest(WRITTEN, TRIAL, UNDERSTEER, Slot.Work.REBUILDING, Lever.Way.EITHER, 3, Progress.NONE);
        assertThat(off).hasSize(3);
        for (int i = 0; i < 3; i++) {
            assertThat(off.get(i).difference()).isCloseTo(written.get(i).difference(), within(1e-9));
        }
    }

    /** Drawn about what it is, by the tolerances that stand in the file. */
    @Test
    void itIsDoubtedAboutWhatItIs() {
        Doubt.Question question = new Doubt.Question(
                TRIAL, 64, 5, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, Optional.empty(), Progress.NONE);
        Spread off = roll(Doubt.of(List.of(CAR.off(OFF)), question));
        Spread asGiven = roll(Doubt.of(List.of(CAR), question));
        double moved = off.nominal().orElseThrow() - asGiven.nominal().orElseThrow();
        assertThat(off.nominal())
                .isEqualTo(ROLL.si(TRIAL.ask(Catalogue.build(WRITTEN).value().orElseThrow())));
        assertThat(Math.abs(moved)).isGreaterThan(1e-4);
        assertThat(off.median() - asGiven.median()).isCloseTo(moved, within(0.15 * Math.abs(moved)));
    }

    private static Spread roll(Doubt.Answer answer) {
        return answer.cars().get(0).spreads().stream()
                .filter(spread -> spread.judged().equals(ROLL))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void firstOrderDoubtStartsFromWhatItIs() {
        SlopeDoubt off =
                SlopeDoubt.of(List.of(CAR.off(OFF)), TRIAL, List.of(LIMIT), Tolerance.Unsaid.EXACT, Progress.NONE);
        assertThat(off.of(0, LIMIT).orElseThrow().nominal())
                .isEqualTo(LIMIT.si(TRIAL.ask(Catalogue.build(WRITTEN).value().orElseThrow()))
                        .orElseThrow());
    }
}
