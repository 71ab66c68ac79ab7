package evenhand.words.road;

import evenhand.answers.BumpFigures;
import evenhand.answers.Figure;
import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.bump.SeatMotion;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.turn.Wheel;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** What an event of the road does to a car, in plain sentences. */
public final class BumpWords {
    /** Less grip than this, as a ratio, nobody misses. */
    private static final double GRIP_WORTH_SAYING = 0.005;

    /** What is said of peaks once metal is met. */
    static final String NO_FORECAST =
            "From where metal meets, the peaks are no forecast: how hard that blow is, the shell"
                    + " and its brackets decide, whose give is assumed here; take it that it strikes, not how hard.";

    private final Units units;
    private final List<String> sentences = new ArrayList<>();

    private BumpWords(Units units) {
        this.units = units;
    }

    /**
     * What is driven over, how fast and where: "Over hump 80 mm by 3.7 m at 50 km/h, straight ahead."
     *
     * @param over as it was asked for
     * @param speed m/s
     * @param pace lateral acceleration in mid-corner, m/s²
     */
    public static String where(String over, double speed, OptionalDouble pace, Direction direction, Units units) {
        String way = pace.isPresent()
                ? ", turning " + direction.key() + " at "
                        + Units.pace(pace.getAsDouble()) + " on a radius of "
                        + RoughnessWords.road(speed * speed / pace.getAsDouble(), units)
                : ", straight ahead";
        return "Over " + over + " at " + units.show(speed, Dimension.SPEED, 0) + way + ".";
    }

    /** What "grip lost" means. */
    public static String gripLost(boolean inCorner) {
        return "Grip lost: part of the side force that changes of load take, from the beginning until half a second"
                + " after the event, "
                + (inCorner
                        ? "at the slip that the wheel has in the corner."
                        : "of the most that the tyre could give.");
    }

    /** The one sentence to be read first: whether it skips, what it strikes, and what that costs. */
    public static String inShort(BumpAnswer answer, Direction direction, Units units) {
        if (answer instanceof BumpAnswer.None none) {
            return "No answer: " + none.text() + ".";
        }
        if (answer instanceof BumpAnswer.BeyondLimit beyond) {
            return beyondLimit(beyond);
        }
        List<BumpWheel> wheels = BumpWheel.of(answer, direction);
        BumpWords words = new BumpWords(units);
        String jolt = answer instanceof BumpAnswer.Straight straight ? words.seat(straight.seat()) : words.jolt(wheels);
        return words.contacts(wheels) + "; " + stops(wheels) + "; " + jolt + ends(answer) + "." + noForecast(wheels);
    }

    /** Said where metal was met: what gives then is the shell, of which the sums know nothing. */
    private static String noForecast(List<BumpWheel> wheels) {
        return wheels.stream().anyMatch(wheel -> wheel.bump().metalTouched()) ? " " + NO_FORECAST : "";
    }

    private String contacts(List<BumpWheel> wheels) {
        List<BumpWheel> off = wheels.stream()
                .filter(wheel -> wheel.bump().timeOffGround() > 0)
                .toList();
        if (off.isEmpty()) {
            BumpWheel lightest = Collections.min(
                    wheels, Comparator.comparingDouble(wheel -> wheel.bump().leastTyreLoad()));
            return "no tyre leaves the ground, the " + lightest.name() + " comes nearest with "
                    + show(BumpFigures.LEAST_TYRE_LOAD, lightest.bump()) + " left";
        }
        BumpWheel longest = Collections.max(
                off, Comparator.comparingDouble(wheel -> wheel.bump().timeOffGround()));
        String time = show(BumpFigures.TIME_OFF_GROUND, longest.bump()) + " in all";
        return off.size() == 1
                ? "the " + longest.name() + " tyre is off the ground for " + time
                : (off.size() == wheels.size() ? "every tyre" : "the " + names(off) + " tyres")
                        + (off.size() == wheels.size() ? " leaves" : " leave") + " the ground, the " + longest.name()
                        + " for longest, " + time;
    }

