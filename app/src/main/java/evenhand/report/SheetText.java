package evenhand.report;

import evenhand.quantity.Unit;
import java.util.List;

/** Units as they are set in print. */
final class SheetText {
    private SheetText() {}

    /** "N·m/deg", "m²". */
    static String symbol(Unit unit) {
        return symbol(unit.symbol());
    }

    /** Sentences with their units set so. */
    static List<String> printed(List<String> sentences) {
        return sentences.stream().map(SheetText::printed).toList();
    }

    /** A sentence with its units set so; names and other words are left alone. */
    static String printed(String sentence) {
        return sentence.replace("N*m", "N·m")
                .replace("m/s^2", "m/s²")
                .replace("kg*m^2", "kg·m²")
                .replace("N*s", "N·s")
                .replace("lbf*", "lbf·");
    }

    static String symbol(String symbol) {
        return symbol.replace('*', '·').replace("^2", "²");
    }
}
