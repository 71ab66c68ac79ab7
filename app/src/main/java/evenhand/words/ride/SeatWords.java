package evenhand.words.ride;

import evenhand.ride.ComfortBand;
import evenhand.ride.Ride;
import evenhand.ride.RoadClass;
import evenhand.ride.SeatRide;
import evenhand.words.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How a road is felt where the driver sits; the words of ISO 2631-1 are for nothing else. */
public final class SeatWords {
    /** A good road and an ordinary one, beside the one that was asked for. */
    private static final List<RoadClass> OTHER_ROADS = List.of(RoadClass.A, RoadClass.C);

    /** Parts of a m/s² that are shown. */
    private static final double SHOWN = 100;

    private SeatWords() {}

    /**
     * What people say of a weighted acceleration, m/s², in one word wherever it stands: of bands that overlap the nearer. As it is
     * shown: a word must not part from its number.
     */
    public static String felt(double acceleration) {
        return ComfortBand.nearest(Math.round(SHOWN * acceleration) / SHOWN).words();
    }

    /** "0.58 m/s²". */
    public static String acceleration(double value) {
        return Numbers.fixed(value, 2) + " m/s²";
    }

    /**
     * What a ride is like on a smoother and on a rougher road: "on class A (a new motorway) 0.29 m/s², not uncomfortable, and
     * on class C (an ordinary country road) 1.16 m/s², uncomfortable"; nothing without dampers at both ends.
     */
    public static Optional<String> onOtherRoads(Ride ride) {
        if (ride.seat().isEmpty()) {
            return Optional.empty();
        }
        SeatRide seat = ride.seat().get();
        List<String> roads = new ArrayList<>();
        for (RoadClass road : OTHER_ROADS) {
            if (!road.equals(ride.road())) {
                double there = seat.on(road, ride.speed());
                roads.add("on class " + road.name() + " (" + RideWords.like(road) + ") " + acceleration(there) + ", "
                        + felt(there));
            }
        }
        return Optional.of(String.join(", and ", roads));
    }
}
