package evenhand.terminal.balance;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Slot;
import evenhand.choice.Comparison;
import evenhand.choice.Lever;
import evenhand.doubt.SlopeDoubt;
import evenhand.doubt.SlopeSpread;
import evenhand.doubt.Tolerance;
import evenhand.terminal.reply.SetupTurn;
import evenhand.terminal.reply.WorseWay;
import evenhand.turn.Direction;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What stands behind the understeer near the limit of the first and the last set-up, one way round: why the last differs from
 * the first, what would move it most, and how sure it is to first order.
 *
 * @param direction the way round that it is worked out for: the worse one of the last set-up
 * @param why the last against the first; none where there is one set-up alone
 * @param levers of the last, strongest first
 * @param doubt of the last; none where it has no such figure
 * @param doubtOfDifference of the last less the first
 */
record NearTheLimit(
        Direction direction,
        SetupTurn.Turned first,
        SetupTurn.Turned last,
        Optional<Comparison> why,
        List<Lever> levers,
        Optional<SlopeSpread> doubt,
        Optional<SlopeSpread> doubtOfDifference) {
    /** The figure. */
    static final Judged FIGURE = new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty());

    /** So many levers are told. */
    private static final int LEVERS = 3;

    /** Asks for the first and the last of some set-ups; nothing where there is none. */
    static Optional<NearTheLimit> of(List<SetupTurn.Turned> setups, Trial trial) {
        if (setups.isEmpty()) {
            return Optional.empty();
        }
        SetupTurn.Turned first = setups.get(0);
        SetupTurn.Turned last = setups.get(setups.size() - 1);
        boolean alone = setups.size() == 1;
        Direction direction = WorseWay.of(last.ways(), turn -> turn.limit().nearUndersteer())
                .map(worse -> worse.turn().direction())
                .orElse(trial.direction());
        Trial oneWay = trial.onCircle(trial.radius()).turning(direction);
        Progress quiet = Progress.NONE;
        List<SetupTurn.Turned> both = alone ? List.of(first) : List.of(first, last);
        List<Entries> cars = both.stream().map(one -> one.setup().entries()).toList();
        Entries car = last.setup().entries();
        List<Lever> levers =
                Lever.strongest(car, oneWay, FIGURE, Slot.Work.REBUILDING, Lever.Way.EITHER, LEVERS, quiet);
        SlopeDoubt doubt = SlopeDoubt.of(cars, oneWay, List.of(FIGURE), Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, quiet);
        return Optional.of(new NearTheLimit(
                direction,
                first,
                last,
                alone
                        ? Optional.empty()
                        : Optional.of(Comparison.ofFew(cars.get(0), cars.get(1), oneWay, List.of(FIGURE), quiet)),
                levers,
                doubt.of(cars.size() - 1, FIGURE),
                alone ? Optional.empty() : doubt.difference(1, FIGURE)));
    }
}
