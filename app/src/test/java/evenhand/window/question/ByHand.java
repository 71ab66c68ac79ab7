package evenhand.window.question;

import evenhand.answers.Balance;
import evenhand.answers.Progress;
import evenhand.car.Car;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Drawer;
import evenhand.window.desk.Filed;
import evenhand.window.desk.Look;
import evenhand.window.desk.Question;
import evenhand.window.desk.Replies;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Work;
import evenhand.words.Units;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Questions answered without workers, for tests. */
final class ByHand {
    private ByHand() {}

    /** A demo car as it is first laid on the desk. */
    static Work demo(String name) {
        Drawer.Opened opened = Drawer.open(Path.of("..", "scenarios", name + ".json"));
        return ((Drawer.Opened.Sound) opened).work();
    }

    static Desk desk(Work work) {
        return new Desk(
                work,
                Look.at("find", Units.METRIC, false),
                Replies.NONE,
                new Filed(Optional.empty(), Optional.empty()));
    }

    /** A question with something in its fields, by their keys. */
    static Asking asking(Question question, Work work, Map<String, String> wishes) {
        return new Asking(
                work,
                question.key(),
                Units.METRIC,
                wishes.entrySet().stream()
                        .collect(Collectors.toMap(wish -> question.key() + "/" + wish.getKey(), Map.Entry::getValue)));
    }

    static Question.Asked asked(Question question, Work work, Map<String, String> wishes) {
        Map<String, TurnedSetup> turns = new LinkedHashMap<>();
        for (Setup setup : work.scenario().setups()) {
            if (work.shown().contains(setup) || setup.equals(work.baseSetup())) {
                Car car = setup.car();
                Balance balance = Balance.of(car, work.paces(), work.radius(), work.direction());
                turns.put(setup.name(), new TurnedSetup(setup, car.settled(), balance));
            }
        }
        return new Question.Asked(asking(question, work, wishes), turns);
    }

    static Reply answer(Question question, Work work, Map<String, String> wishes) {
        return question.answer(asked(question, work, wishes), Progress.NONE);
    }
}
