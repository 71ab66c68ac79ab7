package evenhand.words.level;

import evenhand.answers.Answers;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.level.Levelling;
import evenhand.level.Posture;
import evenhand.quantity.Dimension;
import evenhand.turn.PacesAnswer;
import evenhand.turn.Wheel;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import evenhand.words.level.LevelledSetup.Levelled;
import evenhand.words.level.LevelledSetup.Turned;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the perches do, in sentences. */
public final class LevelWords {
    /** Fewer turns are none. */
    private static final double NO_TURN = 0.005;

    /** Smaller changes of a height are none, m. */
    private static final double NO_RISE = 0.00005;

    /** What is missed by less is met: of a cross weight as a part, of a height in m. */
    private static final double MET = 1e-6;

    /** How the turns are to be read. */
    public static final String UP = "Up raises the body at its corner and loads it; it loads the corner across as well,"
            + " and takes load off the other two.";

    private LevelWords() {}

    /** All sentences, the verdict first. */
    static List<String> of(Levelled one, Units units) {
        Levelling level = one.levelling();
        List<String> words = new ArrayList<>();
        words.add(verdict(one));
        if (level.status() == Levelling.Status.NEAREST) {
            words.add(nearest(one, units));
        }
        if (turnsAny(level)) {
            words.add(UP);
            quarters(one).ifPresent(words::add);
        }
        bars(one).ifPresent(words::add);
        words.add(heights(one, units));
        words.add(sides(one.rest().car(), one.weighed()));
        coils(level).ifPresent(words::add);
        one.turns().ifPresent(turned -> balance(turned).ifPresent(words::add));
        one.load().ifPresent(load -> words.add(LoadWords.sits(load, one.rest(), units)));
        return words;
    }

    private static boolean turnsAny(Levelling level) {
        return level.turns().stream().anyMatch(turns -> Math.abs(turns) >= NO_TURN);
    }

    private static String verdict(Levelled one) {
        Levelling level = one.levelling();
        List<String> what = new ArrayList<>();
        if (one.wanted().crossWeight().isPresent()) {
            what.add("cross weight " + percent(level.now().crossWeight()) + " now, "
                    + percent(one.wanted().crossWeight().getAsDouble()) + " wanted");
        }
        if (!one.wanted().rises().isEmpty()) {
            what.add("heights of " + one.wanted().rises().size() + " corners asked for");
        }
        String asked = String.join("; ", what);
        String done = level.status() == Levelling.Status.MET ? "" : ", to come as near as can be";
        return capital(asked) + ": "
                + (turnsAny(level) ? "turn the perches " + turns(level) + done + "." : "no perch has to be turned.");
    }

