package evenhand.scenario;

import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.ride.RoadClass;
import evenhand.road.Profile;
import evenhand.road.RandomRoad;
import evenhand.road.RoadEvent;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the text of a road's event means: "hump 80 mm by 3.7 m". */
public final class EventText {
    public static final String KNOWN =
            "\"step 20 mm\", \"ramp 50 mm over 1 m\", \"kerb 60 mm\", \"hump 80 mm by 3.7 m\","
                    + " \"pothole 50 mm by 0.6 m\", \"ripples 10 mm by 1.2 m times 8\", \"road C\" or the name of a FILE.csv";

    /** A made-up road: always the same one, so that set-ups can be compared. */
    private static final long SEED = 1;

    /** Of the made-up road, m. */
    private static final double ROAD_LENGTH = 200;

    private static final int MOST_TIMES = 1000;
    private static final double LONGEST = 1000;
    private static final Pattern SHAPE = Pattern.compile("(\\p{Alpha}+)(?:\\s+(.*))?");

    private EventText() {}

    /** The text names no event. */
    private static final class Puzzled extends Exception {
        private static final long serialVersionUID = 1L;

        Puzzled(String what) {
            super(what);
        }
    }

    /**
     * Reads the text of an event.
     *
     * @param folder where the file of a measured profile is looked for, unless its name says where it is
     */
    public static EventReading read(String text, Path folder) {
        String said = text.strip();
        try {
            return said.toLowerCase(Locale.ROOT).endsWith(".csv")
                    ? measured(said, folder)
                    : new EventReading.Found(event(said));
        } catch (Puzzled unclear) {
            return new EventReading.Unclear(String.valueOf(unclear.getMessage()));
        }
    }

    private static EventReading measured(String name, Path folder) throws Puzzled {
        try {
            RoadReading reading = RoadFile.read(folder.resolve(name));
            return reading.profile()
                    .<EventReading>map(profile -> new EventReading.Found(level(profile.profile())))
                    .orElseGet(() -> new EventReading.Unread(reading.problems()));
        } catch (InvalidPathException e) {
            throw new Puzzled(
                    "this cannot be a file's name here; where letters with accents are lost, set LC_ALL=C.UTF-8");
        }
    }

    private static RoadEvent event(String said) throws Puzzled {
        Matcher shape = SHAPE.matcher(said);
        if (!shape.matches()) {
            throw unknown();
        }
        String rest = shape.group(2) == null ? "" : shape.group(2).strip();
        try {
            return switch (shape.group(1).toLowerCase(Locale.ROOT)) {
                case "step" -> level(Profile.step(length(rest, "step 20 mm")));
                case "ramp" -> {
                    List<String> parts = parts(rest, "ramp 50 mm over 1 m", "over");
                    yield level(Profile.ramp(length(parts.get(0)), length(parts.get(1))));
                }
                case "kerb" -> kerb(length(rest, "kerb 60 mm"));
                case "hump" -> {
                    List<String> parts = parts(rest, "hump 80 mm by 3.7 m", "by");
                    yield level(Profile.hump(length(parts.get(0)), length(parts.get(1))));
                }
                case "pothole" -> {
                    List<String> parts = parts(rest, "pothole 50 mm by 0.6 m", "by");
                    yield pothole(length(parts.get(0)), length(parts.get(1)));
                }
                case "ripples" -> {
                    List<String> parts = parts(rest, "ripples 10 mm by 1.2 m times 8", "by", "times");
                    yield level(Profile.ripples(length(parts.get(0)), length(parts.get(1)), times(parts.get(2))));
                }
                case "road" -> level(RandomRoad.of(roadClass(rest).roughness(), SEED, ROAD_LENGTH));
                default -> throw unknown();
            };
        } catch (InvalidValue e) {
            throw new Puzzled(e.component() + " " + e.getMessage());
        }
    }

    private static RoadEvent level(Profile profile) {
        return radius -> profile;
    }

    private static RoadEvent kerb(double height) {
        Profile.kerb(height, LONGEST); // says at once what no wheel could mend
        return radius -> Profile.kerb(height, radius);
    }

    private static RoadEvent pothole(double depth, double length) {
        Profile.pothole(depth, length, LONGEST);
        return radius -> Profile.pothole(depth, length, radius);
    }

    /** The parts between the words that must stand in this order. */
    private static List<String> parts(String rest, String example, String... words) throws Puzzled {
        String[] parts = new String[words.length + 1];
        String left = " " + rest + " ";
        for (int i = 0; i < words.length; i++) {
            Matcher word = Pattern.compile("(?i)\\s" + words[i] + "\\s").matcher(left);
            if (!word.find()) {
                throw new Puzzled("\"" + words[i] + "\" is missing; write for example \"" + example + "\"");
            }
            parts[i] = left.substring(0, word.start()).strip();
            left = left.substring(word.end() - 1);
        }
        parts[words.length] = left.strip();
        for (String part : parts) {
            if (part.isEmpty()) {
                throw new Puzzled("needs more; write for example \"" + example + "\"");
            }
        }
        return Arrays.asList(parts);
    }

    private static double length(String part, String example) throws Puzzled {
        if (part.isEmpty()) {
            throw new Puzzled("needs more; write for example \"" + example + "\"");
        }
        return length(part);
    }

    private static double length(String part) throws Puzzled {
        try {
            return Quantity.parse(part, Dimension.LENGTH, LONGEST).si();
        } catch (QuantityException e) {
            throw new Puzzled(e.message("\"20 mm\" or \"0.8 in\""));
        }
    }

    private static int times(String part) throws Puzzled {
        if (part.matches("\\d{1,4}")) {
            int times = Integer.parseInt(part);
            if (times >= 1 && times <= MOST_TIMES) {
                return times;
            }
        }
        throw new Puzzled("\"times " + part + "\": write a whole number from 1 to " + MOST_TIMES);
    }

    private static RoadClass roadClass(String part) throws Puzzled {
        for (RoadClass one : RoadClass.values()) {
            if (one.name().equalsIgnoreCase(part)) {
                return one;
            }
        }
        throw new Puzzled("the classes of roads are A (smooth) to H; write for example \"road C\"");
    }

    private static Puzzled unknown() {
        return new Puzzled("write " + KNOWN);
    }
}
