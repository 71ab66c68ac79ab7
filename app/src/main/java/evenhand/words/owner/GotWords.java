package evenhand.words.owner;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.quantity.Dimension;
import evenhand.ride.RoadClass;
import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import evenhand.words.ride.RideWords;
import evenhand.words.ride.SeatWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the owner got, in plain sentences; none is stronger than its doubt allows. */
public final class GotWords {
    private GotWords() {}

    /** What became of a figure that is felt: "it leans less at 0.5 g (2.8 ± 0.1 deg, before 3.3)". */
    public static Optional<String> felt(Known known, Units units) {
        Criterion criterion = known.judged().criterion();
        if (known.now().isEmpty()) {
            return Optional.empty();
        }
        String where = known.judged().pace().isPresent()
                ? " at " + Units.pace(known.judged().pace().getAsDouble())
                : criterion.equals(Criterion.NEAR_UNDERSTEER) ? " near the limit" : "";
        String numbers = " (" + nowAndBefore(known, units) + ")";
        if (known.difference().isEmpty()) {
            return Optional.of(stands(criterion) + where + numbers);
        }
        if (!known.isNoticed()) {
            return Optional.of(asBefore(criterion) + where + numbers);
        }
        boolean more = known.difference().getAsDouble() > 0;
        return Term.felt(criterion, more).map(change -> switch (known.sureness()) {
            case SURE -> change + where + numbers;
            case LIKELY -> change.replaceFirst("it ", "it probably ") + where + numbers;
            case OPEN -> "whether " + change + where + " is open" + numbers;
        });
    }

    private static String stands(Criterion criterion) {
        if (criterion.equals(Criterion.UNDERSTEER) || criterion.equals(Criterion.NEAR_UNDERSTEER)) {
            return "its push";
        }
        return criterion.equals(Criterion.LEAN)
                ? "its lean"
                : "its " + Term.of(criterion).name();
    }

    private static String asBefore(Criterion criterion) {
        if (criterion.equals(Criterion.UNDERSTEER) || criterion.equals(Criterion.NEAR_UNDERSTEER)) {
            return "it pushes as before";
        }
        return criterion.equals(Criterion.LEAN) ? "it leans as before" : "as before";
    }

    /** "2.8 ± 0.1 deg, before 3.3". */
    public static String nowAndBefore(Known known, Units units) {
        Criterion criterion = known.judged().criterion();
        String now = Rounded.value(criterion, known.now().orElseThrow(), known.doubt(), units);
        return now
                + (known.before().isPresent()
                        ? ", before " + Rounded.number(criterion, known.before().getAsDouble(), known.doubt(), units)
                        : "");
    }

    /** How it goes round a bend: from a brisk one to the limit. */
    public static String bend(List<Known> feels, Units units) {
        List<String> clauses =
                feels.stream().flatMap(one -> felt(one, units).stream()).toList();
        return clauses.isEmpty() ? "" : capital(String.join("; ", clauses)) + ".";
    }

    /**
     * What comes at the limit, one way round and the other.
     *
     * @param ways how it turns now
     * @param before how it turned
     * @param limit the cornering limit the worse way round
     * @param push near the limit, the worse way round
     */
    public static List<String> limit(
            List<TurnAnswer.Turns> ways, List<TurnAnswer.Turns> before, Known limit, Known push, Units units) {
        List<String> sentences = new ArrayList<>();
        String at = limit.now().isPresent()
                ? Rounded.value(Criterion.LIMIT, limit.now().getAsDouble(), limit.doubt(), units)
                : "";
        boolean allFront = ways.stream().allMatch(way -> way.limit().frontFirst());
        if (allFront) {
            boolean sure =
                    push.now().isPresent() && Sureness.of(push.now().getAsDouble(), push.doubt()) == Sureness.SURE;
            sentences.add(
                    "At its limit, " + at + ", the front " + (sure ? "goes" : "should go") + " first and it runs wide"
                            + (ways.size() > 1 ? ", turning either way" : "") + "."
                            + (sure ? "" : " That is likely, but within what the measuring errors leave open."));
        } else {
            for (TurnAnswer.Turns way : ways) {
                sentences.add("Turning " + way.direction().key() + ", " + ends(way.limit()) + ".");
            }
        }
        if (!before.isEmpty() && !same(ways, before)) {
            boolean wasFront = before.stream().allMatch(way -> way.limit().frontFirst());
            sentences.add("Before, "
                    + (wasFront
                            ? "the front went first, turning either way."
                            : String.join(
                                            "; ",
                                            before.stream()
                                                    .map(way -> "turning "
                                                            + way.direction().key() + " " + ends(way.limit()))
                                                    .toList())
                                    + "."));
        }
        return sentences;
    }

