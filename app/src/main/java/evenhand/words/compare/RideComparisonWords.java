package evenhand.words.compare;

import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.ride.Ride;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** How a set-up rides against another, in a sentence: only what is shown to differ is said, comfort first. */
public final class RideComparisonWords {
    private RideComparisonWords() {}

    /**
     * "its worse end shakes 3 % more as it is felt, 1.04 instead of 1.01 m/s²; the body swings at 1.47 and 1.71 Hz instead of
     * 1.34 and 1.59 Hz".
     *
     * @param base what it is held against
     * @param now a ride on the same road
     */
    public static String of(Ride base, Ride now, Units units) {
        List<String> differences = new ArrayList<>();
        comfort(base, now, differences);
        pair(
                "the body swings at ",
                " Hz",
                base,
                now,
                ride -> ends(end -> OptionalDouble.of(ride.frequency(end)), 2),
                differences);
        pair("its damping ratio is ", "", base, now, ride -> ends(ride::damping, 2), differences);
        pair(
                "it has ",
                " " + units.of(Dimension.LENGTH).symbol() + " before the bump stops",
                base,
                now,
                ride -> ends(
                        end -> {
                            OptionalDouble travel = ride.axle(end).standing().bumpTravelToStop();
                            return travel.isPresent()
                                    ? OptionalDouble.of(
                                            units.of(Dimension.LENGTH).fromSi(travel.getAsDouble()))
                                    : travel;
                        },
                        units == Units.METRIC ? 0 : 2),
                differences);
        return differences.isEmpty() ? "rides alike" : String.join("; ", differences);
    }

    /** What a body feels at the worse end, m/s²; none where one end has no dampers. */
    public static OptionalDouble worseEnd(Ride ride) {
        OptionalDouble front = ride.comfort(End.FRONT);
        OptionalDouble rear = ride.comfort(End.REAR);
        return front.isPresent() && rear.isPresent()
                ? OptionalDouble.of(Math.max(front.getAsDouble(), rear.getAsDouble()))
                : OptionalDouble.empty();
    }

    private static void comfort(Ride base, Ride now, List<String> differences) {
        OptionalDouble before = worseEnd(base);
        OptionalDouble felt = worseEnd(now);
        if (before.isEmpty() || felt.isEmpty()) {
            return;
        }
        String was = Numbers.fixed(before.getAsDouble(), 2);
        String is = Numbers.fixed(felt.getAsDouble(), 2);
        if (!was.equals(is)) {
            double more = felt.getAsDouble() / before.getAsDouble() - 1;
            differences.add("its worse end shakes " + Numbers.percent(Math.abs(more), 0)
                    + (more > 0 ? " more" : " less") + " as it is felt, " + is + " instead of " + was + " m/s²");
        }
    }

    private static void pair(
            String what, String unit, Ride base, Ride now, Function<Ride, String> shown, List<String> differences) {
        String was = shown.apply(base);
        String is = shown.apply(now);
        if (!was.equals(is) && !was.isEmpty() && !is.isEmpty()) {
            differences.add(what + is + unit + " instead of " + was);
        }
    }

    /** "1.34 and 1.59", front and rear; empty where one end has no such number. */
    private static String ends(Function<End, OptionalDouble> reading, int digits) {
        OptionalDouble front = reading.apply(End.FRONT);
        OptionalDouble rear = reading.apply(End.REAR);
        return front.isPresent() && rear.isPresent()
                ? Numbers.fixed(front.getAsDouble(), digits) + " and " + Numbers.fixed(rear.getAsDouble(), digits)
                : "";
    }
}
