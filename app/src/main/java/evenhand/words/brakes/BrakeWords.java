package evenhand.words.brakes;

import evenhand.car.BrakeParts;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.straight.BrakeRule;
import evenhand.straight.Braking;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** How a car brakes, the verdict first. */
public final class BrakeWords {
    /** What stands under every answer. */
    public static final List<String> CAUTIONS = List.of(
            "These are estimates from a simplified model: pad friction and drum factors vary by a third with heat and wear.",
            "The rules are shown as a yardstick; meeting them here is no approval.",
            "Brakes are work for qualified people. Test stops on closed ground only, from low speed first.");

    /** Leaves that wind up further hop. Common practice, no source. */
    public static final double HOPS = Math.toRadians(3);

    /** A knee that stands this much elsewhere is worth a word, Pa. */
    private static final double NOTICEABLE_KNEE = 0.5e5;

    private final Car read;
    private final Car car;
    private final Braking.Asked asked;
    private final Braking.Answer answer;
    private final Units units;
    private final List<String> sentences = new ArrayList<>();

    private BrakeWords(Car read, Car car, Braking.Asked asked, Braking.Answer answer, Units units) {
        this.read = read;
        this.car = car;
        this.asked = asked;
        this.answer = answer;
        this.units = units;
    }

    /**
     * @param read the car as the file has it
     * @param car the same at rest with its load
     */
    public static List<String> of(Car read, Car car, Braking.Asked asked, Braking.Answer answer, Units units) {
        BrakeWords words = new BrakeWords(read, car, asked, answer, units);
        words.verdict();
        words.roads();
        words.used();
        words.foot();
        words.valve();
        words.dive();
        words.leaves();
        words.stops();
        words.rules();
        return words.sentences;
    }

    /** Which end locks first, where, and beyond which deceleration the rear does. */
    private void verdict() {
        Braking.Lock own = answer.own();
        if (own.locks().isEmpty()) {
            sentences.add("On its own tyres nothing locks up to " + Units.pace(Braking.FURTHEST_LOCK * Weights.GRAVITY)
                    + "." + changes(OptionalDouble.empty()));
            return;
        }
        Braking.Locks locks = own.locks().get();
        String at = Units.exactPace(locks.deceleration());
        sentences.add(
                locks.axle() == End.REAR
                        ? "The rear locks first: unsafe. On its own tyres the " + wheel(locks) + " locks at " + at + "."
                                + changes(OptionalDouble.of(locks.deceleration()))
                        : "The front locks first, on its own tyres the " + wheel(locks) + " at " + at + "."
                                + changes(OptionalDouble.of(locks.deceleration())));
    }

    private String changes(OptionalDouble lock) {
        OptionalDouble above = answer.rearLocksAbove();
        if (above.isEmpty()) {
            return " The front uses more of the road at every deceleration up to "
                    + Units.pace(Braking.FURTHEST_CROSSING * Weights.GRAVITY) + ".";
        }
        if (above.getAsDouble() == 0) {
            return " The rear uses more of the road from the first touch of the pedal on.";
        }
        String from = Units.exactPace(above.getAsDouble());
        return lock.isPresent() && above.getAsDouble() > lock.getAsDouble()
                ? " Beyond " + from + ", on more grip than these tyres have, the rear would go first."
                : " The rear goes first beyond " + from + ".";
    }

    private static String wheel(Braking.Locks locks) {
        return locks.wheel().words() + " wheel";
    }

    /** On which of the roads that were asked the rear locks first. */
    private void roads() {
        List<Braking.Lock> given = answer.locks().stream()
                .filter(lock -> lock.friction().isPresent())
                .toList();
        List<String> unsafe = new ArrayList<>();
        List<String> safe = new ArrayList<>();
        for (Braking.Lock lock : given) {
            String friction = Numbers.plain(lock.friction().getAsDouble(), 3);
            if (lock.locks().isEmpty()) {
                continue;
            }
            Braking.Locks locks = lock.locks().get();
            String words = friction + " at " + Units.exactPace(locks.deceleration()) + " ("
                    + Numbers.percent(lock.efficiency().orElseThrow(), 0) + " of what it allows)";
            (locks.axle() == End.REAR ? unsafe : safe).add(words);
        }
        if (!unsafe.isEmpty()) {
            sentences.add("On a road of friction " + listed(unsafe) + " the rear locks first: unsafe.");
        }
        if (!safe.isEmpty()) {
            sentences.add("On a road of friction " + listed(safe) + " the front locks first.");
        }
    }

    private static String listed(List<String> parts) {
        int last = parts.size() - 1;
        return last == 0 ? parts.get(0) : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }

    private void used() {
        for (Braking.Row row : rows()) {
            row.brakeBalance()
                    .ifPresent(balance -> sentences.add("At " + Units.pace(row.deceleration()) + " the front uses "
                            + Numbers.percent(row.front().adhesion().orElse(0), 1) + " of the road and the rear "
                            + Numbers.percent(row.rear().adhesion().orElse(0), 1) + ", brake balance "
                            + Numbers.signedPercent(balance, 1) + "; the front brakes give "
                            + Numbers.percent(
                                    row.front().force()
                                            / (row.front().force() + row.rear().force()),
                                    1)
                            + " of the force, ideal would be "
                            + Numbers.percent(
                                    row.front().idealForce()
                                            / (row.front().idealForce()
                                                    + row.rear().idealForce()),
                                    1)
                            + "."));
        }
    }

