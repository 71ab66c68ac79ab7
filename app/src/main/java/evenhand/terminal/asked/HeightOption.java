package evenhand.terminal.asked;

import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** Ride heights as they were measured. */
public final class HeightOption {
    private static final String HEIGHT = "--height";

    @Option(
            names = HEIGHT,
            paramLabel = "CORNER=LENGTH",
            description = "A height as it was measured, from the wheel's centre to the arch, for example"
                    + " \"frontLeft=349 mm\"; may be given more than once, for frontLeft, frontRight, rearLeft and"
                    + " rearRight.")
    private List<String> heights = new ArrayList<>();

    /** Those that were given. */
    public Map<Wheel, Quantity> heights() throws Mistake {
        Map<Wheel, Quantity> all = new EnumMap<>(Wheel.class);
        for (String text : heights) {
            int sign = text.indexOf('=');
            Optional<Wheel> wheel =
                    sign < 0 ? Optional.empty() : wheel(text.substring(0, sign).strip());
            if (wheel.isEmpty()) {
                throw new Mistake(HEIGHT + " \"" + text + "\": write the corner, = and the height, for example"
                        + " \"frontLeft=349 mm\"; the corners are frontLeft, frontRight, rearLeft and rearRight");
            }
            try {
                if (all.put(wheel.get(), Quantity.parse(text.substring(sign + 1), Dimension.LENGTH)) != null) {
                    throw new Mistake(HEIGHT + " \"" + text + "\": this corner is there twice; leave out one");
                }
            } catch (QuantityException e) {
                throw new Mistake(HEIGHT + " \"" + text + "\": " + e.message("\"frontLeft=349 mm\""));
            }
        }
        return all;
    }

    private static Optional<Wheel> wheel(String key) {
        return Stream.of(Wheel.values())
                .filter(wheel -> wheel.key().equals(key))
                .findFirst();
    }
}
