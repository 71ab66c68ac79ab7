package evenhand.answers;

import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.handsums.HandSums.AxleSums;
import evenhand.handsums.UndersteerBudget;
import evenhand.quantity.Dimension;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The figures of the hand sums. What grows with lateral acceleration is said per g. */
public final class HandSumFigures {
    public static final Figure<HandSums> ROLL_GRADIENT = Figure.of(
            "rollGradient",
            "roll gradient",
            Dimension.UNDERSTEER_GRADIENT,
            "deg/g",
            2,
            sums -> sums.rollAngle() / sums.lateralAcceleration());
    public static final Figure<HandSums> UNDERSTEER_GRADIENT = Figure.of(
            "understeerGradient",
            "understeer gradient",
            Dimension.UNDERSTEER_GRADIENT,
            "deg/g",
            2,
            sums -> sums.budget().gradient());
    public static final Figure<HandSums> FRONT_SHARE = Figure.of(
            "frontLoadTransferShare",
            "front share of load transfer",
            Dimension.RATIO,
            "",
            1,
            HandSums::frontLoadTransferShare);

    public static final Figure<HandSums> ROLL_ARM =
            Figure.of("rollArm", "sprung mass above the roll axis", Dimension.LENGTH, "m", 0, HandSums::rollArm);

    /** All but the budget, in the order of an answer. */
    public static final List<Figure<HandSums>> ALL = List.of(
            ROLL_GRADIENT,
            ROLL_ARM,
            transfer("frontLoadTransfer", "load transfer at the front", HandSums::front),
            transfer("rearLoadTransfer", "load transfer at the rear", HandSums::rear),
            FRONT_SHARE,
            moment("frontGeometric", "front moment by the links", HandSums::front, AxleSums::geometricMoment),
            moment("frontElastic", "front moment by springs and bar", HandSums::front, AxleSums::elasticMoment),
            moment("frontUnsprung", "front moment of unsprung mass", HandSums::front, AxleSums::unsprungMoment),
            moment(
                    "frontLeaning",
                    "front moment of weight leaning on its tyres",
                    HandSums::front,
                    AxleSums::leaningMoment),
            moment("frontMoment", "front moment in all, load transfer x track", HandSums::front, AxleSums::moment),
            moment("rearGeometric", "rear moment by the links", HandSums::rear, AxleSums::geometricMoment),
            moment("rearElastic", "rear moment by springs and bar", HandSums::rear, AxleSums::elasticMoment),
            moment("rearUnsprung", "rear moment of unsprung mass", HandSums::rear, AxleSums::unsprungMoment),
            moment(
                    "rearLeaning",
                    "rear moment of weight leaning on its tyres",
                    HandSums::rear,
                    AxleSums::leaningMoment),
            moment("rearMoment", "rear moment in all, load transfer x track", HandSums::rear, AxleSums::moment),
            rollStiffness("frontRollStiffness", "front roll stiffness, springs and bar", HandSums::front),
            rollStiffness("rearRollStiffness", "rear roll stiffness, springs and bar", HandSums::rear),
            UNDERSTEER_GRADIENT);

    /** What the understeer gradient is made of. */
    public static final List<Figure<UndersteerBudget>> BUDGET = List.of(
            gradient("tyres", "the tyres' slip", UndersteerBudget::tyres),
            gradient("aligningTorque", "pneumatic trail of the tyres", UndersteerBudget::aligningTorque),
            gradient("camber", "lean of the wheels", UndersteerBudget::camber),
            gradient("rollSteer", "roll steer", UndersteerBudget::rollSteer),
            gradient("lateralForceSteer", "give under side force", UndersteerBudget::lateralForceSteer),
            gradient("aligningTorqueSteer", "give under aligning torque", UndersteerBudget::aligningTorqueSteer));

    private HandSumFigures() {}

    private static double gs(HandSums sums) {
        return sums.lateralAcceleration() / Weights.GRAVITY;
    }

    private static Figure<HandSums> transfer(String name, String words, Function<HandSums, AxleSums> axle) {
        return Figure.<HandSums>of(
                        name,
                        words,
                        Dimension.FORCE,
                        "N",
                        0,
                        sums -> axle.apply(sums).lateralLoadTransfer() / gs(sums))
                .perEachG();
    }

    private static Figure<HandSums> moment(
            String name, String words, Function<HandSums, AxleSums> axle, ToDoubleFunction<AxleSums> part) {
        return Figure.<HandSums>of(
                        name,
                        words,
                        Dimension.MOMENT,
                        "N*m",
                        0,
                        sums -> part.applyAsDouble(axle.apply(sums)) / gs(sums))
                .perEachG();
    }

    private static Figure<HandSums> rollStiffness(String name, String words, Function<HandSums, AxleSums> axle) {
        return Figure.of(
                name,
                words,
                Dimension.ROLL_STIFFNESS,
                "N*m/deg",
                0,
                sums -> axle.apply(sums).suspensionRollStiffness());
    }

    private static Figure<UndersteerBudget> gradient(
            String name, String words, ToDoubleFunction<UndersteerBudget> reading) {
        return Figure.of(name, words, Dimension.UNDERSTEER_GRADIENT, "deg/g", 2, reading);
    }
}
