package evenhand.words.roadtest;

import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.doubt.Spread;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.roadtest.Findings;
import evenhand.roadtest.Gradient;
import evenhand.roadtest.Observation;
import evenhand.roadtest.Pace;
import evenhand.roadtest.Repeats;
import evenhand.roadtest.Unknowns;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What road tests say of a file, the verdict first. */
public final class RoadTestWords {
    /** What has moved by less than this part of its standard deviation is not told. */
    private static final double MOVED = 0.3;

    private static final int MOST_MOVED = 5;
    private static final int MOST_TOGETHER = 3;
    private static final int MOST_SUSPECTS = 3;

    /** What is said once beside all of it. */
    public static final String CAUTION = "Read at the limit only on a closed course, alone, after a mechanical check;"
            + " that file and road agree says that the numbers fit, not that the car is safe.";

    private final Units units;

    public RoadTestWords(Units units) {
        this.units = units;
    }

    /** Everything in sentences. */
    public List<String> all(Findings found) {
        List<String> all = new ArrayList<>(warnings(found));
        all.add(0, agreement(found.agreement()));
        all.addAll(moved(found));
        all.addAll(repeats(found.repeats()));
        next(found).ifPresent(all::add);
        return all;
    }

    /** Whether file and road agree. */
    public String agreement(Findings.Agreement agreement) {
        String sum = "χ² " + Numbers.significant(agreement.chiSquare(), 3) + " for " + agreement.degrees()
                + (agreement.degrees() == 1 ? " reading" : " readings") + ", probability "
                + (agreement.probability() < 0.001 ? "below 0.001" : Numbers.fixed(agreement.probability(), 3));
        if (!agreement.settled()) {
            return "The file and the road do not agree: no car within the tolerances comes to rest near these readings ("
                    + sum + ").";
        }
        return agreement.agrees()
                ? "The file and the road agree (" + sum + ")."
                : "The file and the road do not agree (" + sum
                        + "): a reading, a number of the file or a tolerance is wrong. What follows is the least unlikely car.";
    }

    /** What nobody may miss. */
    public List<String> warnings(Findings found) {
        List<String> all = new ArrayList<>();
        suspects(found).ifPresent(all::add);
        for (Findings.OfTest test : found.tests()) {
            String of = found.tests().size() > 1 ? " of \"" + test.test().name() + "\"" : "";
            for (Findings.Own own : test.own()) {
                if (own.suspect()) {
                    all.add("Look at the " + own.what().key() + of + " again: it was said to be "
                            + own(own.what(), own.before()) + ", the readings say " + own(own.what(), own.after())
                            + ".");
                }
            }
            for (Findings.Seen seen : test.seen()) {
                if (!seen.fits()) {
                    all.add("This reading" + of + " does not fit the others: " + reading(seen) + ".");
                }
                if (seen.after().beyondLimit()) {
                    all.add("The corrected car has no answer where this was read" + of + ": " + reading(seen)
                            + "; its limit stands for it.");
                }
                if (seen.observation() instanceof Observation.Limit limit
                        && limit.firstAxle().isPresent()
                        && seen.after().firstAxle().isPresent()
                        && !limit.firstAxle().equals(seen.after().firstAxle())) {
                    all.add("Turning " + limit.turn().key() + of + " the "
                            + limit.firstAxle().get().key() + " was seen to go first, the corrected car lets its "
                            + seen.after().firstAxle().get().key() + " go first.");
                }
            }
            for (End end : test.tooDamped()) {
                all.add("The " + end.key() + of + " is damped so much that there is hardly a next swing to be read.");
            }
        }
        found.together().stream()
                .limit(MOST_TOGETHER)
                .forEach(two -> all.add("These readings cannot tell " + two.one() + " from " + two.other()
                        + ": only both together are known."));
        if (found.effectiveShare() < Findings.ROUGH) {
            all.add("The intervals afterwards are rough: only "
                    + Numbers.percent(found.effectiveShare(), 0)
                    + " of the draws count when each is weighed by what the readings say of it.");
        }
        return all;
    }

    /** What cannot be believed any more: one false number makes suspects of all that could stand for it. */
    private Optional<String> suspects(Findings found) {
        List<Findings.Input> suspects =
                found.inputs().stream().filter(Findings.Input::suspect).toList();
        if (suspects.isEmpty()) {
            return Optional.empty();
        }
        List<String> told = suspects.stream()
                .limit(MOST_SUSPECTS)
                .map(input -> input.number().path() + " (the file has "
                        + shown(input.number().si(), input.number()) + ", the road says "
                        + shown(input.after(), input.number()) + ")")
                .toList();
        int more = suspects.size() - told.size();
        return Optional.of("Measure again: " + String.join(", ", told)
                + (more > 0 ? ", and " + more + " more that would explain the same, each by less" : "") + ".");
    }

