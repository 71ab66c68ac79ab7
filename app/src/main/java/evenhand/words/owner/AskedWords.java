package evenhand.words.owner;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.words.AimText;
import evenhand.words.EventWords;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The answer to what somebody asked for, no stronger than its doubt allows. */
public final class AskedWords {
    /** Said of what no figure judges. */
    public static final String BEYOND = "Beyond the sums: look, drive and judge by yourself.";

    /** Said where the car has no such figure. */
    public static final String UNKNOWN = "The sums cannot tell: the file does not give what they need for it.";

    private AskedWords() {}

    /** "push at 0.5 g, wanted at most 3 deg/g". */
    public static String judge(Known known, Optional<Aim> aim, Units units) {
        return Term.figure(known.judged())
                + aim.map(wanted -> "; wanted " + InPrint.symbol(AimText.demand(wanted, units)))
                        .orElse("");
    }

    /** What became of a figure, held against what was wanted where something was. */
    public static String figure(Known known, Optional<Aim> aim, Units units) {
        if (known.now().isEmpty()) {
            return UNKNOWN;
        }
        return aim.map(wanted -> wanted(known, wanted)).orElseGet(() -> change(known, units));
    }

    private static String wanted(Known known, Aim aim) {
        double now = known.now().orElseThrow();
        if (known.judged().criterion().loads().isPresent()) {
            return (aim.met(now) ? "Met" : "Not met") + " by these sums, which compare designs and prove no strength.";
        }
        double off = aim.value() - now;
        boolean exact = aim.sense() == Aim.Sense.EXACTLY;
        boolean met = exact ? Math.abs(off) < known.judged().criterion().noticeable() : aim.met(now);
        Sureness sureness = Sureness.of(off, known.doubt());
        String before = known.before().isPresent() ? nearer(known, aim) : "";
        if (met) {
            return exact || sureness == Sureness.SURE
                    ? "Met."
                    : sureness == Sureness.LIKELY ? "Probably met." : "Met by so little that it is open.";
        }
        return switch (sureness) {
            case SURE -> "Not met" + before + ".";
            case LIKELY -> "Probably not met" + before + ".";
            case OPEN -> "Missed by so little that it is open" + before + ".";
        };
    }

    /** Whether it is nearer to what was wanted than it was. */
    private static String nearer(Known known, Aim aim) {
        double was = Math.abs(aim.shortfall(known.before().orElseThrow()));
        double is = Math.abs(aim.shortfall(known.now().orElseThrow()));
        if (!known.isNoticed() || known.sureness() == Sureness.OPEN) {
            return ", about as before";
        }
        return is < was ? ", but nearer than before" : is > was ? ", and further off than before" : "";
    }

    private static String change(Known known, Units units) {
        Criterion criterion = known.judged().criterion();
        if (known.difference().isEmpty()) {
            return "";
        }
        if (!known.isNoticed()) {
            return "As before.";
        }
        if (criterion.loads().isPresent()) {
            return (known.difference().getAsDouble() > 0 ? "More" : "Less")
                    + " by these sums, which compare designs and prove no strength.";
        }
        double difference = known.difference().getAsDouble();
        String by = Rounded.value(criterion, Math.abs(difference), known.doubtOfDifference(), units);
        String how = Term.felt(criterion, difference > 0).orElse("it is " + (difference > 0 ? "more" : "less"));
        return switch (known.sureness()) {
            case SURE -> GotWords.capital(how) + ", by " + by + ".";
            case LIKELY -> GotWords.capital(how.replaceFirst("it ", "it probably ")) + ", by " + by + ".";
            case OPEN -> "Whether " + how + " is open.";
        };
    }

    /** Whether metal meets metal at one end at least. */
    public static boolean metalMeets(BumpAnswer.Straight over) {
        return over.axles().values().stream().anyMatch(Bump::metalTouched);
    }

    /** Whether metal meets, or a stop is struck: "metal meets at the rear". */
    public static String struck(BumpAnswer.Straight over) {
        String metal = ends(over, Bump::metalTouched);
        if (!metal.isEmpty()) {
            return "metal meets " + metal;
        }
        String rubber = ends(over, Bump::stopTouched);
        return rubber.isEmpty() ? "no stop is met" : "the rubber is met " + rubber;
    }

    private static String ends(BumpAnswer.Straight over, Predicate<Bump> met) {
        List<String> ends = new ArrayList<>();
        for (End end : End.values()) {
            Bump bump = over.axles().get(end);
            if (bump != null && met.test(bump)) {
                ends.add(EventWords.end(end));
            }
        }
        return ends.isEmpty() ? "" : ends.size() == 2 ? "at both ends" : "at the " + ends.get(0);
    }

    /** "no stop is met; jolt 0.4 g". */
    public static String jolt(BumpAnswer.Straight over) {
        return struck(over) + "; jolt "
                + Numbers.fixed(
                        Dimension.ACCELERATION.metric().fromSi(over.seat().peakAcceleration()), 1) + " g";
    }

    /** What became of a bump. */
    public static String over(Optional<BumpAnswer.Straight> before, BumpAnswer.Straight now) {
        boolean metal = metalMeets(now);
        boolean wasMetal = before.isPresent() && metalMeets(before.get());
        if (metal) {
            return wasMetal
                    ? "By the sums metal still meets: take it slower."
                    : "By the sums metal meets" + (before.isPresent() ? " now" : "") + ": take it slower.";
        }
        if (wasMetal) {
            return "By the sums metal no longer meets.";
        }
        boolean rubber = now.axles().values().stream().anyMatch(Bump::stopTouched);
        return rubber ? "The rubber takes the blow; metal does not meet." : "It passes without a stop.";
    }
}
