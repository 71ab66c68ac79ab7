package evenhand.terminal;

import evenhand.ride.Road;
import evenhand.ride.RoadClass;
import evenhand.words.RideWords;
import java.util.Locale;

/**
 * A road as it was asked for on the command line.
 *
 * @param road its roughness
 * @param words in a sentence: "a class B road (a good main road)"
 * @param key of its name in JSON: {@code class} or {@code file}
 * @param name "B", or the file
 */
record AskedRoad(Road road, String words, String key, String name) {
    static AskedRoad of(String text) throws Mistake {
        String name = text.strip();
        if (name.length() == 1) {
            try {
                RoadClass road = RoadClass.valueOf(name.toUpperCase(Locale.ROOT));
                return new AskedRoad(
                        road, "a class " + road.name() + " road (" + RideWords.like(road) + ")", "class", road.name());
            } catch (IllegalArgumentException e) {
                throw unknown(text);
            }
        }
        throw unknown(text);
    }

    private static Mistake unknown(String text) {
        return new Mistake("--road \"" + text + "\": write a class from A (smooth) to H (no road at all)");
    }
}