    /** What has moved. */
    private List<String> moved(Findings found) {
        List<String> parts = new ArrayList<>();
        for (Findings.Input input : found.inputs()) {
            if (Math.abs(input.moved()) >= MOVED && parts.size() < MOST_MOVED) {
                parts.add(
                        input.number().path() + " from " + shown(input.number().si(), input.number()) + " to "
                                + shown(input.after(), input.number()) + " ± "
                                + shown(input.afterTolerance(), input.number()));
            }
        }
        for (Findings.OfTest test : found.tests()) {
            for (Findings.Own own : test.own()) {
                if (Math.abs(own.moved()) >= MOVED) {
                    parts.add("the " + own.what().key()
                            + (found.tests().size() > 1 ? " of \"" + test.test().name() + "\"" : "") + " from "
                            + own(own.what(), own.before()) + " to " + own(own.what(), own.after()) + " ± "
                            + own(own.what(), own.afterTolerance()));
                }
            }
        }
        return parts.isEmpty()
                ? List.of("The readings move no number by more than a third of its standard deviation.")
                : List.of("What the road corrects most: " + String.join("; ", parts) + ".");
    }

    /** What to read next. */
    public Optional<String> next(Findings found) {
        if (found.nextReadings().isEmpty() || found.narrowed().isEmpty()) {
            return Optional.empty();
        }
        Spread now = found.narrowed().get();
        List<String> parts = new ArrayList<>();
        for (Findings.Next next : found.nextReadings()) {
            parts.add(what(next) + " (leaves ± "
                    + units.show((next.high() - next.low()) / 2, now.judged().criterion()) + ")");
        }
        return Optional.of("Read next, for the " + JudgedWords.figure(now.judged()) + " of \""
                + found.setups().get(0).name() + "\", now "
                + units.show(now.low(), now.judged().criterion()) + " to "
                + units.show(now.high(), now.judged().criterion()) + ", by first-order doubt: "
                + String.join(", then ", parts) + ".");
    }

    private static String what(Findings.Next next) {
        return next.axle().isPresent()
                ? "the " + (next.channel().equals("frequency") ? "frequency" : "next swing") + " of the "
                        + next.axle().get().key() + " when it is bounced"
                : channel(next.channel()) + " at " + Units.pace(next.pace().orElse(0)) + " to the "
                        + next.turn().orElseThrow().key();
    }

    private static String channel(String key) {
        return key.equals("steeringWheel") ? "the steering wheel" : key.equals("roll") ? "the lean" : "the sideslip";
    }

    private List<String> repeats(Repeats repeats) {
        List<String> all = new ArrayList<>();
        for (Repeats.Spread one : repeats.spreads()) {
            all.add("From test to test of \"" + one.setup() + "\" the "
                    + one.figure().key() + " spreads by " + gradient(one.spread()) + ".");
        }
        for (Repeats.Difference one : repeats.differences()) {
            all.add("\"" + one.setup() + "\" has " + gradient(Math.abs(one.difference())) + " "
                    + (one.difference() >= 0 ? "more" : "less") + " "
                    + one.figure().key() + " than \"" + one.from()
                    + "\""
                    + (one.needed().isEmpty()
                            ? "; whether that is real nobody knows before one of them is driven again."
                            : one.isReal()
                                    ? ", which is real."
                                    : ", which may be chance: real would be more than "
                                            + gradient(one.needed().getAsDouble()) + "."));
        }
        repeats.spreads().stream()
                .filter(one -> one.degrees() == 1)
                .findFirst()
                .ifPresent(one -> all.add("One repeat alone says little of what differs from day to day: drive \""
                        + one.setup() + "\" a third time, and a smaller difference can be told."));
        for (Repeats.Drift one : repeats.drifts()) {
            all.add("From \"" + one.first() + "\" to \"" + one.last() + "\", both with \"" + one.setup() + "\", the "
                    + one.figure().key() + " drifted by " + Numbers.signed(deg(one.drift()), 2) + " deg/g.");
        }
        return all;
    }

    /** How to go on with the corrected car, in the terminal's words. */
    public static String goOn(String file) {
        return "The next change: \"evenhand effects " + file + " --tested --complaint ...\" ranks single changes on the"
                + " corrected car; \"evenhand roadtest " + file
                + " --card card.pdf --tested --setup ...\" foretells what"
                + " the next run will show.";
    }

