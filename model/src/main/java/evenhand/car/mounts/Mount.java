package evenhand.car.mounts;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.links.MiddlePoint;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bracket, plate or bolted face that a shop makes or trusts, and what of it is known.
 *
 * @param name the shop's own, without dots
 * @param carries the ends whose forces it takes
 * @param faces the way its held face looks
 * @param at where it is, of the axle named first in {@code carries}; the first end where absent
 * @param pin that takes the load in bending and shear
 * @param spread what spreads the load on sheet
 * @param eye stiffness of a rubber bush in it; a joint that swivels freely where absent
 * @param between the two supports of a beam that carries it
 * @param ratedLoad what its maker allows, N
 */
public record Mount(
        String name,
        List<PartEnd> carries,
        Facing faces,
        Optional<MiddlePoint> at,
        Optional<Pin> pin,
        Optional<Spread> spread,
        Optional<Eye> eye,
        Optional<Between> between,
        OptionalDouble ratedLoad) {
    public Mount {
        carries = List.copyOf(carries);
        require(!name.isBlank(), "name", "must not be blank");
        require(!name.contains("."), "name", "must not hold a dot, which parts the steps of a path");
        require(
                !carries.isEmpty(),
                "carries",
                "is empty; name the ends that it holds, such as rear.lowerLinkLeft.body");
        require(ratedLoad.orElse(1) > 0, "ratedLoad", "must be above zero");
    }

    /** How a pin is held. */
    public enum Shear {
        /** On one side only. */
        SINGLE("single"),
        /** Between two cheeks. */
        DOUBLE("double");

        private final String key;

        Shear(String key) {
            this.key = key;
        }

        /** Name in files and sentences. */
        public String key() {
            return key;
        }
    }

    /**
     * A pin or bolt across the load.
     *
     * @param diameter of its shank, m
     * @param overhang from the held face to the middle of the load, m; single shear
     * @param span between the middles of the cheeks, m; double shear
     * @param threadInPlane whether its thread reaches into the plane of shear
     * @param yield of its steel, Pa, where known
     */
    public record Pin(
            double diameter, Shear shear, double overhang, double span, boolean threadInPlane, OptionalDouble yield) {
        public Pin {
            require(diameter > 0, "diameter", "must be above zero");
            require(overhang >= 0, "overhang", "must not be below zero");
            require(span >= 0, "span", "must not be below zero");
            require(overhang == 0 || shear == Shear.SINGLE, "overhang", "belongs to single shear; give span");
            require(span == 0 || shear == Shear.DOUBLE, "span", "belongs to double shear; give overhang");
            require(yield.orElse(1) > 0, "yield", "must be above zero");
            require(
                    !threadInPlane || CoarseThread.of(diameter).isPresent(),
                    "threadInPlane",
                    "is known for coarse threads from 6 to 24 mm only; give the diameter left in the plane as diameter, and yield");
        }

        /** Area that shears in one plane, m²: {@code π·d²/4}, or the stress area of the thread. */
        public double area() {
            return threadInPlane
                    ? CoarseThread.of(diameter).orElseThrow().stressArea()
                    : Math.PI / 4 * diameter * diameter;
        }

        /** Diameter of a circle of that area, m. */
        public double effectiveDiameter() {
            return Math.sqrt(4 * area() / Math.PI);
        }

        /** How many planes shear. */
        public int planes() {
            return shear == Shear.SINGLE ? 1 : 2;
        }

        /**
         * Yield of a property class {@code x.y}: {@code 100·x·y/10} MPa, in Pa.
         *
         * <p>Source: ISO 898-1, nominal values.
         *
         * @param text such as {@code 8.8}
         * @throws evenhand.quantity.InvalidValue if it is not of that form
         */
        public static double yieldOf(String text) {
            String trimmed = text.trim();
            require(
                    trimmed.matches("[0-9]{1,2}\\.[0-9]"),
                    "propertyClass",
                    "must be two numbers with a dot, such as 8.8 or 10.9");
            int dot = trimmed.indexOf('.');
            double strength = 100 * Double.parseDouble(trimmed.substring(0, dot));
            double share = Double.parseDouble(trimmed.substring(dot + 1)) / 10;
            require(strength * share > 0, "propertyClass", "must be above zero in both numbers, such as 8.8");
            return strength * share * 1e6;
        }
    }

    /** What spreads a load on sheet of a thickness, m. */
    public sealed interface Spread permits Washer, Plate {
        /** Thickness of the sheet, m, where known. */
        OptionalDouble sheet();

        /** m². */
        double area();

        /** Length of the edge along which the sheet would shear, m. */
        double edge();

        /** Section modulus against the moment of a stiff eye, m³. */
        double modulus();
    }

    /**
     * A round washer or cup.
     *
     * @param outer its diameter, m
     * @param hole m
     */
    public record Washer(double outer, double hole, OptionalDouble sheet) implements Spread {
        public Washer {
            require(outer > 0, "outer", "must be above zero");
            require(hole >= 0, "hole", "must not be below zero");
            require(hole < outer, "hole", "must be smaller than outer");
            require(sheet.orElse(1) > 0, "sheet", "must be above zero");
        }

        @Override
        public double area() {
            return Math.PI / 4 * (outer * outer - hole * hole);
        }

        @Override
        public double edge() {
            return Math.PI * outer;
        }

        /** {@code π·(outer⁴ − hole⁴)/(32·outer)}: a ring in bending. From memory, any strength text (Roark). */
        @Override
        public double modulus() {
            return Math.PI * (Math.pow(outer, 4) - Math.pow(hole, 4)) / (32 * outer);
        }
    }

    /**
     * A plate.
     *
     * @param length m
     * @param width m
     * @param hole m
     */
    public record Plate(double length, double width, double hole, OptionalDouble sheet) implements Spread {
        public Plate {
            require(length > 0, "length", "must be above zero");
            require(width > 0, "width", "must be above zero");
            require(hole >= 0, "hole", "must not be below zero");
            require(hole < Math.min(length, width), "hole", "must be smaller than length and width");
            require(sheet.orElse(1) > 0, "sheet", "must be above zero");
        }

        @Override
        public double area() {
            return length * width - Math.PI / 4 * hole * hole;
        }

        @Override
        public double edge() {
            return 2 * (length + width);
        }

        /** {@code longer·shorter²/6}: the worse way to tilt a rectangle. */
        @Override
        public double modulus() {
            double longer = Math.max(length, width);
            double shorter = Math.min(length, width);
            return longer * shorter * shorter / 6;
        }
    }

    /**
     * A rubber eye, by its turning stiffness.
     *
     * @param tilt across the bolt, N·m/rad
     * @param twist about the bolt, N·m/rad
     * @param tightenedAt travel of both wheels at which it was tightened, m
     */
    public record Eye(double tilt, double twist, double tightenedAt) {
        public Eye {
            require(tilt >= 0, "tilt", "must not be below zero");
            require(twist >= 0, "twist", "must not be below zero");
            require(Math.abs(tightenedAt) < 0.5, "tightenedAt", "must be less than half a metre");
        }
    }

    /** Where a beam that carries the mount ends, on rails or sills. */
    public record Between(MiddlePoint left, MiddlePoint right) {
        private static final double SHORTEST = 1e-3;

        public Between {
            double dx = left.ahead() - right.ahead();
            double dy = left.left() - right.left();
            double dz = left.up() - right.up();
            require(
                    Math.sqrt(dx * dx + dy * dy + dz * dz) > SHORTEST,
                    "right",
                    "stands in one place with the left support; give both ends of the beam");
        }
    }

    /** The same mount on a beam whose ends stand elsewhere. */
    public Mount between(Optional<Between> other) {
        return new Mount(name, carries, faces, at, pin, spread, eye, other, ratedLoad);
    }

    /** The same mount under another name. */
    public Mount named(String other) {
        return new Mount(other, carries, faces, at, pin, spread, eye, between, ratedLoad);
    }

    /** This mount on a car seen in a mirror: ends swap sides and what stands left stands right. */
    public Mount mirrored() {
        return new Mount(
                name,
                carries.stream().map(PartEnd::mirrored).toList(),
                faces.mirrored(),
                at.map(Mount::mirrored),
                pin,
                spread,
                eye,
                between.map(beam -> new Between(mirrored(beam.right()), mirrored(beam.left()))),
                ratedLoad);
    }

    private static MiddlePoint mirrored(MiddlePoint point) {
        return new MiddlePoint(point.ahead(), -point.left() + 0.0, point.up());
    }
}
