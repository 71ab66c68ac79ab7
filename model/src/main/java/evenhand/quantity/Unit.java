package evenhand.quantity;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toUnmodifiableList;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A unit that a person may write.
 *
 * @param symbol as it is written in files, in ASCII: "N*m/deg"; empty for a plain ratio
 * @param dimension what it measures
 * @param toSi SI units in one of this unit
 */
public record Unit(String symbol, Dimension dimension, double toSi) {
    // Exact by definition: international yard and pound of 1959, standard gravity of the 3rd CGPM 1901.
    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;
    private static final double MILE = 5280 * FOOT;
    private static final double POUND = 0.45359237;
    /** Standard gravity, m/s², exactly: what "g" means. */
    public static final double GRAVITY = 9.80665;

    private static final double POUND_FORCE = POUND * GRAVITY;
    private static final double DEGREE = Math.PI / 180;

    private static final List<Unit> ALL = List.of(
            new Unit("kg", Dimension.MASS, 1),
            new Unit("t", Dimension.MASS, 1000),
            new Unit("lb", Dimension.MASS, POUND),
            new Unit("mm", Dimension.LENGTH, 0.001),
            new Unit("cm", Dimension.LENGTH, 0.01),
            new Unit("m", Dimension.LENGTH, 1),
            new Unit("in", Dimension.LENGTH, INCH),
            new Unit("ft", Dimension.LENGTH, FOOT),
            new Unit("km", Dimension.DISTANCE, 1000),
            new Unit("mi", Dimension.DISTANCE, MILE),
            new Unit("N", Dimension.FORCE, 1),
            new Unit("kN", Dimension.FORCE, 1000),
            new Unit("kgf", Dimension.FORCE, GRAVITY),
            new Unit("lbf", Dimension.FORCE, POUND_FORCE),
            new Unit("N/mm", Dimension.STIFFNESS, 1000),
            new Unit("N/m", Dimension.STIFFNESS, 1),
            new Unit("kN/m", Dimension.STIFFNESS, 1000),
            new Unit("kgf/mm", Dimension.STIFFNESS, GRAVITY * 1000),
            new Unit("lbf/in", Dimension.STIFFNESS, POUND_FORCE / INCH),
            new Unit("N/deg", Dimension.CORNERING_STIFFNESS, 1 / DEGREE),
            new Unit("N/rad", Dimension.CORNERING_STIFFNESS, 1),
            new Unit("kN/rad", Dimension.CORNERING_STIFFNESS, 1000),
            new Unit("lbf/deg", Dimension.CORNERING_STIFFNESS, POUND_FORCE / DEGREE),
            new Unit("N*m", Dimension.MOMENT, 1),
            new Unit("lbf*ft", Dimension.MOMENT, POUND_FORCE * FOOT),
            new Unit("N*m/deg", Dimension.ROLL_STIFFNESS, 1 / DEGREE),
            new Unit("N*m/rad", Dimension.ROLL_STIFFNESS, 1),
            new Unit("lbf*ft/deg", Dimension.ROLL_STIFFNESS, POUND_FORCE * FOOT / DEGREE),
            new Unit("lbf*in/deg", Dimension.ROLL_STIFFNESS, POUND_FORCE * INCH / DEGREE),
            new Unit("deg", Dimension.ANGLE, DEGREE),
            new Unit("rad", Dimension.ANGLE, 1),
            new Unit("deg/g", Dimension.UNDERSTEER_GRADIENT, DEGREE / GRAVITY),
            new Unit("g", Dimension.ACCELERATION, GRAVITY),
            new Unit("m/s^2", Dimension.ACCELERATION, 1),
            new Unit("m/s", Dimension.SPEED, 1),
            new Unit("mm/s", Dimension.SPEED, 0.001),
            new Unit("km/h", Dimension.SPEED, 1 / 3.6),
            new Unit("in/s", Dimension.SPEED, INCH),
            new Unit("mph", Dimension.SPEED, 0.44704),
            new Unit("Hz", Dimension.FREQUENCY, 1),
            new Unit("s", Dimension.TIME, 1),
            new Unit("N*s/m", Dimension.DAMPING, 1),
            new Unit("N*s/mm", Dimension.DAMPING, 1000),
            new Unit("lbf*s/in", Dimension.DAMPING, POUND_FORCE / INCH),
            new Unit("bar", Dimension.PRESSURE, 1e5),
            new Unit("kPa", Dimension.PRESSURE, 1000),
            new Unit("psi", Dimension.PRESSURE, POUND_FORCE / (INCH * INCH)),
            new Unit("MPa", Dimension.PRESSURE, 1e6),
            new Unit("bar/mm", Dimension.PRESSURE_PER_TRAVEL, 1e8),
            new Unit("rpm", Dimension.ROTATION, Math.PI / 30),
            new Unit("deg/s", Dimension.ROTATION, DEGREE),
            new Unit("deg/kN", Dimension.FORCE_STEER, DEGREE / 1000),
            new Unit("deg/(kN*m)", Dimension.MOMENT_STEER, DEGREE / 1000),
            new Unit("deg/m", Dimension.TRAVEL_STEER, DEGREE),
            new Unit("m^2", Dimension.AREA, 1),
            new Unit("mm^2", Dimension.AREA, 1e-6),
            new Unit("kg*m^2", Dimension.INERTIA, 1),
            new Unit("", Dimension.RATIO, 1),
            new Unit("%", Dimension.RATIO, 0.01));

