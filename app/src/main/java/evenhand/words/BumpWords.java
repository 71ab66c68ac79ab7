package evenhand.words;

import evenhand.answers.BumpFigures;
import evenhand.answers.Figure;
import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.turn.Direction;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What an event of the road does to a car, in plain sentences. */
public final class BumpWords {
    /** Less grip than this, as a ratio, nobody misses. */
    private static final double GRIP_WORTH_SAYING = 0.005;

    private final Units units;
    private final List<String> sentences = new ArrayList<>();

    private BumpWords(Units units) {
        this.units = units;
    }

    /** The sentences of one set-up, in the order to be read; none where it has no answer. */
    public static List<String> of(Car car, BumpAnswer answer, Direction direction, Units units) {
        BumpWords words = new BumpWords(units);
        if (answer instanceof BumpAnswer.Straight straight) {
            straight(words, straight.axles());
        } else if (answer instanceof BumpAnswer.InCorner corner) {
            corner(words, corner.wheels(), direction);
        } else if (answer instanceof BumpAnswer.BeyondLimit beyond) {
            words.sentences.add("The car does not hold " + Units.pace(beyond.lateralAcceleration())
                    + " at this speed at all: it is beyond its limit.");
        }
        if (answer instanceof BumpAnswer.Straight || answer instanceof BumpAnswer.InCorner) {
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
                String side = wheel.left() == (direction == Direction.LEFT) ? "Inner" : "Outer";
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
        boolean leftIsInner = direction == Direction.LEFT;
        Wheel left = end == End.FRONT ? Wheel.FRONT_LEFT : Wheel.REAR_LEFT;
        Bump inner = wheels.get(leftIsInner ? left : left.mirrored());
        Bump outer = wheels.get(leftIsInner ? left.mirrored() : left);
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
