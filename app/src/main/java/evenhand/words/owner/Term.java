package evenhand.words.owner;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.LoadCriteria;
import evenhand.words.JudgedWords;
import java.util.Map;
import java.util.Optional;

/**
 * A name that the owner reads beside a number, one for each kind of number wherever it stands, and what it means.
 *
 * @param name as it stands beside the number
 * @param means a sentence for somebody who knows no engineering
 */
public record Term(String name, String means) {
    public static final Term G = new Term(
            "g",
            "how hard a bend is: at 1 g the car is pushed sideways by its own weight. 0.2 g is a gentle bend, 0.5 g a brisk one in"
                    + " which passengers hold on.");
    public static final Term PUSH = new Term(
            "push",
            "how many degrees more the front wheels have to be turned for each g more of cornering (deg/g). Near 0 the car follows"
                    + " the wheel; 2 is mild, from 4 on it runs wide; below 0 the tail leads and the wheel has to be let back."
                    + " Engineers say understeer gradient.");
    public static final Term PUSH_NEAR = new Term(
            "push near the limit",
            "the same at nine tenths of the cornering limit, where a car gives its last warning.");
    public static final Term LIMIT = new Term(
            "cornering limit",
            "the hardest cornering, in g, at which the car still does what the driver asks, on a dry circle (see page 1).");
    public static final Term LEAN = new Term("lean", "how far the body leans out of the bend, in degrees (deg).");
    public static final Term LEAN_PER_G =
            new Term("lean for each g", "the lean, divided by how hard the bend is: deg/g. 4 is firm, 6 is soft.");
    public static final Term SHAKING = new Term(
            "shaking at the seat",
            "how strongly the seat's mounting shakes up and down as a body feels it (m/s², ISO 2631-1). Below 0.3 nobody minds;"
                    + " from 0.8 on it is uncomfortable.");
    public static final Term ROAD = new Term(
            "road A, B, C, D",
            "how rough a road is (ISO 8608): A a new motorway, B a good main road, C an ordinary country road, D a rough back road.");
    public static final Term TRAVEL = new Term(
            "travel",
            "how far a wheel can still move up before it meets its rubber stop, and before metal meets metal. From where a rubber"
                    + " is met in a bend, ride and balance change.");
    public static final Term FIRST = new Term(
            "front first, tail first",
            "which end lets go at the limit. Front first: it runs wide and slows down, which most drivers can handle. Tail first: it"
                    + " comes round unless the driver steers against it.");
    public static final Term DOUBT = new Term(
            "±",
            "what measuring errors and guesses leave open, worked out to first order: nineteen times in twenty the true value lies"
                    + " within. The difference of two set-ups of one car is surer than either.");
    public static final Term CENTRE = new Term(
            "roll centre",
            "the point of each axle that the body leans about. The further the centre of gravity, where the weight acts, is above"
                    + " them, the more it leans on the same springs. N (lbf): weight on a wheel, or a force.");
    public static final Term BLOW =
            new Term("jolt at the seat", "the hardest push up or down at the seat's mounting over one bump, in g.");

