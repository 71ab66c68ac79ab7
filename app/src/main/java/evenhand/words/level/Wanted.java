package evenhand.words.level;

import evenhand.level.Levelling;
import evenhand.quantity.Quantity;
import evenhand.scenario.BookEntry;
import evenhand.scenario.Problem;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.turn.Wheel;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the perches are to bring about.
 *
 * @param crossWeight as a part of the weight; none where nobody weighed the corners
 * @param asked heights that are asked for, from the wheel's centre to the arch
 * @param measured heights that were measured, the same way
 * @param barsHooked whether the bars stay hooked up meanwhile
 * @param measuredOn day of the book's entry that the measured heights are from, where they are
 */
public record Wanted(
        OptionalDouble crossWeight,
        Map<Wheel, Quantity> asked,
        Map<Wheel, Quantity> measured,
        boolean barsHooked,
        Optional<LocalDate> measuredOn) {
    /** The cross weight where none is asked for: half on each diagonal. */
    public static final double HALF = 0.5;

    public Wanted {
        asked = Map.copyOf(asked);
        measured = Map.copyOf(measured);
    }

    /**
     * What is wanted of a set-up of a job: the heights that the file asks for, from those that were measured or else from those that the
     * book measured last; and half on each diagonal where the corners were weighed and nothing else is said.
     *
     * @param crossWeight that is asked for, where one is
     * @param measured heights, empty where those of the book count
     */
    public static Wanted of(
            Scenario scenario,
            Setup setup,
            OptionalDouble crossWeight,
            Map<Wheel, Quantity> measured,
            boolean barsHooked) {
        Map<Wheel, Quantity> asked = scenario.record().rideHeights();
        Optional<BookEntry> entry = measured.isEmpty()
                ? scenario.record()
                        .book()
                        .lastMeasured(
                                then -> then.rideHeights().keySet().stream().anyMatch(asked::containsKey))
                : Optional.empty();
        Map<Wheel, Quantity> heights = new EnumMap<>(Wheel.class);
        heights.putAll(measured);
        entry.ifPresent(one -> {
            heights.putAll(one.measured().rideHeights());
            heights.keySet().retainAll(asked.keySet());
        });
        return new Wanted(
                crossWeight.isEmpty() && LevelledSetup.isWeighed(setup) ? OptionalDouble.of(HALF) : crossWeight,
                asked,
                heights,
                barsHooked,
                entry.map(BookEntry::date));
    }

    /** What the file has to give first, with its place. */
    public Optional<Problem> missing(Scenario scenario, Setup setup) {
        if (Levelling.turned(setup.car()).isEmpty()) {
            return Optional.of(scenario.problem(
                    "car.front.spring",
                    "stands on no thread as far as the file says, nor does car.rear.spring; give the one that does its"
                            + " perch, for example \"perch\": {\"pitch\": \"2 mm\", \"raises\": \"20 mm\","
                            + " \"lowers\": \"25 mm\"}"));
        }
        boolean byHeights = measured.keySet().stream().anyMatch(asked::containsKey);
        if (!LevelledSetup.isWeighed(setup) && (crossWeight.isPresent() || !byHeights)) {
            return Optional.of(scenario.problem(
                    "car.mass",
                    "says nothing of the corners, so no cross weight is known; weigh them and give cornerWeights instead"
                            + " of mass and frontWeightFraction, or ask for heights: rideHeights in the file and"
                            + " --height \"frontLeft=349 mm\""));
        }
        for (Wheel wheel : Wheel.values()) {
            if (measured.containsKey(wheel) && !asked.containsKey(wheel)) {
                return Optional.of(scenario.problem(
                        "rideHeights",
                        "does not say which height is wanted at " + wheel.key()
                                + ", which was measured; write beside \"car\" \"rideHeights\": {\"" + wheel.key()
                                + "\": \"352 mm ± 3 mm\"}, or leave out --height"));
            }
        }
        return Optional.empty();
    }

    /** How much each corner is to come up by, where both heights are known. */
    Map<Wheel, Levelling.Rise> rises() {
        Map<Wheel, Levelling.Rise> rises = new EnumMap<>(Wheel.class);
        asked.forEach((wheel, height) -> {
            Quantity now = measured.get(wheel);
            if (now != null) {
                double tolerance = height.saysTolerance() ? height.tolerance() : Levelling.KEPT_WITHIN;
                rises.put(wheel, new Levelling.Rise(height.si() - now.si(), tolerance));
            }
        });
        return rises;
    }

    Levelling.Asked toAsk() {
        return new Levelling.Asked(crossWeight, rises(), barsHooked);
    }
}
