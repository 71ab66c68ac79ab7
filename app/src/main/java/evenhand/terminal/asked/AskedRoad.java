package evenhand.terminal.asked;

import evenhand.quantity.Unit;
import evenhand.ride.MeasuredRoad;
import evenhand.ride.Road;
import evenhand.ride.RoadClass;
import evenhand.road.MeasuredProfile;
import evenhand.scenario.Problem;
import evenhand.scenario.RoadFile;
import evenhand.scenario.RoadReading;
import evenhand.words.Numbers;
import evenhand.words.ride.RideWords;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A road as it was asked for on the command line.
 *
 * @param road its roughness
 * @param words in a sentence: "a class B road (a good main road)"
 * @param key of its name in JSON: {@code class} or {@code file}
 * @param name "B", or the file
 */
public record AskedRoad(Road road, String words, String key, String name) {
    /** A measured road that has nothing slower than this leaves out the body's own movement, Hz. */
    private static final double SLOWEST_NEEDED = 0.7;

    /** A class by its letter, or a profile by its file; nothing after the file's problems were told. */
    public static Optional<AskedRoad> of(String text, Consumer<String> problems) throws Mistake {
        String name = text.strip();
        if (name.length() == 1) {
            try {
                RoadClass road = RoadClass.valueOf(name.toUpperCase(Locale.ROOT));
                return Optional.of(new AskedRoad(
                        road, "a class " + road.name() + " road (" + RideWords.like(road) + ")", "class", road.name()));
            } catch (IllegalArgumentException e) {
                throw unknown(text, "write");
            }
        }
        Path file = OptionText.file(name);
        if (!Files.exists(file)) {
            throw unknown(text, "there is no such file; write");
        }
        RoadReading reading = RoadFile.read(file);
        for (Problem problem : reading.problems()) {
            problems.accept(problem.toString());
        }
        return reading.profile().isPresent()
                ? Optional.of(measured(name, reading.profile().get()))
                : Optional.empty();
    }

    /** A road beside a car's file, whose first problem is a mistake of the command line. */
    static AskedRoad sound(String text) throws Mistake {
        List<String> problems = new ArrayList<>();
        Optional<AskedRoad> road = of(text, problems::add);
        if (road.isEmpty()) {
            throw new Mistake("--road \"" + text + "\": " + problems.get(0));
        }
        return road.get();
    }

    private static AskedRoad measured(String name, MeasuredProfile profile) throws Mistake {
        int points = profile.heights().size();
        if (points < MeasuredRoad.LEAST_POINTS) {
            throw new Mistake("--road \"" + name + "\": has " + points + " points, and a spectrum needs at least "
                    + MeasuredRoad.LEAST_POINTS + "; take a longer profile");
        }
        MeasuredRoad road = MeasuredRoad.of(profile.spacing(), profile.heights());
        String words = "the measured road " + name + " (" + Numbers.fixed(profile.length(), 0) + " m of it, waves from "
                + Numbers.significant(1 / road.highest(), 2) + " to " + Numbers.significant(1 / road.lowest(), 2)
                + " m, most like class " + road.nearestClass().name() + ")";
        return new AskedRoad(road, words, "file", name);
    }

    /** Its name, if this is what its name is called. */
    public Optional<String> named(String kind) {
        return kind.equals(key) ? Optional.of(name) : Optional.empty();
    }

    /** What is missing at this speed, m/s, in a road that was measured over too short a way. */
    public Optional<String> warning(double speed) {
        double slowest = road.lowest() * speed;
        return slowest > SLOWEST_NEEDED
                ? Optional.of("At this speed the profile has nothing slower than " + Numbers.fixed(slowest, 1)
                        + " Hz, as it is short: the body's own swinging is left out, and comfort and travel look better than"
                        + " they are. Measure a longer one, or go slower than "
                        + Numbers.fixed(Unit.of("km/h").fromSi(SLOWEST_NEEDED / road.lowest()), 0) + " km/h.")
                : Optional.empty();
    }

    private static Mistake unknown(String text, String remedy) {
        return new Mistake("--road \"" + text + "\": " + remedy
                + " a class from A (smooth) to H (no road at all), or the file of a measured profile");
    }
}
