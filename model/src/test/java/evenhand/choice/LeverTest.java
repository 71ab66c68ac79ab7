package evenhand.choice;

import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.car.Car;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Slot;
import evenhand.tyre.MagicFormula;
import java.util.List;
import org.junit.jupiter.api.Test;

class LeverTest {
    private static final Trial TRIAL = Trials.at(0.5);
    private static final Judged UNDERSTEER = judged(Criterion.UNDERSTEER, 0.5);
    private static final Entries CAR = CatalogueTest.car();

    private static List<Lever> levers(Slot.Work most, Lever.Way way, int count) {
        return Lever.strongest(CAR, TRIAL, UNDERSTEER, most, way, count, Progress.NONE);
    }

    private static Answers ask(Entries car) {
        return TRIAL.ask(Catalogue.build(car).value().orElseThrow());
    }

    /** Two ways to the same step: the value written into the file, and the number changed in the car. */
    @Test
    void aLeverMovesItsFigureAsTheEffectOfTheSameStepDoes() {
        List<Effect> effects = Effect.each(CAR, TRIAL, ask(CAR));
        List<Lever> levers = levers(Slot.Work.REBUILDING, Lever.Way.EITHER, 100);
        int compared = 0;
        for (Lever lever : levers) {
            if (lever.step() instanceof Effect.ByNumber) {
                Effect effect = effects.stream()
                        .filter(one -> one.step().path().equals(lever.step().path()))
                        .findFirst()
                        .orElseThrow();
                assertThat(lever.step()).isEqualTo(effect.step());
                assertThat(lever.difference())
                        .isEqualTo(effect.move(UNDERSTEER).orElseThrow().difference());
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(8);
    }

    @Test
    void theStrongestComeFirstAndAreWhatAShopCanChange() {
        List<Lever> all = levers(Slot.Work.REBUILDING, Lever.Way.EITHER, 100);
        for (int i = 1; i < all.size(); i++) {
            assertThat(Math.abs(all.get(i).difference()))
                    .isLessThanOrEqualTo(Math.abs(all.get(i - 1).difference()));
        }
        assertThat(all).noneMatch(lever -> lever.step().work() == Slot.Work.ANOTHER_CAR);
        assertThat(levers(Slot.Work.REBUILDING, Lever.Way.EITHER, 3)).isEqualTo(all.subList(0, 3));
        List<Lever> settings = levers(Slot.Work.SETTING, Lever.Way.EITHER, 100);
        assertThat(settings).isNotEmpty().allMatch(lever -> lever.step().work() == Slot.Work.SETTING);
        assertThat(settings.size()).isLessThan(all.size());
    }

    @Test
    void eachGoesTheWayThatIsWished() {
        List<Lever> down = levers(Slot.Work.SETTING, Lever.Way.DOWN, 6);
        List<Lever> up = levers(Slot.Work.SETTING, Lever.Way.UP, 6);
        assertThat(down).hasSize(6).allMatch(lever -> lever.difference() < 0);
        assertThat(up).hasSize(6).allMatch(lever -> lever.difference() > 0);
        int turned = 0;
        double base = UNDERSTEER.si(ask(CAR)).orElseThrow();
        for (Lever lever : down) {
            if (lever.step() instanceof Effect.ByNumber number && number.size() < 0) {
                double value = number.adjustable().si() + number.size();
                Entries changed = Catalogue.with(CAR, number.path(), value);
                double then = UNDERSTEER.si(ask(changed)).orElseThrow();
                assertThat(lever.difference()).isCloseTo(then - base, within(1e-12));
                turned++;
            }
        }
        assertThat(turned).isPositive();
    }

    /** Stiffness in roll goes to the axle that has the bar, and with it load transfer and slip. */
    @Test
    void aBarThatIsNotFittedMayBeFitted() {
        List<Lever> all = levers(Slot.Work.REBUILDING, Lever.Way.EITHER, 100);
        Lever front = of(all, "front.bar.rollStiffness");
        Lever rear = of(all, "rear.bar.rollStiffness");
        assertThat(front.step()).isEqualTo(new Effect.ByBar("front.bar.rollStiffness", Lever.LIGHT_BAR));
        assertThat(front.difference()).isPositive();
        assertThat(rear.difference()).isNegative();
        Entries fitted = Effect.refitted(CAR, front.step());
        assertThat(Catalogue.build(fitted).value().orElseThrow().front().barRollStiffness())
                .isCloseTo(Lever.LIGHT_BAR, within(1e-9));
        assertThat(Lever.strongest(
                        fitted, TRIAL, UNDERSTEER, Slot.Work.REBUILDING, Lever.Way.EITHER, 100, Progress.NONE))
                .noneMatch(lever ->
                        lever.step() instanceof Effect.ByBar bar && bar.path().startsWith("front"));
    }

    /** A step of an estimate leaves all else as it is: no tyre becomes a measured one, beside which trail and camber are none. */
    @Test
    void aStepOfAnEstimatedStiffnessLeavesTrailAndCamberAsTheyAre() {
        Effect.Step step = Effect.ways(CAR).stream()
                .flatMap(List::stream)
                .filter(one -> one.path().equals("front.tyre.corneringStiffness"))
                .findFirst()
                .orElseThrow();
        MagicFormula before = law(Catalogue.build(CAR).value().orElseThrow());
        MagicFormula after = law(Effect.after(CAR, step).orElseThrow());
        assertThat(after.corneringStiffness()).isCloseTo(1.1 * before.corneringStiffness(), within(1e-6));
        assertThat(before.pneumaticTrail()).isPositive();
        assertThat(after.pneumaticTrail()).isEqualTo(before.pneumaticTrail());
        assertThat(after.camberThrustRatio()).isEqualTo(before.camberThrustRatio());
        assertThat(after.frictionCamberLoss()).isEqualTo(before.frictionCamberLoss());
    }

    private static MagicFormula law(Car car) {
        return (MagicFormula) car.front().tyre().lateral();
    }

    private static Lever of(List<Lever> levers, String path) {
        return levers.stream()
                .filter(lever -> lever.step().path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aCarWithoutTheFigureHasNoLever() {
        Entries capsizes = Catalogue.with(CAR, "cgHeight", 2.5);
        assertThat(Lever.strongest(capsizes, TRIAL, UNDERSTEER, Slot.Work.SETTING, Lever.Way.EITHER, 3, Progress.NONE))
                .isEmpty();
    }
}
