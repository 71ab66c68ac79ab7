package evenhand.words.drive;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.LoadCase;
import evenhand.load.Laden;
import evenhand.scenario.Setup;
import evenhand.straight.Driving;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How a set-up drives with what is aboard, or why nobody can say. */
public sealed interface DrivenSetup {
    /**
     * It drives.
     *
     * @param load what was asked for
     * @param rest how it stands with it
     * @param first the first set-up, against which tyres and ratio are told
     */
    record Driven(Setup setup, Optional<LoadCase> load, Laden.AtRest rest, Setup first, Driving.Answer answer)
            implements DrivenSetup {
        /** Name of the set-up. */
        public String name() {
            return setup.name();
        }

        /** Name of the first one. */
        public String firstName() {
            return first.name();
        }

        /**
         * What the speedometer, driven by the gearbox, shows at a true 100 km/h: {@code 100·(r0/r)·(finalDrive/finalDrive0)};
         * nothing where only one of both has its final drive in the file.
         */
        public OptionalDouble speedometer() {
            OptionalDouble now = setup.car().drive().finalDrive();
            OptionalDouble before = first.car().drive().finalDrive();
            double ratio = now.isPresent() && before.isPresent() ? now.getAsDouble() / before.getAsDouble() : 1;
            return now.isPresent() == before.isPresent()
                    ? OptionalDouble.of(100 * radius(first.car()) / radius(setup.car()) * ratio)
                    : OptionalDouble.empty();
        }

        /** The final drive that would feel as the first set-up's: {@code finalDrive0·r/r0}. */
        public OptionalDouble equalFinalDrive() {
            OptionalDouble before = first.car().drive().finalDrive();
            return before.isPresent()
                    ? OptionalDouble.of(before.getAsDouble() * radius(setup.car()) / radius(first.car()))
                    : before;
        }

        private static double radius(Car car) {
            Axle driven = car.axle(car.drive().axle());
            return driven.tyre().rollingRadius();
        }

        /** All that is said of it, the launch first. */
        public List<String> words(Units units) {
            List<String> sentences = new ArrayList<>(DriveWords.of(rest.car(), answer, units));
            if (!setup.equals(first)
                    && speedometer().isPresent()
                    && Math.abs(speedometer().getAsDouble() - 100) > 0.05) {
                sentences.add("At a true 100 km/h the speedometer shows "
                        + Numbers.fixed(speedometer().getAsDouble(), 1) + " km/h"
                        + equalFinalDrive().stream()
                                .mapToObj(equal -> "; an axle ratio of " + Numbers.fixed(equal, 2)
                                        + " would feel as that of \"" + first.name() + "\"")
                                .findFirst()
                                .orElse("")
                        + ".");
            }
            load.ifPresent(aboard -> sentences.add(LoadWords.sits(aboard, rest, units)));
            return sentences;
        }
    }

    /** It has no answer. */
    record NoAnswer(TurnAnswer.Reason reason, String text) implements DrivenSetup {}

    /** @param speed at which the engine's speed in each gear is told, m/s */
    static DrivenSetup of(Setup setup, Optional<LoadCase> load, double speed, Setup first) {
        Laden laden = Laden.of(setup.car(), load);
        if (!(laden instanceof Laden.AtRest rest)) {
            return new NoAnswer(TurnAnswer.Reason.NO_EQUILIBRIUM, ((Laden.NoRest) laden).text());
        }
        Optional<String> falls = SteadyTurn.fallsOver(rest.car());
        if (falls.isPresent()) {
            return new NoAnswer(TurnAnswer.Reason.FALLS_OVER, falls.get());
        }
        Driving.Answer answer = new Driving(rest.car()).answer(speed);
        return answer.launch().isEmpty() && answer.gears().isEmpty()
                ? new NoAnswer(
                        TurnAnswer.Reason.NO_EQUILIBRIUM,
                        "no balance is found as it pulls away: springs or links do not carry it")
                : new Driven(setup, load, rest, first, answer);
    }
}
