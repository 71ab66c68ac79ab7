package evenhand.report;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.bump.BumpAnswer;
import evenhand.car.LoadCase;
import evenhand.quantity.Dimension;
import evenhand.ride.Ride;
import evenhand.scenario.Asked;
import evenhand.scenario.Judge;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import evenhand.words.owner.AskedWords;
import evenhand.words.owner.GotWords;
import evenhand.words.owner.Known;
import evenhand.words.owner.Rounded;
import evenhand.words.owner.Sureness;
import evenhand.words.owner.Term;
import evenhand.words.ride.SeatWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * What was asked, and what the sums say to it.
 *
 * @param judge what it is judged by; empty where nothing is
 * @param terms names beside its numbers
 */
record AskedAnswer(String text, String judge, String before, String now, String answer, Set<Term> terms) {
    AskedAnswer {
        terms = Set.copyOf(terms);
    }

    /** All that was asked, in its order. */
    static List<AskedAnswer> of(OwnerFacts facts) {
        Asking asking = new Asking(facts);
        return facts.findings().question().scenario().asked().stream()
                .map(asking::answer)
                .toList();
    }

    /** Answers one after another. */
    private static final class Asking {
        private final OwnerFacts facts;
        private final Units units;

        Asking(OwnerFacts facts) {
            this.facts = facts;
            units = facts.findings().question().units();
        }

        AskedAnswer answer(Asked asked) {
            Judge judge = asked.judge().orElse(null);
            if (judge instanceof Judge.OfFigure of) {
                return of.judged().criterion().equals(Criterion.FRONT_FIRST)
                        ? frontFirst(asked)
                        : figure(asked, of.judged(), of.aim());
            }
            if (judge instanceof Judge.Turning turning) {
                return turning(asked, turning.direction());
            }
            if (judge instanceof Judge.OnRoad road) {
                return road(asked, road);
            }
            if (judge instanceof Judge.Over over) {
                return over(asked, over);
            }
            if (judge instanceof Judge.Aboard aboard) {
                return facts.findings()
                        .question()
                        .scenario()
                        .loadCase(aboard.loadCase())
                        .map(load -> aboard(asked, load))
                        .orElseGet(() -> beyond(asked));
            }
            return beyond(asked);
        }

        private static AskedAnswer beyond(Asked asked) {
            return new AskedAnswer(asked.text(), "", "", "", AskedWords.BEYOND, Set.of());
        }

        private AskedAnswer figure(Asked asked, Judged judged, Optional<Aim> aim) {
            Known known = facts.known(judged);
            Set<Term> terms = new LinkedHashSet<>(List.of(Term.of(judged.criterion())));
            if (known.now().isEmpty()) {
                return new AskedAnswer(
                        asked.text(), AskedWords.judge(known, aim, units), "", "", AskedWords.UNKNOWN, terms);
            }
            Criterion criterion = judged.criterion();
            return new AskedAnswer(
                    asked.text(),
                    AskedWords.judge(known, aim, units),
                    known.before().isPresent()
                            ? Rounded.plain(criterion, known.before().getAsDouble(), known.doubtBefore(), units)
                            : "",
                    Rounded.value(criterion, known.now().getAsDouble(), known.doubt(), units),
                    AskedWords.figure(known, aim, units),
                    terms);
        }

        private AskedAnswer frontFirst(Asked asked) {
            Known push = facts.known(OwnerFacts.NEAR);
            boolean is = facts.ways().stream().allMatch(way -> way.limit().frontFirst());
            boolean sure =
                    push.now().isPresent() && Sureness.of(push.now().getAsDouble(), push.doubt()) == Sureness.SURE;
            String answer = is
                    ? sure ? "Met, turning either way." : "Probably met, turning either way; the doubt is as large."
                    : "Not met: keep away from the limit.";
            return new AskedAnswer(
                    asked.text(),
                    "which end goes first at the limit",
                    first(facts.waysBefore()),
                    first(facts.ways()),
                    facts.isTwoSided() ? answer : answer.replace(", turning either way", ""),
                    Set.of(Term.FIRST));
        }

        /** "front first", or each way round by itself. */
        private String first(List<TurnAnswer.Turns> ways) {
            List<String> ends = new ArrayList<>();
            for (TurnAnswer.Turns way : ways) {
                ends.add(end(way.limit()));
            }
            if (ends.stream().distinct().count() <= 1) {
                return ends.isEmpty() ? "" : ends.get(0);
            }
            List<String> each = new ArrayList<>();
            for (int i = 0; i < ways.size(); i++) {
                each.add(ways.get(i).direction().key() + " " + ends.get(i));
            }
            return String.join(", ", each);
        }

        private static String end(Limit limit) {
            String first = LimitWords.first(limit);
            return switch (first) {
                case "front" -> "front first";
                case "rear" -> "tail first";
                default -> "wheel held against the bend";
            };
        }

