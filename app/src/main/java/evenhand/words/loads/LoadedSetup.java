package evenhand.words.loads;

import evenhand.car.LoadCase;
import evenhand.car.mounts.HardUse;
import evenhand.load.Laden;
import evenhand.scenario.Setup;
import evenhand.structure.CarLoads;
import evenhand.structure.UseAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a set-up's parts carry with what is aboard, or why nobody can say. */
public sealed interface LoadedSetup {
    /**
     * They carry it.
     *
     * @param load what was asked for
     * @param rest how it stands with it
     * @param leftOut cases that this car cannot be asked, and why
     */
    record Loaded(
            Setup setup,
            Optional<LoadCase> load,
            Laden.AtRest rest,
            LoadsAsked asked,
            CarLoads loads,
            List<String> leftOut)
            implements LoadedSetup {
        public Loaded {
            leftOut = List.copyOf(leftOut);
        }

        /** Name of the set-up. */
        public String name() {
            return setup.name();
        }

        /** Whether every case that this car can be asked has an answer. */
        public boolean complete() {
            return loads.cases().stream().noneMatch(UseAnswer.NoState.class::isInstance);
        }

        /**
         * All that is said of it, the hardest worked first.
         *
         * @param first the set-up that it is held against; none of the first itself
         */
        public List<String> words(Optional<Loaded> first, Units units) {
            List<String> sentences = new ArrayList<>(LoadsWords.of(this, first, units));
            load.ifPresent(aboard -> sentences.add(LoadWords.sits(aboard, rest, units)));
            return sentences;
        }
    }

    /** It has no answer. */
    record NoAnswer(TurnAnswer.Reason reason, String text) implements LoadedSetup {}

    static LoadedSetup of(Setup setup, Optional<LoadCase> load, LoadsAsked asked) {
        Laden laden = Laden.of(setup.car(), load);
        if (!(laden instanceof Laden.AtRest rest)) {
            return new NoAnswer(TurnAnswer.Reason.NO_EQUILIBRIUM, ((Laden.NoRest) laden).text());
        }
        Optional<String> falls = SteadyTurn.fallsOver(rest.car());
        if (falls.isPresent()) {
            return new NoAnswer(TurnAnswer.Reason.FALLS_OVER, falls.get());
        }
        boolean withoutStart =
                asked.usual() && !asked.inCases() && asked.uses().stream().noneMatch(HardUse.Launch.class::isInstance);
        List<HardUse> without = setup.entries().get("drive").isPresent()
                ? List.of()
                : asked.uses().stream().filter(HardUse.Launch.class::isInstance).toList();
        CarLoads loads = asked.without(without).of(rest.car());
        return new Loaded(setup, load, rest, asked, loads, leftOut(without, withoutStart, loads));
    }

    private static List<String> leftOut(List<HardUse> without, boolean withoutStart, CarLoads loads) {
        List<String> all = new ArrayList<>();
        if (withoutStart) {
            all.add("A full-torque start is left out: the file does not say which wheels drive; give car.drive");
        }
        without.forEach(
                use -> all.add(use.name() + " is left out: the file does not say which wheels drive; give car.drive"));
        for (UseAnswer answer : loads.cases()) {
            if (answer instanceof UseAnswer.LeftOut out) {
                all.add(out.title() + " is left out: " + out.why());
            } else if (answer instanceof UseAnswer.Carried carried) {
                carried.leftOut().forEach(why -> all.add(carried.title() + " leaves an axle out: " + why));
            } else if (answer instanceof UseAnswer.NoState none) {
                all.add(none.title() + " has no answer: " + none.why());
            }
        }
        return all;
    }
}
