package evenhand.look;

import java.awt.Color;
import java.awt.Font;
import java.util.List;

/**
 * Colours and sizes of a picture.
 *
 * @param background what everything stands on
 * @param ink of words and axes
 * @param quiet ink of what is less important, still readable
 * @param grid light lines, not for words
 * @param warning of what needs attention
 * @param setups colours of set-ups, by their look
 * @param size of plain type, px; everything else follows from it
 */
public record Theme(
        Color background, Color ink, Color quiet, Color grid, Color warning, List<Color> setups, double size) {
    /** Least contrast of words and of set-up's lines against the background. Source: WCAG 2.2, 1.4.3, level AA. */
    public static final double LEAST_CONTRAST = 4.5;

    /**
     * Found by a search for hues that stay apart for dichromats of each kind and keep the contrast; the first three are farthest
     * apart, then the first six, and of the twelve those that are nearer have other lines.
     */
    private static final List<Color> ON_LIGHT = List.of(
            new Color(0x216ee4),
            new Color(0x9a6905),
            new Color(0x09341c),
            new Color(0xc12e88),
            new Color(0x74754e),
            new Color(0x470078),
            new Color(0x160f34),
            new Color(0x8d35a2),
            new Color(0x404c12),
            new Color(0x050ba1),
            new Color(0x050dfc),
            new Color(0x5e3a4f));

    private static final List<Color> ON_DARK = List.of(
            new Color(0x7c8ffb),
            new Color(0xf3b13a),
            new Color(0x5cffb6),
            new Color(0xe45b99),
            new Color(0x969050),
            new Color(0xfad5ff),
            new Color(0x1cb8ef),
            new Color(0xc862bc),
            new Color(0xffd412),
            new Color(0x99d1bc),
            new Color(0xcc7b26),
            new Color(0xacc968));

    public Theme {
        setups = List.copyOf(setups);
    }

    public static Theme light(double size) {
        return new Theme(
                new Color(0xfcfcfa),
                new Color(0x1c2126),
                new Color(0x5a626b),
                new Color(0xdfe2e4),
                new Color(0xb3261e),
                ON_LIGHT,
                size);
    }

    public static Theme dark(double size) {
        return new Theme(
                new Color(0x1e2126),
                new Color(0xe8eaed),
                new Color(0xa3abb3),
                new Color(0x383d44),
                new Color(0xff8a80),
                ON_DARK,
                size);
    }

    public static Theme paper(double size) {
        return new Theme(
                Color.WHITE,
                Color.BLACK,
                new Color(0x545454),
                new Color(0xdcdcdc),
                new Color(0xb3261e),
                ON_LIGHT,
                size);
    }

    /** White paper on a screen. Its ink is a shade off black, so that a picture says it wherever it draws with it. */
    public static Theme page(double size) {
        Theme paper = paper(size);
        return new Theme(
                paper.background(), new Color(0x010101), paper.quiet(), paper.grid(), paper.warning(), ON_LIGHT, size);
    }

    /** The colour of a set-up's lines; quiet ink for what belongs to none. */
    public Color colour(SetupStyle style) {
        return style.ofSetup() ? setups.get(style.colour()) : quiet;
    }

    /** A set-up's colour laid thinly over the background, {@code part} of it; opaque, so that papers need no transparency. */
    public Color soft(SetupStyle style, double part) {
        return mixed(colour(style), part);
    }

    /** The inside of a set-up's bar, on which words may stand. */
    public Color bar(SetupStyle style) {
        return soft(style, 0.3);
    }

    /** A colour laid thinly over the background. */
    public Color mixed(Color colour, double part) {
        return new Color(
                mixed(colour.getRed(), background.getRed(), part),
                mixed(colour.getGreen(), background.getGreen(), part),
                mixed(colour.getBlue(), background.getBlue(), part));
    }

    private static int mixed(int over, int under, double part) {
        return (int) Math.round(part * over + (1 - part) * under);
    }

    public Font plain() {
        return Typeface.plain(size);
    }

    /** Notes and marks. */
    public Font small() {
        return Typeface.plain(0.9 * size);
    }

    public Font head() {
        return Typeface.strong(1.1 * size);
    }

    /**
     * Contrast of two colours, 1 to 21.
     *
     * <p>Source: WCAG 2.2, contrast ratio of relative luminances.
     */
    public static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int part) {
        double c = part / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
