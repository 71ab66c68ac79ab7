package evenhand.report;

import evenhand.answers.Criterion;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.quantity.Dimension;
import evenhand.turn.TurnAnswer;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A set-up with a load case aboard, as its owner is told of it.
 *
 * @param ways how it turns, each way that was asked
 */
record LoadedStance(LoadCase load, Candidate car, List<TurnAnswer.Turns> ways) {
    LoadedStance {
        ways = List.copyOf(ways);
    }

    static LoadedStance of(OwnerFacts facts, Candidate one, LoadCase load) {
        Question question = facts.findings().question();
        Candidate laden = Candidate.of(
                one.setup(),
                one.index(),
                question.trial().turning(facts.worse()).with(Optional.of(load)));
        List<TurnAnswer.Turns> ways = new ArrayList<>(laden.turns().stream().toList());
        if (question.bothWays() && !laden.car().turnsAlikeBothWays()) {
            Candidate.of(
                            one.setup(),
                            one.index(),
                            question.trial().turning(facts.worse().other()).with(Optional.of(load)))
                    .turns()
                    .ifPresent(ways::add);
        }
        return new LoadedStance(load, laden, ways);
    }

    /** The least that it holds, either way round, m/s²; none where it has no answer. */
    OptionalDouble limit() {
        return ways.stream()
                .mapToDouble(way -> way.limit().lateralAcceleration())
                .min();
    }

    boolean frontFirst() {
        return !ways.isEmpty() && ways.stream().allMatch(way -> way.limit().frontFirst());
    }

    /** Where the first rubber is met, m/s²; zero where it stands on one. */
    OptionalDouble met() {
        if (Stream.of(End.values()).anyMatch(end -> car.room(end).orElse(1) <= 0)) {
            return OptionalDouble.of(0);
        }
        return Stream.of(End.values())
                .map(car::firstStop)
                .flatMapToDouble(OptionalDouble::stream)
                .min();
    }

    /** "rear 42 mm to the rubber, met at 0.49 g; limit 0.75 g, front first". */
    String brief(Units units) {
        if (ways.isEmpty()) {
            return "no answer: " + car.silence().orElse("");
        }
        List<String> room = new ArrayList<>();
        for (End end : End.values()) {
            car.room(end)
                    .ifPresent(left -> room.add(EventWords.end(end) + " "
                            + units.show(left, Dimension.LENGTH, units == Units.METRIC ? 0 : 1)));
        }
        return (room.isEmpty() ? "" : "to the rubber " + String.join(", ", room) + "; ")
                + rubber() + "; limit " + gs(limit().orElse(0)) + ", "
                + (frontFirst() ? "front first" : "tail first");
    }

    private String rubber() {
        OptionalDouble met = met();
        return met.isEmpty()
                ? "not met in a bend"
                : met.getAsDouble() == 0 ? "it stands on it" : "met at " + gs(met.getAsDouble());
    }

    private static String gs(double acceleration) {
        return Numbers.fixed(Dimension.ACCELERATION.metric().fromSi(acceleration), 2) + " g";
    }

    /** What of it is better or worse than before, and what is left open. */
    String verdict(Optional<LoadedStance> before, Units units) {
        if (ways.isEmpty()) {
            return "The sums have no answer with it aboard.";
        }
        List<String> said = new ArrayList<>();
        before.filter(one -> one.limit().isPresent()).ifPresent(one -> {
            double more = limit().orElse(0) - one.limit().getAsDouble();
            if (Math.abs(more) >= Criterion.LIMIT.noticeable()) {
                said.add("It holds " + gs(Math.abs(more)) + (more > 0 ? " more" : " less") + " than before.");
            } else {
                said.add("It holds as much as before.");
            }
        });
        for (End end : End.values()) {
            if (car.room(end).orElse(1) <= 0) {
                said.add("It stands on its " + EventWords.end(end) + " rubbers.");
            } else if (car.room(end).orElse(1) < evenhand.lowering.Need.TO_STOP) {
                said.add("Little travel is left at the " + EventWords.end(end) + ".");
            }
        }
        if (!frontFirst()) {
            said.add("The tail goes first at the limit: keep away from it.");
        }
        return String.join(" ", said);
    }
}
