package evenhand.scenario;

import static evenhand.quantity.InvalidValue.require;

import evenhand.quantity.Quantity;
import evenhand.turn.Wheel;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What was done to a car on a day. An entry is never altered: what was wrong is put right by a later one that names it.
 *
 * @param distance that the car had run
 * @param setup that it was left in
 * @param torqued what was tightened, by the names of the torques
 * @param papers that were given or renewed
 * @param corrects number of the entry in whose place this one stands, from 1
 */
public record BookEntry(
        LocalDate date,
        Optional<Quantity> distance,
        String text,
        Optional<String> setup,
        Measured measured,
        List<String> torqued,
        List<Paper> papers,
        OptionalInt corrects) {
    /**
     * What was measured.
     *
     * @param rideHeights from the wheel's centre to the arch
     * @param cornerWeights what the scales showed
     * @param other anything else, in the person's own words
     */
    public record Measured(
            Map<Wheel, Quantity> rideHeights, Map<Wheel, Quantity> cornerWeights, Map<String, String> other) {
        public static final Measured NOTHING = new Measured(Map.of(), Map.of(), Map.of());

        public Measured {
            rideHeights = Map.copyOf(rideHeights);
            cornerWeights = Map.copyOf(cornerWeights);
            other = Collections.unmodifiableMap(new LinkedHashMap<>(other));
        }
    }

    /** A paper and the last day that it holds on. */
    public record Paper(String what, LocalDate until) {
        public Paper {
            require(!what.isBlank(), "what", "is empty; say which paper it is");
        }
    }

    public BookEntry {
        torqued = List.copyOf(torqued);
        papers = List.copyOf(papers);
        require(!text.isBlank(), "text", "is empty; say what was done");
    }
}
