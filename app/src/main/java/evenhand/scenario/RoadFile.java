package evenhand.scenario;

import evenhand.quantity.Unseen;
import evenhand.road.MeasuredProfile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads a measured road profile: the header {@value #HEADER}, then a distance and a height a line, at even steps.
 * Lines that begin with # and empty ones say nothing.
 */
public final class RoadFile {
    public static final String HEADER = "distance_m,height_m";

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
        Optional<MeasuredProfile> profile =
                Source.read(file, "road profile", problems).flatMap(source -> new RoadFile(source, problems).profile());
        return new RoadReading(problems.isEmpty() ? profile : Optional.empty(), problems.inOrder());
    }

    private Optional<MeasuredProfile> profile() {
        String text = source.text();
        int from = text.startsWith("\uFEFF") ? 1 : 0;
        while (from < text.length() && !problems.isFull()) {
            int end = text.indexOf('\n', from);
            end = end < 0 ? text.length() : end;
            line(from, end);
            from = end + 1;
        }
        if (!headed) {
            problem(0, "header", "is missing: the first line must be " + HEADER);
        } else if (heights.size() < 2 && problems.isEmpty()) {
            problem(
                    0,
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

    private void line(int from, int end) {
        String line = source.text().substring(from, end).stripTrailing();
        String bare = line.strip();
        if (bare.isEmpty() || bare.startsWith("#")) {
            return;
        }
        int start = from + line.indexOf(bare);
        if (!headed) {
            headed = true;
            if (!bare.replaceAll("\\s*,\\s*", ",").equals(HEADER)) {
                problem(start, "header", "is \"" + shown(bare) + "\"; it must be " + HEADER + ", both in metres");
            }
            return;
        }
        int comma = bare.indexOf(',');
        if (comma < 0 || bare.indexOf(',', comma + 1) >= 0) {
            problem(
                    start,
                    "",
                    (bare.indexOf(';') >= 0
                                    ? "has semicolons"
                                    : comma < 0 ? "has one value" : "has more than two values")
                            + "; write a distance and a height with one comma between them, and a point in decimals");
            stepsSound = false; // the next step would seem twice as long
            heightBefore = Optional.empty();
            return;
        }
        Optional<Double> distance = number(start, bare.substring(0, comma), "distance_m", GREATEST_DISTANCE);
        Optional<Double> height = number(start + comma + 1, bare.substring(comma + 1), "height_m", GREATEST_HEIGHT);
        if (distance.isPresent()) {
            step(start, distance.get());
        } else {
            stepsSound = false; // the next step would seem twice as long
        }
        height.ifPresent(there -> rise(start + comma + 1, there));
        heightBefore = height;
    }

    private Optional<Double> number(int at, String field, String name, double greatest) {
        String text = field.strip();
        int start = at + Math.max(0, field.indexOf(text));
        if (text.isEmpty()) {
            problem(
                    start,
                    name,
                    "is empty: the road has a gap here; measure the point or close the gap with a straight line");
            return Optional.empty();
        }
        if (!NUMBER.matcher(text).matches()) {
            problem(
                    start,
                    name,
                    "is no number: \"" + shown(text)
                            + "\"; write metres with a decimal point and no unit, for example 0.25");
            return Optional.empty();
        }
        double value = Double.parseDouble(text.replace('−', '-'));
        if (Math.abs(value) > greatest) {
            problem(start, name, "is " + shown(text) + " m, which no road has; write metres");
            return Optional.empty();
        }
        return Optional.of(value);
    }

    private void step(int at, double distance) {
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

    private void rise(int at, double height) {
        if (heightBefore.isPresent() && Math.abs(height - heightBefore.get()) > GREATEST_RISE) {
            problem(at, "height_m", "jumps by more than 1 m from the point before; heights are in metres");
        }
        heights.add(height);
    }

    private void evenStep(int at, double step, double first) {
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

    private void problem(int at, String where, String what) {
        problems.at(source.place(where, at, at), what);
    }

    private static String shown(String text) {
        return text.codePointCount(0, text.length()) <= SHOWN
                ? Unseen.shown(text)
                : Unseen.shown(text.substring(0, text.offsetByCodePoints(0, SHOWN))) + "…";
    }
}
