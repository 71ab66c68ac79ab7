package evenhand.structure;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.car.links.MiddlePoint;
import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.Mount;
import evenhand.car.mounts.PartEnd;
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
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One car asked case by case what its links and mounts carry. Every case is a state of the car (at rest, in a turn, braking, pulling
 * away) or a blow, taken as still; {@link AxleStatics} says what an axle's members carry in it. Where links and springs lean with
 * the body, forces of the ground, weight and inertia are turned into its axes by its roll φ over the axle,
 *
 * <pre>  (x, y, z) → (x, y·cos φ + z·sin φ, −y·sin φ + z·cos φ) </pre>
 *
 * pitch is left out (up to 8 % of a link under hard braking). One per thread.
 */
final class HardUseSums {
    private final Car car;
    private final double radius;
    private final Map<End, AxleStatics> axles = new EnumMap<>(End.class);
    private final Map<End, AxleLoads> atRest = new EnumMap<>(End.class);
    private final Map<String, UseAnswer> answered = new LinkedHashMap<>();

    /**
     * @param car at rest, its {@code lowered} carried out
     * @param radius of the circle that it corners on, m
     */
    HardUseSums(Car car, double radius) {
        this.car = car;
        this.radius = radius;
        for (End end : End.values()) {
            AxleStatics axle = new AxleStatics(car, end);
            axles.put(end, axle);
            atRest.put(end, axle.stand(standing(end)));
        }
    }

    private AxleCase standing(End end) {
        return AxleCase.standing(
                up(car.staticLoad(end, Side.LEFT)), up(car.staticLoad(end, Side.RIGHT)), Weights.GRAVITY);
    }

    private static Vector3D up(double load) {
        return new Vector3D(0, 0, load);
    }

    /** What a case leaves on the axles before its factor, or why there is nothing. */
    private sealed interface State {
        record Axles(Map<End, AxleCase> cases, Set<Note> notes, double times, List<String> leftOut) implements State {}

        record None(String why) implements State {}

        record Missing(String what) implements State {}
    }

    /** Asks one case, to one hand where it has hands; cases that it combines were asked before. */
    UseAnswer answer(HardUse use, Optional<Side> hand) {
        UseAnswer answer = use instanceof HardUse.Combined combined ? combined(combined, hand) : single(use, hand);
        answered.put(answer.title(), answer);
        return answer;
    }

    private UseAnswer single(HardUse use, Optional<Side> hand) {
        State state = state(use, hand.orElse(Side.LEFT));
        if (state instanceof State.None none) {
            return new UseAnswer.NoState(use, hand, none.why());
        }
        if (state instanceof State.Missing missing) {
            return new UseAnswer.LeftOut(use, hand, missing.what());
        }
        State.Axles of = (State.Axles) state;
        Map<End, AxleLoads> loads = new EnumMap<>(End.class);
        Set<Note> notes = EnumSet.noneOf(Note.class);
        notes.addAll(of.notes());
        List<MemberLoad> members = new ArrayList<>();
        Map<PartEnd, Vector3D> directions = new HashMap<>();
        for (Map.Entry<End, AxleCase> each : of.cases().entrySet()) {
            End end = each.getKey();
            AxleStatics statics = statics(end);
            Optional<AxleLoads> solved = statics.solve(each.getValue());
            if (solved.isEmpty()) {
                return new UseAnswer.NoState(use, hand, "the links of the " + end.key() + " axle do not reach so far");
            }
            AxleLoads told = solved.get().times(of.times() * use.factor()).moved(origin(end));
            loads.put(end, told);
            members.addAll(told.members());
            if (told.springPulls()) {
                notes.add(Note.SPRING_PULLS);
            }
            directions.putAll(statics.directions(
                    each.getValue().leftTravel(), each.getValue().rightTravel()));
        }
        return new UseAnswer.Carried(
                use, hand, loads, members, mounts(members, directions, of.cases()), notes, of.leftOut());
    }

    private AxleStatics statics(End end) {
        AxleStatics statics = axles.get(end);
        if (statics == null) {
            throw new IllegalStateException("no axle at the " + end.key());
        }
        return statics;
    }

    /** Where an axle's points count from, in the car: on the front axle's line, or on the rear one's. */
    private Vector3D origin(End end) {
        return end == End.FRONT ? Vector3D.ZERO : new Vector3D(-car.wheelbase(), 0, 0);
    }