    private static boolean same(List<TurnAnswer.Turns> ways, List<TurnAnswer.Turns> before) {
        if (ways.size() != before.size()) {
            return false;
        }
        for (int i = 0; i < ways.size(); i++) {
            if (ways.get(i).limit().frontFirst() != before.get(i).limit().frontFirst()
                    || ways.get(i).limit().cause() != before.get(i).limit().cause()) {
                return false;
            }
        }
        return true;
    }

    /** A lateral acceleration as a driver may remember it: "0.85 g". */
    public static String about(double lateralAcceleration) {
        return Numbers.fixed(Dimension.ACCELERATION.metric().fromSi(lateralAcceleration), 2) + " g";
    }

    /** What happens at a limit, with its cornering: "past 0.85 g the tail comes round unless the driver steers against it". */
    static String ends(Limit limit) {
        String at = about(limit.lateralAcceleration());
        return switch (limit.cause()) {
            case SPIN -> "past " + at + " the tail comes round unless the driver steers against it";
            case CRITICAL_SPEED -> "past " + at + " the wheel has to be held against the bend";
            case WHEELSPIN -> "at " + at + " a driven wheel spins";
            case SIDESLIP ->
                LimitWords.tips(limit)
                        ? "at " + at + " it would tip over"
                        : "at " + at + " the "
                                + (limit.frontFirst() ? "front goes first and it runs wide" : "tail goes first");
            case LINKS -> "at " + at + " the suspension's links end";
            case GAVE_UP -> "the sums know it up to " + at + " only";
        };
    }

    /** How it rides on the usual road: what is felt at the seat. */
    public static String ride(Known shaking, RoadClass road, double speed, Units units) {
        String where =
                "On road " + road + " (" + RideWords.like(road) + ") at " + units.show(speed, Dimension.SPEED, 0) + " ";
        double now = shaking.now().orElseThrow();
        String numbers = nowAndBefore(shaking, units);
        String word = SeatWords.felt(now);
        if (shaking.difference().isEmpty()) {
            return where + "the shaking at the seat is " + numbers + ": " + word + ".";
        }
        if (!shaking.isNoticed()) {
            return where + "it shakes you as before (" + numbers + "): " + word + ".";
        }
        double by = shaking.difference().getAsDouble() / shaking.before().getAsDouble();
        String change = Numbers.percent(Math.abs(by), 0) + (by > 0 ? " more" : " less");
        return where
                + switch (shaking.sureness()) {
                    case SURE -> "it shakes you " + change;
                    case LIKELY -> "it probably shakes you " + change;
                    case OPEN -> "it may shake you " + change;
                }
                + " (" + numbers + "): " + word + ".";
    }

    /** The same with a capital letter. */
    public static String capital(String sentence) {
        return sentence.isEmpty() ? sentence : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    /** What a change of a part does by itself, against the car without it: the largest first, none where nobody notices. */
    public static Optional<String> does(Judged judged, double moved, Units units) {
        Criterion criterion = judged.criterion();
        if (Math.abs(moved) < criterion.noticeable()) {
            return Optional.empty();
        }
        String by = Rounded.plain(criterion, Math.abs(moved), OptionalDouble.of(Math.abs(moved) / 3), units);
        String where = judged.pace().isPresent()
                ? " at " + Units.pace(judged.pace().getAsDouble())
                : criterion.equals(Criterion.NEAR_UNDERSTEER) ? " near the limit" : "";
        return Term.felt(criterion, moved > 0).map(felt -> felt.replaceFirst("it ", "") + " by " + by + where);
    }
}
