package evenhand.lowering;

import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Something a lowered road car must still have, with its number. The numbers are common practice of those who set up cars for
 * the road; none is a standard, and a particular car may do with less.
 *
 * @param key name in answers
 * @param words what is measured, as in a sentence: "front bump travel to the stop"
 * @param why what goes wrong without it, as a clause
 * @param dimension of its number
 * @param digits that it is shown with in the dimension's metric unit
 * @param bound SI
 * @param atLeast whether the bound is the least; else it is the most
 * @param reading the value, SI; empty where the car has nothing that could fall short
 */
public record Need(
        String key,
        String words,
        String why,
        Dimension dimension,
        int digits,
        double bound,
        boolean atLeast,
        Function<Stance.Stands, OptionalDouble> reading) {
    /** m; 25 to 35 mm before the rubber are usual. */
    public static final double TO_STOP = 0.025;

    /** m; 60 to 75 mm until metal meets are usual. */
    public static final double TO_METAL = 0.060;

    /** m/s²; touched earlier, a stop takes part in every brisk bend. */
    public static final double FIRST_STOP = Unit.of("g").toSi(0.5);

    /** m/s²; up to here the steering should never have to be let back. */
    public static final double STEER_REVERSAL = Unit.of("g").toSi(0.6);

    /** m; lowered cars are seen down to here. Below the ground a roll centre is odd, not forbidden. */
    public static final double ROLL_CENTRE = -0.040;

    /** Hz, of the sprung mass on the wheel rate alone; road cars that are driven on tracks go so far. */
    public static final double FREQUENCY = 2.2;

    /** A car that has an answer to every question. */
    public static final Need ANSWER = new Need(
            "noAnswer",
            "answer to every question",
            "the sums cannot tell what it does",
            Dimension.RATIO,
            0,
            0,
            true,
            stance -> OptionalDouble.empty());

    /** At the limit the front goes, so that the car runs wide instead of coming round. It has no number. */
    public static final Need FRONT_FIRST = new Need(
            "frontFirst",
            "end that goes first at the limit",
            "the tail leads at the limit",
            Dimension.RATIO,
            0,
            1,
            true,
            stance -> ofTurn(stance, turn -> OptionalDouble.of(turn.limit().frontFirst() ? 1 : 0)));

    /** Off its bump stops a car comes to them in a bend only so late. */
    public static final Need FIRST_STOP_TOUCHED = new Need(
            "firstStop",
            "pace at which the first bump stop is touched",
            "the stops carry it in any brisk bend and turn its balance there",
            Dimension.ACCELERATION,
            2,
            FIRST_STOP,
            true,
            Stance.Stands::firstStop);

    /** All, the most telling first: of two that fail at the same height the first is named. */
    public static final List<Need> ALL = List.of(
            ANSWER,
            travel("frontBumpTravelToStop", "front bump travel to the stop", End.FRONT),
            travel("rearBumpTravelToStop", "rear bump travel to the stop", End.REAR),
            metal("frontBumpTravelToMetal", "front bump travel to metal", End.FRONT),
            metal("rearBumpTravelToMetal", "rear bump travel to metal", End.REAR),
            FIRST_STOP_TOUCHED,
            FRONT_FIRST,
            new Need(
                    "steerReversal",
                    "pace from which the steering is let back",
                    "it comes to oversteer at a pace of the road",
                    Dimension.ACCELERATION,
                    2,
                    STEER_REVERSAL,
                    true,
                    Stance.Stands::steerReversal),
            rollCentre("frontRollCentreHeight", "height of the front roll centre", End.FRONT),
            rollCentre("rearRollCentreHeight", "height of the rear roll centre", End.REAR),
            frequency("frontFrequency", "front frequency on its springs", End.FRONT),
            frequency("rearFrequency", "rear frequency on its springs", End.REAR));

    private static Need travel(String key, String words, End end) {
        return new Need(
                key,
                words,
                "it sits on its rubbers on any rough road",
                Dimension.LENGTH,
                0,
                TO_STOP,
                true,
                stance -> stance.standing(end).bumpTravelToStop());
    }

    private static Need metal(String key, String words, End end) {
        return new Need(
                key,
                words,
                "metal meets in the first pothole",
                Dimension.LENGTH,
                0,
                TO_METAL,
                true,
                stance -> stance.standing(end).bumpTravelToMetal());
    }

    private static Need rollCentre(String key, String words, End end) {
        return new Need(
                key,
                words,
                "it lies deeper than lowered cars are seen with, and the links press that end down in a bend",
                Dimension.LENGTH,
                0,
                ROLL_CENTRE,
                true,
                stance -> OptionalDouble.of(stance.car().axle(end).rollCentreHeight()));
    }

    private static Need frequency(String key, String words, End end) {
        return new Need(
                key,
                words,
                "it is harder than road cars are, even those that see a track",
                Dimension.FREQUENCY,
                2,
                FREQUENCY,
                false,
                stance -> stance.frequencyOnSprings(end));
    }

    private static OptionalDouble ofTurn(Stance.Stands stance, Function<TurnAnswer.Turns, OptionalDouble> reading) {
        Optional<OptionalDouble> value = stance.turns().map(reading);
        return value.orElseGet(OptionalDouble::empty);
    }

    /** Whether it is a number that is to be kept; else it is a yes or a no. */
    public boolean isNumber() {
        return !equals(ANSWER) && !equals(FRONT_FIRST);
    }

    /** The value at a height, SI, the worst of its bends; none where the car has no such thing, or no answer. */
    public OptionalDouble value(Stance stance) {
        OptionalDouble worst = OptionalDouble.empty();
        if (stance instanceof Stance.Stands stands) {
            for (Stance.Bend bend : stands.bends()) {
                OptionalDouble value = stands.in(bend::equals) instanceof Stance.Stands alone
                        ? reading.apply(alone)
                        : OptionalDouble.empty();
                if (value.isPresent() && (worst.isEmpty() || isWorse(value.getAsDouble(), worst.getAsDouble()))) {
                    worst = value;
                }
            }
        }
        return worst;
    }

    private boolean isWorse(double one, double other) {
        return atLeast ? one < other : one > other;
    }

    /** Whether it is met at a height, in each of its bends. What a car does not have cannot fall short. */
    public boolean metBy(Stance stance) {
        if (this.equals(ANSWER)) {
            return stance.noAnswer().isEmpty();
        }
        OptionalDouble value = value(stance);
        return value.isEmpty() || !isWorse(value.getAsDouble(), bound);
    }
}