    private State state(HardUse use, Side hand) {
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
            double brake = statics(end).brakesOnBody() ? on.brake() : 0;
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

    /** Every force of every member is standing + Σ times·(case − standing), at standing's points. */
    private UseAnswer combined(HardUse.Combined use, Optional<Side> hand) {
        Map<String, MemberLoad> rest = new LinkedHashMap<>();
        Map<PartEnd, Vector3D> directions = new HashMap<>();
        for (End end : End.values()) {
            AxleLoads still = atRest.get(end);
            if (still == null) {
                throw new IllegalStateException("no axle at the " + end.key());
            }
            still.moved(origin(end)).members().forEach(member -> rest.put(member.part(), member));
            directions.putAll(statics(end).directions(0, 0));
        }
        Map<String, MemberLoad> sum = new LinkedHashMap<>(rest);
        Set<Note> notes = EnumSet.noneOf(Note.class);
        for (HardUse.Part part : use.of()) {
            UseAnswer of = of(part.name(), hand);
            if (!(of instanceof UseAnswer.Carried carried)) {
                return new UseAnswer.NoState(use, hand, "\"" + part.name() + "\", which is part of it, has no answer");
            }
            notes.addAll(carried.notes());
            // what stands loaded and carries nothing in the case, as a stop that is left, gives its load up
            rest.values().stream()
                    .filter(still ->
                            carried.axles().isEmpty() || carried.axles().containsKey(still.axle()))
                    .filter(still -> carried.member(still.part()).isEmpty())
                    .forEach(still -> sum.computeIfPresent(
                            still.part(), (name, before) -> before.plus(part.times(), still.times(0), still)));
            for (MemberLoad member : carried.members()) {
                MemberLoad still = rest.getOrDefault(member.part(), member.times(0));
                sum.merge(
                        member.part(),
                        still.plus(part.times(), member, still),
                        (before, alone) -> before.plus(part.times(), member, still));
            }
        }
        List<MemberLoad> members =
                sum.values().stream().map(member -> member.times(use.factor())).toList();
        notes.remove(Note.SPRING_PULLS);
        if (members.stream().anyMatch(HardUseSums::pulls)) {
            notes.add(Note.SPRING_PULLS);
        }
        return new UseAnswer.Carried(
                use, hand, Map.of(), members, mounts(members, directions, Map.of()), notes, List.of());
    }

    private static boolean pulls(MemberLoad member) {
        return member.member().startsWith("spring") && member.axial().orElse(0) > AxleStatics.PULLS;
    }

    private UseAnswer of(String name, Optional<Side> hand) {
        UseAnswer whole = answered.get(name);
        if (whole != null) {
            return whole;
        }
        UseAnswer handed = answered.get(HardUse.handed(name, hand.orElse(Side.LEFT)));
        if (handed == null) {
            throw new IllegalStateException("the case \"" + name + "\" was not asked before");
        }
        return handed;
    }

    /** @param cases travels of the axles; at rest where there are none */
    private List<MountLoad> mounts(
            List<MemberLoad> members, Map<PartEnd, Vector3D> directions, Map<End, AxleCase> cases) {
        List<MountLoad> mounts = new ArrayList<>();
        for (Mount mount : car.mounts()) {
            mount(mount, members, directions, cases).ifPresent(mounts::add);
        }
        return mounts;
    }

    /** Nothing where the case has none of its ends. */
    private Optional<MountLoad> mount(
            Mount mount, List<MemberLoad> members, Map<PartEnd, Vector3D> directions, Map<End, AxleCase> cases) {
        List<EndLoad> ends = new ArrayList<>();
        for (PartEnd carried : mount.carries()) {
            members.stream()
                    .filter(member -> member.part().equals(carried.part()))
                    .flatMap(member -> member.end(carried.end()).stream())
                    .forEach(ends::add);
        }
        if (ends.isEmpty()) {
            return Optional.empty();
        }
        End axle = mount.carries().get(0).axle();
        Vector3D origin = origin(axle);
        AxleCase use = cases.getOrDefault(axle, AxleCase.at(0, 0));
        // a bracket on a moving part goes with it
        UnaryOperator<MiddlePoint> carried = point -> {
            Vector3D now = statics(axle)
                    .carried(ends.get(0).on(), MountSums.vector(point), use.leftTravel(), use.rightTravel());
            return new MiddlePoint(now.getX(), now.getY(), now.getZ());
        };
        Vector3D at = mount.at()
                .map(point -> MountSums.vector(carried.apply(point)).add(origin))
                .orElseGet(() -> ends.get(0).at());
        Vector3D force = Vector3D.ZERO;
        Vector3D moment = Vector3D.ZERO;
        for (EndLoad end : ends) {
            force = force.add(end.force());
            moment = moment.add(end.moment()).add(end.at().subtract(at).crossProduct(end.force()));
        }
        Optional<Mount.Between> beam = mount.between()
                .map(supports -> new Mount.Between(carried.apply(supports.left()), carried.apply(supports.right())));
        return Optional.of(MountSums.of(mount.between(beam), at, force, moment, eye(mount, directions), origin));
    }

    /** By how much the first end's member has turned since the eye was tightened: twist about n, tilt across it. */
    private Optional<MountLoad.OfEye> eye(Mount mount, Map<PartEnd, Vector3D> directions) {
        if (mount.eye().isEmpty()) {
            return Optional.empty();
        }
        Mount.Eye eye = mount.eye().get();
        PartEnd first = mount.carries().get(0);
        Vector3D now = directions.get(first);
        Vector3D then = statics(first.axle())
                .directions(eye.tightenedAt(), eye.tightenedAt())
                .get(first);
        if (now == null || then == null) {
            return Optional.empty();
        }
        Vector3D axis = then.crossProduct(now);
        double sine = axis.getNorm();
        double angle = Math.atan2(sine, then.dotProduct(now));
        Vector3D turn = sine > 0 ? axis.scalarMultiply(angle / sine) : Vector3D.ZERO;
        Vector3D n =
                new Vector3D(mount.faces().x(), mount.faces().y(), mount.faces().z());
        double twist = turn.dotProduct(n);
        double tilt = turn.subtract(twist, n).getNorm();
        return Optional.of(new MountLoad.OfEye(angle, Math.hypot(eye.twist() * twist, eye.tilt() * tilt)));
    }
}
