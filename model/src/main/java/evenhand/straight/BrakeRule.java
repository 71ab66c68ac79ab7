package evenhand.straight;

import evenhand.car.End;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a car stands against a rule for passenger cars: a yardstick, no approval. Margins are of adhesion used or of deceleration in
 * g; below zero the rule is broken.
 *
 * <p>(a) From 0.15 to 0.8 g the front uses more than the rear: least k_f − k_r; by 71/320/EEC and UN R13 the rear may from 0.3 to
 * 0.45 g as long as k_r ≤ z + 0.05. (b) Where an axle uses 0.2 to 0.8, z ≥ 0.1 + slope·(k − 0.2): 0.85 there, 0.7 in UN R13-H
 * Annex 5, which knows no such exception (its 0.7 and that absence: from memory).
 *
 * <p>Source: 71/320/EEC Annex II App. 3.1.1 as amended by 91/422/EEC; UN R13; UN R13-H Annex 5.
 *
 * @param name as it is shown
 * @param order least lead of the front, and where
 * @param inversionMargin least z + 0.05 − k_r where the rear leads; none where it never does
 * @param use least of what the deceleration is above the line, and where, and of which axle; none where no axle uses so much
 */
public record BrakeRule(String name, Optional<Margin> order, OptionalDouble inversionMargin, Optional<Margin> use) {
    /** An axle that uses less of the road than this, or more than {@link #MOST_USED}, is not bound by it. */
    public static final double LEAST_USED = 0.2;

    public static final double MOST_USED = 0.8;

    /** From and to which deceleration, g, 71/320/EEC lets the rear use more than the front, and by how much over the deceleration. */
    public static final double INVERSION_FROM = 0.3;

    public static final double INVERSION_TO = 0.45;
    public static final double INVERSION = 0.05;

    /** What each rule asks of an axle's use of the road, (b) above. */
    public static final List<Bound> BOUNDS =
            List.of(new Bound("71/320/EEC, UN R13", true, 0.85), new Bound("UN R13-H", false, 0.7));

    /**
     * A rule.
     *
     * @param mayInvert whether the rear may use more than the front somewhere
     * @param slope of the least deceleration over the use
     */
    public record Bound(String name, boolean mayInvert, double slope) {
        /** Least deceleration, g, at which an axle may use so much: {@code 0.1 + slope·(k − 0.2)}. */
        public double deceleration(double used) {
            return -margin(0, used);
        }

        private double margin(double z, double used) {
            return z - 0.1 - slope * (used - LEAST_USED);
        }
    }

    /** Adhesion used at a deceleration z, g. */
    record Used(double z, double front, double rear) {}

    /** The least margin, at which deceleration, g, and of which axle. */
    public record Margin(double margin, double at, End axle) {}

    /** Whether no margin is below zero. */
    public boolean met() {
        return order.map(Margin::margin).orElse(0.0) >= 0
                && inversionMargin.orElse(0) >= 0
                && use.map(Margin::margin).orElse(0.0) >= 0;
    }

    static List<BrakeRule> all(List<Used> curve) {
        return BOUNDS.stream().map(bound -> of(bound, curve)).toList();
    }

    private static BrakeRule of(Bound bound, List<Used> curve) {
        Optional<Margin> order = Optional.empty();
        OptionalDouble inversion = OptionalDouble.empty();
        Optional<Margin> use = Optional.empty();
        for (Used at : curve) {
            boolean excepted = bound.mayInvert && at.z >= INVERSION_FROM && at.z <= INVERSION_TO;
            if (at.z >= 0.15 && at.z <= 0.8 && !excepted) {
                order = lesser(order, new Margin(at.front - at.rear, at.z, End.REAR));
            }
            if (excepted && at.rear > at.front) {
                inversion = OptionalDouble.of(Math.min(inversion.orElse(Double.MAX_VALUE), at.z + INVERSION - at.rear));
            }
            use = used(use, at.z, at.front, End.FRONT, bound);
            use = used(use, at.z, at.rear, End.REAR, bound);
        }
        return new BrakeRule(bound.name, order, inversion, use);
    }

    private static Optional<Margin> used(Optional<Margin> least, double z, double adhesion, End axle, Bound bound) {
        return adhesion >= LEAST_USED && adhesion <= MOST_USED
                ? lesser(least, new Margin(bound.margin(z, adhesion), z, axle))
                : least;
    }

    private static Optional<Margin> lesser(Optional<Margin> one, Margin other) {
        return one.isPresent() && one.get().margin <= other.margin ? one : Optional.of(other);
    }
}
