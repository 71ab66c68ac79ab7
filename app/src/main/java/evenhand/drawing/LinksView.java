package evenhand.drawing;

import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Mark;
import evenhand.drawing.Item.Outline;
import evenhand.drawing.Item.Sign;
import evenhand.linkage.AxleLines;
import evenhand.linkage.Place;
import evenhand.look.SetupStyle;
import evenhand.words.EventWords;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An axle on its links somewhere in its travel, from behind, from the left and from above: the body stands still, the wheels move.
 * Thin outlines are the wheels at rest.
 */
public final class LinksView {
    private static final double AIR = 0.05;

    /** What the wheels may move in a picture that does not, m. */
    private static final double TRAVEL = 0.09;

    private final Axle axle;
    private final DrawnLinks.Seen seen;
    private final List<Item> items = new ArrayList<>();

    /**
     * What is drawn.
     *
     * @param stance the set-up at rest: its tyres, and its style
     * @param rest the links at rest
     * @param now the links in the place that is shown
     * @param where that place in words: "at 25 mm of bump"
     * @param rollCentre its height over the ground in words; empty where there is none
     * @param stopped names of parts that are at a limit
     * @param values the set-up's numbers: points that are among them can be pulled
     * @param readings figures that are told while one is
     * @param forces as arrows
     * @param force what an arrow of a length stands for: the one that lies below as a scale
     */
    public record Axle(
            Stance stance,
            End end,
            AxleLines rest,
            AxleLines now,
            String where,
            String rollCentre,
            Set<String> stopped,
            List<Adjustable> values,
            List<Drawing.Reading> readings,
            List<Force> forces,
            Optional<Scale> force,
            Detail detail) {
        /** Links without forces. */
        public Axle(
                Stance stance,
                End end,
                AxleLines rest,
                AxleLines now,
                String where,
                String rollCentre,
                Set<String> stopped,
                List<Adjustable> values,
                List<Drawing.Reading> readings,
                Detail detail) {
            this(
                    stance,
                    end,
                    rest,
                    now,
                    where,
                    rollCentre,
                    stopped,
                    values,
                    readings,
                    List.of(),
                    Optional.empty(),
                    detail);
        }

        public Axle {
            forces = List.copyOf(forces);
            stopped = Set.copyOf(stopped);
            values = List.copyOf(values);
            readings = List.copyOf(readings);
        }

        private String title(String from) {
            return "The " + EventWords.end(end) + " links from " + from + ", " + where;
        }
    }

    /**
     * A force as an arrow.
     *
     * @param arrow from where it acts to where it points, m
     * @param style its part's
     */
    public record Force(Place at, Place arrow, String words, SetupStyle style) {}

    /** An arrow of a length, m, and what it stands for. */
    public record Scale(double length, String words) {}

    private LinksView(Axle axle, DrawnLinks.Seen seen) {
        this.axle = axle;
        this.seen = seen;
    }

    /** From behind, x to the right. */
    public static Drawing behind(Axle axle) {
        LinksView view = new LinksView(axle, place -> new Point2D.Double(-place.y(), place.z()));
        view.drawBehind();
        return view.drawing(axle.title("behind"), view.world(TRAVEL));
    }

    /** From the left, the front to the left. */
    public static Drawing side(Axle axle) {
        LinksView view = new LinksView(axle, place -> new Point2D.Double(-place.x(), place.z()));
        view.drawSide();
        return view.drawing(axle.title("the left"), view.world(TRAVEL));
    }

    /** From above, the front to the left, its left side at the bottom. */
    public static Drawing above(Axle axle) {
        LinksView view = new LinksView(axle, place -> new Point2D.Double(-place.x(), -place.y()));
        view.drawAbove();
        return view.drawing(axle.title("above"), view.world(0));
    }

    /** Arrows whose length in this view is less are dots that say nothing, m. */
    private static final double SEEN = 0.015;

