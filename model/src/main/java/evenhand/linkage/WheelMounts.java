package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.BarArm;
import evenhand.car.links.CarriedOn;
import evenhand.car.links.Dampers;
import evenhand.car.links.Mounts;
import evenhand.car.links.Pair;
import evenhand.car.links.SpringLine;
import evenhand.car.links.Strut;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Spring, damper and bar of one side: lengths, slopes of lengths, angles of the eyes, turn of the bar's arm. {@link #read}
 * sets them for the present pose of the parts and allocates nothing.
 */
final class WheelMounts {
    /** A line from a fixed top to a bottom on a part. */
    private static final class Line {
        final Place top;
        final CarriedOn on;
        final Part part;
        final Place bottom;
        double length;
        double alongX; // from top to bottom, unit
        double alongY;
        double alongZ;
        final double[] slopes = new double[Part.MOTIONS];

        Line(Place top, CarriedOn on, Function<CarriedOn, Part> parts, Place bottom) {
            this.top = top;
            this.on = on;
            part = parts.apply(on);
            this.bottom = bottom;
        }

        /** Length ℓ and its slope n·w per unit of each motion, n the line's direction, w the bottom's velocity. */
        void read() {
            double x = part.placeX(bottom.x(), bottom.y(), bottom.z());
            double y = part.placeY(bottom.x(), bottom.y(), bottom.z());
            double z = part.placeZ(bottom.x(), bottom.y(), bottom.z());
            double dx = x - top.x();
            double dy = y - top.y();
            double dz = z - top.z();
            length = Math.sqrt(dx * dx + dy * dy + dz * dz);
            alongX = dx / length;
            alongY = dy / length;
            alongZ = dz / length;
            for (int motion = 0; motion < Part.MOTIONS; motion++) {
                slopes[motion] = alongX * part.speedX(motion, x, y, z)
                        + alongY * part.speedY(motion, x, y, z)
                        + alongZ * part.speedZ(motion, x, y, z);
            }
        }
    }

    /** Direction of an eye's bolt as measured, and whether it is a stud. */
    private record Bolt(Place along, boolean stud) {}

    private final Optional<Line> spring;
    private final boolean aroundStrut;
    private final double fittings;
    private final Optional<Line> damper;
    private final Optional<Bolt> upperBolt;
    private final Optional<Bolt> lowerBolt;
    private final Optional<BarLink> bar;

    WheelMounts(Mounts mounts, Side side, Function<CarriedOn, Part> parts, Optional<Strut> strut) {
        Optional<Line> strutLine =
                strut.map(s -> new Line(Place.of(s.top(), side), CarriedOn.UPRIGHT, parts, Place.of(s.bottom(), side)));
        Optional<Dampers.Ends> eyes = mounts.damper()
                .map(Dampers::line)
                .flatMap(line -> line instanceof Dampers.BetweenEyes between
                        ? Optional.of(between.ends().of(side))
                        : Optional.empty());
        damper = eyes.isPresent()
                ? eyes.map(e -> new Line(eye(e.top(), side), e.on(), parts, eye(e.bottom(), side)))
                : mounts.damper().isPresent() ? strutLine : Optional.empty();
        upperBolt = eyes.map(e -> bolt(e.top(), side));
        lowerBolt = eyes.map(e -> bolt(e.bottom(), side));
        spring = mounts.spring().flatMap(line -> springLine(line, side, parts, strutLine));
        aroundStrut =
                mounts.spring().filter(SpringLine.AroundStrut.class::isInstance).isPresent();
        fittings = mounts.spring().map(WheelMounts::fittings).orElse(0.0);
        bar = mounts.bar().map(both -> new BarLink(both, side, parts));
    }

    private Optional<Line> springLine(
            SpringLine line, Side side, Function<CarriedOn, Part> parts, Optional<Line> strutLine) {
        if (line instanceof SpringLine.BetweenPoints points) {
            SpringLine.Ends ends = points.ends().of(side);
            return Optional.of(new Line(Place.of(ends.top(), side), ends.on(), parts, Place.of(ends.bottom(), side)));
        }
        return line instanceof SpringLine.AroundStrut ? strutLine : damper;
    }

    private static double fittings(SpringLine line) {
        if (line instanceof SpringLine.AroundDamper around) {
            return around.fittings();
        }
        return line instanceof SpringLine.AroundStrut around ? around.fittings() : 0;
    }

