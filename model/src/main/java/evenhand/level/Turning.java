package evenhand.level;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Perches;
import evenhand.car.Side;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** One car, its perches and the turns at hand. */
final class Turning {
    /** A perch is turned by quarters of a turn. */
    private static final double QUARTER = 0.25;

    /** Turned by so little to see what it does, in turns. */
    private static final double SMALL = 1e-3;

    /** Turns that change by less are found. */
    private static final double FOUND = 1e-7;

    /** As near to the wanted cross weight or rise (m) is there. */
    private static final double MET = 1e-7;

    private static final int MOST_ROUNDS = 40;
    private static final int MOST_HALVINGS = 12;

    private final Levelling.Asked asked;
    private final OnPerches car;
    private final List<Wheel> wheels = new ArrayList<>(); // whose perch can be turned
    private final double[] pitch = new double[Wheel.values().length]; // by wheel, m
    private final double[] up = new double[pitch.length]; // most turns up, by wheel
    private final double[] down = new double[pitch.length];

    Turning(Car asRead, Car atRest, Levelling.Asked asked) {
        this.asked = asked;
        car = new OnPerches(atRest, asked.barsHooked());
        for (End end : Levelling.turned(asRead)) {
            Axle axle = asRead.axle(end);
            Perches perches = axle.spring().lengths().perches().orElseThrow();
            double used = axle.lowered() * axle.geometry().springs().ratio();
            for (Side side : Side.values()) {
                Wheel wheel = Wheel.of(end, side);
                int i = wheel.index();
                wheels.add(wheel);
                pitch[i] = perches.pitch();
                Perches.Room room = perches.room(side);
                up[i] = (room.raises().orElse(Double.POSITIVE_INFINITY) + used) / pitch[i];
                down[i] = (room.lowers().orElse(Double.POSITIVE_INFINITY) - used) / pitch[i];
            }
        }
    }

    Optional<Levelling> levelling() {
        return posture(new double[wheels.size()]).flatMap(this::levelling);
    }

