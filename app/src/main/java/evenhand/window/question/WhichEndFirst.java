package evenhand.window.question;

import evenhand.answers.Progress;
import evenhand.chart.NearLimit;
import evenhand.chart.Shown;
import evenhand.chart.TurnCharts;
import evenhand.scenario.Setup;
import evenhand.turn.TurnAnswer;
import evenhand.window.desk.Afterthought;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.balance.LimitWords;
import java.util.List;
import java.util.Optional;

/** The balance at the chosen pace and at the limit. */
final class WhichEndFirst implements Question {
    private static final int REMEDIES = 3;

    @Override
    public String key() {
        return "which-end";
    }

    @Override
    public Group group() {
        return Group.BALANCE;
    }

    @Override
    public String words() {
        return "Which end lets go first?";
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.joined(active, Knobs.rollCentres(active), Knobs.springsAndBars(active));
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        List<Shown> cars = SideBySide.cars(asked);
        return new Reply(
                        Said.limit(asked),
                        Said.balances(asked),
                        List.of(
                                NearLimit.gripInHand(cars, asked.units()),
                                TurnCharts.understeerFromBase(cars, asked.work().base(), asked.units()),
                                TurnCharts.gripUsed(cars, asked.units()),
                                TurnCharts.understeerGradient(cars, asked.units()),
                                TurnCharts.steer(cars, asked.units()),
                                TurnCharts.sideslip(cars, asked.units())),
                        SideBySide.of(asked)
                                .figures(asked.work().pace(), asked.work().direction()),
                        List.of())
                .with(Optional.of(LimitVerdict.of(asked)));
    }

    @Override
    public Afterthought after(Asked asked, Progress progress) {
        TurnedSetup active = asked.active();
        List<Reply.Next> next = active.turn()
                .map(turn -> holdsBack(turn, asked.turnedBack(active)) ? "pushes at the limit" : "slides at the limit")
                .map(complaint -> Remedies.against(complaint, active, asked).next(REMEDIES))
                .orElse(List.of());
        return new Afterthought(
                Optional.of(LimitVerdict.withDoubt(asked, progress)), LimitVerdict.because(asked, progress), next);
    }

    /** Whether the front goes first both ways round, and pushes: a tail that comes round is not to be let go still sooner. */
    private static boolean holdsBack(TurnAnswer.Turns turn, TurnAnswer back) {
        return LimitWords.pushesNear(turn.limit())
                && turn.limit().frontFirst()
                && (!(back instanceof TurnAnswer.Turns there) || there.limit().frontFirst());
    }
}