    private static final Map<Criterion, Term> OF = Map.ofEntries(
            Map.entry(Criterion.UNDERSTEER, PUSH),
            Map.entry(Criterion.NEAR_UNDERSTEER, PUSH_NEAR),
            Map.entry(Criterion.LEAN, LEAN),
            Map.entry(Criterion.ROLL_GRADIENT, LEAN_PER_G),
            Map.entry(Criterion.LIMIT, LIMIT),
            Map.entry(Criterion.FRONT_FIRST, FIRST),
            Map.entry(Criterion.SEAT_COMFORT, SHAKING),
            Map.entry(
                    Criterion.INSIDE_FRONT_LOAD,
                    new Term(
                            "load on the inside front wheel",
                            "what that wheel still presses on the road in the bend; the less, the sooner it spins or lifts.")),
            Map.entry(
                    Criterion.INSIDE_REAR_LOAD,
                    new Term(
                            "load on the inside rear wheel",
                            "what that wheel still presses on the road in the bend; the less, the sooner it spins or lifts.")),
            Map.entry(
                    Criterion.SIDESLIP,
                    new Term("sideslip", "the angle between where the car points and where it goes, in degrees.")),
            Map.entry(
                    Criterion.GRIP_BALANCE,
                    new Term(
                            "grip balance",
                            "how much more of its grip the front uses than the rear, in per cent; above 0 it pushes.")),
            Map.entry(
                    Criterion.LIMIT_BALANCE,
                    new Term("limit balance", "the same at the cornering limit; which end goes is said beside it.")),
            Map.entry(
                    Criterion.FRONT_SHARE,
                    new Term("front share", "the front axle's part of the load that moves outwards in a bend.")),
            Map.entry(
                    Criterion.FRONT_DAMPING,
                    new Term(
                            "front damping",
                            "how soon the dampers quieten the front; 0.2 is soft and 0.5 firm for a road car.")),
            Map.entry(
                    Criterion.REAR_DAMPING,
                    new Term(
                            "rear damping",
                            "how soon the dampers quieten the rear; 0.2 is soft and 0.5 firm for a road car.")),
            Map.entry(
                    Criterion.FRONT_FREQUENCY,
                    new Term("front frequency", "how often in a second (Hz) the front bounces on its springs.")),
            Map.entry(
                    Criterion.REAR_FREQUENCY,
                    new Term("rear frequency", "how often in a second (Hz) the rear bounces on its springs.")),
            Map.entry(
                    Criterion.FRONT_COMFORT,
                    new Term("shaking above the front axle", "as at the seat, but of the body over that axle (m/s²).")),
            Map.entry(
                    Criterion.REAR_COMFORT,
                    new Term("shaking above the rear axle", "as at the seat, but of the body over that axle (m/s²).")),
            Map.entry(
                    Criterion.FRONT_TYRE_LOAD_VARIATION,
                    new Term(
                            "front tyre load variation",
                            "by how much the front tyres' load on the road goes up and down, in per cent.")),
            Map.entry(
                    Criterion.REAR_TYRE_LOAD_VARIATION,
                    new Term(
                            "rear tyre load variation",
                            "by how much the rear tyres' load on the road goes up and down, in per cent.")));

    /** What a figure is called. */
    public static Term of(Criterion criterion) {
        Term known = OF.get(criterion);
        return known != null ? known : new Term(criterion.name(), means(criterion));
    }

    private static String means(Criterion criterion) {
        if (criterion.loads().isPresent()) {
            LoadCriteria.What what = criterion.loads().get().what();
            return switch (what) {
                        case FORCE -> "the greatest force in that part, of all that the car is put through.";
                        case PRESSURE ->
                            "the greatest force on that mount over the area that it stands on; thin sheet cracks round a small one.";
                        case YIELD_USED ->
                            "how much of what the bolt's steel bears the hardest case asks of it; above 100 % it bends, by these sums.";
                        case RATED_USED -> "the greatest force on it over what its maker allows.";
                    }
                    + " It compares designs and is no proof of strength.";
        }
        return criterion.ahead().isPresent()
                ? "straight ahead, under brakes or power."
                : "what the links of that axle do, from the points that were measured on them.";
    }

    /** "push at 0.5 g", "cornering limit": a figure with its pace. */
    public static String figure(Judged judged) {
        return of(judged.criterion()).name() + (judged.pace().isPresent() ? " " + JudgedWords.pace(judged) : "");
    }

    /** Words for more and for less of a figure that a driver feels: "pushes more", "leans less"; none for others. */
    public static Optional<String> felt(Criterion criterion, boolean more) {
        String how = more ? "more" : "less";
        if (criterion.equals(Criterion.UNDERSTEER) || criterion.equals(Criterion.NEAR_UNDERSTEER)) {
            return Optional.of("it pushes " + how);
        }
        if (criterion.equals(Criterion.LEAN) || criterion.equals(Criterion.ROLL_GRADIENT)) {
            return Optional.of("it leans " + how);
        }
        if (criterion.equals(Criterion.LIMIT)) {
            return Optional.of("it holds " + how);
        }
        return criterion.equals(Criterion.SEAT_COMFORT) ? Optional.of("it shakes " + how) : Optional.empty();
    }
}