    /**
     * Direction of a bolt as measured: across (0, σ·cos ε, sin ε), along (cos ε, 0, sin ε), upright
     * (0, −σ·sin ε, cos ε); ε its tilt.
     */
    private static Bolt bolt(Dampers.Eye eye, Side side) {
        double cosine = Math.cos(eye.tilt());
        double sine = Math.sin(eye.tilt());
        return switch (eye.bolt()) {
            case ACROSS -> new Bolt(new Place(0, side.sign() * cosine, sine), false);
            case ALONG -> new Bolt(new Place(cosine, 0, sine), false);
            case UPRIGHT -> new Bolt(new Place(0, -side.sign() * sine, cosine), true);
        };
    }

    /** Place of an eye with its shims, along its bolt. */
    private static Place eye(Dampers.Eye eye, Side side) {
        return Place.of(eye.at(), side).plus(eye.shim(), bolt(eye, side).along());
    }

    /** Sets everything for the present pose. */
    void read() {
        if (damper.isPresent()) {
            damper.get().read();
        }
        if (spring.isPresent()) {
            spring.get().read();
        }
        if (bar.isPresent()) {
            bar.get().read();
        }
    }

    boolean hasSpring() {
        return spring.isPresent();
    }

    boolean hasDamper() {
        return damper.isPresent();
    }

    boolean hasEyes() {
        return upperBolt.isPresent();
    }

    /** Whether there is a bar by points and its drop link follows so far: it holds no wheel, so it ends no travel. */
    boolean hasBar() {
        return bar.isPresent() && bar.get().follows;
    }

    /** Length of the coil, m. */
    double springLength() {
        return spring.orElseThrow().length - fittings;
    }

    /** −d(length) per unit of a motion. */
    double springRatio(int motion) {
        return -spring.orElseThrow().slopes[motion];
    }

    /** Between the eyes, m. */
    double damperLength() {
        return damper.orElseThrow().length;
    }

    /** −d(length) per unit of a motion. */
    double damperRatio(int motion) {
        return -damper.orElseThrow().slopes[motion];
    }

    /** Angle between the damper and the plane square to the upper bolt, or its stud, rad. */
    double upperEye() {
        Bolt bolt = upperBolt.orElseThrow();
        return angle(bolt, bolt.along().x(), bolt.along().y(), bolt.along().z());
    }

    /** The same of the lower eye, whose bolt goes with its part. */
    double lowerEye() {
        Bolt bolt = lowerBolt.orElseThrow();
        Part part = damper.orElseThrow().part;
        Place b = bolt.along();
        return angle(
                bolt,
                part.turnedX(b.x(), b.y(), b.z()),
                part.turnedY(b.x(), b.y(), b.z()),
                part.turnedZ(b.x(), b.y(), b.z()));
    }

    private double angle(Bolt bolt, double bx, double by, double bz) {
        Line line = damper.orElseThrow();
        double across = Angles.square(line.alongX, line.alongY, line.alongZ, bx, by, bz);
        return bolt.stud() ? Math.PI / 2 - across : across;
    }

    /** Travel of the arm's end along its arc per unit of a motion, unsigned. */
    double barRatio(int motion) {
        return bar.orElseThrow().ratios[motion];
    }

    /** Turn of the arm from where it was measured, rad, right-handed about y. */
    double barTurn() {
        return bar.orElseThrow().turned;
    }

    /** Spring, damper and bar as lines; what is around another stands in its line. */
    void draw(Side side, List<AxleLines.Line> lines) {
        damper.ifPresent(line -> lines.add(drawn(AxleLines.Kind.DAMPER, AxleLines.on(side, "damper"), line)));
        spring.ifPresent(line -> lines.add(drawn(AxleLines.Kind.SPRING, AxleLines.on(side, "spring"), line)));
        if (hasBar()) {
            bar.orElseThrow().draw(side, lines);
        }
    }

    /** The spring between its seats, where it has points and stands around no strut. */
    Optional<AxleJoints.LineAt> springAt() {
        return aroundStrut ? Optional.empty() : spring.map(WheelMounts::lineAt);
    }

    /** The damper between its eyes, where it has some. */
    Optional<AxleJoints.LineAt> damperAt() {
        return hasEyes() ? damper.map(WheelMounts::lineAt) : Optional.empty();
    }

    private static AxleJoints.LineAt lineAt(Line line) {
        return new AxleJoints.LineAt(line.top, line.part.placeOf(line.bottom), line.on);
    }

    /** The bar's drop link and how fast its lower end goes along it in a motion, where it follows. */
    Optional<AxleJoints.BarLinkAt> barLinkAt(Side side, int motion) {
        return hasBar() ? Optional.of(bar.orElseThrow().at(side, motion)) : Optional.empty();
    }

    private static AxleLines.Line drawn(AxleLines.Kind kind, String name, Line line) {
        return new AxleLines.Line(kind, name, line.top, line.part.placeOf(line.bottom), true);
    }

