package evenhand.linkage;

import evenhand.car.links.PropShaft;
import java.util.ArrayList;
import java.util.List;

/** A propeller shaft between gearbox and pinion, with its yokes in phase on each piece. */
final class ShaftLine {
    /** How much of gearbox and pinion is drawn, m. */
    private static final double STUB = 0.15;

    private final PropShaft given;
    private final Part axle;
    private final Place gearboxAxis;
    private final Place pinionAxis;
    private final double lengthAtRest;

    /** Made with the axle at rest. */
    ShaftLine(PropShaft given, Part axle) {
        this.given = given;
        this.axle = axle;
        gearboxAxis = direction(given.gearboxSlope(), given.gearboxPlan());
        pinionAxis = direction(given.pinionSlope(), given.pinionPlan());
        lengthAtRest = last().length();
    }

    /** Direction of an axis, pointing forwards: front end up by the slope, to the left by the plan angle. */
    private static Place direction(double slope, double plan) {
        return new Place(Math.cos(slope) * Math.cos(plan), Math.cos(slope) * Math.sin(plan), Math.sin(slope));
    }

    private Place pinion() {
        return axle.placeOf(Place.of(given.pinion()));
    }

    /** Gearbox, pieces and pinion as lines, front to rear. */
    void draw(List<AxleLines.Line> lines) {
        Place gearbox = Place.of(given.gearbox());
        lines.add(new AxleLines.Line(
                AxleLines.Kind.SHAFT_END, "gearbox", gearbox.plus(STUB, gearboxAxis), gearbox, false));
        Place front = gearbox;
        if (given.centre().isPresent()) {
            front = Place.of(given.centre().get());
            lines.add(new AxleLines.Line(AxleLines.Kind.SHAFT_END, "frontShaft", gearbox, front, true));
        }
        Place pinion = pinion();
        lines.add(new AxleLines.Line(AxleLines.Kind.SHAFT, "propShaft", front, pinion, true));
        Place behind = Place.of(given.pinion()).plus(-STUB, pinionAxis);
        lines.add(new AxleLines.Line(AxleLines.Kind.SHAFT_END, "pinion", pinion, axle.placeOf(behind), false));
    }

    /** The last piece, from the pinion's joint forwards. */
    private Place last() {
        return Place.of(given.centre().orElse(given.gearbox())).minus(pinion());
    }

    /**
     * Angles between neighbouring axes, front to rear, and what they leave together:
     * <pre>  β = √|Σ ±β_i²·e^(2iψ_i)|,  ψ_i = atan2(n_z, n_y),  fluctuation sin β·tan β </pre>
     * n_i = first axis × second, both pointing forwards; signs alternate from +.
     *
     * <p>Source: SAE universal joint manual AE-7, joints in planes that differ.
     */
    AxleState.ShaftFigures figures() {
        Place pinionNow = new Place(
                axle.turnedX(pinionAxis.x(), pinionAxis.y(), pinionAxis.z()),
                axle.turnedY(pinionAxis.x(), pinionAxis.y(), pinionAxis.z()),
                axle.turnedZ(pinionAxis.x(), pinionAxis.y(), pinionAxis.z()));
        Place last = last();
        List<Place> axes = new ArrayList<>();
        axes.add(gearboxAxis);
        if (given.centre().isPresent()) {
            axes.add(Place.of(given.gearbox()).minus(Place.of(given.centre().get())));
        }
        axes.add(last);
        axes.add(pinionNow);
        List<Double> angles = new ArrayList<>();
        double even = 0;
        double odd = 0;
        double sign = 1;
        for (int joint = 0; joint + 1 < axes.size(); joint++) {
            Place first = axes.get(joint);
            Place second = axes.get(joint + 1);
            double angle = Angles.between(first.x(), first.y(), first.z(), second.x(), second.y(), second.z());
            Place normal = first.cross(second);
            double plane = Math.atan2(normal.z(), normal.y());
            even += sign * angle * angle * Math.cos(2 * plane);
            odd += sign * angle * angle * Math.sin(2 * plane);
            sign = -sign;
            angles.add(angle);
        }
        double residual = Math.sqrt(Math.hypot(even, odd));
        return new AxleState.ShaftFigures(
                Angles.rise(pinionNow.x(), pinionNow.y(), pinionNow.z()),
                angles,
                residual,
                Math.sin(residual) * Math.tan(residual),
                lengthAtRest - last.length(),
                Angles.rise(last.x(), last.y(), last.z()));
    }
}
