package evenhand.words.road;

import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.RoadClass;
import evenhand.road.MeasuredProfile;
import evenhand.road.RoughnessIndex;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;

/** What a roughness index means, in plain sentences. */
public final class RoughnessWords {
    /** Two doubles that differ less are one length, m. */
    private static final double SAME = 1e-6;

    private static final double SECONDS_PER_HOUR = 3600;

    private RoughnessWords() {}

    /** The index in the unit for show: m/km, or in/mi. */
    public static double shown(double index, Units units) {
        return units == Units.METRIC
                ? index * Unit.of("km/h").toSi(SECONDS_PER_HOUR)
                : index * Unit.of("in").fromSi(Unit.of("mph").toSi(SECONDS_PER_HOUR));
    }

    /** Its symbol. */
    public static String symbol(Units units) {
        return units == Units.METRIC ? "m/km" : "in/mi";
    }

    /** As a number with its unit. */
    public static String show(double index, Units units) {
        return Numbers.fixed(shown(index, units), units == Units.METRIC ? 2 : 0) + " " + symbol(units);
    }

    /** The sentences, in the order to be read. */
    public static List<String> of(MeasuredProfile profile, RoughnessIndex found, Units units) {
        List<String> sentences = new ArrayList<>();
        sentences.add("The International Roughness Index is " + show(found.whole(), units) + ": " + band(found.whole())
                + " (bands of common practice).");
        sentences.add("A made-up road of class " + roadClass(found.whole()) + " is about as rough.");
        double left = profile.length() - found.segments().size() * RoughnessIndex.SEGMENT;
        if (left > SAME) {
            sentences.add("The last " + road(left, units) + " make no full segment and count in the whole only.");
        }
        if (profile.spacing() > RoughnessIndex.WIDEST_SPACING + SAME) {
            sentences.add("The points are " + units.show(profile.spacing(), Dimension.LENGTH, 0)
                    + " apart: short waves lie between them, and the index comes out too low. Measure every "
                    + units.show(RoughnessIndex.WIDEST_SPACING, Dimension.LENGTH, 0)
                    + " or closer.");
        }
        return sentences;
    }

    /** A length of road: "544.5 m". */
    public static String road(double length, Units units) {
        return Numbers.plain(lengthUnit(units).fromSi(length), 1) + " "
                + lengthUnit(units).symbol();
    }

    /** The unit for lengths of road. */
    public static Unit lengthUnit(Units units) {
        return Unit.of(units == Units.METRIC ? "m" : "ft");
    }

    /** After the scale of World Bank Technical Paper 46, from memory, rounded as it is used. */
    private static String band(double index) {
        double perKm = shown(index, Units.METRIC);
        if (perKm < 1.5) {
            return "as smooth as a new motorway";
        }
        if (perKm < 2.7) {
            return "a good road";
        }
        if (perKm < 4.5) {
            return "a worn road, some of it patched";
        }
        if (perKm < 8) {
            return "a rough road, much patched or broken";
        }
        return "as rough as a road without a seal";
    }

    private static RoadClass roadClass(double index) {
        for (RoadClass one : RoadClass.values()) {
            if (index < RoughnessIndex.expected(one.upperLimit())) {
                return one;
            }
        }
        return RoadClass.H;
    }
}
