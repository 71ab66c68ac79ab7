package evenhand.window.question;

import evenhand.answers.Progress;
import evenhand.chart.CauseCharts;
import evenhand.chart.Shown;
import evenhand.chart.TurnCharts;
import evenhand.scenario.Setup;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import java.util.ArrayList;
import java.util.List;

/** Why it leans, where the load goes, and what the understeer is made of. */
final class WhereTheLoadGoes implements Question {
    @Override
    public String key() {
        return "load";
    }

    @Override
    public Group group() {
        return Group.LOADS;
    }

    @Override
    public String words() {
        return "Where does the load go?";
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.joined(active, Knobs.springsAndBars(active), Knobs.rollCentres(active));
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        List<Shown> cars = SideBySide.cars(asked);
        double pace = asked.work().pace();
        List<String> headlines = new ArrayList<>();
        for (TurnedSetup one : Said.activeFirst(asked)) {
            one.turn()
                    .ifPresent(turn -> one.sums()
                            .ifPresent(sums ->
                                    headlines.add((asked.shown().size() > 1 ? Said.named(one.setup()) + ": " : "")
                                            + evenhand.words.balance.BalanceWords.ofRoll(sums, turn, asked.units()))));
        }
        return new Reply(
                headlines,
                Said.balances(asked),
                List.of(
                        CauseCharts.loadTransfer(cars, pace, asked.units()),
                        CauseCharts.budget(cars, pace, asked.units()),
                        TurnCharts.wheelLoads(cars, asked.units()),
                        TurnCharts.roll(cars, asked.units())),
                SideBySide.of(asked).figures(pace, asked.work().direction()),
                List.of());
    }
}
