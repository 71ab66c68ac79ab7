package evenhand.structure;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.car.links.SideView.BrakesAt;
import evenhand.car.mounts.HardUse;
import evenhand.straight.Driving;
import evenhand.straight.StraightAhead;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.turn.WheelState;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * What each case of hard use makes of a car: how both axles stand and what pushes them. A case is a state of the car (at rest, in a
 * turn, braking, pulling away) or a blow, taken as still. Where links and springs lean with the body, forces of the ground, weight and
 * inertia are turned into its axes by its roll φ over the axle,
 *
 * <pre>  (x, y, z) → (x, y·cos φ + z·sin φ, −y·sin φ + z·cos φ) </pre>
 *
 * pitch is left out (up to 8 % of a link under hard braking).
 */
final class UseStates {
    private final Car car;
    private final double radius;

    /**
     * @param car at rest, its {@code lowered} carried out
     * @param radius of the circle that it corners on, m
     */
    UseStates(Car car, double radius) {
        this.car = car;
        this.radius = radius;
    }

    /** What a case leaves on the axles before its factor, or why there is nothing. */
    sealed interface State {
        record Axles(Map<End, AxleCase> cases, Set<Note> notes, double times, List<String> leftOut) implements State {}

        record None(String why) implements State {}

        record Missing(String what) implements State {}
    }

    AxleCase standing(End end) {
        return AxleCase.standing(
                up(car.staticLoad(end, Side.LEFT)), up(car.staticLoad(end, Side.RIGHT)), Weights.GRAVITY);
    }

    private static Vector3D up(double load) {
        return new Vector3D(0, 0, load);
    }

    /** To one hand, where the case has hands. */
    State state(HardUse use, Side hand) {
        if (use instanceof HardUse.Cornering cornering) {
            return cornering(cornering, hand);
        }
        if (use instanceof HardUse.Braking braking) {
            return braking(braking);
        }
        if (use instanceof HardUse.Launch launch) {
            return launch(launch);
        }
        if (use instanceof HardUse.Kerb kerb) {
            return everyAxle(end -> struck(end, kerb, hand));
        }
        if (use instanceof HardUse.Pothole pothole) {
            return travelling(end -> pothole(end, pothole, hand), "neither metalStop nor bumpStop");
        }
        if (use instanceof HardUse.Hanging hanging) {
            return travelling(end -> hanging(end, hanging), "no droopStop");
        }
        if (use instanceof HardUse.Given given) {
            return everyAxle(end -> given(end, given));
        }
        return everyAxle(this::standing);
    }

    private interface OfAxle<T> {
        T at(End end);
    }

    private static State everyAxle(OfAxle<AxleCase> asks) {
        Map<End, AxleCase> cases = new EnumMap<>(End.class);
        for (End end : End.values()) {
            cases.put(end, asks.at(end));
        }
        return new State.Axles(cases, Set.of(), 1, List.of());
    }

    /** Of axles whose file says how far they go; left out where none does. */
    private static State travelling(OfAxle<Optional<AxleCase>> asks, String lacking) {
        Map<End, AxleCase> cases = new EnumMap<>(End.class);
        List<String> leftOut = new ArrayList<>();
        for (End end : End.values()) {
            Optional<AxleCase> of = asks.at(end);
            if (of.isPresent()) {
                cases.put(end, of.get());
            } else {
                leftOut.add("the " + end.key() + " axle has " + lacking);
            }
        }
        return cases.isEmpty()
                ? new State.Missing("both axles have " + lacking)
                : new State.Axles(cases, Set.of(), 1, leftOut);
    }

    /** Turns a vector of the road into the axes of a body that leans by φ, its right side down positive. */
    private static Vector3D leaning(double phi, double x, double y, double z) {
        double cosine = Math.cos(phi);
        double sine = Math.sin(phi);
        return new Vector3D(x, y * cosine + z * sine, -y * sine + z * cosine);
    }

