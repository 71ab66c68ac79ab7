package evenhand.tyre;

import evenhand.quantity.InvalidValue;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tyre's size as it stands on its wall.
 *
 * @param width of the section, m
 * @param aspect height of the section over its width
 * @param rim diameter, m
 */
public record TyreSize(double width, double aspect, double rim) {
    private static final double INCH = 0.0254;
    /** Height over width of a metric tyre that states none, such as 165R13. Common practice, no source. */
    private static final double UNSTATED_METRIC = 0.82;
    /** Height over width of a tyre sized in inches, before low sections. Common practice, no source. */
    private static final double UNSTATED_INCH = 0.92;

    private static final String CONSTRUCTION = "\\s*(?:Z?[RDB]|-)\\s*";
    private static final Pattern METRIC = Pattern.compile(
            "P?(\\d{3})(?:\\s*/\\s*(\\d{2,3}))?\\s*[SHV]?" + CONSTRUCTION + "(\\d{2}(?:\\.\\d)?)C?(?:\\s.*)?");
    private static final Pattern INCHES =
            Pattern.compile("(\\d{1,2}\\.\\d{1,2})\\s*[SHV]?" + CONSTRUCTION + "(\\d{2}(?:\\.\\d)?)(?:\\s.*)?");

    /**
     * Reads "205/60R15", "165R13" or "6.00-15".
     *
     * @throws InvalidValue if the text is no size
     */
    public static TyreSize parse(String text) {
        String size = text.strip().toUpperCase(Locale.ROOT);
        Matcher metric = METRIC.matcher(size);
        if (metric.matches()) {
            double aspect = metric.group(2) == null ? UNSTATED_METRIC : Double.parseDouble(metric.group(2)) / 100;
            return plausible(Double.parseDouble(metric.group(1)) / 1000, aspect, metric.group(3));
        }
        Matcher inches = INCHES.matcher(size);
        if (inches.matches()) {
            return plausible(Double.parseDouble(inches.group(1)) * INCH, UNSTATED_INCH, inches.group(2));
        }
        throw unreadable();
    }

    private static TyreSize plausible(double width, double aspect, String rim) {
        double diameter = Double.parseDouble(rim) * INCH;
        if (width < 0.08
                || width > 0.45
                || aspect < 0.2
                || aspect > 1.1
                || diameter < 8 * INCH
                || diameter > 26 * INCH) {
            throw unreadable();
        }
        return new TyreSize(width, aspect, diameter);
    }

    private static InvalidValue unreadable() {
        return new InvalidValue(
                "size", "is no tyre size; write it as on the tyre, for example \"205/60R15\" or \"6.00-15\"");
    }

    /** Radius without load, m. */
    public double freeRadius() {
        return rim / 2 + width * aspect;
    }
}
