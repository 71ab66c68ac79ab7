package evenhand.drawing;

import evenhand.car.Car;
import java.awt.geom.Path2D;

/** Outline of a body of no particular car, by the wheelbase and the track only. */
final class BodyShape {
    static final double FRONT_OVERHANG = 0.30;
    static final double REAR_OVERHANG = 0.36;
    static final double ROOF = 0.56;
    static final double SILL = 0.085;
    static final double WAIST = 0.36;

    private BodyShape() {}

    /** Half the width of the body, m. */
    static double halfWidth(Car car) {
        return Math.max(car.front().track(), car.rear().track()) / 2 + 0.045 * car.wheelbase();
    }

    /** From behind: x to the right. */
    static Path2D fromBehind(Car car) {
        double l = car.wheelbase();
        double b = halfWidth(car);
        Path2D path = new Path2D.Double();
        path.moveTo(-0.94 * b, SILL * l);
        path.quadTo(-b, 0.15 * l, -b, 0.22 * l);
        path.quadTo(-b, 0.33 * l, -0.93 * b, WAIST * l);
        path.lineTo(-0.74 * b, 0.52 * l);
        path.quadTo(-0.69 * b, ROOF * l, -0.52 * b, ROOF * l);
        path.lineTo(0.52 * b, ROOF * l);
        path.quadTo(0.69 * b, ROOF * l, 0.74 * b, 0.52 * l);
        path.lineTo(0.93 * b, WAIST * l);
        path.quadTo(b, 0.33 * l, b, 0.22 * l);
        path.quadTo(b, 0.15 * l, 0.94 * b, SILL * l);
        path.closePath();
        path.moveTo(-0.93 * b, WAIST * l);
        path.lineTo(0.93 * b, WAIST * l);
        return path;
    }

    /** From the left: x backwards from the front axle; the wheels' arches of these radii left open. */
    static Path2D fromTheLeft(Car car, double frontArch, double rearArch) {
        double l = car.wheelbase();
        double sill = SILL * l;
        double front = arch(frontArch, car.front().tyre().loadedRadius() - sill);
        double rear = arch(rearArch, car.rear().tyre().loadedRadius() - sill);
        Path2D path = new Path2D.Double();
        path.moveTo(-front, sill);
        path.lineTo(-0.26 * l, sill + 0.01 * l);
        path.quadTo(-FRONT_OVERHANG * l, 0.12 * l, -FRONT_OVERHANG * l, 0.20 * l);
        path.quadTo(-0.29 * l, 0.29 * l, -0.18 * l, 0.305 * l);
        path.lineTo(0.22 * l, 0.345 * l);
        path.lineTo(0.41 * l, 0.525 * l);
        path.quadTo(0.45 * l, ROOF * l, 0.54 * l, ROOF * l);
        path.lineTo(0.76 * l, 0.55 * l);
        path.quadTo(0.83 * l, 0.545 * l, 0.88 * l, 0.50 * l);
        path.lineTo(1.04 * l, 0.365 * l);
        path.lineTo(1.28 * l, 0.35 * l);
        path.quadTo((1 + REAR_OVERHANG) * l, 0.34 * l, (1 + REAR_OVERHANG) * l, 0.24 * l);
        path.quadTo((1 + REAR_OVERHANG) * l, 0.14 * l, 1.31 * l, sill + 0.02 * l);
        path.lineTo(l + rear, sill);
        arc(path, l, car.rear().tyre().loadedRadius(), rearArch, sill);
        path.lineTo(front, sill);
        arc(path, 0, car.front().tyre().loadedRadius(), frontArch, sill);
        path.moveTo(0.22 * l, 0.345 * l);
        path.lineTo(1.04 * l, 0.365 * l);
        return path;
    }

    /** Half the opening of an arch at the sill. */
    private static double arch(double radius, double above) {
        return Math.sqrt(Math.max(0, radius * radius - above * above));
    }

    /** Over a wheel from behind it to before it. */
    private static void arc(Path2D path, double x, double z, double radius, double sill) {
        double half = arch(radius, z - sill);
        double start = Math.atan2(sill - z, half);
        double end = Math.PI - start;
        for (int i = 0; i <= 16; i++) {
            double angle = start + (end - start) * i / 16;
            path.lineTo(x + radius * Math.cos(angle), z + radius * Math.sin(angle));
        }
    }

    /** From above: x backwards from the front axle, upwards in the picture to the right of the car. */
    static Path2D fromAbove(Car car) {
        double l = car.wheelbase();
        double b = halfWidth(car);
        Path2D path = new Path2D.Double();
        double nose = -FRONT_OVERHANG * l;
        double tail = (1 + REAR_OVERHANG) * l;
        path.moveTo(nose, -0.55 * b);
        path.quadTo(nose, -0.92 * b, -0.12 * l, -0.97 * b);
        path.lineTo(0.3 * l, -b);
        path.lineTo(0.8 * l, -b);
        path.lineTo(1.15 * l, -0.97 * b);
        path.quadTo(tail, -0.92 * b, tail, -0.6 * b);
        path.lineTo(tail, 0.6 * b);
        path.quadTo(tail, 0.92 * b, 1.15 * l, 0.97 * b);
        path.lineTo(0.8 * l, b);
        path.lineTo(0.3 * l, b);
        path.lineTo(-0.12 * l, 0.97 * b);
        path.quadTo(nose, 0.92 * b, nose, 0.55 * b);
        path.closePath();
        path.moveTo(0.22 * l, -0.72 * b);
        path.quadTo(0.16 * l, 0, 0.22 * l, 0.72 * b);
        path.moveTo(1.04 * l, -0.68 * b);
        path.quadTo(1.08 * l, 0, 1.04 * l, 0.68 * b);
        return path;
    }
}