    /** Forces as they are seen from here, over the links. */
    private void forces(Rectangle2D world) {
        for (Force force : axle.forces()) {
            Point2D from = seen.at(force.at());
            Point2D to = seen.at(force.at().plus(1, force.arrow()));
            if (from.distance(to) > SEEN) {
                items.add(new Item.Arrow(from.getX(), from.getY(), to.getX(), to.getY(), force.words(), force.style()));
            }
        }
        axle.force().ifPresent(scale -> {
            double right = world.getMaxX() - AIR;
            double z = world.getMinY() + AIR / 2;
            items.add(new Item.Arrow(right - scale.length(), z, right, z, scale.words(), SetupStyle.NONE));
        });
    }

    private Drawing drawing(String title, Rectangle2D world) {
        forces(world);
        double bar = axle.detail().scaleBar(axle.stance().car()) / 2;
        List<Handle> handles = PointHandles.of(axle.now(), axle.end(), axle.values(), seen);
        return new Drawing(title, items, handles, world, 0, bar, axle.detail().length(bar), "", axle.readings());
    }

    /** Around everything at rest, so that the picture stays while the axle moves. */
    private Rectangle2D world(double high) {
        double width = axle.stance().tyreWidth(axle.end());
        double radius = axle.stance().freeRadius(axle.end());
        Rectangle2D world = null;
        List<Place> corners = new ArrayList<>();
        for (AxleLines.Line line : axle.rest().lines()) {
            corners.add(line.from());
            corners.add(line.to());
        }
        for (AxleLines.Wheel wheel : axle.rest().wheels()) {
            for (int way = -1; way <= 1; way += 2) {
                corners.add(wheel.centre().plus(way, new Place(radius, width / 2, radius)));
                corners.add(wheel.centre().plus(way, new Place(radius, -width / 2, radius)));
            }
        }
        for (Force force : axle.forces()) {
            corners.add(force.at().plus(1, force.arrow()));
        }
        for (Place corner : corners) {
            Point2D at = seen.at(corner);
            Rectangle2D one = new Rectangle2D.Double(at.getX(), at.getY(), 1e-6, 1e-6);
            world = world == null ? one : world.createUnion(one);
        }
        Rectangle2D all = java.util.Objects.requireNonNull(world);
        return new Rectangle2D.Double(
                all.getX() - AIR,
                all.getY() - AIR - high,
                all.getWidth() + 2 * AIR,
                all.getHeight() + 2 * (AIR + high));
    }

    private void links() {
        items.addAll(DrawnLinks.of(axle.now(), seen, axle.stopped()));
    }

    private void drawBehind() {
        for (AxleLines.Wheel wheel : axle.rest().wheels()) {
            items.add(new Outline(fromBehind(wheel), Ink.MEASURE, SetupStyle.NONE));
        }
        AxleLines.Wheel left = axle.now().wheels().get(0);
        AxleLines.Wheel right = axle.now().wheels().get(1);
        Point2D onLeft = seen.at(left.contact());
        Point2D onRight = seen.at(right.contact());
        double wide = Math.abs(onLeft.getX()) + 0.8 * axle.stance().tyreWidth(axle.end());
        items.add(through(Ink.GROUND, onLeft, slope(onLeft, onRight), wide));
        for (AxleLines.Wheel wheel : axle.now().wheels()) {
            items.add(new Outline(fromBehind(wheel), Ink.WHEEL, SetupStyle.NONE));
        }
        forceLines(wide);
        links();
        axle.now().rollCentre().filter(place -> Math.abs(place.y()) < wide).ifPresent(place -> {
            Point2D at = seen.at(place);
            items.add(new Mark(
                    Sign.ROLL_CENTRE,
                    at.getX(),
                    at.getY(),
                    axle.rollCentre(),
                    axle.stance().style()));
        });
    }

