package evenhand.terminal.doubt;

import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.catalogue.Catalogue;
import evenhand.doubt.Doubt;
import evenhand.scenario.Setup;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Takes the doubt of set-ups on one circle, each way round that is asked. */
final class DoubtOnCircle {
    private final List<Setup> setups;
    private final Doubt.Question question;
    private final Trial circle;
    private final List<Answers> asGiven = new ArrayList<>();
    /** Those that turn one way at least: first those that turn the first way. */
    private final List<Setup> doubted;

    private final List<Doubt.Answer> answers;

    private DoubtOnCircle(List<Setup> setups, Doubt.Question question) {
        this.setups = setups;
        this.question = question;
        circle = question.trial();
        setups.forEach(setup -> asGiven.add(circle.ask(setup.car())));
        List<Setup> turning = setups.stream().filter(setup -> turns(setup, 0)).toList();
        List<Setup> onlyTheOtherWay = setups.stream()
                .filter(setup -> !turning.contains(setup))
                .filter(setup -> circle.ways().isBoth() && turns(setup, 1))
                .toList();
        doubted = Stream.concat(turning.stream(), onlyTheOtherWay.stream()).toList();
        answers = doubted.isEmpty()
                ? List.of()
                : Doubt.inEachBend(doubted.stream().map(Setup::entries).toList(), question);
    }

    static DoubtReply.Circle of(List<Setup> setups, Doubt.Question question) {
        return new DoubtOnCircle(setups, question).circle();
    }

    private DoubtReply.Circle circle() {
        List<EachWay<DoubtReply.Doubted>> all =
                setups.stream().map(this::eachWay).toList();
        List<DoubtReply.Turn> turns = new ArrayList<>();
        for (int way = 0; way < answers.size(); way++) {
            if (way == 0 || doubted.stream().anyMatch(setup -> !isAlike(setup))) {
                turns.add(new DoubtReply.Turn(directions().get(way), differences(way)));
            }
        }
        Optional<Doubt.Answer> first = answers.stream().findFirst();
        return new DoubtReply.Circle(
                circle.radius(),
                all,
                turns,
                first.map(Doubt.Answer::measureNext),
                first.flatMap(Doubt.Answer::narrowed));
    }

    private List<Direction> directions() {
        return circle.ways().directions();
    }

    private Answers asGiven(Setup setup) {
        return asGiven.get(setups.indexOf(setup));
    }

    private boolean turns(Setup setup, int way) {
        return asGiven(setup).in(way).noTurn().isEmpty();
    }

    /** Whether both ways were asked and every sample of it turns one way as the other. */
    private boolean isAlike(Setup setup) {
        int car = doubted.indexOf(setup);
        return circle.ways().isBoth()
                && (car < 0
                        ? circle.asksAlike(setup.car())
                        : answers.get(1).mirrored().get(car));
    }

    private EachWay<DoubtReply.Doubted> eachWay(Setup setup) {
        List<EachWay.Way<DoubtReply.Doubted>> ways = new ArrayList<>();
        for (int way = 0; way < directions().size(); way++) {
            Direction direction = directions().get(way);
            ways.add(
                    asGiven(setup).in(way).turn() instanceof TurnAnswer.NoTurn none
                            ? EachWay.Way.none(direction, SetupAnswer.NoAnswer.of(none))
                            : EachWay.Way.of(
                                    direction,
                                    new DoubtReply.Doubted(
                                            question.aim(),
                                            circle.ways(),
                                            answers.get(way).cars().get(doubted.indexOf(setup)))));
        }
        return EachWay.of(setup, ways, isAlike(setup), EachWay.Caution.of(setup, asGiven(setup)))
                .estimating(Catalogue.estimatedForComfort(setup.car()));
    }

    /** Of those that turn this way, from the first, if that turns too. */
    private List<DoubtReply.Apart> differences(int way) {
        List<DoubtReply.Apart> all = new ArrayList<>();
        Setup base = doubted.get(0);
        for (int car = 1; car < doubted.size(); car++) {
            if (turns(base, way) && turns(doubted.get(car), way)) {
                all.add(new DoubtReply.Apart(
                        doubted.get(car),
                        base,
                        answers.get(way).differences().get(car - 1),
                        answers.get(way).cars().get(car)));
            }
        }
        return all;
    }
}