    /** Other spellings of the same unit, after {@link #spelling}. Only such as can mean nothing else. */
    private static final Map<String, String> VARIANTS = Map.ofEntries(
            Map.entry("Nm", "N*m"),
            Map.entry("N m", "N*m"),
            Map.entry("ft*lbf", "lbf*ft"),
            Map.entry("lbf ft", "lbf*ft"),
            Map.entry("Nm/deg", "N*m/deg"),
            Map.entry("N m/deg", "N*m/deg"),
            Map.entry("Nm/rad", "N*m/rad"),
            Map.entry("N m/rad", "N*m/rad"),
            Map.entry("ft*lbf/deg", "lbf*ft/deg"),
            Map.entry("lbf ft/deg", "lbf*ft/deg"),
            Map.entry("in*lbf/deg", "lbf*in/deg"),
            Map.entry("lbf in/deg", "lbf*in/deg"),
            Map.entry("Ns/m", "N*s/m"),
            Map.entry("N s/m", "N*s/m"),
            Map.entry("Ns/mm", "N*s/mm"),
            Map.entry("N s/mm", "N*s/mm"),
            Map.entry("lbf s/in", "lbf*s/in"),
            Map.entry("m/s2", "m/s^2"),
            Map.entry("m2", "m^2"),
            Map.entry("mm2", "mm^2"),
            Map.entry("kg*m2", "kg*m^2"),
            Map.entry("kg m^2", "kg*m^2"),
            Map.entry("kgm^2", "kg*m^2"),
            Map.entry("deg/(kNm)", "deg/(kN*m)"),
            Map.entry("deg/(kN m)", "deg/(kN*m)"),
            Map.entry("deg/kNm", "deg/(kN*m)"));

    private static final Map<String, Unit> BY_SPELLING = bySpelling();
    private static final Map<Dimension, List<Unit>> BY_DIMENSION =
            ALL.stream().collect(groupingBy(Unit::dimension, toUnmodifiableList()));

    public Unit {
        if (!(toSi > 0) || Double.isInfinite(toSi)) {
            throw new IllegalArgumentException("a unit's size is finite and above zero, not " + toSi);
        }
    }

    /**
     * The unit of this symbol, in any of its spellings: "N·m", "N*m" and "Nm" are one.
     *
     * @throws IllegalArgumentException if there is no such unit
     */
    public static Unit of(String symbol) {
        return find(symbol).orElseThrow(() -> new IllegalArgumentException("there is no unit \"" + symbol + "\""));
    }

    /** The unit of this symbol, in any of its spellings, if there is one. The empty symbol is the plain ratio. */
    public static Optional<Unit> find(String symbol) {
        return Optional.ofNullable(BY_SPELLING.get(spelling(symbol)));
    }

    /** This many of this unit, in SI. */
    public double toSi(double number) {
        double parts = 1 / toSi;
        // 0.001 is no exact double but 1000 is: dividing gives 1.001 for 1001 mm, multiplying 1.0009999999999999.
        return toSi < 1 && parts == Math.rint(parts) ? number / parts : number * toSi;
    }

    /** This SI value, in this unit. */
    public double fromSi(double si) {
        double parts = 1 / toSi;
        return toSi < 1 && parts == Math.rint(parts) ? si * parts : si / toSi;
    }

    /** Its other spellings. */
    Stream<String> variants() {
        return VARIANTS.entrySet().stream()
                .filter(variant -> variant.getValue().equals(symbol))
                .map(Map.Entry::getKey)
                .sorted();
    }

    static List<Unit> ofDimension(Dimension dimension) {
        return BY_DIMENSION.getOrDefault(dimension, List.of());
    }

    /** Text with one character for each sign that has several look-alikes, and without blanks at its ends. Keeps its meaning. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '\u2212', '\u2013' -> plain.append('-'); // minus sign; dash, which word processors put for it
                case '\u00b7', '\u22c5', '\u2219' -> plain.append('*'); // middle dot, dot operator, bullet operator
                case '\u00b2' -> plain.append("^2");
                case '\u00b0', '\u00ba' -> plain.append("deg"); // degree sign; ordinal sign, beside it on keyboards
                default -> plain.append(Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : c);
            }
        }
        return plain.toString().strip();
    }

    /** The spelling by which a unit is known: plain, one blank at most in a row, and none beside an operator or bracket. */
    private static String spelling(String symbol) {
        String plain = plain(symbol);
        StringBuilder spelling = new StringBuilder(plain.length());
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            int last = spelling.length() - 1;
            if (c != ' ') {
                if (last >= 0 && spelling.charAt(last) == ' ' && isOperator(c)) {
                    spelling.setLength(last);
                }
                spelling.append(c);
            } else if (spelling.charAt(last) != ' ' && !isOperator(spelling.charAt(last))) {
                spelling.append(c); // a plain text does not begin with a blank, so there is a last character
            }
        }
        return spelling.toString();
    }

    private static boolean isOperator(char c) {
        return "*/^()".indexOf(c) >= 0;
    }

    private static Map<String, Unit> bySpelling() {
        Map<String, Unit> units = new HashMap<>();
        ALL.forEach(unit -> units.put(unit.symbol, unit));
        VARIANTS.forEach((variant, symbol) -> {
            Unit unit = units.get(symbol);
            if (unit == null) {
                throw new IllegalStateException(variant + " stands for " + symbol + ", which is no unit");
            }
            units.put(variant, unit);
        });
        return Map.copyOf(units);
    }
}