    /** An end of the bar: an arm that turns about an axis across the car, and its drop link. */
    private static final class BarLink {
        private final Place pivot;
        private final double armY;
        private final double arm;
        private final double measuredAngle;
        private final double link;
        private final double branch;
        private final CarriedOn on;
        private final Part part;
        private final Place linkEnd;
        final double[] ratios = new double[Part.MOTIONS];
        double turned;
        boolean follows;
        private double endX; // of the arm, from the pivot
        private double endZ;

        BarLink(Pair<BarArm> both, Side side, Function<CarriedOn, Part> parts) {
            BarArm given = both.of(side);
            pivot = Place.of(given.pivot(), side);
            Place armEnd = Place.of(given.armEnd(), side);
            linkEnd = Place.of(given.linkEnd(), side);
            on = given.on();
            part = parts.apply(on);
            armY = armEnd.y();
            arm = Math.hypot(armEnd.x() - pivot.x(), armEnd.z() - pivot.z());
            measuredAngle = Math.atan2(armEnd.z() - pivot.z(), armEnd.x() - pivot.x());
            link = armEnd.distanceTo(linkEnd);
            double towards = Math.atan2(linkEnd.z() - pivot.z(), linkEnd.x() - pivot.x());
            branch = Math.sin(measuredAngle - towards) < 0 ? -1 : 1;
        }

        void draw(Side side, List<AxleLines.Line> lines) {
            Place end = new Place(pivot.x() + endX, armY, pivot.z() + endZ);
            Place inMiddle = new Place(pivot.x(), 0, pivot.z());
            lines.add(new AxleLines.Line(AxleLines.Kind.BAR, AxleLines.on(side, "bar"), inMiddle, pivot, false));
            lines.add(new AxleLines.Line(AxleLines.Kind.BAR_ARM, AxleLines.on(side, "barArm"), pivot, end, true));
            lines.add(new AxleLines.Line(
                    AxleLines.Kind.BAR_LINK, AxleLines.on(side, "barLink"), end, part.placeOf(linkEnd), false));
        }

        AxleJoints.BarLinkAt at(Side side, int motion) {
            Place end = new Place(pivot.x() + endX, armY, pivot.z() + endZ);
            Place lower = part.placeOf(linkEnd);
            Place along = lower.minus(end).unit();
            double slope = along.x() * part.speedX(motion, lower.x(), lower.y(), lower.z())
                    + along.y() * part.speedY(motion, lower.x(), lower.y(), lower.z())
                    + along.z() * part.speedZ(motion, lower.x(), lower.y(), lower.z());
            // of a live axle the motion lifts the left end and lets down the right one
            return new AxleJoints.BarLinkAt(end, lower, on, on == CarriedOn.AXLE ? side.sign() * slope : slope);
        }

        /**
         * The arm's angle α in side view, from the drop link's length: with (X, Z) from the pivot to the link's end, D their
         * length, ρ the arm, l the link, Δy how far apart they are across
         * <pre>  X·cos α + Z·sin α = (ρ² + D² + Δy² − l²)/(2ρ),  dα = n·w/(ρ·n·t) </pre>
         * n along the link, t square to the arm; it stays on the side of the line to the link's end where it was measured.
         */
        void read() {
            double qx = part.placeX(linkEnd.x(), linkEnd.y(), linkEnd.z());
            double qy = part.placeY(linkEnd.x(), linkEnd.y(), linkEnd.z());
            double qz = part.placeZ(linkEnd.x(), linkEnd.y(), linkEnd.z());
            double x = qx - pivot.x();
            double z = qz - pivot.z();
            double across = qy - armY;
            double square = x * x + z * z;
            double cosine = (arm * arm + square + across * across - link * link) / (2 * arm);
            double rest = square - cosine * cosine;
            follows = rest >= 0;
            if (!follows) {
                return;
            }
            double angle = Math.atan2(z, x) + branch * Math.atan2(Math.sqrt(rest), cosine);
            turned = Angles.wrapped(measuredAngle - angle);
            endX = arm * Math.cos(angle);
            endZ = arm * Math.sin(angle);
            double nx = x - endX;
            double nz = z - endZ;
            double across1 = (nz * endX - nx * endZ) / arm;
            for (int motion = 0; motion < Part.MOTIONS; motion++) {
                double along = nx * part.speedX(motion, qx, qy, qz)
                        + across * part.speedY(motion, qx, qy, qz)
                        + nz * part.speedZ(motion, qx, qy, qz);
                ratios[motion] = Math.abs(along / across1);
            }
        }
    }
}
