package evenhand.scenario;

import evenhand.answers.Aim;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.catalogue.Nearest;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.ride.RoadClass;
import evenhand.turn.Direction;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What the text of a judge means: a figure ("understeer at 0.5 g"), an aim ("roll gradient at most 5.5 deg/g at 0.5 g"), a turn
 * ("turning right"), a road ("road C at 60 km/h"), an event of it ("hump 80 mm by 3.7 m at 30 km/h"), or the name of a load case.
 */
final class JudgeReading {
    static final String KNOWN =
            "a figure or an aim (\"understeer at 0.5 g\", \"seat comfort\", \"front first\", \"roll gradient"
                    + " at most 5.5 deg/g at 0.5 g\"), \"turning left\" or \"turning right\", a road (\"road C at 60 km/h\"), an event of"
                    + " it (\"hump 80 mm by 3.7 m at 30 km/h\") or the name of a load case";

    private static final Pattern TURN =
            Pattern.compile("(?:turning (left|right)|(left|right) turns?)", Pattern.CASE_INSENSITIVE);
    private static final Pattern EVENT =
            Pattern.compile("(?:step|ramp|kerb|hump|pothole|ripples)\\s+[0-9.].*", Pattern.CASE_INSENSITIVE);
    private static final Pattern ROAD = Pattern.compile("road\\s+(\\p{Alpha})", Pattern.CASE_INSENSITIVE);
    private static final Pattern AT_SPEED = Pattern.compile("(.*\\S)\\s+at\\s+(\\S.*)", Pattern.CASE_INSENSITIVE);

    /** How fast one drives over an event where nothing is said, m/s. */
    private static final double USUAL_SPEED = Unit.of("km/h").toSi(50);

    private static final double LEAST_SPEED = Unit.of("km/h").toSi(1);
    private static final double GREATEST_SPEED = Unit.of("km/h").toSi(400);

    private JudgeReading() {}

    /**
     * Reads a judge. What is none of the others is the name of a load case; whether there is one, the whole file tells.
     *
     * @throws InvalidValue if it begins as a judge and is none
     */
    static Judge read(String text) {
        String said = text.strip().replaceAll("[\\s\u00a0\u202f]+", " ");
        if (AimReading.begins(said)) {
            return figure(said);
        }
        Matcher turn = TURN.matcher(said);
        if (turn.matches()) {
            String way = turn.group(1) == null ? turn.group(2) : turn.group(1);
            return new Judge.Turning(way.equalsIgnoreCase("left") ? Direction.LEFT : Direction.RIGHT);
        }
        Matcher paced = AT_SPEED.matcher(said);
        String what = paced.matches() ? paced.group(1) : said;
        Optional<String> speed = paced.matches() ? Optional.of(paced.group(2)) : Optional.empty();
        Matcher road = ROAD.matcher(what);
        if (road.matches()) {
            return new Judge.OnRoad(roadClass(road.group(1)), speed(speed, Trial.USUAL_SPEED));
        }
        if (EVENT.matcher(what).matches()) {
            EventReading reading = EventText.read(what, Path.of(""));
            if (reading instanceof EventReading.Found) {
                return new Judge.Over(what, speed(speed, USUAL_SPEED));
            }
            throw invalid(reading instanceof EventReading.Unclear unclear ? unclear.what() : "names no event");
        }
        return new Judge.Aboard(text.strip());
    }

    private static Judge figure(String said) {
        try {
            Optional<Judged> alone = AimReading.figureAlone(said);
            if (alone.isPresent()) {
                return new Judge.OfFigure(alone.get(), Optional.empty());
            }
            Aim aim = AimReading.read(said);
            return new Judge.OfFigure(aim.judged(), Optional.of(aim));
        } catch (InvalidValue e) {
            throw invalid(String.valueOf(e.getMessage()));
        }
    }

    private static RoadClass roadClass(String name) {
        return Arrays.stream(RoadClass.values())
                .filter(one -> one.name().equals(name.toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> invalid("names no class of road; write \"road A\" to \"road H\""));
    }

    private static double speed(Optional<String> text, double usual) {
        if (text.isEmpty()) {
            return usual;
        }
        try {
            double speed = Quantity.parse(text.get(), Dimension.SPEED).si();
            if (speed < LEAST_SPEED || speed > GREATEST_SPEED) {
                throw invalid("has a speed that must lie between 1 and 400 km/h");
            }
            return speed;
        } catch (QuantityException e) {
            throw invalid(e.message("\"road C at 60 km/h\""));
        }
    }

    private static InvalidValue invalid(String remedy) {
        return new InvalidValue("judge", remedy);
    }

    /** What is wrong with a name that is no load case of the file's. */
    static String unknown(String name, List<String> loadCases) {
        String nearest = loadCases.isEmpty() ? "" : Nearest.to(name, loadCases);
        return "names no figure, load case, turn or road; write " + KNOWN
                + (loadCases.isEmpty()
                        ? ", of which this file has none"
                        : " (here "
                                + loadCases.stream()
                                        .map(one -> '"' + JsonReader.shown(one) + '"')
                                        .collect(Collectors.joining(", "))
                                + ")")
                + (Nearest.isSlip(name, nearest) ? "; did you mean \"" + nearest + "\"?" : "")
                + "; leave it out where no figure tells";
    }
}
