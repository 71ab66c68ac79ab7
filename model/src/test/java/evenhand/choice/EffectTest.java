package evenhand.choice;

import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What one step does is what two cars that are built by hand differ by. */
class EffectTest {
    private static final Trial TRIAL = Trials.at(0.5);
    private static final Judged UNDERSTEER = judged(Criterion.UNDERSTEER, 0.5);
    private static final Judged LIMIT = judged(Criterion.LIMIT);
    private static final Entries CAR = CatalogueTest.car();
    private static final List<String> NAMES = List.of("soft", "middle", "firm");

    private static Entries with(Entries car, String path, Entry entry) {
        return Catalogue.with(car, new Catalogue.Difference(path, Optional.empty(), Optional.of(entry)));
    }

    private static Entry.Drawn curve(double force) {
        return new Entry.Drawn(List.of(point(0, 0), point(0.1, force), point(0.6, 2 * force)));
    }

    private static Entry.Drawn.Point point(double speed, double force) {
        return new Entry.Drawn.Point(Quantity.of(speed, Unit.of("m/s")), Quantity.of(force, Unit.of("N")));
    }

    private static Entries damper(Map<String, Entry> more) {
        Map<String, Entry> damper = new LinkedHashMap<>();
        damper.put("motionRatio", new Entry.Measured(Quantity.of(0.6, Unit.of(""))));
        damper.put("bump", curve(200));
        damper.put("rebound", curve(500));
        damper.putAll(more);
        return new Entries(Optional.empty(), damper);
    }

    /** The car with a front damper of three settings, of which one is set. */
    private static Entries set(String setting) {
        List<Entries> settings = NAMES.stream()
                .map(name -> new Entries(
                        Optional.empty(),
                        Map.of("name", new Entry.Word(name), "bump", curve(200), "rebound", curve(500))))
                .toList();
        return with(
                CAR,
                "front.damper",
                damper(Map.of("settings", new Entry.Listed(settings), "setting", new Entry.Word(setting))));
    }

    private static Car built(Entries car) {
        return Catalogue.build(car).value().orElseThrow();
    }

    private static Answers ask(Entries car) {
        return TRIAL.ask(built(car));
    }

    private static double number(Entries car, String path) {
        return Catalogue.number(car, path).orElseThrow();
    }

    @Test
    void aMoveIsCountedInWhatIsNoticeable() {
        double noticeable = LIMIT.criterion().noticeable();
        assertThat(new Effect.Move(LIMIT, 8, 3 * noticeable).size()).isCloseTo(3, within(1e-12));
        assertThat(new Effect.Move(LIMIT, 8, -0.5 * noticeable).size()).isCloseTo(0.5, within(1e-12));
    }

    /** Every step up, or down where up makes no car, by a car that was built with the other number. */
    @Test
    void everyStepMovesEachFigureByWhatTheCarWithTheOtherNumberHasMore() {
        Answers before = ask(CAR);
        List<Effect> effects = Effect.each(CAR, TRIAL, before);
        int compared = 0;
        for (Effect effect : effects) {
            if (effect.step() instanceof Effect.ByNumber step
                    && step.adjustable().origin() == Adjustable.Origin.GIVEN) {
                Entries other = Catalogue.with(CAR, step.path(), number(CAR, step.path()) + step.size());
                for (Judged judged : List.of(UNDERSTEER, LIMIT)) {
                    double was = judged.si(before).orElseThrow();
                    double is = judged.si(ask(other)).orElseThrow();
                    Effect.Move move = effect.move(judged).orElseThrow();
                    assertThat(move.base()).isEqualTo(was);
                    assertThat(move.difference()).as(step.path()).isCloseTo(is - was, within(1e-9 * Math.abs(was)));
                }
                assertThat(step.size()).as(step.path()).isPositive();
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(10);
        for (int i = 1; i < effects.size(); i++) {
            assertThat(effects.get(i).size())
                    .isLessThanOrEqualTo(effects.get(i - 1).size());
        }
        assertThat(effects.get(0).size())
                .isGreaterThan(effects.get(effects.size() - 1).size());
    }

    @Test
    void eachNumberGoesUpFirstAndDownByAsMuch() {
        for (List<Effect.Step> ways : Effect.ways(CAR)) {
            assertThat(ways).hasSize(2);
            Effect.ByNumber up = (Effect.ByNumber) ways.get(0);
            Effect.ByNumber down = (Effect.ByNumber) ways.get(1);
            assertThat(up.size()).isPositive();
            assertThat(down.size()).isEqualTo(-up.size());
            assertThat(down.adjustable()).isEqualTo(up.adjustable());
        }
    }

    @Test
    void aSettingGoesToTheNextOrElseToTheOneBefore() {
        assertThat(settings("middle")).containsExactly("firm", "soft");
        assertThat(settings("soft")).containsExactly("middle");
        assertThat(settings("firm")).containsExactly("middle");
        Effect.Step step = new Effect.ToSetting("front.damper.setting", "soft", "firm");
        assertThat(Effect.after(set("soft"), step).orElseThrow()).isEqualTo(built(set("firm")));
    }

    private static List<String> settings(String set) {
        return Effect.ways(set(set)).stream()
                .flatMap(List::stream)
                .filter(Effect.ToSetting.class::isInstance)
                .map(step -> (Effect.ToSetting) step)
                .peek(step -> assertThat(step.from()).isEqualTo(set))
                .map(Effect.ToSetting::to)
                .toList();
    }

    @Test
    void dampersOfOtherForcesHaveEachForceTimesTheFactorAtTheSameSpeed() {
        Entries car = with(CAR, "front.damper", damper(Map.of()));
        Effect.ByForces firmer = new Effect.ByForces("front.damper", 1.25);
        assertThat(firmer.curves(car))
                .isEqualTo(Map.of("front.damper.bump", curve(250), "front.damper.rebound", curve(625)));
        Damper.Forces fitted = Effect.after(car, firmer)
                .orElseThrow()
                .front()
                .damper()
                .orElseThrow()
                .forces()
                .orElseThrow();
        assertThat(fitted.bump().points()).element(1).isEqualTo(new Curve.Point(0.1, 250));
        assertThat(fitted.rebound().points()).element(2).isEqualTo(new Curve.Point(0.6, 1250));
    }

    @Test
    void aBarIsFittedUnderItsOwnNameAtEitherEnd() {
        for (End end : End.values()) {
            Effect.ByBar bar = new Effect.ByBar(end.key() + ".bar.rollStiffness", 9_000);
            Car fitted = Effect.after(CAR, bar).orElseThrow();
            assertThat(fitted.axle(end).barRollStiffness()).isCloseTo(9_000, within(1e-9));
            assertThat(fitted.axle(end == End.FRONT ? End.REAR : End.FRONT).barRollStiffness())
                    .isZero();
        }
    }
}
