package evenhand.tyre;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tyre's size as it stands on its wall.
 *
 * @param width of the section, m
 * @param aspect height of the section over its width
 * @param rim diameter, m
 * @param statesAspect whether the size says its aspect, as 165R13 does not; what is usual stands in for it then
 */
public record TyreSize(double width, double aspect, double rim, boolean statesAspect) {
    /** Sizes that are often met, to find the one that was meant. */
    public static final List<String> OFTEN_MET = List.of(
            "135R13",
            "145R13",
            "155R13",
            "165R13",
            "155R15",
            "165R14",
            "165R15",
            "175R14",
            "185R14",
            "185R15",
            "205R15",
            "5.20-13",
            "5.60-13",
            "6.00-13",
            "5.20-14",
            "5.60-15",
            "5.90-15",
            "6.40-15",
            "6.00-16",
            "145/80R13",
            "155/80R13",
            "165/80R13",
            "165/80R15",
            "185/80R15",
            "155/70R13",
            "165/70R13",
            "175/70R13",
            "175/70R14",
            "185/70R13",
            "185/70R14",
            "185/70R15",
            "195/70R14",
            "195/70R15",
            "205/70R14",
            "205/70R15",
            "165/65R14",
            "175/65R14",
            "185/65R14",
            "185/65R15",
            "195/65R14",
            "195/65R15",
            "205/65R15",
            "175/60R13",
            "175/60R14",
            "185/60R13",
            "185/60R14",
            "185/60R15",
            "195/60R14",
            "195/60R15",
            "205/60R13",
            "205/60R15",
            "215/60R15",
            "215/60R16",
            "165/55R13",
            "185/55R14",
            "185/55R15",
            "195/55R15",
            "195/55R16",
            "205/55R16",
            "215/55R16",
            "225/55R16",
            "195/50R15",
            "195/50R16",
            "205/50R15",
            "205/50R16",
            "205/50R17",
            "225/50R15",
            "225/50R16",
            "225/50R17",
            "195/45R15",
            "195/45R16",
            "205/45R16",
            "205/45R17",
            "215/45R17",
            "225/45R16",
            "225/45R17",
            "235/45R17",
            "245/45R16",
            "245/45R17",
            "215/40R17",
            "225/40R18",
            "235/40R18",
            "245/40R18",
            "255/40R17",
            "265/40R17",
            "275/40R18",
            "225/35R18",
            "255/35R18",
            "265/35R18",
            "285/30R18");

    private static final double INCH = 0.0254;
    /** Height over width of a tyre that states none. Common practice, no source. */
    private static final double UNSTATED = 0.82;
    /** The same of a cross-ply, made before low sections. Common practice, no source. */
    private static final double UNSTATED_CROSS_PLY = 0.92;

    /** Between width and rim: R with a speed letter or without, a dash, a cross, or nothing at all. */
    private static final String RADIAL = "\\s*(?:[QSTUHVWYZ]\\s?)?RF?\\s*";

    private static final String OTHER = "\\s*(?:[SHV]\\s?)?[-XBD]\\s*";
    private static final String LETTER = "\\s*[SHV]\\s*";
    /** In inches, or in millimetres where it has three digits. */
    private static final String RIM = "(?<rim>\\d{2}(?:\\.\\d)?|\\d{3})";

    /** What the tyre may carry and how fast, and other words after a space. */
    private static final String REST = "\\s?(?:C|LT|XL)?(?:\\s.*)?";

    private static final Pattern WITH_ASPECT = Pattern.compile("(?:P|LT)?\\s?(?<width>\\d{3})\\s*[-/X\\s]\\s*"
            + "(?<aspect>\\d{2,3})(?:(?<radial>" + RADIAL + ")|" + OTHER + "|" + LETTER + "|\\s*/\\s*|\\s+)" + RIM
            + REST);
    private static final Pattern WITHOUT_ASPECT = Pattern.compile(
            "P?\\s?(?<width>\\d{3})(?:(?<radial>" + RADIAL + ")|" + OTHER + "|" + LETTER + ")" + RIM + REST);
    private static final Pattern INCHES = Pattern.compile("(?<width>\\d{1,2}\\.\\d{1,2})(?:(?<radial>" + RADIAL + ")|"
            + OTHER + "|" + LETTER + "|\\s*/\\s*|\\s+)" + RIM + REST);

    /**
     * Reads a size in any usual spelling: 205/60R15, 205/60 HR 15, 205 60 15, 165R13, 165 SR 13, 165R400, 6.00-15, 5.60x15. The
     * aspect of a size that states none is 0.82, of a cross-ply 0.92.
     *
     * @param kind of the tyre; where it is not known, a size in inches without an R is a cross-ply's
     * @return nothing if the text is no such size
     */
    public static Optional<TyreSize> read(String text, Optional<TyreKind> kind) {
        String size = plain(text);
        Matcher full = WITH_ASPECT.matcher(size);
        if (full.matches()) {
            double aspect = Double.parseDouble(full.group("aspect")) / 100;
            return plausible(millimetres(full.group("width")), aspect, rim(full), true);
        }
        Matcher metric = WITHOUT_ASPECT.matcher(size);
        if (metric.matches()) {
            boolean crossPly = kind.isPresent() && kind.get() == TyreKind.CROSS_PLY;
            return plausible(millimetres(metric.group("width")), unstated(crossPly), rim(metric), false);
        }
        Matcher inches = INCHES.matcher(size);
        if (inches.matches()) {
            boolean crossPly = kind.map(known -> known == TyreKind.CROSS_PLY).orElse(inches.group("radial") == null);
            double width = Double.parseDouble(inches.group("width")) * INCH;
            return plausible(width, unstated(crossPly), rim(inches), false);
        }
        return Optional.empty();
    }

    private static String plain(String text) {
        return text.strip()
                .toUpperCase(Locale.ROOT)
                .replaceAll("[\\s\u00A0\u202F\u2009]+", " ")
                .replaceAll("[\u2010-\u2015\u2212]", "-")
                .replace('\u00D7', 'X')
                .replaceAll("^(\\d{1,2}),(\\d)", "$1.$2");
    }

    /** Whether a size is a cross-ply's: by its kind; where that is not known, in inches without an R. */
    public static boolean isCrossPly(String text, Optional<TyreKind> kind) {
        Matcher inches = INCHES.matcher(plain(text));
        return kind.map(known -> known == TyreKind.CROSS_PLY)
                .orElseGet(() -> inches.matches() && inches.group("radial") == null);
    }

    private static double millimetres(String digits) {
        return Double.parseDouble(digits) / 1000;
    }

    private static double unstated(boolean crossPly) {
        return crossPly ? UNSTATED_CROSS_PLY : UNSTATED;
    }

    private static double rim(Matcher size) {
        String digits = size.group("rim");
        return digits.matches("\\d{3}") ? millimetres(digits) : Double.parseDouble(digits) * INCH;
    }

    private static Optional<TyreSize> plausible(double width, double aspect, double rim, boolean statesAspect) {
        boolean plausible =
                width >= 0.08 && width <= 0.45 && aspect >= 0.2 && aspect <= 1.1 && rim >= 8 * INCH && rim <= 26 * INCH;
        return plausible ? Optional.of(new TyreSize(width, aspect, rim, statesAspect)) : Optional.empty();
    }

    /** Radius without load, m. */
    public double freeRadius() {
        return rim / 2 + width * aspect;
    }
}
