package evenhand.drawing;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Range;
import evenhand.quantity.Unit;
import evenhand.words.ChangeWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A place in a drawing that can be pulled to change values. Along each of its ways it moves as far as the value in metres.
 *
 * @param path of its value, or of the point whose coordinates it moves
 * @param words what it is: "rear lateral locator height", "rear lower link body"
 * @param x where it is, m
 * @param z where it is, m
 */
public record Handle(String path, String words, double x, double z, List<Way> ways) {
    /** The step of a point, in the unit that it was measured in: a millimetre or a twentieth of an inch. */
    private static final double MILLIMETRE = 0.001;

    private static final double TWENTIETH_INCH = 0.0254 / 20;

    /** A direction in the picture. */
    public enum Direction {
        /** To the right. */
        ACROSS,
        UP
    }

    /**
     * A way that a handle can be pulled.
     *
     * @param path of the value in the car
     * @param sign 1 where it goes up or to the right with the value, −1 where it goes the other way
     * @param value SI
     * @param step of one key, SI
     * @param grain the value is pulled to whole multiples of it, SI
     * @param usual usual range, where one is shown
     * @param bounds the value stays within them
     */
    public record Way(
            String path,
            Direction direction,
            int sign,
            double value,
            double step,
            double grain,
            Optional<Range> usual,
            Range bounds) {
        /** The value when it is pulled by so many metres in its direction. */
        public double pulled(double by) {
            return by == 0 ? value : bounds.cut(grain * Math.round((value + sign * by) / grain));
        }

        /** The value after some steps in its direction in the picture. */
        public double stepped(double steps) {
            return bounds.cut(value + sign * steps * step);
        }

        /** "up" of {@code rear.lateralLocator.pivot.up}. */
        String key() {
            return path.substring(path.lastIndexOf('.') + 1);
        }

        /** One that a value of this car moves along, if the car has it. */
        private static Optional<Way> of(List<Adjustable> values, String path, Direction direction, int sign) {
            return find(values, path)
                    .map(value -> new Way(
                            path,
                            direction,
                            sign,
                            value.si(),
                            value.step(),
                            value.step() / 10,
                            value.slot().usual(),
                            value.slot().bounds()));
        }

        /** The same of a coordinate, which can be nearly anything and is moved finely. */
        static Optional<Way> ofPoint(List<Adjustable> values, String path, Direction direction, int sign) {
            return find(values, path).map(value -> {
                double step = value.unit().equals(Unit.of("in")) ? TWENTIETH_INCH : MILLIMETRE;
                return new Way(
                        path,
                        direction,
                        sign,
                        value.si(),
                        step,
                        step,
                        Optional.empty(),
                        value.slot().bounds());
            });
        }

        private static Optional<Adjustable> find(List<Adjustable> values, String path) {
            return values.stream().filter(value -> value.path().equals(path)).findFirst();
        }
    }

    public Handle {
        ways = List.copyOf(ways);
    }

    /** The handle of a value of this car that is pulled up and down, if the car has it. */
    static Optional<Handle> of(List<Adjustable> values, String path, double x, double z, int upwards) {
        return Way.of(values, path, Direction.UP, upwards)
                .map(way -> new Handle(path, ChangeWords.name(path), x, z, List.of(way)));
    }

    /** The way in a direction. */
    public Optional<Way> way(Direction direction) {
        return ways.stream().filter(way -> way.direction() == direction).findFirst();
    }

    /** Whether it is a point, moved by its coordinates. */
    boolean isPoint() {
        return ways.stream().noneMatch(way -> way.path().equals(path));
    }

    /** Its values as they are. */
    public Map<String, Double> values() {
        return pulled(0, 0);
    }

    /** Its values when it is pulled to the right and up by so many metres, within their bounds. */
    public Map<String, Double> pulled(double across, double up) {
        Map<String, Double> values = new LinkedHashMap<>();
        ways.forEach(way -> values.put(way.path(), way.pulled(way.direction() == Direction.UP ? up : across)));
        return values;
    }

    /** Its values after some steps in one direction in the picture, within their bounds. */
    public Map<String, Double> stepped(Direction direction, double steps) {
        Map<String, Double> values = new LinkedHashMap<>();
        way(direction).ifPresent(way -> values.put(way.path(), way.stepped(steps)));
        return values;
    }
}
