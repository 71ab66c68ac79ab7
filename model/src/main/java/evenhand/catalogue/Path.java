package evenhand.catalogue;

import evenhand.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keys from the car down to one value, such as {@code rear.lateralLocator.height}. */
public record Path(List<Step> steps) {
    private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)(?:\\[(\\d{1,6})])?");

    /** A key, and the place in its list or −1. */
    public record Step(String key, int index) {
        @Override
        public String toString() {
            return index < 0 ? key : key + "[" + index + "]";
        }
    }

    public Path {
        steps = List.copyOf(steps);
    }

    /**
     * Reads a path, with or without a leading {@code car.}.
     *
     * @throws InvalidValue if it is none
     */
    public static Path of(String text) {
        List<Step> steps = new ArrayList<>();
        String relative = text.strip().replaceFirst("^car\\.", "");
        for (String part : relative.split("\\.", -1)) {
            Matcher step = STEP.matcher(part.strip());
            if (!step.matches()) {
                throw new InvalidValue(
                        text, "is no path; write keys with dots between, for example rear.lateralLocator.height");
            }
            steps.add(new Step(step.group(1), step.group(2) == null ? -1 : Integer.parseInt(step.group(2))));
        }
        return new Path(steps);
    }

    /** A key below a path; either may be empty. */
    public static String join(String path, String key) {
        return path.isEmpty() || key.isEmpty() ? path + key : path + "." + key;
    }

    @Override
    public String toString() {
        return String.join(".", steps.stream().map(Step::toString).toList());
    }
}
