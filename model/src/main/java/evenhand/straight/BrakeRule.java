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
        return List.of(of("71/320/EEC, UN R13", curve, true, 0.85), of("UN R13-H", curve, false, 0.7));
    }

    private static BrakeRule of(String name, List<Used> curve, boolean mayInvert, double slope) {
        Optional<Margin> order = Optional.empty();
        OptionalDouble inversion = OptionalDouble.empty();
        Optional<Margin> use = Optional.empty();
        for (Used at : curve) {
            boolean excepted = mayInvert && at.z >= 0.3 && at.z <= 0.45;
            if (at.z >= 0.15 && at.z <= 0.8 && !excepted) {
                order = lesser(order, new Margin(at.front - at.rear, at.z, End.REAR));
            }
            if (excepted && at.rear > at.front) {
                inversion = OptionalDouble.of(Math.min(inversion.orElse(Double.MAX_VALUE), at.z + 0.05 - at.rear));
            }
            use = used(use, at.z, at.front, End.FRONT, slope);
            use = used(use, at.z, at.rear, End.REAR, slope);
        }
        return new BrakeRule(name, order, inversion, use);
    }

    private static Optional<Margin> used(Optional<Margin> least, double z, double adhesion, End axle, double slope) {
        return adhesion >= 0.2 && adhesion <= 0.8
                ? lesser(least, new Margin(z - 0.1 - slope * (adhesion - 0.2), z, axle))
                : least;
    }

    private static Optional<Margin> lesser(Optional<Margin> one, Margin other) {
        return one.isPresent() && one.get().margin <= other.margin ? one : Optional.of(other);
    }
}