    private static String names(List<BumpWheel> wheels) {
        List<String> names = wheels.stream().map(BumpWheel::name).toList();
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    private static String stops(List<BumpWheel> wheels) {
        List<String> struck = new ArrayList<>();
        struck(struck, "metal meets metal at the ", wheels, Bump::metalTouched);
        struck(struck, "the bump stop is struck at the ", wheels, bump -> bump.stopTouched() && !bump.metalTouched());
        struck(struck, "the droop stop at the ", wheels, Bump::droopStopReached);
        return struck.isEmpty() ? "no stop is struck" : String.join(", ", struck);
    }

    private static void struck(List<String> struck, String words, List<BumpWheel> wheels, Predicate<Bump> happened) {
        List<BumpWheel> those =
                wheels.stream().filter(wheel -> happened.test(wheel.bump())).toList();
        if (!those.isEmpty()) {
            struck.add(words + names(those));
        }
    }

    private String seat(SeatMotion seat) {
        return "the seat's mounting is jolted by "
                + units.show(seat.peakAcceleration(), Dimension.ACCELERATION, units.digits(BumpFigures.SEAT_PEAK))
                + " at most";
    }

    private String jolt(List<BumpWheel> wheels) {
        BumpWheel jolted = Collections.max(
                wheels, Comparator.comparingDouble(wheel -> wheel.bump().peakBodyAcceleration()));
        return "the hardest jolt is " + show(BumpFigures.PEAK_BODY_ACCELERATION, jolted.bump()) + " at the "
                + jolted.name();
    }

    /** What the load changes take from each end. */
    private static String ends(BumpAnswer answer) {
        double front = lost(answer, End.FRONT);
        double rear = lost(answer, End.REAR);
        if (Math.max(front, rear) < GRIP_WORTH_SAYING) {
            return "";
        }
        return "; the front loses " + percent(front) + " of its side grip and the rear " + percent(rear);
    }

    private static double lost(BumpAnswer answer, End end) {
        if (answer instanceof BumpAnswer.InCorner corner) {
            return corner.gripLost(end).orElse(0);
        }
        Bump bump = answer instanceof BumpAnswer.Straight straight
                ? straight.axles().get(end)
                : null;
        return bump == null ? 0 : bump.gripLost().orElse(0);
    }

    private static String percent(double share) {
        Unit unit = Unit.of("%");
        return Numbers.fixed(unit.fromSi(share), 1) + " " + unit.symbol();
    }

    private static String beyondLimit(BumpAnswer.BeyondLimit beyond) {
        return "The car does not hold " + Units.pace(beyond.lateralAcceleration())
                + " at this speed at all: it is beyond its limit.";
    }

    /** The sentences of one set-up, in the order to be read; none where it has no answer. */
    public static List<String> of(Car car, BumpAnswer answer, Direction direction, Units units) {
        BumpWords words = new BumpWords(units);
        if (answer instanceof BumpAnswer.Straight straight) {
            words.sentences.add("Where the driver sits, with both axles going over it one after the other, "
                    + words.seat(straight.seat()) + ".");
            straight(words, straight.axles());
        } else if (answer instanceof BumpAnswer.InCorner corner) {
            corner(words, corner.wheels(), direction);
        } else if (answer instanceof BumpAnswer.BeyondLimit beyond) {
            words.sentences.add(beyondLimit(beyond));
        }
        if (answer instanceof BumpAnswer.Straight || answer instanceof BumpAnswer.InCorner) {
            if (BumpWheel.of(answer, direction).stream()
                    .anyMatch(wheel -> wheel.bump().metalTouched())) {
                words.sentences.add(NO_FORECAST);
            }
            words.dampers(car);
        }
        return words.sentences;
    }

    private static void straight(BumpWords words, Map<End, Bump> axles) {
        for (End end : End.values()) {
            Bump bump = axles.get(end);
            if (bump != null) {
                words.wheel(end == End.FRONT ? "Front" : "Rear", bump);
                words.grip(bump);
                words.rest(bump);
            }
        }
    }

    private static void corner(BumpWords words, Map<Wheel, Bump> wheels, Direction direction) {
        for (Wheel wheel : Wheel.values()) {
            Bump bump = wheels.get(wheel);
            if (bump != null) {
                String side = wheel.isInside(direction) ? "Inner" : "Outer";
                words.wheel(side + " " + EventWords.end(wheel.end()), bump);
                words.rest(bump);
            }
        }
        for (End end : End.values()) {
            words.gripOfBoth(end, wheels, direction);
        }
    }

    private void wheel(String name, Bump bump) {
        sentences.add(name + ": the body is jolted by " + show(BumpFigures.PEAK_BODY_ACCELERATION, bump)
                + " at most. The wheel " + intoBump(bump) + ", and " + intoDroop(bump) + ".");
        sentences.add(contact(bump));
    }

    private String intoBump(Bump bump) {
        if (bump.peakBumpTravel() == 0) {
            return "stays out of bump";
        }
        StringBuilder text = new StringBuilder("goes ")
                .append(show(BumpFigures.PEAK_BUMP_TRAVEL, bump))
                .append(" into bump");
        OptionalDouble toStop = bump.room().toStop();
        if (toStop.isPresent() && bump.stopTouched()) {
            text.append(
                    toStop.getAsDouble() > 0
                            ? ", on its bump stop from " + show(BumpFigures.BUMP_TRAVEL_TO_STOP, bump)
                            : ", on its bump stop all the way");
        } else if (toStop.isPresent()) {
            text.append(", short of its bump stop at ").append(show(BumpFigures.BUMP_TRAVEL_TO_STOP, bump));
        }
        if (bump.metalTouched()) {
            text.append(", metal on metal from ").append(show(BumpFigures.BUMP_TRAVEL_TO_METAL, bump));
        }
        return text.toString();
    }

    private String intoDroop(Bump bump) {
        if (bump.peakDroopTravel() == 0) {
            return "stays out of droop";
        }
        String text = "goes " + show(BumpFigures.PEAK_DROOP_TRAVEL, bump) + " into droop";
        if (bump.room().toDroopStop().isEmpty()) {
            return text;
        }
        return text
                + (bump.droopStopReached() ? ", onto its droop stop at " : ", short of its droop stop at ")
                + show(BumpFigures.DROOP_TRAVEL, bump);
    }

    private String contact(Bump bump) {
        if (bump.timeOffGround() > 0) {
            return "The tyre is off the ground for " + show(BumpFigures.TIME_OFF_GROUND, bump) + " in all.";
        }
        return "The tyre stays on the ground, with " + show(BumpFigures.LEAST_TYRE_LOAD, bump) + " at least.";
    }

    private void grip(Bump bump) {
        if (bump.gripLost().orElse(0) >= GRIP_WORTH_SAYING) {
            sentences.add("The changes of its load take " + show(BumpFigures.GRIP_LOST, bump) + " of its side grip.");
        }
    }

    private void rest(Bump bump) {
        if (!bump.settled()) {
            sentences.add("It had not come to rest ten seconds after the event.");
        }
    }

    private void gripOfBoth(End end, Map<Wheel, Bump> wheels, Direction direction) {
        Wheel inside = Wheel.inside(end, direction);
        Bump inner = wheels.get(inside);
        Bump outer = wheels.get(inside.mirrored());
        if (inner == null
                || outer == null
                || inner.gripLost().isEmpty()
                || outer.gripLost().isEmpty()) {
            return;
        }
        double innerLost = inner.gripLost().getAsDouble();
        double outerLost = outer.gripLost().getAsDouble();
        if (Math.max(innerLost, outerLost) < GRIP_WORTH_SAYING) {
            return;
        }
        sentences.add(
                "At the " + EventWords.end(end) + " the changes of load take " + show(BumpFigures.GRIP_LOST, inner)
                        + " of the side force of the inner wheel and " + show(BumpFigures.GRIP_LOST, outer)
                        + " of that of the outer one.");
    }

    private void dampers(Car car) {
        for (End end : End.values()) {
            Axle axle = car.axle(end);
            if (axle.damper().flatMap(Damper::forces).isEmpty()) {
                sentences.add("The file has no damper curves at the " + EventWords.end(end)
                        + ": the answer there is that of a car without dampers.");
            }
        }
    }

    private String show(Figure<Bump> figure, Bump bump) {
        return units.show(figure.si(bump).orElse(0), figure.dimension(), units.digits(figure));
    }
}