    /** A gradient with its unit. */
    public static String gradient(double si) {
        return Numbers.fixed(deg(si), 2) + " deg/g";
    }

    private static double deg(double si) {
        return Dimension.UNDERSTEER_GRADIENT.metric().fromSi(si);
    }

    /** What was read where: "steering wheel at 0.42 g to the left". */
    public static String place(Findings.Seen seen) {
        Observation one = seen.observation();
        if (one instanceof Observation.Reading reading) {
            boolean felt = reading.pace() instanceof Pace.Accelerometer;
            return reading.channel().words() + " at " + (felt ? "a felt " : "")
                    + Units.exactPace(
                            felt ? reading.pace().acceleration(1) : seen.after().lateralAcceleration()) + " "
                    + reading.turn().key();
        } else if (one instanceof Observation.Limit limit) {
            return "limit " + limit.turn().key();
        }
        Observation.Bounce bounce = (Observation.Bounce) one;
        return bounce.axle().key() + " "
                + (bounce.swing() == Observation.Swing.FREQUENCY ? "bounce frequency" : "next swing");
    }

    /** A reading beside the file, and whether it fits the others: for whoever can still read it again. */
    public String beside(Findings.Seen seen) {
        String read = place(seen) + ": read " + value(seen, measured(seen)) + ", the file expects "
                + value(seen, seen.before().expected()) + " ± " + value(seen, seen.beforeHalfWidth());
        String said = read.substring(0, 1).toUpperCase(Locale.ROOT) + read.substring(1);
        return seen.fits() ? said + "." : said + ". It does not fit what was read before: read it again.";
    }

    /** Whether all that was read so far can be of one car. */
    public static String soFar(Findings.Agreement agreement) {
        return agreement.agrees()
                ? "So far the file and the road agree."
                : "So far the file and the road do not agree: a reading, a number of the file or a tolerance is wrong.";
    }

    private String reading(Findings.Seen seen) {
        return place(seen) + ", read " + value(seen, measured(seen)) + ", expected "
                + value(seen, seen.after().expected());
    }

    /** What was measured, in the unit of what is expected. */
    public static double measured(Findings.Seen seen) {
        Observation one = seen.observation();
        return one instanceof Observation.Reading reading
                ? reading.measured().value()
                : one instanceof Observation.Bounce bounce
                        ? bounce.measured().value()
                        : seen.after().lateralAcceleration();
    }

    /** The unit in which it is shown. */
    public static Unit unit(Findings.Seen seen) {
        Observation one = seen.observation();
        return one instanceof Observation.Reading
                ? Dimension.ANGLE.metric()
                : one instanceof Observation.Limit
                        ? Dimension.ACCELERATION.metric()
                        : ((Observation.Bounce) one).swing() == Observation.Swing.FREQUENCY
                                ? Dimension.FREQUENCY.metric()
                                : Dimension.RATIO.metric();
    }

    /** A number of it in a cell. */
    public static String cell(Findings.Seen seen, double si) {
        int digits = seen.observation() instanceof Observation.Reading ? 1 : 2;
        return Numbers.fixed(unit(seen).fromSi(si), digits);
    }

    private static String value(Findings.Seen seen, double si) {
        return (cell(seen, si) + " " + unit(seen).symbol()).strip();
    }

    /** A test's own, with its unit. */
    public String own(Unknowns.OfTest what, double si) {
        return switch (what) {
            case GRIP -> Numbers.fixed(si, 2);
            case STRAIGHT_AHEAD -> Numbers.fixed(Math.toDegrees(si), 1) + " deg";
            case RADIUS ->
                units == Units.METRIC
                        ? Numbers.fixed(si, 2) + " m"
                        : Numbers.fixed(Unit.of("ft").fromSi(si), 1) + " ft";
        };
    }

    /** A number of the car with its unit. */
    public String shown(double si, Adjustable number) {
        Unit unit = number.dimension() == Dimension.RATIO ? Dimension.RATIO.metric() : units.of(number.dimension());
        return (Numbers.significant(unit.fromSi(si), 3) + " " + unit.symbol()).strip();
    }

    /** The head of a gradient's row. */
    public static String head(Gradient gradient) {
        return gradient.figure().key() + ", "
                + gradient.turn().map(turn -> turn.key()).orElse("both ways").toLowerCase(Locale.ROOT);
    }
}
