package evenhand.drawing;

import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Outline;
import evenhand.linkage.AxleLines;
import evenhand.linkage.AxleLines.Kind;
import evenhand.linkage.AxleLines.Line;
import evenhand.linkage.Place;
import evenhand.look.SetupStyle;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The links of an axle in one pose, seen from anywhere: where its joints are is not worked out here. */
final class DrawnLinks {
    private static final double JOINT = 0.011;
    private static final double SPRING_WIDTH = 0.09;
    private static final double DAMPER_WIDTH = 0.045;

    /** Part of a damper that its body takes when it is drawn. */
    private static final double DAMPER_BODY = 0.55;

    /** Where a place of the body's axes is in a picture, m. */
    interface Seen {
        Point2D at(Place place);
    }

    private final Seen seen;
    private final Set<String> stopped;
    private final List<Item> items = new ArrayList<>();

    private DrawnLinks(Seen seen, Set<String> stopped) {
        this.seen = seen;
        this.stopped = stopped;
    }

    /** @param stopped names of what is at a limit */
    static List<Item> of(AxleLines axle, Seen seen, Set<String> stopped) {
        DrawnLinks drawn = new DrawnLinks(seen, stopped);
        axle.lines().forEach(drawn::line);
        axle.lines().forEach(drawn::joints);
        return List.copyOf(drawn.items);
    }

    private void line(Line line) {
        Point2D from = seen.at(line.from());
        Point2D to = seen.at(line.to());
        switch (line.kind()) {
            case SPRING -> spring(from, to);
            case DAMPER, STRUT -> damper(line, from, to);
            case TUBE, UPRIGHT, BRACKET, SEAT, SHAFT_END, RACK -> items.add(between(Ink.PART, from, to));
            case BAR -> items.add(between(Ink.SPRING, from, to));
            case ROD, ARM, TORQUE_ARM, CRANK, LEAF, SHACKLE, BAR_ARM, BAR_LINK, SHAFT ->
                items.add(between(stopped.contains(line.name()) ? Ink.STOPPED : Ink.ROD, from, to));
        }
    }

    private static Outline between(Ink ink, Point2D from, Point2D to) {
        return Lines.line(ink, from.getX(), from.getY(), to.getX(), to.getY());
    }

    private void spring(Point2D from, Point2D to) {
        if (from.distance(to) < SPRING_WIDTH) {
            items.add(Lines.circle(Ink.SPRING, to.getX(), to.getY(), SPRING_WIDTH / 2));
        } else {
            items.add(Lines.spring(from.getX(), from.getY(), to.getX(), to.getY(), SPRING_WIDTH));
        }
    }

    /** A rod from the top, and a body from the bottom. */
    private void damper(Line line, Point2D top, Point2D bottom) {
        Ink ink = stopped.contains(line.name()) ? Ink.STOPPED : Ink.SPRING;
        items.add(between(ink, top, bottom));
        double length = top.distance(bottom);
        if (length < DAMPER_WIDTH) {
            items.add(Lines.circle(ink, bottom.getX(), bottom.getY(), DAMPER_WIDTH / 2));
            return;
        }
        double alongX = (top.getX() - bottom.getX()) / length;
        double alongZ = (top.getY() - bottom.getY()) / length;
        double half = DAMPER_WIDTH / 2;
        double far = DAMPER_BODY * length;
        Path2D body = new Path2D.Double();
        body.moveTo(bottom.getX() - half * alongZ, bottom.getY() + half * alongX);
        body.lineTo(bottom.getX() + half * alongZ, bottom.getY() - half * alongX);
        body.lineTo(bottom.getX() + half * alongZ + far * alongX, bottom.getY() - half * alongX + far * alongZ);
        body.lineTo(bottom.getX() - half * alongZ + far * alongX, bottom.getY() + half * alongX + far * alongZ);
        body.closePath();
        items.add(new Outline(body, ink, SetupStyle.NONE));
    }

    private void joints(Line line) {
        if (line.hangs()) {
            joint(Ink.PIVOT, line.from());
        }
        if (line.kind() == Kind.ROD
                || line.kind() == Kind.ARM
                || line.kind() == Kind.LEAF
                || line.kind() == Kind.BAR_LINK
                || line.kind() == Kind.SHAFT) {
            joint(Ink.JOINT, line.to());
        }
        if (line.kind() == Kind.SHACKLE || line.kind() == Kind.BAR_ARM || line.kind() == Kind.CRANK) {
            joint(Ink.JOINT, line.to());
        }
    }

    private void joint(Ink ink, Place place) {
        Point2D at = seen.at(place);
        items.add(Lines.circle(ink, at.getX(), at.getY(), JOINT));
    }
}
