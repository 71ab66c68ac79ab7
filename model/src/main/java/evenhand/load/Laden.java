package evenhand.load;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.car.Side;
import evenhand.car.Sinking;
import evenhand.car.Weights;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A car at rest with a load aboard: the masses settle on springs, stops and tyres first, then every height, travel, camber
 * and spring load is that of the car as it has settled. First its {@code lowered} is carried out.
 *
 * <p>Moments of the added masses m at x behind the front axle give what each axle carries more, since plan positions do not
 * move as the car sinks:
 * <pre>  ΔW_r = Σ m·g·x/L,  ΔW_f = Σ m·g − ΔW_r </pre>
 * The two tyres of an axle give by {@code s = ΔW/(2·k_tyre)}. Springs and stops, in the laws of the steady turn, find the
 * travel u at which they carry
 * <pre>  F(u) = W − mu·g + ΔW </pre>
 * and the body comes down by {@code d_i = s_i + u_i} over each axle, between and beyond them as a plane. Then:
 * <ul>
 *   <li>added masses are sprung mass; each falls by d at its place, the sprung mass by d at its centre, the unsprung by s, and
 *       moments of mass give the centre of gravity and, where it is given, the body's inertia in pitch;
 *   <li>roll centres {@code z + perBump·u − s}; static camber of an independent wheel {@code − 2·(1 − rollCamber)/t·u};
 *   <li>gaps in bump {@code − u}, droop travel {@code + u}: a car that has come down on its stops stands on them, and one
 *       whose axle is lifted down to its droop stop hangs on it;
 *   <li>loaded radius, unsprung height and lower spring mounts {@code − s}; installed spring length less by u times the
 *       springs' share of the travel; the height of the drag falls as the sprung centre does;
 *   <li>springs at rest carry what stops leave them, so a leaning spring's rate falls with its new load and length. While
 *       the car sinks its rate is that of rest before: the law is a straight line, as in the turn.
 * </ul>
 * Loads stand in the middle: both wheels of an axle take half, and a cross weight stays as many newtons as it was. Where one
 * side's spring would be loose at rest on its stops the car would also lean a little; the turn does that.
 *
 * <p>Source: statics; Milliken &amp; Milliken 1995 ch. 16 for the rates.
 */
public sealed interface Laden permits Laden.AtRest, Laden.NoRest {
    /**
     * It stands.
     *
     * @param car as it has settled, {@code lowered} carried out
     */
    record AtRest(Car car, Sinking front, Sinking rear) implements Laden {}

    /** It does not come to rest; why, as a clause. */
    record NoRest(String text) implements Laden {}

    /** A car as read, with the load that was asked for, or with what was aboard when it was weighed. */
    static Laden of(Car car, Optional<LoadCase> load) {
        return load.isPresent() && load.get().mass() > 0
                ? of(car, load.get())
                : new AtRest(car.settled(), Sinking.NONE, Sinking.NONE);
    }

    private static Laden of(Car asRead, LoadCase load) {
        Car car = asRead.settled();
        String aboard = "with \"" + load.name() + "\" aboard ";
        Sinking[] sinkings = new Sinking[2];
        for (End end : End.values()) {
            String its = end.key();
            Axle axle = car.axle(end);
            double added = load.mass(end, car.wheelbase()) * Weights.GRAVITY;
            double hung = axle.unsprung().mass() * Weights.GRAVITY / 2;
            double lighter =
                    Math.min(car.staticLoad(end, Side.LEFT), car.staticLoad(end, Side.RIGHT)) - hung + added / 2;
            if (lighter <= 0) {
                return new NoRest(aboard + "its " + its + " axle is lifted: the load stands too far beyond the other");
            }
            double squash = added / (2 * axle.tyre().verticalRate());
            OptionalDouble travel = Settling.travel(car, end, added);
            if (travel.isEmpty()) {
                return new NoRest(
                        aboard + "its " + its + " springs are far too soft: it comes down by more than a metre");
            }
            Sinking sinking = new Sinking(squash, travel.getAsDouble());
            Optional<String> solid = Settling.solid(axle, sinking);
            if (solid.isPresent()) {
                return new NoRest(aboard + "its " + its + " " + solid.get());
            }
            sinkings[end.ordinal()] = sinking;
        }
        Sinking front = sinkings[0];
        Sinking rear = sinkings[1];
        Optional<Car> laden = asRead.laden(load, front, rear);
        return laden.isPresent()
                ? new AtRest(laden.get(), front, rear)
                : new NoRest(aboard
                        + String.format(
                                Locale.ROOT,
                                "it would come down by %.0f mm in front and %.0f mm behind, further than its heights allow",
                                front.drop() * 1000,
                                rear.drop() * 1000));
    }
}