    private State cornering(HardUse.Cornering use, Side hand) {
        Direction direction = hand == Side.LEFT ? Direction.LEFT : Direction.RIGHT;
        List<Double> paces = use.pace().isPresent() ? List.of(use.pace().getAsDouble()) : List.of();
        TurnAnswer answer = SteadyTurn.toLimit(car, paces, radius, direction);
        if (answer instanceof TurnAnswer.NoTurn none) {
            return new State.None(none.text());
        }
        TurnAnswer.Turns turns = (TurnAnswer.Turns) answer;
        if (paces.isEmpty()) {
            return turning(turns.limit().row(), hand);
        }
        PaceAnswer pace = turns.paces().get(0);
        if (pace instanceof PaceAnswer.InBalance in) {
            return turning(in.row(), hand);
        }
        return new State.None(String.format(
                Locale.ROOT,
                "the car does not turn at %.2f g: its limit is %.2f g",
                use.pace().getAsDouble() / Weights.GRAVITY,
                turns.limit().lateralAcceleration() / Weights.GRAVITY));
    }

    /** a = (−ac·sin β, ac·cos β) in a left turn, mirrored in a right one. */
    private State turning(TurnRow row, Side hand) {
        double inwards = hand.sign() * row.lateralAcceleration();
        double ax = -inwards * Math.sin(row.sideslip());
        double ay = inwards * Math.cos(row.sideslip());
        Map<End, AxleCase> cases = new EnumMap<>(End.class);
        for (End end : End.values()) {
            double roll = end == End.FRONT ? row.frontRoll() : row.rearRoll();
            WheelState left = row.wheel(Wheel.of(end, Side.LEFT));
            WheelState right = row.wheel(Wheel.of(end, Side.RIGHT));
            boolean driven = car.drive().axle() == end;
            cases.put(
                    end,
                    new AxleCase(
                            left.travel(),
                            right.travel(),
                            leaning(roll, left.longitudinalForce(), left.lateralForce(), left.load()),
                            leaning(roll, right.longitudinalForce(), right.lateralForce(), right.load()),
                            0,
                            0,
                            leaning(roll, -ax, -ay, -Weights.GRAVITY),
                            driven ? car.shaftTorquePerDrive() * row.driveForce() : 0,
                            driven ? driveOf(left) : 0,
                            driven ? driveOf(right) : 0,
                            AxleCase.Held.BY_SPRING,
                            AxleCase.Held.BY_SPRING));
        }
        return new State.Axles(cases, Set.of(), 1, List.of());
    }

    /** Drive force of a wheel along the car: what it pulls in its own plane, rolling resistance made good, times cos δ. */
    private double driveOf(WheelState wheel) {
        double cosine = Math.cos(wheel.steer());
        double pull = wheel.longitudinalForce() * cosine + wheel.lateralForce() * Math.sin(wheel.steer());
        return (pull + car.rollingResistance() * wheel.load()) * cosine;
    }

    private State braking(HardUse.Braking use) {
        StraightAhead ahead = new StraightAhead(car);
        if (!ahead.brakeAt(use.deceleration())) {
            return new State.None(String.format(
                    Locale.ROOT,
                    "the car does not stand up at %.2f g of braking",
                    use.deceleration() / Weights.GRAVITY));
        }
        Set<Note> notes = ahead.beyondGrip() ? Set.of(Note.BEYOND_GRIP) : Set.of();
        return ahead(ahead, -use.deceleration(), 0, notes, 1);
    }

    private State launch(HardUse.Launch use) {
        int gears = car.drive().gears().size();
        if (gears > 0 && use.gear() > gears) {
            return new State.None("there is no gear " + use.gear() + "; the file has " + gears);
        }
        Optional<Driving.Launch> launch = new Driving(car).launch(use.gear());
        if (launch.isEmpty()) {
            return new State.None("neither the engine nor grip ends the start");
        }
        StraightAhead ahead = new StraightAhead(car);
        double acceleration = launch.get().state().acceleration();
        if (!ahead.drive(acceleration)) {
            return new State.None("the car does not stand up in the start");
        }
        Note limited = launch.get().limitedBy() == Driving.LimitedBy.ENGINE ? Note.ENGINE_LIMITS : Note.GRIP_LIMITS;
        double torque = car.shaftTorquePerDrive() * launch.get().state().driveForce();
        return ahead(ahead, acceleration, torque, Set.of(limited), use.shock());
    }

