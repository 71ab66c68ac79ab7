package evenhand.drawing;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.catalogue.Adjustable;
import evenhand.drawing.Handle.Direction;
import evenhand.drawing.Handle.Way;
import evenhand.linkage.AxleLines;
import evenhand.linkage.AxleLines.Line;
import evenhand.linkage.Place;
import evenhand.words.ChangeWords;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The measured points of an axle as handles: each where it is in a pose, pulled along those coordinates that the view shows. A pair
 * that is alike is pulled on either side.
 */
final class PointHandles {
    private static final String RIGHT = "right";

    /** In a view from straight ahead a direction shows whole or not at all. */
    private static final double SHOWS = 0.5;

    private final End end;
    private final List<Adjustable> values;
    private final DrawnLinks.Seen seen;
    private final Map<String, Handle> handles = new LinkedHashMap<>();
    private final Set<String> arms = new HashSet<>();

    private PointHandles(End end, List<Adjustable> values, DrawnLinks.Seen seen) {
        this.end = end;
        this.values = values;
        this.seen = seen;
    }

    /** @param values of the car: points that it was not given have no handle */
    static List<Handle> of(AxleLines axle, End end, List<Adjustable> values, DrawnLinks.Seen seen) {
        PointHandles points = new PointHandles(end, values, seen);
        axle.lines().forEach(points::line);
        return List.copyOf(points.handles.values());
    }

    /** The pivot of a Watt's linkage alone, pulled up and down. */
    static Optional<Handle> pivot(AxleLines axle, End end, List<Adjustable> values, DrawnLinks.Seen seen) {
        return of(axle, end, values, seen).stream()
                .filter(handle -> handle.path().endsWith(".lateralLocator.pivot"))
                .map(handle -> new Handle(
                        handle.path(),
                        handle.words(),
                        handle.x(),
                        handle.z(),
                        handle.way(Direction.UP).stream().toList()))
                .findFirst();
    }

    /** Which points of the file the ends of a line are. */
    private void line(Line line) {
        boolean right = line.name().endsWith("Right");
        Side side = right ? Side.RIGHT : Side.LEFT;
        String name = line.name().replaceFirst("(Left|Right)$", "");
        switch (line.kind()) {
            case ROD -> rod(line, name, side);
            case ARM -> {
                // The front pivot is drawn before the rear one.
                point("links." + name + (arms.add(line.name()) ? ".front" : ".rear"), side, line.from());
                point("links." + name + ".outer", side, line.to());
            }
            case STRUT -> both(line, "links.strut.top", "links.strut.bottom", side);
            case CRANK -> point("lateralLocator.pivot", Side.LEFT, line.from());
            case LEAF ->
                point(name.equals("leafFront") ? "links.leaf.frontEye" : "links.leaf.rearEye", side, line.from());
            case SHACKLE -> point("links.leaf.shackle", side, line.from());
            case SPRING -> both(line, "spring.top", "spring.bottom", side);
            case DAMPER -> both(line, "damper.top", "damper.bottom", side);
            case BAR_ARM -> both(line, "bar.pivot", "bar.armEnd", side);
            case BAR_LINK -> point("bar.linkEnd", side, line.to());
            case SHAFT -> point("propShaft.pinion", Side.LEFT, line.to());
            case SHAFT_END -> {
                if (name.equals("gearbox")) {
                    point("propShaft.gearbox", Side.LEFT, line.to());
                } else if (name.equals("frontShaft")) {
                    point("propShaft.centre", Side.LEFT, line.to());
                }
            }
            case TORQUE_ARM, SEAT, UPRIGHT, TUBE, BRACKET, RACK, BAR -> {
                // Their ends are those of other lines, or no points of the file.
            }
        }
    }

    private void rod(Line line, String name, Side side) {
        switch (name) {
            case "tieRod" -> both(line, "links.tieRod.inner", "links.tieRod.outer", side);
            case "dropLink" -> both(line, "links.torqueArm.hanger", "links.torqueArm.end", side);
            case "panhardRod" -> both(line, "lateralLocator.body", "lateralLocator.axle", side);
            // The other end is a pin of the bell-crank, which goes with its pivot.
            case "upperRod", "lowerRod" ->
                point("lateralLocator." + name + ".end", side, line.hangs() ? line.from() : line.to());
            default -> both(line, "links." + name + ".body", "links." + name + ".axle", side);
        }
    }

    private void both(Line line, String from, String to, Side side) {
        point(from, side, line.from());
        point(to, side, line.to());
    }

    private String id(String point, Side side) {
        return end.key() + "." + (side == Side.RIGHT ? onTheRight(point) : point);
    }

    /** {@code links.lowerLink.right.axle} of {@code links.lowerLink.axle}. */
    private static String onTheRight(String point) {
        int last = point.lastIndexOf('.');
        return point.substring(0, last) + "." + RIGHT + point.substring(last);
    }

    private void point(String point, Side side, Place place) {
        String id = id(point, side);
        List<Way> ways = new ArrayList<>();
        way(ways, point, side, "ahead", new Place(1, 0, 0));
        way(ways, point, side, "out", new Place(0, side.sign(), 0));
        way(ways, point, side, "left", new Place(0, 1, 0));
        way(ways, point, side, "up", new Place(0, 0, 1));
        if (ways.isEmpty()) {
            return;
        }
        Point2D at = seen.at(place);
        boolean covered = side == Side.RIGHT
                && handles.values().stream()
                        .anyMatch(handle -> handle.path().equals(id(point, Side.LEFT))
                                && at.distance(handle.x(), handle.z()) < 1e-3);
        if (!covered) {
            boolean own = side == Side.RIGHT
                    && ways.stream().anyMatch(way -> way.path().startsWith(id));
            handles.putIfAbsent(id, new Handle(id, words(point, own), at.getX(), at.getY(), ways));
        }
    }

    private String words(String point, boolean ofRight) {
        return ChangeWords.name(end.key() + "." + point.replaceFirst("^links\\.", "")) + (ofRight ? ", right" : "");
    }

    /** A coordinate that shows in this view: that of the right side where it has one of its own. */
    private void way(List<Way> ways, String point, Side side, String key, Place grows) {
        Point2D from = seen.at(new Place(0, 0, 0));
        Point2D to = seen.at(grows);
        double across = to.getX() - from.getX();
        double up = to.getY() - from.getY();
        boolean shows = Math.max(Math.abs(across), Math.abs(up)) > SHOWS;
        if (!shows) {
            return;
        }
        Direction direction = Math.abs(up) > Math.abs(across) ? Direction.UP : Direction.ACROSS;
        int sign = (direction == Direction.UP ? up : across) > 0 ? 1 : -1;
        Optional<Way> own = Way.ofPoint(values, id(point, side) + "." + key, direction, sign);
        own.or(() -> Way.ofPoint(values, end.key() + "." + point + "." + key, direction, sign))
                .ifPresent(ways::add);
    }
}