    /** "left front 3.02 turns down, right front 3.02 up". */
    private static String turns(Levelling level) {
        List<String> all = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            double turns = level.turns(wheel);
            if (Math.abs(turns) >= NO_TURN) {
                String number = Numbers.fixed(Math.abs(turns), 2);
                all.add(wheel.words() + " " + number + (all.isEmpty() ? " turns " : " ") + way(turns));
            }
        }
        return String.join(", ", all);
    }

    /** Which way a perch is turned. */
    public static String way(double turns) {
        return turns < 0 ? "down" : "up";
    }

    private static String nearest(Levelled one, Units units) {
        Levelling level = one.levelling();
        List<String> missed = new ArrayList<>();
        if (one.wanted().crossWeight().isPresent()
                && Math.abs(level.after().crossWeight()
                                - one.wanted().crossWeight().getAsDouble())
                        > MET) {
            missed.add("a cross weight of " + percent(one.wanted().crossWeight().getAsDouble())
                    + " is out of reach, the nearest is "
                    + percent(level.after().crossWeight()));
        }
        one.wanted().rises().forEach((wheel, rise) -> {
            double off = level.after().corner(wheel).rise() - rise.wanted();
            if (Math.abs(off) > rise.tolerance() + MET) {
                missed.add("the " + wheel.words() + " stays " + length(Math.abs(off), units)
                        + (off < 0 ? " lower" : " higher") + " than asked");
            }
        });
        String why =
                level.heldBy().stream().map(LevelWords::inTheWay).distinct().collect(Collectors.joining(", "));
        return capital(String.join(", ", missed)) + (why.isEmpty() ? "." : ": " + why + ".");
    }

    private static String inTheWay(Levelling.Hold hold) {
        String where = hold.wheel().words();
        return switch (hold.limit()) {
            case THREAD_UP -> "the " + where + " perch has no thread left to go up";
            case THREAD_DOWN -> "the " + where + " perch has no thread left to go down";
            case COILS -> "the " + where + " spring's coils would bind before metal meets";
            case HEIGHT -> "the " + where + " stands at the end of what its height may be off";
        };
    }

    private static Optional<String> quarters(Levelled one) {
        return one.levelling().afterRounded().map(after -> {
            String text = "In quarters of a turn ("
                    + one.levelling().rounded().stream()
                            .map(turns -> Numbers.signed(turns, 2))
                            .collect(Collectors.joining(", "))
                    + " in the order of the table)";
            return one.weighed()
                    ? text + " it comes to " + percent(after.crossWeight()) + "."
                    : text + " the heights stay within a quarter's worth of these.";
        });
    }

    private static Optional<String> bars(Levelled one) {
        Car car = one.rest().car();
        boolean front = car.front().bar().isPresent();
        boolean rear = car.rear().bar().isPresent();
        if (!front && !rear) {
            return Optional.empty();
        }
        String which = front && rear ? "both bars" : front ? "the front bar" : "the rear bar";
        return Optional.of(
                one.wanted().barsHooked()
                        ? "This is with " + which
                                + " hooked up, which hold the car as crooked as it was: hook them up anew"
                                + " without preload, and the cross weight goes on moving."
                        : "Unhook " + which + " first; hook up again without preload when the scales are right, the car"
                                + " level.");
    }

    private static String heights(Levelled one, Units units) {
        Posture after = one.levelling().after();
        double most = 0;
        Wheel where = Wheel.FRONT_LEFT;
        for (Wheel wheel : Wheel.values()) {
            double rise = after.corner(wheel).rise();
            if (Math.abs(rise) > Math.abs(most)) {
                most = rise;
                where = wheel;
            }
        }
        String moved = Math.abs(most) < NO_RISE
                ? "No corner moves in height."
                : "The " + where.words() + " moves most in height, by " + length(Math.abs(most), units)
                        + (most < 0 ? " down" : " up") + ".";
        if (!one.wanted().rises().isEmpty()) {
            return one.wanted()
                    .measuredOn()
                    .map(day -> "Heights now are those that the book has of " + day + ". " + moved)
                    .orElse(moved);
        }
        if (one.wanted().asked().isEmpty()) {
            return moved + " No heights are asked for (rideHeights in the file), so all are kept within "
                    + length(Levelling.KEPT_WITHIN, units) + " of what they are, a usual tolerance.";
        }
        return moved + " Heights are asked for, but none was measured: they are kept within "
                + length(Levelling.KEPT_WITHIN, units)
                + " of what they are. Measure them (--height), and the perches bring them there.";
    }

    private static String sides(Car car, boolean weighed) {
        String front = "front " + percent(LevelledSetup.share(car, End.FRONT));
        if (!weighed) {
            return "The corners were not weighed: loads are changes only, and no cross weight can be told. What an axle"
                    + " carries (" + front + ") no perch moves.";
        }
        double left = (car.staticLoad(End.FRONT, Side.LEFT) + car.staticLoad(End.REAR, Side.LEFT))
                / (car.weights().mass() * Weights.GRAVITY);
        return "What an axle and a side carry is where the masses are (" + front + ", left " + percent(left)
                + "); no perch moves that.";
    }

    private static Optional<String> coils(Levelling level) {
        List<String> bound = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            if (level.after().corner(wheel).coilMargin().orElse(1) < -NO_RISE) {
                boolean before = level.now().corner(wheel).coilMargin().orElse(1) < 0;
                bound.add(wheel.words() + (before ? " (as before)" : ""));
            }
        }
        return bound.isEmpty()
                ? Optional.empty()
                : Optional.of("Coils bind before metal meets: " + String.join(", ", bound) + ".");
    }

    /** "Turning left its limit goes from 0.903 to 0.881 g, turning right from 0.877 to 0.899 g: ..." */
    private static Optional<String> balance(Turned turned) {
        List<String> ways = new ArrayList<>();
        for (int bend = 0; bend < turned.before().bends().size(); bend++) {
            Answers.Bend before = turned.before().bends().get(bend);
            Answers.Bend after = turned.after().bends().get(bend);
            if (before.turn() instanceof PacesAnswer.Paces was && after.turn() instanceof PacesAnswer.Paces is) {
                String first = LimitWords.first(was.limit());
                String then = LimitWords.first(is.limit());
                ways.add("turning " + before.direction().key() + " from "
                        + Units.exactPace(was.limit().lateralAcceleration()) + " to "
                        + Units.exactPace(is.limit().lateralAcceleration()) + " ("
                        + (first.equals(then) ? first + " first" : first + " first before, then " + then) + ")");
            }
        }
        Optional<String> split = LimitWords.split(turned.after());
        return ways.isEmpty()
                ? Optional.empty()
                : Optional.of("The limit goes, " + String.join(", ", ways) + "."
                        + split.map(words -> " " + words).orElse(""));
    }

    /** Why a car whose body was let down cannot be turned further. */
    static String spent(Levelling.Spent spent) {
        return String.format(
                Locale.ROOT,
                "its lowered uses %.1f mm of thread at the %s, and %.1f mm were left: give more, or lower it less",
                1000 * Math.abs(spent.used()),
                spent.wheel().words(),
                1000 * spent.left());
    }

    private static String percent(double ratio) {
        return Numbers.percent(ratio, 1);
    }

    private static String length(double metres, Units units) {
        return units.show(metres, Dimension.LENGTH, units == Units.METRIC ? 1 : 2);
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
