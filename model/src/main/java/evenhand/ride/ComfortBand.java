package evenhand.ride;

import java.util.List;
import java.util.stream.Stream;

/**
 * What people say of a weighted r.m.s. acceleration where they sit. The bands overlap: one acceleration may have two.
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

    /** Of the bands that an acceleration lies in, the one whose middle is nearer as a ratio: where there is room for one word. */
    public static ComfortBand nearest(double acceleration) {
        List<ComfortBand> bands = of(acceleration);
        ComfortBand lower = bands.get(0);
        ComfortBand upper = bands.get(bands.size() - 1);
        // Geometric means of both bands' ends, squared: a1·b1·a2·b2 parts the two at its fourth root.
        double parting = Math.sqrt(Math.sqrt(lower.from * lower.to * upper.from * upper.to));
        return bands.size() == 1 || acceleration < parting ? lower : upper;
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
