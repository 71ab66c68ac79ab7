package evenhand.level;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Perches;
import evenhand.car.Side;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Turns of the perches by which a car stands and weighs as it is wanted to: the least that do, in sum of squares of the turns.
 *
 * <p>The perches press the springs of the car at rest ({@link OnPerches}). Cross weight and rises are followed by their slopes over
 * the turns, again and again until they stay, for stops and springs on links make them bend. The sums of an axle, and left against
 * right but for what the body leans, are where the masses are: no perch moves them. Where the wanted cross weight is out of reach
 * the nearest is answered, heights kept; where the heights are, the heights that come nearest.
 *
 * <p>Source: statics. The practice of setting cross weight with bars unhooked is the trade's.
 *
 * @param now as it was weighed and measured
 * @param turns of each perch, up where the body comes up; zero where there is none, in the order of {@link Wheel}
 * @param after where it stands then
 * @param rounded the same turns in quarters
 * @param afterRounded where it stands with these; none where it does not
 * @param heldBy what stands in the way, where it is not met
 * @param perTurn what a turn up of each perch does here, of those that there are
 */
public record Levelling(
        Posture now,
        List<Double> turns,
        Posture after,
        List<Double> rounded,
        Optional<Posture> afterRounded,
        Status status,
        List<Hold> heldBy,
        Map<Wheel, PerTurn> perTurn) {
    /** Heights that nobody asked for stay within this, m: a usual tolerance of ride height. Common practice, no source. */
    public static final double KEPT_WITHIN = 0.003;

    /** Whether what was wanted can be had. */
    public enum Status {
        MET,
        NEAREST
    }

    /** What stands in the way of more. */
    public enum Limit {
        THREAD_UP,
        THREAD_DOWN,
        COILS,
        HEIGHT
    }

    /** Something in the way at a corner. */
    public record Hold(Wheel wheel, Limit limit) {}

    /**
     * What one turn up does.
     *
     * @param crossWeight change of the cross weight
     * @param load change of this corner's load, N
     * @param rise of this corner, m
     */
    public record PerTurn(double crossWeight, double load, double rise) {}

    /**
     * A rise that is wanted.
     *
     * @param wanted m
     * @param tolerance as far off is good enough, m
     */
    public record Rise(double wanted, double tolerance) {}

    /**
     * What is asked for.
     *
     * @param crossWeight as a part of the weight; none leaves it to the heights
     * @param rises of the corners whose height is asked for; none at all keeps all heights as they are, within a usual tolerance
     * @param barsHooked whether the bars stay hooked up meanwhile
     */
    public record Asked(OptionalDouble crossWeight, Map<Wheel, Rise> rises, boolean barsHooked) {
        public Asked {
            rises = Map.copyOf(rises);
        }

        /** What each corner whose height counts is to rise by, always in the same order, for of two ways that do the first is taken. */
        Map<Wheel, Rise> kept() {
            if (!rises.isEmpty()) {
                return new EnumMap<>(rises);
            }
            Map<Wheel, Rise> all = new EnumMap<>(Wheel.class);
            for (Wheel wheel : Wheel.values()) {
                all.put(wheel, new Rise(0, KEPT_WITHIN));
            }
            return all;
        }
    }

    public Levelling {
        turns = List.copyOf(turns);
        rounded = List.copyOf(rounded);
        heldBy = List.copyOf(heldBy);
        perTurn = Map.copyOf(perTurn);
    }

    /**
     * The turns for a car.
     *
     * @param asRead the car before its {@code lowered} is carried out, which uses up thread
     * @param atRest the same as it stands, its load aboard
     * @return none where it finds no rest with all wheels on the ground
     */
    public static Optional<Levelling> of(Car asRead, Car atRest, Asked asked) {
        return new Turning(asRead, atRest, asked).levelling();
    }

    /** The axles whose springs stand on a thread. */
    public static List<End> turned(Car car) {
        List<End> ends = new ArrayList<>();
        for (End end : End.values()) {
            if (car.axle(end).spring().lengths().perches().isPresent()) {
                ends.add(end);
            }
        }
        return ends;
    }

    public double turns(Wheel wheel) {
        return turns.get(wheel.index());
    }

    /**
     * A corner whose thread the car's {@code lowered} has used up already.
     *
     * @param used by it, m along the spring
     * @param left that there was, m
     */
    public record Spent(Wheel wheel, double used, double left) {}

    /** The first such corner of a car as read. */
    public static Optional<Spent> spent(Car asRead) {
        for (End end : turned(asRead)) {
            Axle axle = asRead.axle(end);
            double used = axle.lowered() * axle.geometry().springs().ratio();
            for (Side side : Side.values()) {
                Perches.Room room =
                        axle.spring().lengths().perches().orElseThrow().room(side);
                OptionalDouble left = used > 0 ? room.lowers() : room.raises();
                if (Math.abs(used) > left.orElse(Double.POSITIVE_INFINITY)) {
                    return Optional.of(new Spent(Wheel.of(end, side), used, left.getAsDouble()));
                }
            }
        }
        return Optional.empty();
    }
}
