package evenhand.terminal;

import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.ride.RoadClass;
import evenhand.road.MeasuredProfile;
import evenhand.road.Profile;
import evenhand.road.RandomRoad;
import evenhand.road.RoadEvent;
import evenhand.scenario.RoadFile;
import evenhand.scenario.RoadReading;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the text of {@code --over} means. */
final class EventText {
    static final String KNOWN = "\"step 20 mm\", \"ramp 50 mm over 1 m\", \"kerb 60 mm\", \"hump 80 mm by 3.7 m\","
            + " \"pothole 50 mm by 0.6 m\", \"ripples 10 mm by 1.2 m times 8\", \"road C\" or the name of a FILE.csv";

    /** A made-up road: always the same one, so that set-ups can be compared. */
    private static final long SEED = 1;

    static final double ROAD_LENGTH = 200;

    private static final int MOST_TIMES = 1000;
    private static final double LONGEST = 1000;
    private static final Pattern SHAPE = Pattern.compile("(\\p{Alpha}+)(?:\\s+(.*))?");

    private final String text;

    private EventText(String text) {
        this.text = text;
    }

    /** The event; nothing after the problems of a road's file were told. */
    static Optional<RoadEvent> event(String text, Console console) throws Mistake {
        return new EventText(text).event(console);
    }

    private Optional<RoadEvent> event(Console console) throws Mistake {
        String said = text.strip();
        if (said.toLowerCase(Locale.ROOT).endsWith(".csv")) {
            return measured(said, console);
        }
        Matcher shape = SHAPE.matcher(said);
        if (!shape.matches()) {
            throw unknown();
        }
        String rest = shape.group(2) == null ? "" : shape.group(2).strip();
        try {
            return Optional.of(
                    switch (shape.group(1).toLowerCase(Locale.ROOT)) {
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
                            yield level(
                                    Profile.ripples(length(parts.get(0)), length(parts.get(1)), times(parts.get(2))));
                        }
                        case "road" -> level(RandomRoad.of(roadClass(rest).roughness(), SEED, ROAD_LENGTH));
                        default -> throw unknown();
                    });
        } catch (InvalidValue e) {
            throw new Mistake(start() + e.component() + " " + e.getMessage());
        }
    }

    private Optional<RoadEvent> measured(String name, Console console) throws Mistake {
        RoadReading reading = RoadFile.read(OptionText.file(name));
        reading.problems().forEach(problem -> console.complain(problem.toString()));
        return reading.profile().map(MeasuredProfile::profile).map(EventText::level);
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
    private List<String> parts(String rest, String example, String... words) throws Mistake {
        String[] parts = new String[words.length + 1];
        String left = " " + rest + " ";
        for (int i = 0; i < words.length; i++) {
            Matcher word = Pattern.compile("(?i)\\s" + words[i] + "\\s").matcher(left);
            if (!word.find()) {
                throw new Mistake(start() + "\"" + words[i] + "\" is missing; write for example \"" + example + "\"");
            }
            parts[i] = left.substring(0, word.start()).strip();
            left = left.substring(word.end() - 1);
        }
        parts[words.length] = left.strip();
        for (String part : parts) {
            if (part.isEmpty()) {
                throw new Mistake(start() + "needs more; write for example \"" + example + "\"");
            }
        }
        return Arrays.asList(parts);
    }

    private double length(String part, String example) throws Mistake {
        if (part.isEmpty()) {
            throw new Mistake(start() + "needs more; write for example \"" + example + "\"");
        }
        return length(part);
    }

    private double length(String part) throws Mistake {
        try {
            return Quantity.parse(part, Dimension.LENGTH, LONGEST).si();
        } catch (QuantityException e) {
            throw new Mistake(start()
                    + String.valueOf(e.getMessage()).replace(Dimension.LENGTH.example(), "\"20 mm\" or \"0.8 in\""));
        }
    }

    private int times(String part) throws Mistake {
        if (part.matches("\\d{1,4}")) {
            int times = Integer.parseInt(part);
            if (times >= 1 && times <= MOST_TIMES) {
                return times;
            }
        }
        throw new Mistake(start() + "\"times " + part + "\": write a whole number from 1 to " + MOST_TIMES);
    }

    private RoadClass roadClass(String part) throws Mistake {
        for (RoadClass one : RoadClass.values()) {
            if (one.name().equalsIgnoreCase(part)) {
                return one;
            }
        }
        throw new Mistake(start() + "the classes of roads are A (smooth) to H; write for example \"road C\"");
    }

    private Mistake unknown() {
        return new Mistake(start() + "write " + KNOWN);
    }

    private String start() {
        return "--over \"" + text + "\": ";
    }
}
