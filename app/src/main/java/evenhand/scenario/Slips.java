package evenhand.scenario;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.Spring;
import evenhand.catalogue.Adjustable;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.suspension.WheelDamper;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Values that a car could have and that are yet far more often a slip: of the pen, of the unit, or of what was measured. All
 * bounds are common practice, no source.
 */
final class Slips {
    private static final double SHORTEST_WHEELBASE = 1.5;
    private static final double SMALLEST_GAP = 0.005;
    private static final double LEAST_TO_COIL_BIND = 0.02;
    private static final double LIGHTEST_LIVE_AXLE = 70;
    private static final double GREATEST_LEAN =
            Math.toRadians(35) * (1 + 1e-9); // 35 deg itself is none, however it is written

    /** Damper speed at which shops compare, m/s, and a force that no road car's damper has there, N. */
    private static final double SLOW = 0.1;

    private static final double GREATEST_SLOW_FORCE = 3000;

    private final Map<String, String> found = new LinkedHashMap<>();

    private Slips() {}

    /**
     * What is probably a slip, and which, by path.
     *
     * @param values every number of the car, with its origin
     */
    static Map<String, String> of(Car car, List<Adjustable> values) {
        Slips slips = new Slips();
        for (Adjustable value : values) {
            if (value.origin() == Adjustable.Origin.GIVEN) {
                slips.number(car, value);
            }
        }
        for (End end : End.values()) {
            Axle axle = car.axle(end);
            slips.coils(end.key() + ".spring.solidLength", axle.spring().lengths());
            axle.damper().ifPresent(damper -> slips.damper(end.key() + ".damper", axle, damper));
        }
        return slips.found;
    }

    private void number(Car car, Adjustable value) {
        String path = value.path();
        double si = value.si();
        String written = Quantity.of(si, value.unit()).text();
        if ((path.endsWith(".motionRatio") || path.endsWith(".linkRatio")) && si > 1) {
            found.put(path, "is " + written + ", more than 1: is it upside down? " + digits(1 / si, 2));
        } else if (path.equals("wheelbase") && si < SHORTEST_WHEELBASE) {
            found.put(path, "is " + written + ", shorter than any road car's: is it a track, or a slip of the pen?");
        } else if (path.endsWith("Stop.gap") && si >= 0 && si < SMALLEST_GAP) {
            found.put(
                    path,
                    "is " + written + ": it would touch as soon as the car moves; is it the travel from rest until it"
                            + " touches, and the unit right?");
        } else if (path.endsWith(".lean") && Math.abs(si) > GREATEST_LEAN) {
            found.put(
                    path,
                    "is " + written + ", which is much: is it measured from upright? If from level, it is "
                            + Quantity.of(Math.copySign(Math.PI / 2, si) - si, Dimension.ANGLE.metric())
                                    .text());
        } else if (isLiveAxle(car, path) && si < LIGHTEST_LIVE_AXLE) {
            found.put(
                    path,
                    "is " + written
                            + ", little for a live axle with its wheels and brakes: is it the whole axle, not one"
                            + " side of it?");
        }
    }

    private static boolean isLiveAxle(Car car, String path) {
        for (End end : End.values()) {
            if (path.equals(end.key() + ".unsprungMass")) {
                return car.axle(end) instanceof Axle.Live;
            }
        }
        return false;
    }

    private void coils(String path, Spring.Lengths lengths) {
        if (lengths.installed().isEmpty() || lengths.solid().isEmpty()) {
            return;
        }
        double left = lengths.installed().getAsDouble() - lengths.solid().getAsDouble();
        if (left < LEAST_TO_COIL_BIND) {
            found.put(
                    path,
                    "is only " + digits(left * Dimension.LENGTH.metric().fromSi(1), 2) + " "
                            + Dimension.LENGTH.metric().symbol()
                            + " less than installedLength: the coils would touch almost at rest; are both measured on the"
                            + " same spring?");
        }
    }

    private void damper(String path, Axle axle, Damper damper) {
        List<Curves> all = new ArrayList<>();
        for (int i = 0; i < damper.settings().size(); i++) {
            all.add(new Curves(
                    path + ".settings[" + i + "]", damper.settings().get(i).forces()));
        }
        Optional<Damper.Forces> own =
                damper.forces().filter(forces -> damper.setting().isEmpty());
        own.ifPresent(forces -> all.add(new Curves(path, forces)));
        for (Curves curves : all) {
            WheelDamper wheel = WheelDamper.of(axle, damper, curves.forces());
            double ratio = wheel.motionRatio() * wheel.motionRatio();
            slow(curves.path() + ".bump", wheel.bumpRate(SLOW) * SLOW / ratio);
            slow(curves.path() + ".rebound", wheel.reboundRate(SLOW) * SLOW / ratio);
        }
    }

    private record Curves(String path, Damper.Forces forces) {}

    private void slow(String path, double force) {
        if (force > GREATEST_SLOW_FORCE) {
            found.put(
                    path,
                    "gives " + digits(force / 1000, 2)
                            + " kN at 0.1 m/s, more than any road car's damper: are the units of"
                            + " speed and force right?");
        }
    }

    private static String digits(double number, int digits) {
        return new BigDecimal(number)
                .round(new MathContext(digits))
                .stripTrailingZeros()
                .toPlainString();
    }
}
