package evenhand.report;

import evenhand.answers.Trial;
import evenhand.load.Laden;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.straight.Braking;
import evenhand.turn.Along;
import evenhand.turn.Direction;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.words.balance.AlongWords;
import evenhand.words.brakes.BrakedSetup;
import evenhand.words.brakes.BrakedSetup.Braked;
import evenhand.words.brakes.BrakesToGive;
import evenhand.words.drive.DriveToGive;
import evenhand.words.drive.DrivenSetup;
import evenhand.words.drive.DrivenSetup.Driven;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How the car brakes and pulls away straight ahead, before and now.
 *
 * @param braked those that have an answer, the base first
 * @param driven those of which engine and gears are known, likewise
 * @param lifted what becomes of the line of what is handed over when the driver lifts in the bend, in sentences
 */
record BrakedAndDriven(List<Braked> braked, List<Driven> driven, List<String> lifted) {
    private static final double SPEED = Unit.of("km/h").toSi(80);

    private static final Braking.Asked ASKED = new Braking.Asked(
            List.of(Unit.of("g").toSi(0.6)), List.of(0.3, 0.5, 0.8), List.of(200.0, 300.0, 400.0), SPEED, true);

    BrakedAndDriven {
        braked = List.copyOf(braked);
        driven = List.copyOf(driven);
        lifted = List.copyOf(lifted);
    }

    private static final Along LIFT = new Along(-Unit.of("g").toSi(0.2), Along.By.ENGINE);

    private static List<String> lifted(Question question, Setup chosen) {
        if (!(Laden.of(chosen.car(), question.trial().load()) instanceof Laden.AtRest rest)) {
            return List.of();
        }
        Direction direction = question.trial().direction();
        TurnAnswer turn = turn(question, rest, direction);
        Optional<TurnAnswer> other = rest.car().turnsAlikeBothWays()
                ? Optional.empty()
                : Optional.of(turn(question, rest, direction.other()));
        List<String> sentences = new ArrayList<>(List.of(AlongWords.what(LIFT) + ":"));
        if (!(turn instanceof TurnAnswer.Turns turns)) {
            return List.of();
        }
        sentences.addAll(AlongWords.of(turns, other));
        return sentences;
    }

    private static TurnAnswer turn(Question question, Laden.AtRest rest, Direction direction) {
        return SteadyTurn.answer(
                rest.car(), List.of(Trial.BRISK), question.trial().radius(), direction, LIFT);
    }

    /** Nothing where nothing is known of the brakes that are handed over, or they have no answer. */
    static Optional<BrakedAndDriven> of(Question question, Setup base, Setup chosen) {
        var load = question.trial().load();
        List<Setup> both = Stream.of(base, chosen).distinct().toList();
        List<Braked> braked = both.stream()
                .filter(setup -> BrakesToGive.given(setup.car()))
                .map(setup -> BrakedSetup.of(setup, load, ASKED))
                .flatMap(answer -> answer instanceof Braked brakes ? Stream.of(brakes) : Stream.empty())
                .toList();
        List<Driven> driven = both.stream()
                .filter(setup -> DriveToGive.given(setup.car()))
                .map(setup -> DrivenSetup.of(setup, load, SPEED, base))
                .flatMap(answer -> answer instanceof Driven drives ? Stream.of(drives) : Stream.empty())
                .toList();
        return braked.stream().anyMatch(one -> one.setup().equals(chosen))
                ? Optional.of(
                        new BrakedAndDriven(braked, driven, driven.isEmpty() ? List.of() : lifted(question, chosen)))
                : Optional.empty();
    }
}
