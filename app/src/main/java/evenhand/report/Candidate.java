package evenhand.report;

import evenhand.answers.Balance;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.chart.Shown;
import evenhand.drawing.Stance;
import evenhand.handsums.HandSums;
import evenhand.load.Laden;
import evenhand.look.SetupStyle;
import evenhand.ride.Ride;
import evenhand.scenario.Setup;
import evenhand.turn.PaceAnswer;
import evenhand.turn.PacesAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A set-up and what it answers.
 *
 * @param index place in the file
 * @param load what is aboard
 * @param car at rest, with the load that was asked for
 * @param sums hand sums at 1 g; none where it falls over
 */
public record Candidate(
        Setup setup,
        int index,
        Optional<LoadCase> load,
        Car car,
        Optional<HandSums> sums,
        TurnAnswer turn,
        Optional<Ride> ride) {

    static Candidate of(Setup setup, int index, Trial trial) {
        Laden laden = Laden.of(setup.car(), trial.load());
        if (laden instanceof Laden.NoRest none) {
            return new Candidate(
                    setup,
                    index,
                    trial.load(),
                    setup.car().settled(),
                    Optional.empty(),
                    new TurnAnswer.NoTurn(TurnAnswer.Reason.NO_EQUILIBRIUM, none.text()),
                    Optional.empty());
        }
        Car car = ((Laden.AtRest) laden).car();
        Balance balance = Balance.of(car, trial.paces(), trial.radius(), trial.direction());
        Optional<HandSums> sums =
                balance.handSums() instanceof HandSums.Found found ? Optional.of(found.sums()) : Optional.empty();
        TurnAnswer turn = balance.handSums() instanceof HandSums.FallsOver falls
                ? new TurnAnswer.NoTurn(TurnAnswer.Reason.FALLS_OVER, falls.text())
                : balance.turn();
        Optional<Ride> ride =
                Ride.of(car, trial.road(), trial.speed()) instanceof Ride found ? Optional.of(found) : Optional.empty();
        return new Candidate(setup, index, trial.load(), car, sums, turn, ride);
    }

    public String name() {
        return setup.name();
    }

    /** Its turn, if it has one. */
    public Optional<TurnAnswer.Turns> turns() {
        return turn instanceof TurnAnswer.Turns turns ? Optional.of(turns) : Optional.empty();
    }

    /** Its turn as it is judged. */
    PacesAnswer judged() {
        return turn instanceof TurnAnswer.Turns turns ? turns.toTheLimit() : (TurnAnswer.NoTurn) turn;
    }

    /** Why it has none, as a clause. */
    public Optional<String> silence() {
        return turn instanceof TurnAnswer.NoTurn none ? Optional.of(none.text()) : Optional.empty();
    }

    /** The car at a pace; none beyond its limit. */
    public Optional<TurnRow> at(double pace) {
        return turns().stream()
                .flatMap(turn -> turn.paces().stream())
                .filter(one -> one.lateralAcceleration() == pace)
                .flatMap(one -> one instanceof PaceAnswer.InBalance in
                        ? java.util.stream.Stream.of(in.row())
                        : java.util.stream.Stream.empty())
                .findFirst();
    }

    /** Where an axle first touches a bump stop, m/s². */
    OptionalDouble firstStop(End end) {
        return turns().stream()
                .flatMap(turn -> turn.events().stream())
                .filter(event -> event.kind() == TurnEvent.Kind.STOP_TOUCHED
                        && event.axle().equals(Optional.of(end)))
                .mapToDouble(TurnEvent::lateralAcceleration)
                .min();
    }

    /** Room to the bump stop of an axle at rest, m; below zero where it stands on it. */
    OptionalDouble room(End end) {
        return car.axle(end).stops().bump().stream()
                .mapToDouble(stop -> stop.gap())
                .findFirst();
    }

    Shown shown() {
        return new Shown(name(), new SetupStyle(setup.look()), car, turn, sums);
    }

    Stance stance() {
        return Stance.laden(name(), setup.look(), setup.car(), load, setup.entries());
    }

    static List<Shown> shown(List<Candidate> candidates) {
        return candidates.stream().map(Candidate::shown).toList();
    }
}
