package evenhand.lowering;

import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Something a lowered road car must still have, with its number. The numbers are common practice of those who set up cars for
 * the road; none is a standard, and a particular car may do with less.
 *
 * @param figure that is bounded; its words as in a sentence: "front bump travel to the stop"
 * @param why what goes wrong without it, as a clause
 * @param bound SI
 * @param atLeast whether the bound is the least; else it is the most
 * @param atRest whether the car shows it as it stands; else in its turns
 */
public record Need(Figure<Stance.Stands> figure, String why, double bound, boolean atLeast, boolean atRest) {
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

    /** A car that has an answer to every question. It has no number. */
    public static final Need ANSWER = new Need(
            Figure.ofOptional(
                    "noAnswer", "answer to every question", Dimension.RATIO, "", 0, stance -> OptionalDouble.empty()),
            "the sums cannot tell what it does",
            0,
            true,
            false);

    /** At the limit the front goes, so that the car runs wide instead of coming round. It is a yes or a no. */
    public static final Need FRONT_FIRST = new Need(
            TurnFigures.FRONT_FIRST.within(stance -> stance.turns().map(TurnAnswer.Turns::limit)),
            "the tail leads at the limit",
            1,
            true,
            false);

    /** Off its bump stops a car comes to them in a bend only so late. */
    public static final Need FIRST_STOP_TOUCHED = new Need(
            LoweringFigures.FIRST_STOP.named(
                    LoweringFigures.FIRST_STOP.name(), "pace at which the first bump stop is touched"),
            "the stops carry it in any brisk bend and turn its balance there",
            FIRST_STOP,
            true,
            false);

    /** All, the most telling first: of two that fail at the same height the first is named. */
    public static final List<Need> ALL = List.of(
            ANSWER,
            travel(End.FRONT),
            travel(End.REAR),
            metal(End.FRONT),
            metal(End.REAR),
            FIRST_STOP_TOUCHED,
            FRONT_FIRST,
            new Need(
                    Figure.ofOptional(
                            "steerReversal",
                            "pace from which the steering is let back",
                            Dimension.ACCELERATION,
                            "g",
                            2,
                            Stance.Stands::steerReversal),
                    "it comes to oversteer at a pace of the road",
                    STEER_REVERSAL,
                    true,
                    false),
            rollCentre(End.FRONT),
            rollCentre(End.REAR),
            frequency(End.FRONT),
            frequency(End.REAR));

    private static Need travel(End end) {
        return needed(
                LoweringFigures.toStop(end),
                end.key() + " bump travel to the stop",
                "it sits on its rubbers on any rough road",
                TO_STOP);
    }

    private static Need metal(End end) {
        return needed(
                LoweringFigures.toMetal(end),
                end.key() + " bump travel to metal",
                "metal can meet on a rough road",
                TO_METAL);
    }

    private static Need rollCentre(End end) {
        return needed(
                LoweringFigures.rollCentre(end),
                "height of the " + end.key() + " roll centre",
                "it lies deeper than lowered cars are seen with, and the links press that end down in a bend",
                ROLL_CENTRE);
    }

    private static Need frequency(End end) {
        return new Need(
                LoweringFigures.onSprings(end).named(end.key() + "Frequency", end.key() + " frequency on its springs"),
                "it is harder than road cars are, even those that see a track",
                FREQUENCY,
                false,
                true);
    }

    private static Need needed(Figure<Stance.Stands> figure, String words, String why, double least) {
        return new Need(figure.named(figure.name(), words), why, least, true, true);
    }

    /** Name in answers. */
    public String key() {
        return figure.name();
    }

    /** What is measured, as in a sentence. */
    public String words() {
        return figure.words();
    }

    public Dimension dimension() {
        return figure.dimension();
    }

    /** That its number is shown with in the dimension's metric unit. */
    public int digits() {
        return figure.digits();
    }

    /** Whether it is a number that is to be kept; else it is a yes or a no. */
    public boolean isNumber() {
        return !equals(ANSWER) && !equals(FRONT_FIRST);
    }

    /** The value at a height, SI, the worst of its bends; none where the car has no such thing, or no answer. */
    public OptionalDouble value(Stance stance) {
        OptionalDouble worst = OptionalDouble.empty();
        if (stance instanceof Stance.Stands stands) {
            if (atRest) {
                return figure.si(stands);
            }
            for (Stance.Bend bend : stands.bends()) {
                OptionalDouble value = stands.in(bend::equals) instanceof Stance.Stands alone
                        ? figure.si(alone)
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
