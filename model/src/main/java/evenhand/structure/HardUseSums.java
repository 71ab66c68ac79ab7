package evenhand.structure;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.MiddlePoint;
import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.Mount;
import evenhand.car.mounts.PartEnd;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One car asked case by case what its links and mounts carry: {@link UseStates} says how its axles stand in a case, {@link AxleStatics}
 * what their members carry there, {@link MountSums} what mounts make of it. One per thread.
 */
final class HardUseSums {
    private final Car car;
    private final UseStates states;
    private final Map<End, AxleStatics> axles = new EnumMap<>(End.class);
    private final Map<End, AxleLoads> atRest = new EnumMap<>(End.class);
    private final Map<String, UseAnswer> answered = new LinkedHashMap<>();

    /**
     * @param car at rest, its {@code lowered} carried out
     * @param radius of the circle that it corners on, m
     */
    HardUseSums(Car car, double radius) {
        this.car = car;
        states = new UseStates(car, radius);
        for (End end : End.values()) {
            AxleStatics axle = new AxleStatics(car, end);
            axles.put(end, axle);
            atRest.put(end, axle.stand(states.standing(end)));
        }
    }

    /** Asks one case, to one hand where it has hands; cases that it combines were asked before. */
    UseAnswer answer(HardUse use, Optional<Side> hand) {
        UseAnswer answer = use instanceof HardUse.Combined combined ? combined(combined, hand) : single(use, hand);
        answered.put(answer.title(), answer);
        return answer;
    }

    private UseAnswer single(HardUse use, Optional<Side> hand) {
        UseStates.State state = states.state(use, hand.orElse(Side.LEFT));
        if (state instanceof UseStates.State.None none) {
            return new UseAnswer.NoState(use, hand, none.why());
        }
        if (state instanceof UseStates.State.Missing missing) {
            return new UseAnswer.LeftOut(use, hand, missing.what());
        }
        UseStates.State.Axles of = (UseStates.State.Axles) state;
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