    private Optional<Levelling> levelling(Posture asWeighed) {
        double[] turns = new double[wheels.size()];
        Posture here = asWeighed;
        List<Levelling.Hold> held = List.of();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Optional<LeastTurns.Found> found = least(turns, here, asWeighed);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            held = found.get().heldBy();
            double[] next = found.get().turns();
            Optional<Posture> there = posture(next);
            for (int halving = 0; there.isEmpty() && halving < MOST_HALVINGS; halving++) {
                next = halfWay(turns, next);
                there = posture(next);
            }
            if (there.isEmpty()) {
                break;
            }
            double moved = farthest(turns, next);
            turns = next;
            here = there.get();
            if (moved < FOUND) {
                break;
            }
        }
        double[] quarters = new double[turns.length];
        for (int i = 0; i < turns.length; i++) {
            quarters[i] = QUARTER * Math.rint(turns[i] / QUARTER);
        }
        boolean met = isMet(here);
        return Optional.of(new Levelling(
                asWeighed,
                byWheel(turns),
                here,
                byWheel(quarters),
                posture(quarters),
                met ? Levelling.Status.MET : Levelling.Status.NEAREST,
                met ? List.of() : held,
                perTurn(turns)));
    }

    private boolean isMet(Posture here) {
        boolean cross = asked.crossWeight().isEmpty()
                || Math.abs(here.crossWeight() - asked.crossWeight().getAsDouble()) <= MET;
        return cross
                && asked.kept().entrySet().stream()
                        .allMatch(one -> Math.abs(here.corner(one.getKey()).rise()
                                        - one.getValue().wanted())
                                <= one.getValue().tolerance() + MET);
    }

    private Optional<Posture> posture(double[] turns) {
        double[] raised = new double[pitch.length];
        for (int i = 0; i < turns.length; i++) {
            int wheel = wheels.get(i).index();
            raised[wheel] = turns[i] * pitch[wheel];
        }
        return car.at(raised);
    }

    /** The least turns by the slopes here. */
    private Optional<LeastTurns.Found> least(double[] turns, Posture here, Posture asWeighed) {
        int count = wheels.size();
        Posture[] more = new Posture[count];
        Posture[] less = new Posture[count];
        for (int i = 0; i < count; i++) {
            Optional<Posture> up = posture(moved(turns, i, SMALL));
            Optional<Posture> down = posture(moved(turns, i, -SMALL));
            if (up.isEmpty() || down.isEmpty()) {
                return Optional.empty();
            }
            more[i] = up.get();
            less[i] = down.get();
        }
        List<LeastTurns.Bound> threads = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Wheel wheel = wheels.get(i);
            double[] itself = new double[count];
            itself[i] = 1;
            double[] against = new double[count];
            against[i] = -1;
            add(threads, at(wheel, Levelling.Limit.THREAD_UP), itself, up[wheel.index()]);
            add(threads, at(wheel, Levelling.Limit.THREAD_DOWN), against, down[wheel.index()]);
        }
        for (Wheel wheel : Wheel.values()) {
            OptionalDouble margin = here.corner(wheel).coilMargin();
            if (margin.isPresent()) {
                double least = Math.min(0, asWeighed.corner(wheel).coilMargin().orElseThrow());
                double[] slopes = slopes(
                        more, less, one -> -one.corner(wheel).coilMargin().orElseThrow());
                threads.add(
                        bound(at(wheel, Levelling.Limit.COILS), slopes, turns, -margin.getAsDouble(), -least, 1e-3));
            }
        }
        List<LeastTurns.Bound> bounds = new ArrayList<>(threads);
        List<LeastTurns.Bound> heights = new ArrayList<>();
        asked.kept().forEach((wheel, rise) -> {
            double[] slopes = slopes(more, less, one -> one.corner(wheel).rise());
            double[] against = new double[count];
            for (int i = 0; i < count; i++) {
                against[i] = -slopes[i];
            }
            double now = here.corner(wheel).rise();
            Optional<Levelling.Hold> hold = at(wheel, Levelling.Limit.HEIGHT);
            heights.add(bound(hold, slopes, turns, now, rise.wanted(), 1e-3));
            bounds.add(bound(hold, slopes, turns, now, rise.wanted() + rise.tolerance(), 1e-3));
            bounds.add(bound(hold, against, turns, -now, rise.tolerance() - rise.wanted(), 1e-3));
        });
        List<LeastTurns.Bound> cross = asked.crossWeight().isEmpty()
                ? List.of()
                : List.of(bound(
                        Optional.empty(),
                        slopes(more, less, Posture::crossWeight),
                        turns,
                        here.crossWeight(),
                        asked.crossWeight().getAsDouble(),
                        1e-3));
        LeastTurns within = new LeastTurns(count, bounds);
        return within.meeting(cross)
                .or(() -> within.nearest(cross))
                .or(() -> new LeastTurns(count, threads).nearest(heights));
    }

    private static void add(
            List<LeastTurns.Bound> bounds, Optional<Levelling.Hold> hold, double[] slopes, double most) {
        if (Double.isFinite(most)) {
            bounds.add(new LeastTurns.Bound(hold, slopes, most, 1));
        }
    }

    /** A value that has slopes here, and may become so much. */
    private static LeastTurns.Bound bound(
            Optional<Levelling.Hold> hold, double[] slopes, double[] turns, double now, double most, double scale) {
        double atZero = now;
        for (int i = 0; i < turns.length; i++) {
            atZero -= slopes[i] * turns[i];
        }
        return new LeastTurns.Bound(hold, slopes, most - atZero, scale);
    }

    private static double[] slopes(Posture[] more, Posture[] less, ToDoubleFunction<Posture> value) {
        double[] slopes = new double[more.length];
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = (value.applyAsDouble(more[i]) - value.applyAsDouble(less[i])) / (2 * SMALL);
        }
        return slopes;
    }

    private Map<Wheel, Levelling.PerTurn> perTurn(double[] turns) {
        Map<Wheel, Levelling.PerTurn> all = new EnumMap<>(Wheel.class);
        for (int i = 0; i < turns.length; i++) {
            Wheel wheel = wheels.get(i);
            Optional<Posture> up = posture(moved(turns, i, SMALL));
            Optional<Posture> down = posture(moved(turns, i, -SMALL));
            if (up.isPresent() && down.isPresent()) {
                Posture.Corner above = up.get().corner(wheel);
                Posture.Corner below = down.get().corner(wheel);
                all.put(
                        wheel,
                        new Levelling.PerTurn(
                                (up.get().crossWeight() - down.get().crossWeight()) / (2 * SMALL),
                                (above.load() - below.load()) / (2 * SMALL),
                                (above.rise() - below.rise()) / (2 * SMALL)));
            }
        }
        return all;
    }

    private static double[] moved(double[] turns, int which, double by) {
        double[] moved = turns.clone();
        moved[which] += by;
        return moved;
    }

    private static double[] halfWay(double[] from, double[] to) {
        double[] half = new double[from.length];
        for (int i = 0; i < half.length; i++) {
            half[i] = (from[i] + to[i]) / 2;
        }
        return half;
    }

    private static double farthest(double[] from, double[] to) {
        double farthest = 0;
        for (int i = 0; i < from.length; i++) {
            farthest = Math.max(farthest, Math.abs(to[i] - from[i]));
        }
        return farthest;
    }

    private List<Double> byWheel(double[] turns) {
        Double[] all = {0.0, 0.0, 0.0, 0.0};
        for (int i = 0; i < turns.length; i++) {
            all[wheels.get(i).index()] = turns[i];
        }
        return List.of(all);
    }

    private static Optional<Levelling.Hold> at(Wheel wheel, Levelling.Limit limit) {
        return Optional.of(new Levelling.Hold(wheel, limit));
    }
}
