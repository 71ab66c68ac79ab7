package evenhand.window.question;

import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.window.desk.Question.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Several amounts of one kind in a field, between commas: "0.3 g, 0.6 g".
 *
 * @param what one of them is: "deceleration"
 * @param least SI
 * @param most SI
 * @param bounds both in words
 */
record AmountsField(Field field, String what, Dimension dimension, double least, double most, String bounds) {
    private static final Pattern BETWEEN = Pattern.compile("\\s*[,;]\\s*");
    /** More than these nobody reads. */
    private static final int MOST = 12;

    /** Why a text is none, in a sentence; nothing where it is. */
    Optional<String> refusal(String text) {
        List<String> items = items(text);
        if (items.isEmpty() || items.size() > MOST) {
            return Optional.of("Write " + (items.isEmpty() ? "a " + what : "no more than " + MOST + " of each") + ", "
                    + example() + ".");
        }
        for (String item : items) {
            try {
                double si = Quantity.parse(item, dimension).si();
                if (!(si >= least && si <= most)) {
                    return Optional.of("A " + what + " must lie between " + bounds + ", " + example() + ".");
                }
            } catch (QuantityException wrong) {
                return Optional.of("The " + what + " \"" + item + "\" " + wrong.getMessage() + ".");
            }
        }
        return Optional.empty();
    }

    private String example() {
        return "for example " + field.start();
    }

    /** SI, each once, of a text that is not refused. */
    List<Double> amounts(String text) {
        List<Double> amounts = new ArrayList<>();
        for (String item : items(text)) {
            try {
                double si = Quantity.parse(item, dimension).si();
                if (!amounts.contains(si)) {
                    amounts.add(si);
                }
            } catch (QuantityException wrong) {
                throw new IllegalArgumentException(wrong);
            }
        }
        return amounts;
    }

    private static List<String> items(String text) {
        return BETWEEN.splitAsStream(text.strip())
                .filter(item -> !item.isBlank())
                .toList();
    }
}
