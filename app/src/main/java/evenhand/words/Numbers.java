package evenhand.words;

/** Numbers as text, with a true minus sign. */
public final class Numbers {
    /** A minus as it is printed, which a hyphen is not. */
    static final String MINUS = "−";

    private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};
    /** Beyond it a scaled number would not fit a long; no car has such a value. */
    private static final double GREATEST = 1e12;

    private Numbers() {}

    /** With so many digits behind the point; a number that rounds to zero has no sign. */
    public static String fixed(double value, int digits) {
        if (Math.abs(value) >= GREATEST) {
            return Double.toString(value).replace('-', '−');
        }
        long power = POWERS[digits];
        long scaled = Math.round(Math.abs(value) * power);
        StringBuilder text = new StringBuilder();
        if (value < 0 && scaled != 0) {
            text.append('−');
        }
        text.append(scaled / power);
        if (digits > 0) {
            String behind = Long.toString(scaled % power);
            text.append('.').append("0".repeat(digits - behind.length())).append(behind);
        }
        return text.toString();
    }

    /** As {@link #fixed}, with a plus sign where it is above zero as shown. */
    public static String signed(double value, int digits) {
        String text = fixed(value, digits);
        return value > 0 && Math.round(value * POWERS[digits]) != 0 ? "+" + text : text;
    }

    /** A part of the whole as per cent: "12.5 %". */
    public static String percent(double ratio, int digits) {
        return fixed(100 * ratio, digits) + " %";
    }

    /** As {@link #percent}, with a plus sign where it is above zero as shown. */
    public static String signedPercent(double ratio, int digits) {
        return signed(100 * ratio, digits) + " %";
    }

    /** With at most so many digits behind the point, and no zeros at its end. */
    public static String plain(double value, int digits) {
        String text = fixed(value, digits);
        if (text.indexOf('.') < 0) {
            return text;
        }
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /** With so many digits that count, at most six of them behind the point, and no zeros at its end. */
    public static String significant(double value, int digits) {
        double size = Math.abs(value);
        int behind = digits - 1;
        while (size >= 10 && behind > 0) {
            size /= 10;
            behind--;
        }
        while (size > 0 && size < 1 && behind < POWERS.length - 1) {
            size *= 10;
            behind++;
        }
        return plain(value, behind);
    }
}