    private void forceLines(double wide) {
        SetupStyle style = axle.stance().style();
        if (axle.now().forceLines().size() == 1) {
            AxleLines.ForceLine line = axle.now().forceLines().get(0);
            Point2D at = seen.at(line.through());
            items.add(styled(through(Ink.AXIS, at, -line.slope(), 0.8 * wide), style));
            return;
        }
        for (AxleLines.ForceLine line : axle.now().forceLines()) {
            Point2D from = seen.at(line.through());
            double far = axle.now()
                    .rollCentre()
                    .map(place -> -place.y())
                    .filter(x -> Math.abs(x) < wide)
                    .orElse(-Math.signum(from.getX()) * 0.8 * wide);
            items.add(Lines.line(
                    Ink.AXIS, style, from.getX(), from.getY(), far, from.getY() - line.slope() * (far - from.getX())));
        }
    }

    private static Outline styled(Outline outline, SetupStyle style) {
        return new Outline(outline.path(), outline.ink(), style);
    }

    private static double slope(Point2D from, Point2D to) {
        return (to.getY() - from.getY()) / (to.getX() - from.getX());
    }

    private static Outline through(Ink ink, Point2D at, double slope, double wide) {
        return Lines.line(
                ink, -wide, at.getY() + slope * (-wide - at.getX()), wide, at.getY() + slope * (wide - at.getX()));
    }

    /** A wheel from behind, leaning as its plane does: x = a_z·a_y/(1 − a_z²) per height. */
    private Path2D fromBehind(AxleLines.Wheel wheel) {
        double width = axle.stance().tyreWidth(axle.end());
        double down = wheel.centre().minus(wheel.contact()).length();
        double up = axle.stance().freeRadius(axle.end());
        Point2D at = seen.at(wheel.centre());
        AffineTransform place = AffineTransform.getTranslateInstance(at.getX(), at.getY());
        Place spin = wheel.spin();
        place.shear(spin.z() * spin.y() / (1 - spin.z() * spin.z()), 0);
        Path2D tyre = new Path2D.Double(
                new RoundRectangle2D.Double(-width / 2, -down, width, down + up, 0.35 * width, 0.35 * width));
        tyre.transform(place);
        return tyre;
    }

    private void drawSide() {
        double rim = axle.stance().rimRadius(axle.end());
        for (AxleLines pose : List.of(axle.rest(), axle.now())) {
            boolean now = pose.equals(axle.now());
            for (AxleLines.Wheel wheel : pose.wheels()) {
                Point2D at = seen.at(wheel.centre());
                double radius = wheel.centre().minus(wheel.contact()).length();
                items.add(Lines.circle(now ? Ink.WHEEL : Ink.MEASURE, at.getX(), at.getY(), radius));
            }
        }
        for (AxleLines.Wheel wheel : axle.now().wheels()) {
            Point2D at = seen.at(wheel.centre());
            items.add(Lines.circle(Ink.MEASURE, at.getX(), at.getY(), rim));
        }
        links();
    }

    private void drawAbove() {
        Rectangle2D world = world(0);
        items.add(Lines.line(Ink.MEASURE, world.getMinX() + AIR, 0, world.getMaxX() - AIR, 0));
        double width = axle.stance().tyreWidth(axle.end());
        double radius = axle.stance().freeRadius(axle.end());
        for (AxleLines pose : List.of(axle.rest(), axle.now())) {
            boolean now = pose.equals(axle.now());
            for (AxleLines.Wheel wheel : pose.wheels()) {
                Point2D at = seen.at(wheel.centre());
                double out = wheel.side().sign();
                Place spin = wheel.spin();
                Path2D tyre = new Path2D.Double(new RoundRectangle2D.Double(
                        -radius, -width / 2, 2 * radius, width, 0.35 * width, 0.35 * width));
                AffineTransform place = AffineTransform.getTranslateInstance(at.getX(), at.getY());
                place.rotate(-out * Math.atan2(spin.x(), out * spin.y()));
                tyre.transform(place);
                items.add(new Outline(tyre, now ? Ink.WHEEL : Ink.MEASURE, SetupStyle.NONE));
            }
        }
        links();
    }
}
