package evenhand.terminal.asked;

import evenhand.answers.Ways;
import evenhand.car.Weights;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.report.PaperSize;
import evenhand.turn.Direction;
import evenhand.words.Units;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the texts of options mean. */
public final class OptionText {
    /** On smaller circles no car turns. m */
    private static final double LEAST_RADIUS = 4;
    /** On wider circles the road is straight. m */
    private static final double GREATEST_RADIUS = 1e6;

    /** Slower, a road is no road. m/s */
    private static final double LEAST_SPEED = Unit.of("km/h").toSi(1);

    private static final double GREATEST_SPEED = Unit.of("km/h").toSi(400);

    /** No road asks for more, g. */
    private static final double MOST_RESERVE = 5;

    /** No tyre on a road gives more along it, m/s². */
    private static final double MOST_ALONG = 2 * Weights.GRAVITY;

    private OptionText() {}

    /** A file by its name. */
    public static Path file(String name) throws Mistake {
        if (name.isBlank()) {
            throw new Mistake("the name of the file is empty");
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new Mistake("the name \"" + name
                    + "\" cannot be a file's here; where letters with accents are lost, set" + " LC_ALL=C.UTF-8");
        }
    }

    /** Paces, m/s², in the order given, each once. */
    public static List<Double> paces(List<String> texts) throws Mistake {
        List<Double> paces = new ArrayList<>();
        for (String text : texts) {
            double pace = quantity("--pace", text, Dimension.ACCELERATION, 1e4, "\"0.5 g\"");
            if (pace <= 0) {
                throw new Mistake("--pace \"" + text + "\": must be above zero, for example \"0.5 g\"");
            }
            if (!paces.contains(pace)) {
                paces.add(pace);
            }
        }
        return paces;
    }

    /** An acceleration along the path, m/s². */
    static double along(String text) throws Mistake {
        double along = quantity("--along", text, Dimension.ACCELERATION, 1e4, "\"-0.2 g\"");
        if (Math.abs(along) > MOST_ALONG) {
            throw new Mistake("--along \"" + text + "\": must lie between \"-2 g\" and \"2 g\"");
        }
        return along;
    }

    /** Sizes between two others, SI, in the order given, each once. */
    public static List<Double> sizes(
            String option, List<String> texts, Dimension dimension, double least, double most, String example)
            throws Mistake {
        List<Double> sizes = new ArrayList<>();
        for (String text : texts) {
            double size = size(option, text, dimension, least, most, example);
            if (!sizes.contains(size)) {
                sizes.add(size);
            }
        }
        return sizes;
    }

    /** Radii of the circles, m, in the order given. */
    static List<Double> radii(List<String> texts) throws Mistake {
        List<Double> radii = new ArrayList<>();
        for (String text : texts) {
            double radius = radius(text);
            if (radii.contains(radius)) {
                throw new Mistake("--radius \"" + text + "\": is given twice; name each circle once");
            }
            radii.add(radius);
        }
        return radii;
    }

    /** Radius of a circle, m. */
    public static double radius(String text) throws Mistake {
        double radius = quantity("--radius", text, Dimension.LENGTH, 1e12, "\"40 m\" or \"130 ft\"");
        if (radius < LEAST_RADIUS || radius > GREATEST_RADIUS) {
            throw new Mistake("--radius \"" + text + "\": must lie between "
                    + (inFeet(text) ? "\"13.2 ft\" and \"3280000 ft\"" : "\"4 m\" and \"1000000 m\""));
        }
        return radius;
    }

    /** A speed of travel, m/s. */
    public static double speed(String text) throws Mistake {
        double speed = quantity("--speed", text, Dimension.SPEED, 1e6, "\"80 km/h\" or \"50 mph\"");
        if (speed < LEAST_SPEED || speed > GREATEST_SPEED) {
            throw new Mistake("--speed \"" + text + "\": must lie between \"1 km/h\" and \"400 km/h\"");
        }
        return speed;
    }

    /** A height to let a body down by, m; below zero it is raised. */
    public static double lowering(String option, String text) throws Mistake {
        return quantity(option, text, Dimension.LENGTH, 1e3, "\"40 mm\" or \"1.5 in\"");
    }

    /** A reserve of travel, in g of the load at rest. */
    public static double reserve(String text) throws Mistake {
        double reserve = Dimension.ACCELERATION
                .metric()
                .fromSi(quantity("--keep-reserve", text, Dimension.ACCELERATION, 1e4, "\"1.0 g\""));
        if (reserve <= 0 || reserve > MOST_RESERVE) {
            throw new Mistake("--keep-reserve \"" + text + "\": must lie above zero and not above 5 g, for example"
                    + " \"1.0 g\"");
        }
        return reserve;
    }

    /** A size between two others, SI. */
    public static double size(
            String option, String text, Dimension dimension, double least, double most, String example) throws Mistake {
        double size = quantity(option, text, dimension, dimension.largest(), example);
        if (size < least || size > most) {
            throw new Mistake(option + " \"" + text + "\": must lie between "
                    + Quantity.of(least, dimension.metric()).text() + " and "
                    + Quantity.of(most, dimension.metric()).text() + ", for example " + example);
        }
        return size;
    }

    private static boolean inFeet(String text) {
        return text.contains("ft") || text.contains("in");
    }

    public static Ways ways(String text) throws Mistake {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "left" -> Ways.LEFT;
            case "right" -> Ways.RIGHT;
            case "both" -> Ways.BOTH;
            default -> throw new Mistake("--turn \"" + text + "\": write left, right or both");
        };
    }

    public static Direction direction(String text) throws Mistake {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "left" -> Direction.LEFT;
            case "right" -> Direction.RIGHT;
            default -> throw new Mistake("--turn \"" + text + "\": write left or right");
        };
    }

    /** Size of sheets. */
    public static PaperSize paper(String text) throws Mistake {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "a4" -> PaperSize.A4;
            case "letter" -> PaperSize.LETTER;
            default -> throw new Mistake("--paper \"" + text + "\": write a4 or letter");
        };
    }

    public static Units units(String text) throws Mistake {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "metric" -> Units.METRIC;
            case "imperial" -> Units.IMPERIAL;
            default -> throw new Mistake("--units \"" + text + "\": write metric or imperial");
        };
    }

    /** One end of the range of a change, in SI. */
    public static double end(String option, String text, Dimension dimension) throws Mistake {
        return quantity(option, text, dimension, dimension.largest(), dimension.example());
    }

    private static double quantity(String option, String text, Dimension dimension, double largest, String example)
            throws Mistake {
        try {
            Quantity quantity = Quantity.parse(text, dimension, largest);
            if (quantity.hasTolerance()) {
                throw new Mistake(option + " \"" + text + "\": takes no tolerance; leave out the ± and what follows");
            }
            return quantity.si();
        } catch (QuantityException e) {
            throw new Mistake(option + " \"" + text + "\": " + e.message(example));
        }
    }

    /** A whole number of an option. */
    public static long whole(String option, String text, long least, long most) throws Mistake {
        long number;
        try {
            number = Long.parseLong(text.strip());
        } catch (NumberFormatException e) {
            throw new Mistake(option + " \"" + text + "\": write a whole number, for example 2048");
        }
        if (number < least || number > most) {
            throw new Mistake(option + " " + text + ": must lie between " + least + " and " + most);
        }
        return number;
    }
}
