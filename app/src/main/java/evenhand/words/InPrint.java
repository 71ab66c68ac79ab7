package evenhand.words;

import evenhand.quantity.Unit;
import java.util.List;

/** Units as they are set where there are more signs than a file or a terminal has: "N·m/deg", "m²". */
public final class InPrint {
    private InPrint() {}

    public static String symbol(Unit unit) {
        return symbol(unit.symbol());
    }

    /** Of a unit alone, or of a number with its unit. */
    public static String symbol(String symbol) {
        return symbol.replace('*', '·').replace("^2", "²");
    }

    /** A value as somebody typed it, with its units and its minus set so. */
    public static String given(String text) {
        return symbol(text).replaceAll("(^| )-(?=[0-9.])", "$1−");
    }

    /** A sentence with its units set so; names and other words are left alone. */
    public static String sentence(String sentence) {
        return sentence.replace("N*m", "N·m")
                .replace("m/s^2", "m/s²")
                .replace("kg*m^2", "kg·m²")
                .replace("N*s", "N·s")
                .replace("lbf*", "lbf·");
    }

    public static List<String> sentences(List<String> sentences) {
        return sentences.stream().map(InPrint::sentence).toList();
    }
}
