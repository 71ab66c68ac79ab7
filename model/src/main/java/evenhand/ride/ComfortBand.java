package evenhand.ride;

import java.util.List;
import java.util.stream.Stream;

/**
 * What people say of a weighted r.m.s. acceleration. The bands overlap: one acceleration may have two.
 *
 * <p>Source: ISO 2631-1:1997 annex C.2.3, from memory.
 */
public enum ComfortBand {
    NOT_UNCOMFORTABLE(0, 0.315, "not uncomfortable"),
    A_LITTLE(0.315, 0.63, "a little uncomfortable"),
    FAIRLY(0.5, 1.0, "fairly uncomfortable"),
    UNCOMFORTABLE(0.8, 1.6, "uncomfortable"),
    VERY(1.25, 2.5, "very uncomfortable"),
    EXTREMELY(2.0, Double.POSITIVE_INFINITY, "extremely uncomfortable");

    private final double from;
    private final double to;
    private final String words;

    ComfortBand(double from, double to, String words) {
        this.from = from;
        this.to = to;
        this.words = words;
    }

    /** The bands that a weighted r.m.s. acceleration, m/s², lies in: one or two. */
    public static List<ComfortBand> of(double acceleration) {
        return Stream.of(values())
                .filter(band -> acceleration >= band.from && acceleration < band.to)
                .toList();
    }

    /** Lower end, m/s². */
    public double from() {
        return from;
    }

    /** Upper end, m/s²; infinite of the last. */
    public double to() {
        return to;
    }

    /** In the words of the standard. */
    public String words() {
        return words;
    }
}
