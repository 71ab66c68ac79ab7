package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.catalogue.Adjustable;
import evenhand.quantity.Quantity;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BenchTest {
    private static final int ACTS = 200;

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void twoHundredRandomActsAreUndoneBackToTheFirstStateAndRedoneToTheLast(long seed) {
        Bench bench = Desks.bench("harbour-saloon");
        Work first = bench.desk().work();
        SplittableRandom random = new SplittableRandom(seed);
        int done = 0;
        for (int tries = 0; done < ACTS; tries++) {
            assertThat(tries)
                    .as("acts that are refused or change nothing, seed " + seed)
                    .isLessThan(3 * ACTS);
            Work before = bench.desk().work();
            bench.act(random(random, bench.desk()));
            if (!bench.desk().work().equals(before)) {
                done++;
            }
        }
        Work last = bench.desk().work();
        assertThat(last.scenario().text()).isNotEqualTo(first.scenario().text());
        for (int i = 0; i < ACTS; i++) {
            bench.undo();
        }
        assertThat(bench.undoable()).isEmpty();
        assertThat(bench.desk().work()).isEqualTo(first);
        for (int i = 0; i < ACTS; i++) {
            bench.redo();
        }
        assertThat(bench.desk().work()).isEqualTo(last);
    }

    private static Act random(SplittableRandom random, Desk desk) {
        Work work = desk.work();
        List<Setup> setups = work.scenario().setups();
        Setup one = setups.get(random.nextInt(setups.size()));
        Setup other = setups.get(random.nextInt(setups.size()));
        List<Adjustable> values = one.values().stream()
                .filter(value -> !value.path().contains("[") && Double.isFinite(value.si()))
                .toList();
        Adjustable value = values.get(random.nextInt(values.size()));
        Quantity next = Quantity.of(value.si() + (random.nextBoolean() ? 1 : -1) * value.step(), value.unit());
        return switch (random.nextInt(14)) {
            case 0 -> new SetupAct.DuplicateSetup(one.name(), "Copy " + random.nextInt());
            case 1 -> new SetupAct.RenameSetup(one.name(), "Name " + random.nextInt());
            case 2 -> new SetupAct.DeleteSetup(one.name());
            case 3 -> new SetupAct.MoveSetup(one.name(), random.nextInt(setups.size()));
            case 4 -> new SetupAct.BaseOn(one.name(), Optional.of(other.name()).filter(name -> random.nextBoolean()));
            case 5 -> new SetupAct.SetNote(one.name(), "note " + random.nextInt());
            case 6 ->
                new SetupAct.AddSetup(
                        "Added " + random.nextInt(),
                        Optional.of(other.name()),
                        Optional.empty(),
                        Map.of(value.path(), next.text()));
            case 7 -> new TrialAct.Show(one.name(), random.nextBoolean());
            case 8 -> new TrialAct.Activate(one.name());
            case 9 -> new TrialAct.ChoosePace(1 + random.nextDouble(), false);
            case 10 -> new TrialAct.ChooseDirection(random.nextBoolean() ? Direction.LEFT : Direction.RIGHT);
            case 11 -> new EditAct.TakeBack(Optional.of(one.name()), value.path());
            default ->
                new EditAct.SetValue(
                        Optional.of(one.name()).filter(name -> random.nextInt(4) > 0), value.path(), next.text());
        };
    }

    @Test
    void aDragIsOneActToUndo() {
        Bench bench = Desks.bench("harbour-saloon");
        String before = bench.desk().work().scenario().text();
        Optional<String> setup = Optional.of("Lowered");
        for (int mm = 247; mm < 290; mm++) {
            Desks.done(bench, new EditAct.SetValue(setup, "rear.lateralLocator.height", mm + " mm", mm > 247));
        }
        Desks.done(bench, new EditAct.SetValue(setup, "rear.lateralLocator.height", "300 mm"));
        assertThat(height(bench)).isEqualTo(0.300);
        bench.undo();
        assertThat(height(bench)).isEqualTo(0.289);
        bench.undo();
        assertThat(bench.desk().work().scenario().text()).isEqualTo(before);
    }

    @Test
    void aDragThatBeginsWithARefusedValueIsStillOneActOfItsOwn() {
        Bench bench = Desks.bench("harbour-saloon");
        Optional<String> setup = Optional.of("Lowered");
        Desks.done(bench, new EditAct.SetValue(setup, "rear.lateralLocator.height", "270 mm"));
        assertThat(bench.act(new EditAct.SetValue(setup, "rear.lateralLocator.height", "-5 mm")))
                .isPresent();
        Desks.done(bench, new EditAct.SetValue(setup, "rear.lateralLocator.height", "280 mm", true));
        bench.undo();
        assertThat(height(bench)).isEqualTo(0.270);
    }

    private static double height(Bench bench) {
        return bench.desk().work().activeSetup().car().rear().geometry().rollCentreHeight();
    }

    @Test
    void aValueThatMakesNoCarIsRefusedInWordsAndChangesNothing() {
        Bench bench = Desks.bench("harbour-saloon");
        Desk before = bench.desk();
        assertThat(bench.act(new EditAct.SetValue(Optional.empty(), "front.track", "1420")))
                .hasValueSatisfying(why -> assertThat(why).contains("needs a unit"));
        assertThat(bench.act(new EditAct.SetValue(Optional.empty(), "front.track", "a page\nof text\n".repeat(300))))
                .isPresent();
        assertThat(bench.act(new EditAct.SetValue(Optional.empty(), "front.trak", "1420 mm")))
                .isPresent();
        assertThat(bench.act(new EditAct.SetJson(Optional.empty(), "front.spring", "{broken")))
                .isPresent();
        assertThat(bench.act(new SetupAct.RenameSetup("Lowered", "  "))).isPresent();
        assertThat(bench.act(new SetupAct.RenameSetup("Lowered", "As bought"))).isPresent();
        assertThat(bench.act(new SetupAct.DeleteSetup("As bought")))
                .hasValueSatisfying(why -> assertThat(why).contains("based on"));
        assertThat(bench.desk()).isSameAs(before);
        assertThat(bench.undoable()).isEmpty();
    }

    @Test
    void anAddedSetupIsShownAndActive() {
        Bench bench = Desks.bench("bakery-front-drive");
        Desks.done(
                bench,
                new SetupAct.AddSetup(
                        "Trial", Optional.of("Rear bar"), Optional.empty(), Map.of("rear.spring.rate", "30 N/mm")));
        assertThat(bench.desk().work().active()).isEqualTo("Trial");
        assertThat(bench.desk().work().shown()).extracting(Setup::name).contains("Trial");
    }

    @Test
    void lookingAtTheDeskIsNoActToUndo() {
        Bench bench = Desks.bench("harbour-saloon");
        Desks.done(bench, new LookAct.ShowUnits(Units.IMPERIAL));
        Desks.done(bench, new LookAct.ShowDark(true));
        Desks.done(bench, new LookAct.Ask("other"));
        assertThat(bench.undoable()).isEmpty();
    }

    @Test
    void questionsAreAskedWhenTheAnswerMayDifferAndOnlyThen() {
        List<Asking> asked = new ArrayList<>();
        Bench bench = new Bench(Desks.demo("harbour-saloon"), asked::add);
        bench.act(new LookAct.ShowDark(true));
        bench.act(new TrialAct.Activate(bench.desk().work().active()));
        assertThat(asked).isEmpty();
        bench.act(new EditAct.SetValue(Optional.empty(), "rear.track", "1300 mm"));
        bench.act(new LookAct.ShowUnits(Units.IMPERIAL));
        assertThat(asked).hasSize(2);
        bench.undo();
        assertThat(asked).hasSize(3);
    }

    @Test
    void theSameCarOpenedOnceMoreIsAskedOnceMore() {
        List<Asking> asked = new ArrayList<>();
        Bench bench = new Bench(Desks.demo("harbour-saloon"), asked::add);
        bench.open(bench.desk().work(), bench.desk().filed());
        assertThat(asked).hasSize(1);
        assertThat(bench.desk().replies()).isEqualTo(Replies.NONE);
    }

    @Test
    void savedMeansThatTheTextIsTheFiles() {
        Bench bench = Desks.bench("harbour-saloon");
        assertThat(bench.desk().unsaved()).isFalse();
        bench.act(new SetupAct.SetNote("Lowered", "another"));
        assertThat(bench.desk().unsaved()).isTrue();
        bench.undo();
        assertThat(bench.desk().unsaved()).isFalse();
    }

    @Test
    void severalValuesAreChangedTogetherOrNotAtAll() {
        Bench bench = Desks.bench("harbour-saloon");
        Work before = bench.desk().work();
        Optional<String> setup = Optional.of(before.active());
        Optional<String> why = bench.act(
                new EditAct.SetValues(setup, Map.of("rear.spring.rate", "26 N/mm", "front.spring.rate", "-3 N/mm")));
        assertThat(why).isPresent();
        assertThat(bench.desk().work()).isEqualTo(before);
        Desk after = Desks.done(
                bench,
                new EditAct.SetValues(setup, Map.of("rear.spring.rate", "26 N/mm", "front.spring.rate", "70 N/mm")));
        assertThat(SetupChange.of(after.work().scenario(), after.work().activeSetup()))
                .extracting(SetupChange::path)
                .contains("rear.spring.rate", "front.spring.rate");
        bench.undo();
        assertThat(bench.desk().work()).isEqualTo(before);
    }

    @Test
    void whatMayBeDoneNextStaysMarkedLateUntilItIsWorkedOutAnew() {
        Bench bench = Desks.bench("harbour-saloon");
        Asking asking = bench.desk().asking();
        Afterthought first = Afterthought.of(List.of(new Reply.Next("a stiffer bar", Optional.empty())));
        Desks.done(bench, new LookAct.ReplyCame(asking, Reply.only("It pushes.")));
        Desks.done(bench, new LookAct.AfterthoughtCame(asking, first));
        assertThat(replied(bench).after()).isEqualTo(first);
        assertThat(replied(bench).afterLate()).isFalse();

        Desks.done(bench, new TrialAct.ChoosePace(3, false));
        Asking later = bench.desk().asking();
        Desks.done(bench, new LookAct.ReplyCame(later, Reply.only("It slides.")));
        assertThat(replied(bench).after()).isEqualTo(first);
        assertThat(replied(bench).afterLate()).isTrue();

        Desks.done(bench, new LookAct.AfterthoughtCame(asking, Afterthought.NONE));
        assertThat(replied(bench).afterLate()).isTrue();
        Desks.done(bench, new LookAct.AfterthoughtCame(later, Afterthought.NONE));
        assertThat(replied(bench).after()).isEqualTo(Afterthought.NONE);
        assertThat(replied(bench).afterLate()).isFalse();
    }

    @Test
    void whatMayBeDoneNextIsForgottenWithItsQuestion() {
        Bench bench = Desks.bench("harbour-saloon");
        Desks.done(bench, new LookAct.ReplyCame(bench.desk().asking(), Reply.only("It pushes.")));
        Desks.done(
                bench,
                new LookAct.AfterthoughtCame(
                        bench.desk().asking(),
                        Afterthought.of(List.of(new Reply.Next("a stiffer bar", Optional.empty())))));
        Desks.done(bench, new LookAct.Ask("another"));
        Desks.done(bench, new LookAct.ReplyCame(bench.desk().asking(), Reply.only("It rides.")));
        assertThat(replied(bench).after()).isEqualTo(Afterthought.NONE);
    }

    private static Replies.Replied replied(Bench bench) {
        return bench.desk().replies().reply().orElseThrow();
    }
}
