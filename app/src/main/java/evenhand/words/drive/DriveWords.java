package evenhand.words.drive;

import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.Weights;
import evenhand.quantity.Dimension;
import evenhand.straight.Driving;
import evenhand.straight.Driving.LimitedBy;
import evenhand.turn.Wheel;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.brakes.BrakeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How a car pulls away, what its gears give, and what tyres and axle ratio change, what matters first. */
public final class DriveWords {
    /** What stands under every answer. */
    public static final List<String> CAUTIONS =
            List.of("These are estimates from a simplified model. Try a launch on a closed course only.");

    /** A load that differs by less is alike, N. */
    private static final double ALIKE = 5;

    /** A difference of grip that is worth a word, m/s². */
    private static final double NOTICEABLE = 0.002 * Weights.GRAVITY;

    private final Car car;
    private final Driving.Answer answer;
    private final Units units;
    private final List<String> sentences = new ArrayList<>();

    private DriveWords(Car car, Driving.Answer answer, Units units) {
        this.car = car;
        this.answer = answer;
        this.units = units;
    }

    /** @param car at rest with its load */
    public static List<String> of(Car car, Driving.Answer answer, Units units) {
        DriveWords words = new DriveWords(car, answer, units);
        answer.launch().ifPresent(launch -> {
            words.launch(launch);
            words.shaft(launch);
            words.differentials(launch);
            words.posture(launch.state());
            words.leaves(launch.state());
        });
        words.gears();
        return words.sentences;
    }

    private void launch(Driving.Launch launch) {
        String at = Units.exactPace(launch.state().acceleration());
        String spins = launch.firstWheel()
                .map(wheel -> "the " + wheel.words() + " wheel spins first")
                .orElse("no wheel spins");
        if (launch.limitedBy() == LimitedBy.GRIP) {
            sentences.add("Off the line grip allows " + at + ": " + spins
                    + (launch.engine().isPresent()
                            ? "; the engine would give "
                                    + Units.exactPace(launch.engine().getAsDouble()) + " in first gear"
                            : "")
                    + ".");
        } else {
            sentences.add("Off the line the engine gives " + at + " in first gear"
                    + (launch.grip().isPresent()
                            ? "; grip would allow "
                                    + Units.exactPace(launch.grip().getAsDouble()) + ", where " + spins
                            : ", and " + spins)
                    + ".");
        }
    }

    /** Which wheel the shaft unloads, by how much, and what that costs. */
    private void shaft(Driving.Launch launch) {
        Driving.Pulling state = launch.state();
        if (state.shaftTorque().isEmpty()) {
            return;
        }
        double left = load(state, Wheel.of(car.drive().axle(), evenhand.car.Side.LEFT));
        double right = load(state, Wheel.of(car.drive().axle(), evenhand.car.Side.RIGHT));
        double restLeft = car.staticLoad(car.drive().axle(), evenhand.car.Side.LEFT);
        double restRight = car.staticLoad(car.drive().axle(), evenhand.car.Side.RIGHT);
        double moved = ((left - right) - (restLeft - restRight)) / 2;
        if (Math.abs(moved) < ALIKE) {
            return;
        }
        Wheel unloaded = Wheel.of(car.drive().axle(), moved > 0 ? evenhand.car.Side.RIGHT : evenhand.car.Side.LEFT);
        sentences.add("The propeller shaft's " + units.show(state.shaftTorque().getAsDouble(), Dimension.MOMENT, 0)
                + " take " + units.show(Math.abs(moved), Dimension.FORCE, 0) + " off the " + unloaded.words()
                + " wheel and put them on the other" + cost() + ".");
    }

    private static double load(Driving.Pulling state, Wheel wheel) {
        return state.wheels().get(wheel.index()).load();
    }

    /** What the shaft costs of grip: against the same car whose shaft turns no housing. */
    private String cost() {
        Drive drive = car.drive();
        OptionalDouble without = new Driving(car.driven(
                        new Drive(drive.axle(), drive.differential(), OptionalDouble.empty(), drive.shaftTurns())))
                .gripLimit();
        Optional<Driving.Launch> launch = answer.launch();
        OptionalDouble with = launch.isPresent() ? launch.get().grip() : OptionalDouble.empty();
        if (without.isEmpty() || with.isEmpty() || without.getAsDouble() - with.getAsDouble() < NOTICEABLE) {
            return "";
        }
        return "; that costs " + Units.exactPace(without.getAsDouble() - with.getAsDouble()) + " of what grip allows";
    }

    private void differentials(Driving.Launch launch) {
        if (answer.openGrip().isEmpty() || answer.lockedGrip().isEmpty()) {
            return;
        }
        double open = answer.openGrip().getAsDouble();
        double locked = answer.lockedGrip().getAsDouble();
        if (Math.abs(locked - open) < NOTICEABLE) {
            sentences.add("Straight ahead no differential would change that: open or locked, grip allows "
                    + Units.exactPace(open) + ".");
            return;
        }
        sentences.add("With the differential open grip would allow " + Units.exactPace(open) + ", locked "
                + Units.exactPace(locked) + "; as it is, "
                + (launch.grip().isPresent() ? Units.exactPace(launch.grip().getAsDouble()) : "no wheel spins") + ".");
    }

    private void posture(Driving.Pulling state) {
        sentences.add("There the tail goes " + way(state.rearHeave()) + " and the nose " + way(state.frontHeave())
                + (state.anti().orElse(0) == 0
                        ? ""
                        : "; of the load that moves backwards the driven links carry "
                                + Numbers.percent(state.anti().getAsDouble(), 0))
                + ".");
    }

    private String way(double heave) {
        return (heave < 0 ? "down " : "up ")
                + units.show(Math.abs(heave), Dimension.LENGTH, units == Units.METRIC ? 0 : 1);
    }

    private void leaves(Driving.Pulling state) {
        state.windUp()
                .ifPresent(windUp -> sentences.add("The leaves wind up by " + units.show(windUp, Dimension.ANGLE, 1)
                        + ", which adds to the pinion's slope"
                        + (Math.abs(windUp) > BrakeWords.HOPS ? ": the axle may hop" : "") + "."));
    }

    private void gears() {
        for (Driving.Gear gear : answer.gears()) {
            if (gear.gear() == 1 && gear.pull().isPresent()) {
                Driving.Pulls pulls = gear.pull().get();
                pulls.grade()
                        .ifPresent(grade -> sentences.add("First gear climbs " + Numbers.percent(grade, 0)
                                + (pulls.limitedBy() == LimitedBy.GRIP ? ", as far as grip goes" : "") + "."));
            }
        }
        if (!answer.gears().isEmpty()) {
            Driving.Gear top = answer.gears().get(answer.gears().size() - 1);
            sentences.add("The highest gear goes " + units.show(top.speedPer1000rpm(), Dimension.SPEED, 1)
                    + " per 1000 rpm"
                    + (top.speedAtRedLine().isPresent()
                            ? ", and to " + units.show(top.speedAtRedLine().getAsDouble(), Dimension.SPEED, 0)
                                    + " at the red line"
                            : "")
                    + ".");
        }
    }
}
