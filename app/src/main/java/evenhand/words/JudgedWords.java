package evenhand.words;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;

/** Names of what is judged. */
public final class JudgedWords {
    private JudgedWords() {}

    /** Where it is judged: "at 0.5 g", "at the limit", "near the limit", "on the road", "at rest". */
    public static String pace(Judged judged) {
        if (judged.pace().isPresent()) {
            return "at " + Units.pace(judged.pace().getAsDouble());
        }
        if (judged.criterion().equals(Criterion.NEAR_UNDERSTEER)) {
            return "near the limit";
        }
        if (judged.criterion().links().isPresent()) {
            String place = judged.criterion().links().get().where().words();
            return place.isEmpty() ? "at rest" : place;
        }
        if (judged.criterion().ahead().isPresent()) {
            return "straight ahead";
        }
        if (judged.criterion().loads().isPresent()) {
            return "in hard use";
        }
        return judged.criterion().atLimit() ? "at the limit" : "on the road";
    }

    /** The head of a table's part: "At 0.5 g", "At the limit", "On the road". */
    public static String heading(Judged judged) {
        String pace = judged.criterion().ahead().isPresent() && judged.pace().isPresent()
                ? "straight ahead " + pace(judged)
                : pace(judged);
        return Character.toUpperCase(pace.charAt(0)) + pace.substring(1);
    }

    /** A number of it in a table's cell, without its unit: "4.38"; "yes" or "no" for what is no number. */
    public static String cell(Criterion criterion, double si, Units units) {
        return criterion.equals(Criterion.FRONT_FIRST)
                ? (si > 0 ? "yes" : "no")
                : Numbers.fixed(units.of(criterion).fromSi(si), units.digits(criterion));
    }

    /**
     * What is judged, in the middle of a sentence: "the understeer at 0.5 g". Where more of it is less comfort, it is said as
     * what is felt.
     */
    public static String spoken(Judged judged) {
        Criterion criterion = judged.criterion();
        if (criterion.equals(Criterion.SEAT_COMFORT)) {
            return "the shaking felt at the seat";
        }
        return criterion.equals(Criterion.FRONT_COMFORT) || criterion.equals(Criterion.REAR_COMFORT)
                ? "the shaking above the " + criterion.axle().orElseThrow().key() + " axle"
                : "the " + figure(judged);
    }

    /** What is judged: "understeer at 0.5 g", "limit balance", "front comfort". */
    public static String figure(Judged judged) {
        return judged.criterion().name() + (judged.criterion().hasPace() ? " " + pace(judged) : "");
    }
}