        private AskedAnswer turning(Asked asked, Direction direction) {
            Optional<TurnAnswer.Turns> now = way(facts.ways(), direction);
            Optional<TurnAnswer.Turns> other = way(facts.ways(), direction.other());
            if (now.isEmpty()) {
                return beyond(asked);
            }
            Optional<TurnAnswer.Turns> before = way(facts.waysBefore(), direction);
            OptionalDouble doubt = facts.known(OwnerFacts.LIMIT).doubt();
            String answer = "";
            if (other.isPresent()) {
                double apart = limit(now.get()) - limit(other.get());
                answer = Math.abs(apart) < Criterion.LIMIT.noticeable()
                        ? "It holds as much as to the " + direction.other().key() + "."
                        : "It holds " + gs(Math.abs(apart)) + (apart < 0 ? " less" : " more") + " than to the "
                                + direction.other().key() + ".";
                Optional<TurnAnswer.Turns> otherBefore = way(facts.waysBefore(), direction.other());
                if (before.isPresent() && otherBefore.isPresent()) {
                    double was = limit(before.get()) - limit(otherBefore.get());
                    answer += Math.abs(was) < Criterion.LIMIT.noticeable()
                            ? " Before, it did too."
                            : " Before, it held " + gs(Math.abs(was)) + (was < 0 ? " less." : " more.");
                }
            }
            return new AskedAnswer(
                    asked.text(),
                    Term.LIMIT.name() + " turning " + direction.key(),
                    before.map(way -> gs(limit(way)) + ", " + end(way.limit())).orElse(""),
                    Rounded.value(Criterion.LIMIT, limit(now.get()), doubt, units) + ", "
                            + end(now.get().limit()),
                    answer,
                    Set.of(Term.LIMIT, Term.FIRST));
        }

        private static Optional<TurnAnswer.Turns> way(List<TurnAnswer.Turns> ways, Direction direction) {
            return ways.stream().filter(way -> way.direction() == direction).findFirst();
        }

        private static double limit(TurnAnswer.Turns way) {
            return way.limit().lateralAcceleration();
        }

        private static String gs(double acceleration) {
            return Numbers.fixed(Dimension.ACCELERATION.metric().fromSi(acceleration), 2) + " g";
        }

        private AskedAnswer road(Asked asked, Judge.OnRoad road) {
            Known usual = facts.known(OwnerFacts.SHAKING);
            Function<Candidate, OptionalDouble> felt =
                    one -> Ride.of(one.car(), road.road(), road.speed()) instanceof Ride ride
                            ? ride.seatComfort()
                            : OptionalDouble.empty();
            OptionalDouble now = felt.apply(facts.now());
            String judge = Term.SHAKING.name() + " on road " + road.road() + " at "
                    + units.show(road.speed(), Dimension.SPEED, 0);
            if (now.isEmpty() || usual.now().isEmpty()) {
                return new AskedAnswer(
                        asked.text(), judge, "", "", AskedWords.UNKNOWN, Set.of(Term.SHAKING, Term.ROAD));
            }
            // A rougher road shakes in proportion; so its doubt is that of the usual road in proportion.
            double scale = now.getAsDouble() / usual.now().getAsDouble();
            OptionalDouble before = facts.before().map(felt).orElse(OptionalDouble.empty());
            Known known = new Known(
                    OwnerFacts.SHAKING,
                    before,
                    now,
                    times(usual.doubtBefore(), scale),
                    times(usual.doubt(), scale),
                    times(usual.doubtOfDifference(), scale),
                    scale * usual.noticeable());
            return new AskedAnswer(
                    asked.text(),
                    judge,
                    before.isPresent()
                            ? Rounded.plain(Criterion.SEAT_COMFORT, before.getAsDouble(), known.doubtBefore(), units)
                            : "",
                    Rounded.value(Criterion.SEAT_COMFORT, now.getAsDouble(), known.doubt(), units),
                    (AskedWords.figure(known, Optional.empty(), units) + " "
                                    + GotWords.capital(SeatWords.felt(now.getAsDouble())) + ".")
                            .strip(),
                    Set.of(Term.SHAKING, Term.ROAD));
        }

        private static OptionalDouble times(OptionalDouble value, double scale) {
            return value.isPresent() ? OptionalDouble.of(scale * value.getAsDouble()) : value;
        }

        private AskedAnswer over(Asked asked, Judge.Over over) {
            Optional<BumpAnswer.Straight> now = over.of(facts.now().car());
            Optional<BumpAnswer.Straight> before = facts.before().flatMap(one -> over.of(one.car()));
            String judge = over.event() + " at " + units.show(over.speed(), Dimension.SPEED, 0);
            return new AskedAnswer(
                    asked.text(),
                    judge,
                    before.map(AskedWords::jolt).orElse(""),
                    now.map(AskedWords::jolt).orElse(""),
                    now.map(one -> AskedWords.over(before, one)).orElse(AskedWords.UNKNOWN),
                    Set.of(Term.BLOW, Term.TRAVEL));
        }

        private AskedAnswer aboard(Asked asked, LoadCase load) {
            LoadedStance now = LoadedStance.of(facts, facts.now(), load);
            Optional<LoadedStance> before = facts.before().map(one -> LoadedStance.of(facts, one, load));
            return new AskedAnswer(
                    asked.text(),
                    "with \"" + load.name() + "\" aboard",
                    before.map(one -> one.brief(units)).orElse(""),
                    now.brief(units),
                    now.verdict(before, units),
                    Set.of(Term.TRAVEL, Term.FIRST, Term.LIMIT));
        }
    }
}
