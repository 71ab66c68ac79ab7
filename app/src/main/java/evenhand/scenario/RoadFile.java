package evenhand.scenario;

import evenhand.quantity.Unseen;
import evenhand.road.MeasuredProfile;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads a measured road profile: the header {@value #HEADER}, then a distance and a height a line, at even steps.
 * Lines that begin with # and empty ones say nothing.
 */
public final class RoadFile {
    public static final String HEADER = "distance_m,height_m";

    private static final String KIND = "road profile";

    /** A step may differ so much from the first, as a part of it: what rounding to a few digits does. */
    private static final double UNEVEN = 0.02;

    /** No place of a road is higher or deeper, m. */
    private static final double GREATEST_HEIGHT = 1e4;

    /** No road is longer, m. */
    private static final double GREATEST_DISTANCE = 1e7;

    /** Between two points no road rises more, m. */
    private static final double GREATEST_RISE = 1;

    private static final Pattern NUMBER = Pattern.compile("[-+−]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");
    private static final int SHOWN = 30;
    private static final CsvRows.Cell START = new CsvRows.Cell("", 1, 1);

    private final Source source;
    private final Problems problems;
    private final List<Double> distances = new ArrayList<>();
    private final List<Double> heights = new ArrayList<>();
    private Optional<Double> heightBefore = Optional.empty();
    private boolean headed;
    private boolean stepsSound = true;

    private RoadFile(Source source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    /** Reads a file. */
    public static RoadReading read(Path file) {
        Problems problems = new Problems(file.toString());
        return reading(Source.read(file, KIND, problems), problems);
    }

    /** Reads what comes in from elsewhere than a file, told of by this name. */
    public static RoadReading read(String name, InputStream in) {
        Problems problems = new Problems(name);
        return reading(Source.readIn(in, KIND, problems), problems);
    }

    private static RoadReading reading(Optional<Source> read, Problems problems) {
        Optional<MeasuredProfile> profile = read.flatMap(source -> new RoadFile(source, problems).profile());
        return new RoadReading(problems.isEmpty() ? profile : Optional.empty(), problems.inOrder());
    }

    private Optional<MeasuredProfile> profile() {
        CsvRows.each(source, problems, row -> {
            row(row);
            return !problems.isFull();
        });
        if (!problems.isEmpty() && !headed) {
            return Optional.empty();
        }
        if (!headed) {
            problem(START, "header", "is missing: the first line must be " + HEADER);
        } else if (heights.size() < 2 && problems.isEmpty()) {
            problem(
                    START,
                    "",
                    heights.isEmpty()
                            ? "has no points; write a distance and a height in m on each line below the header"
                            : "has one point, which is no road; write at least two");
        }
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        int last = heights.size() - 1;
        return Optional.of(
                new MeasuredProfile(distances.get(0), (distances.get(last) - distances.get(0)) / last, heights));
    }

    private void row(List<CsvRows.Cell> row) {
        CsvRows.Cell first = row.get(0);
        String written = row.stream().map(CsvRows.Cell::text).collect(Collectors.joining(","));
        if (!headed) {
            headed = true;
            if (!written.equals(HEADER)) {
                problem(first, "header", "is \"" + shown(written) + "\"; it must be " + HEADER + ", both in metres");
            }
            return;
        }
        if (row.size() != 2) {
            String has = row.size() < 2 ? "has one value" : "has more than two values";
            problem(
                    first,
                    "",
                    (written.indexOf(';') >= 0 ? "has semicolons" : has)
                            + "; write a distance and a height with one comma between them, and a point in decimals");
            stepsSound = false; // the next step would seem twice as long
            heightBefore = Optional.empty();
            return;
        }
        Optional<Double> distance = number(first, "distance_m", GREATEST_DISTANCE);
        Optional<Double> height = number(row.get(1), "height_m", GREATEST_HEIGHT);
        if (distance.isPresent()) {
            step(first, distance.get());
        } else {
            stepsSound = false; // the next step would seem twice as long
        }
        height.ifPresent(there -> rise(row.get(1), there));
        heightBefore = height;
    }

    private Optional<Double> number(CsvRows.Cell cell, String name, double greatest) {
        String text = cell.text();
        if (text.isEmpty()) {
            problem(
                    cell,
                    name,
                    "is empty: the road has a gap here; measure the point or close the gap with a straight line");
            return Optional.empty();
        }
        if (!NUMBER.matcher(text).matches()) {
            problem(
                    cell,
                    name,
                    "is no number: \"" + shown(text)
                            + "\"; write metres with a decimal point and no unit, for example 0.25");
            return Optional.empty();
        }
        double value = Double.parseDouble(text.replace('−', '-'));
        if (Math.abs(value) > greatest) {
            problem(cell, name, "is " + shown(text) + " m, which no road has; write metres");
            return Optional.empty();
        }
        return Optional.of(value);
    }

    private void step(CsvRows.Cell at, double distance) {
        int count = distances.size();
        if (count > 0) {
            double step = distance - distances.get(count - 1);
            if (!(step > 0)) {
                problem(at, "distance_m", "does not rise; each point must lie beyond the one before");
                stepsSound = false;
            } else if (count > 1 && stepsSound) {
                evenStep(at, step, distances.get(1) - distances.get(0));
            }
        }
        distances.add(distance);
    }

    private void rise(CsvRows.Cell at, double height) {
        if (heightBefore.isPresent() && Math.abs(height - heightBefore.get()) > GREATEST_RISE) {
            problem(at, "height_m", "jumps by more than 1 m from the point before; heights are in metres");
        }
        heights.add(height);
    }

    private void evenStep(CsvRows.Cell at, double step, double first) {
        if (Math.abs(step - first) <= UNEVEN * first) {
            return;
        }
        stepsSound = false; // the steps after it would say the same
        String says = "is " + metres(step) + " m beyond the point before, the first step is " + metres(first) + " m; ";
        problem(
                at,
                "distance_m",
                says
                        + (step > 1.5 * first
                                ? "the road has a gap here: measure the points between or fill them in"
                                : "steps must be even: measure at even steps, or write the distances with more digits"));
    }

    private static String metres(double length) {
        return Double.toString(Math.round(length * 1e6) / 1e6);
    }

    private void problem(CsvRows.Cell at, String where, String what) {
        problems.at(new Place(where, at.line(), at.column(), 0, 0), what);
    }

    private static String shown(String text) {
        return text.codePointCount(0, text.length()) <= SHOWN
                ? Unseen.shown(text)
                : Unseen.shown(text.substring(0, text.offsetByCodePoints(0, SHOWN))) + "…";
    }
}