    private State ahead(StraightAhead ahead, double ax, double torque, Set<Note> notes, double times) {
        Map<End, AxleCase> cases = new EnumMap<>(End.class);
        for (End end : End.values()) {
            StraightAhead.OnAxle on = ahead.onAxle(end);
            double brake = brakesOnBody(end) ? on.brake() : 0;
            cases.put(
                    end,
                    new AxleCase(
                            on.leftTravel(),
                            on.rightTravel(),
                            leaning(on.roll(), on.leftForward(), 0, on.leftLoad()),
                            leaning(on.roll(), on.rightForward(), 0, on.rightLoad()),
                            0,
                            0,
                            leaning(on.roll(), -ax, 0, -Weights.GRAVITY),
                            car.drive().axle() == end ? torque : 0,
                            on.leftDrive() + brake,
                            on.rightDrive() + brake,
                            AxleCase.Held.BY_SPRING,
                            AxleCase.Held.BY_SPRING));
        }
        return new State.Axles(cases, notes, times, List.of());
    }

    /** A kerb strikes the wheel of a hand inwards: (0, −σ·side·Fz0, up·Fz0). */
    private AxleCase struck(End end, HardUse.Kerb use, Side hand) {
        AxleCase still = standing(end);
        double load = car.staticLoad(end, hand);
        Vector3D blow = new Vector3D(0, -hand.sign() * use.side() * load, use.up() * load);
        boolean left = hand == Side.LEFT;
        return new AxleCase(
                0,
                0,
                left ? blow : still.left(),
                left ? still.right() : blow,
                left ? use.height() : 0,
                left ? 0 : use.height(),
                still.fall(),
                0,
                0,
                0,
                AxleCase.Held.BY_SPRING,
                AxleCase.Held.BY_SPRING);
    }

    /** A pothole throws the wheel of a hand up to its stop: (−back·Fz0, 0, up·Fz0). */
    private Optional<AxleCase> pothole(End end, HardUse.Pothole use, Side hand) {
        var stops = car.axle(end).stops();
        OptionalDouble gap = stops.metal().isPresent()
                ? OptionalDouble.of(stops.metal().get().gap())
                : stops.bump().isPresent()
                        ? OptionalDouble.of(stops.bump().get().gap())
                        : OptionalDouble.empty();
        if (gap.isEmpty()) {
            return Optional.empty();
        }
        AxleCase still = standing(end);
        double load = car.staticLoad(end, hand);
        Vector3D blow = new Vector3D(-use.back() * load, 0, use.up() * load);
        boolean left = hand == Side.LEFT;
        return Optional.of(new AxleCase(
                left ? gap.getAsDouble() : 0,
                left ? 0 : gap.getAsDouble(),
                left ? blow : still.left(),
                left ? still.right() : blow,
                0,
                0,
                still.fall(),
                0,
                0,
                0,
                left ? AxleCase.Held.BY_STOP : AxleCase.Held.BY_SPRING,
                left ? AxleCase.Held.BY_SPRING : AxleCase.Held.BY_STOP));
    }

    /** Both wheels hang, and the unsprung parts weigh so many times as much. */
    private Optional<AxleCase> hanging(End end, HardUse.Hanging use) {
        return car.axle(end)
                .stops()
                .droop()
                .map(stop -> new AxleCase(
                        -stop.travel(),
                        -stop.travel(),
                        Vector3D.ZERO,
                        Vector3D.ZERO,
                        0,
                        0,
                        new Vector3D(0, 0, -use.times() * Weights.GRAVITY),
                        0,
                        0,
                        0,
                        AxleCase.Held.BY_DAMPER,
                        AxleCase.Held.BY_DAMPER));
    }

    private AxleCase given(End end, HardUse.Given use) {
        return AxleCase.standing(given(end, Side.LEFT, use), given(end, Side.RIGHT, use), Weights.GRAVITY);
    }

    private Vector3D given(End end, Side side, HardUse.Given use) {
        HardUse.Force force = use.wheels().get(Wheel.of(end, side).key());
        return force == null ? up(car.staticLoad(end, side)) : new Vector3D(force.x(), force.y(), force.z());
    }

    /** Whether brakes reach the wheel by a shaft, so that its moment acts on the upright. */
    private boolean brakesOnBody(End end) {
        return car.axle(end) instanceof Axle.Independent axle && axle.reaction().brakesAt() == BrakesAt.BODY;
    }
}
