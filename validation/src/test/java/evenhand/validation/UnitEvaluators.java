package evenhand.validation;

import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Units as a file may write them. */
final class UnitEvaluators {
    private UnitEvaluators() {}

    /** SI units in one of each unit. */
    static Computed sizes(Inputs in) {
        return new Computed()
                .with(
                        "si",
                        in.texts("unit").stream()
                                .mapToDouble(symbol -> Unit.of(symbol).toSi())
                                .toArray());
    }

    /** Entries as a person types them, in SI. */
    static Computed entries(Inputs in) {
        List<String> texts = in.texts("text");
        List<String> dimensions = in.texts("dimension");
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            try {
                values.add(Quantity.parse(texts.get(i), Dimension.valueOf(dimensions.get(i)))
                        .si());
            } catch (QuantityException e) {
                throw new IllegalArgumentException(texts.get(i), e);
            }
        }
        return new Computed()
                .with("si", values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    static Computed gradients(Inputs in) {
        Unit unit = Unit.of("deg/g");
        return new Computed()
                .with(
                        "rad_per_m_s2",
                        Arrays.stream(in.numbers("deg_per_g")).map(unit::toSi).toArray());
    }
}
