package evenhand.terminal.reply;

import evenhand.answers.Balance;
import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.car.LoadCase;
import evenhand.handsums.HandSums;
import evenhand.load.Laden;
import evenhand.scenario.Setup;
import evenhand.turn.Along;
import evenhand.turn.TurnAnswer;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import evenhand.words.balance.AlongWords;
import evenhand.words.balance.BalanceWords;
import evenhand.words.balance.LimitWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A set-up and what it answers to the questions of {@code balance} on one circle. */
public sealed interface SetupTurn extends SetupAnswer
        permits SetupTurn.Turned, SetupTurn.OnlyTheOtherWay, SetupAnswer.None {
    /** Its answer the other way round, where that was asked too and is another one. */
    default Optional<TurnAnswer> otherTurn() {
        return Optional.empty();
    }

    /** Why there is no answer one way round, with the way. */
    default Optional<String> silentWay() {
        return otherTurn().filter(TurnAnswer.NoTurn.class::isInstance).map(none -> ((TurnAnswer.NoTurn) none).text());
    }

    /** Whether both ways round were asked and are alike. */
    default boolean alike() {
        return false;
    }

    /**
     * It turns the first way that was asked.
     *
     * @param load what was asked for
     * @param rest how it stands with it
     * @param other its answer the other way round, where both were asked
     * @param alike whether that is its mirror image
     */
    record Turned(
            Setup setup,
            Optional<LoadCase> load,
            Laden.AtRest rest,
            HandSums sums,
            TurnAnswer.Turns turn,
            Optional<TurnAnswer> other,
            boolean alike)
            implements SetupTurn {
        @Override
        public Optional<TurnAnswer> otherTurn() {
            return alike ? Optional.empty() : other;
        }

        /** Both ways round, as far as they were asked and have an answer; the first is the first that was asked. */
        public List<TurnAnswer.Turns> ways() {
            List<TurnAnswer.Turns> ways = new ArrayList<>();
            ways.add(turn);
            other.ifPresent(answer -> {
                if (answer instanceof TurnAnswer.Turns turns) {
                    ways.add(turns);
                }
            });
            return ways;
        }

        /** That one end goes first one way round and the other end the other way. */
        public Optional<String> split() {
            return other.flatMap(answer -> LimitWords.split(turn, answer));
        }

        @Override
        public SharedParts.Remarks remarks() {
            return SharedParts.Remarks.of(
                    setup, setup.estimated(), split().stream().toList());
        }

        /** All of it in sentences. */
        public List<String> words(Units units) {
            List<String> sentences = new ArrayList<>(split().stream().toList());
            sentences.addAll(sits(units).stream().toList());
            sentences.addAll(AlongWords.of(turn, otherTurn()));
            sentences.addAll(BalanceWords.of(sums, turn, otherTurn().orElse(turn), units));
            return sentences;
        }

        /** How its load sits. */
        public Optional<String> sits(Units units) {
            return load.map(aboard -> LoadWords.sits(aboard, rest, units));
        }
    }

    /** It has no answer the first way that was asked, but turns the other way. */
    record OnlyTheOtherWay(Setup setup, NoAnswer why, TurnAnswer.Turns turns) implements SetupTurn {
        @Override
        public Optional<TurnAnswer> otherTurn() {
            return Optional.of(turns);
        }

        @Override
        public Optional<NoAnswer> noAnswer() {
            return Optional.of(why);
        }
    }

    /** Asks a set-up on the first circle of a trial, its speed changing or not. */
    static SetupTurn of(Setup setup, Trial trial, Along along) {
        Laden laden = Laden.of(setup.car(), trial.load());
        if (!(laden instanceof Laden.AtRest rest)) {
            return new SetupAnswer.None(setup, TurnAnswer.Reason.NO_EQUILIBRIUM, ((Laden.NoRest) laden).text());
        }
        boolean alike = trial.isAlike(rest.car());
        Balance balance = Balance.of(rest.car(), trial.paces(), trial.radius(), trial.direction(), along);
        Optional<TurnAnswer> other = trial.ways() != Ways.BOTH
                ? Optional.empty()
                : Optional.of(
                        alike
                                ? balance.turn().mirrored()
                                : Balance.of(
                                                rest.car(),
                                                trial.paces(),
                                                trial.radius(),
                                                trial.direction().other(),
                                                along)
                                        .turn());
        if (balance.turn() instanceof TurnAnswer.NoTurn none) {
            return other.isPresent() && other.get() instanceof TurnAnswer.Turns turns
                    ? new OnlyTheOtherWay(setup, new SetupAnswer.NoAnswer(none.reason(), none.text()), turns)
                    : new SetupAnswer.None(setup, none);
        }
        if (balance.handSums() instanceof HandSums.FallsOver falls) {
            return new SetupAnswer.None(setup, TurnAnswer.Reason.FALLS_OVER, falls.text());
        }
        return new Turned(
                setup,
                trial.load(),
                rest,
                ((HandSums.Found) balance.handSums()).sums(),
                (TurnAnswer.Turns) balance.turn(),
                other,
                alike);
    }
}