    private List<Braking.Row> rows() {
        return asked.decelerations().stream()
                .flatMap(deceleration -> answer.at(deceleration).stream())
                .toList();
    }

    private void foot() {
        List<String> feet = new ArrayList<>();
        for (Braking.Row row : rows()) {
            row.pedalForce()
                    .ifPresent(force -> feet.add(Units.pace(row.deceleration()) + " takes " + force(force)
                            + (asked.boosted() && hasBooster()
                                    ? " (" + force(row.pedalForceNoBooster().orElse(0)) + " without the booster)"
                                    : "")));
        }
        if (!feet.isEmpty()) {
            sentences.add("At the pedal " + String.join(", ", feet)
                    + (asked.boosted() || !hasBooster() ? "." : ", the booster without help."));
        }
    }

    private boolean hasBooster() {
        return car.brakes().parts().flatMap(BrakeParts::booster).isPresent();
    }

    private String force(double si) {
        return units.show(si, Dimension.FORCE, 0);
    }

    /** What a valve that feels the load makes of a lowered or a laden car. */
    private void valve() {
        Optional<BrakeParts.RearValve> now = car.brakes().parts().flatMap(BrakeParts::rearValve);
        Optional<BrakeParts.RearValve> before = read.brakes().parts().flatMap(BrakeParts::rearValve);
        if (now.isEmpty() || before.isEmpty()) {
            return;
        }
        double moved = now.get().knee() - before.get().knee();
        if (Math.abs(moved) < NOTICEABLE_KNEE) {
            return;
        }
        String at = units.show(Math.max(0, now.get().knee()), Dimension.PRESSURE, 0);
        String from = units.show(before.get().knee(), Dimension.PRESSURE, 0);
        sentences.add("The rear valve feels the axle: standing so, it takes the car for one with "
                + (moved > 0
                        ? "a full boot, and lets more pressure through"
                        : "an empty boot, and lets less pressure through")
                + ", its knee at " + at + " instead of " + from + "."
                + (moved > 0 && read.rear().lowered() > 0 ? " Adjust its rod to the lowered car." : ""));
    }

    private void dive() {
        for (Braking.Row row : rows()) {
            String links = row.antiDive() == 0 && row.antiLift() == 0
                    ? ""
                    : "; of the load that moves forwards the links carry " + Numbers.percent(row.antiDive(), 0)
                            + " in front and " + Numbers.percent(row.antiLift(), 0) + " behind";
            sentences.add("At " + Units.pace(row.deceleration()) + " the nose goes " + way(row.frontHeave())
                    + " and the tail " + way(row.rearHeave()) + ", "
                    + units.show(row.pitch(), Dimension.ANGLE, 2) + " nose down" + links + ".");
        }
    }

    private String way(double heave) {
        return (heave < 0 ? "down " : "up ")
                + units.show(Math.abs(heave), Dimension.LENGTH, units == Units.METRIC ? 0 : 1);
    }

    private void leaves() {
        answer.rows().stream()
                .filter(row -> Math.abs(row.windUp().orElse(0)) > HOPS)
                .findFirst()
                .ifPresent(row -> sentences.add("From " + Units.pace(row.deceleration())
                        + " on the rear leaves wind up by more than "
                        + units.show(HOPS, Dimension.ANGLE, 0) + ": the axle may hop."));
    }

    private void stops() {
        List<String> stops = new ArrayList<>();
        for (Braking.Stop stop : answer.stops()) {
            if (stop.distance().isPresent()) {
                stops.add(length(stop.distance().getAsDouble()) + " with " + force(stop.pedalForce())
                        + (stop.locks() ? " (at the edge of locking)" : ""));
                if (stop.locks()) {
                    break;
                }
            }
        }
        if (!stops.isEmpty()) {
            sentences.add("From " + units.show(asked.speed(), Dimension.SPEED, 0) + " it stops in "
                    + String.join(", ", stops) + ", the driver's own reaction not counted.");
        }
    }

    private String length(double metres) {
        Unit unit = units == Units.METRIC ? Unit.of("m") : Unit.of("ft");
        return Numbers.fixed(unit.fromSi(metres), 1) + " " + unit.symbol();
    }

    private void rules() {
        sentences.add(yardstick(answer));
    }

    /** How it stands against the rules for passenger cars. */
    public static String yardstick(Braking.Answer answer) {
        return "As a yardstick, no approval: "
                + answer.rules().stream().map(BrakeWords::rule).collect(Collectors.joining("; "))
                + ". Look at the car laden and unladen.";
    }

    /** How it stands against a rule. */
    private static String rule(BrakeRule rule) {
        if (rule.met()) {
            return rule.name() + " would be met";
        }
        List<String> why = new ArrayList<>();
        rule.order()
                .filter(margin -> margin.margin() < 0)
                .ifPresent(margin ->
                        why.add("at " + Numbers.fixed(margin.at(), 2) + " g the rear uses more than the front"));
        if (rule.inversionMargin().orElse(0) < 0) {
            why.add("between 0.3 and 0.45 g the rear uses more than the deceleration and 0.05");
        }
        rule.use()
                .filter(margin -> margin.margin() < 0)
                .ifPresent(margin -> why.add("at " + Numbers.fixed(margin.at(), 2) + " g the "
                        + EventWords.end(margin.axle()) + " uses too much of the road for what it brakes"));
        return rule.name() + " would not be met: " + String.join(", ", why);
    }
}
