package evenhand.drawing;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.catalogue.Adjustable;
import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Mark;
import evenhand.drawing.Item.Outline;
import evenhand.drawing.Item.Sign;
import evenhand.drawing.Item.Tone;
import evenhand.drawing.Item.Words;
import evenhand.linkage.Place;
import evenhand.look.SetupStyle;
import evenhand.suspension.AxleSuspension;
import evenhand.turn.Wheel;
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
 * An axle seen from behind, x to the right: wheels, springs with their arm, what locates the axle, roll centre and centre of
 * gravity, travel left at the stops, weight on each tyre. The body leans about the roll centre and heaves.
 */
public final class RearView {
    /** Room for the loads under the wheels, in sizes of type. */
    static final double BELOW = 1.5;

    /** What is said where parts stand where no file has them. */
    static final String SKETCHED = "suspension: outline for orientation";

    /** A stop is touched where less is left, m: half a millimetre. */
    private static final double TOUCHED = 0.0005;

    private final Stance stance;
    private final Axle axle;
    private final End end;
    private final Detail detail;
    private final boolean alone;
    private final List<Item> items = new ArrayList<>();
    private final AffineTransform body;
    private final AffineTransform unsprung;
    private final Optional<Stance.Links> links;

    private RearView(Stance stance, End end, Detail detail, boolean alone) {
        this.stance = stance;
        this.end = end;
        this.detail = detail;
        this.alone = alone;
        axle = stance.car().axle(end);
        double pivot = axle.geometry().rollCentreHeight();
        body = AffineTransform.getTranslateInstance(0, stance.heave(end));
        body.rotate(-stance.roll(end), 0, pivot);
        Wheel left = left(end);
        double tilt = (stance.rise(left) - stance.rise(left.mirrored())) / axle.track();
        double mean = (stance.rise(left) + stance.rise(left.mirrored())) / 2;
        unsprung = AffineTransform.getTranslateInstance(0, mean);
        unsprung.rotate(-tilt, 0, axle.tyre().loadedRadius());
        links = alone ? stance.links(end) : Optional.empty();
    }

    private static Wheel left(End end) {
        return Wheel.of(end, Side.LEFT);
    }

    /**
     * One axle of a set-up.
     *
     * @param values the set-up's numbers; those that can be pulled get a handle
     */
    public static Drawing of(Stance stance, End end, Detail detail, List<Adjustable> values) {
        RearView view = new RearView(stance, end, detail, true);
        view.draw();
        return view.drawing("The " + EventWords.end(end) + " axle from behind" + pace(stance), view.handles(values));
    }

    /** Several set-ups over one another: how each stands. */
    public static Drawing of(List<Stance> stances, End end, Detail detail) {
        List<Item> all = new ArrayList<>();
        Stance first = stances.get(0);
        RearView view = new RearView(first, end, detail, false);
        for (Wheel wheel : List.of(left(end), left(end).mirrored())) {
            double width = first.tyreWidth(end);
            double middle = -first.wheel(wheel).y();
            view.items.add(Lines.upright(Ink.MEASURE, middle, width, 0, 2 * first.freeRadius(end)));
        }
        for (Stance stance : stances) {
            RearView one = new RearView(stance, end, detail, false);
            one.draw();
            all.addAll(one.items);
        }
        view.items.addAll(all);
        return view.drawing("The " + EventWords.end(end) + " axle from behind", List.of());
    }

    static String pace(Stance stance) {
        return stance.row()
                .map(row -> ", at " + evenhand.words.Units.exactPace(row.lateralAcceleration()))
                .orElse(", at rest");
    }

    private Drawing drawing(String title, List<Handle> handles) {
        Car car = stance.car();
        double half = BodyShape.halfWidth(car) + 0.06 * car.wheelbase();
        double low = (detail.dimensions() ? 0.09 : 0.015) * car.wheelbase();
        Rectangle2D world = new Rectangle2D.Double(-half, -low, 2 * half, low + 0.58 * car.wheelbase());
        double bar = detail.scaleBar(car);
        Drawing drawing = new Drawing(title, items, handles, world, alone ? BELOW : 0, bar, detail.length(bar));
        return alone && links.isEmpty() ? drawing.noting(SKETCHED) : drawing;
    }

    private void draw() {
        Car car = stance.car();
        double down = stance.down(end);
        double wide = BodyShape.halfWidth(car) + 0.06 * car.wheelbase();
        items.add(Lines.line(Ink.GROUND, -wide, 0, wide, 0));
        Path2D outline = BodyShape.fromBehind(car);
        outline.transform(AffineTransform.getTranslateInstance(0, -down));
        outline.transform(body);
        items.add(new Outline(outline, Ink.BODY, alone ? SetupStyle.NONE : stance.style()));
        if (alone) {
            for (Wheel wheel : List.of(left(end), left(end).mirrored())) {
                tyre(wheel);
                travel(wheel);
                weight(wheel);
            }
            if (links.isPresent()) {
                items.addAll(DrawnLinks.of(links.get().lines(), this::seen, Set.of()));
            }
            SketchedAxle sketched = new SketchedAxle(stance, end, body, unsprung);
            if (axle instanceof Axle.Live live) {
                sketched.tube(links.isPresent());
                if (links.isEmpty() || !isLocatedByPoints()) {
                    sketched.locator(live.lateralLocator());
                }
            } else if (links.isEmpty()) {
                sketched.arms();
            }
            if (links.isEmpty() || !hasSpringsByPoints()) {
                sketched.springs();
            }
            items.addAll(sketched.items());
            heights();
            dimensions();
        }
        marks();
    }

    /** A place of the links: it goes with the body, which has come down since they were measured, heaves and leans. */
    private Point2D seen(Place place) {
        double down = links.orElseThrow().down();
        return body.transform(new Point2D.Double(-place.y(), place.z() - down), null);
    }

    private boolean isLocatedByPoints() {
        return axle.links()
                .map(points -> points instanceof LinkedLiveAxle live
                        && !(live.locator().orElse(null) instanceof Locator.Ideal))
                .orElse(false);
    }

    private boolean hasSpringsByPoints() {
        return axle.links().map(points -> points.mounts().spring().isPresent()).orElse(false)
                || axle.links()
                        .map(points -> points instanceof LinkedLiveAxle live
                                && live.links().leaf().isPresent())
                        .orElse(false);
    }

    /** Where a wheel's middle is across: as the turn knows it, or where its links hold it. */
    private double across(Wheel wheel, Stance.Posture posture) {
        return links.map(known -> seen(known.lines()
                                .wheels()
                                .get(wheel.side().index())
                                .centre())
                        .getX())
                .orElse(-posture.y());
    }

    private void tyre(Wheel wheel) {
        Stance.Posture posture = stance.wheel(wheel);
        double width = stance.tyreWidth(end);
        double up = stance.freeRadius(end);
        double down = axle.tyre().loadedRadius();
        double x = across(wheel, posture);
        double squeezed = Math.max(0.8 * down, Math.min(up, posture.load() > 0 ? posture.height() : up));
        AffineTransform place = AffineTransform.getTranslateInstance(x, posture.height());
        place.shear(posture.lean(), 0);
        Path2D tyre = new Path2D.Double(
                new RoundRectangle2D.Double(-width / 2, -squeezed, width, squeezed + up, 0.35 * width, 0.35 * width));
        tyre.transform(place);
        items.add(new Outline(tyre, Ink.TYRE, SetupStyle.NONE));
        double rim = stance.rimRadius(end);
        Path2D disc = new Path2D.Double(
                new RoundRectangle2D.Double(-0.38 * width, -rim, 0.76 * width, 2 * rim, 0.1 * width, 0.1 * width));
        disc.transform(place);
        items.add(new Outline(disc, Ink.RIM, SetupStyle.NONE));
    }

    /** Room between the stops beside the body, to scale, and where the wheel is in it. */
    private void travel(Wheel wheel) {
        Stance.Left left = stance.left(wheel);
        if (left.bump().isEmpty() && left.droop().isEmpty()) {
            return;
        }
        double side = -wheel.side().sign(); // seen from behind, the left is on the left
        double l = stance.car().wheelbase();
        double x = side * (BodyShape.halfWidth(stance.car()) + 0.035 * l);
        double middle = 0.25 * l;
        double width = 0.016 * l;
        double bump = left.bump().orElse(0);
        double droop = left.droop().orElse(0);
        items.add(Lines.upright(Ink.TRACK, x, width, middle - Math.max(0, droop), middle + Math.max(0, bump)));
        if (bump > 0) {
            items.add(Lines.upright(Ink.FREE, x, width, middle, middle + bump));
        } else if (left.bump().isPresent()) {
            items.add(Lines.upright(Ink.SQUEEZED, x, width, middle + bump, middle));
        }
        items.add(Lines.line(Ink.LINK, x - width, middle, x + width, middle));
        int align = wheel.side() == Side.LEFT ? -1 : 1;
        if (left.bump().isPresent()) {
            items.add(new Words(
                    x,
                    middle + Math.max(0, bump),
                    align,
                    0,
                    bump > TOUCHED
                            ? detail.length(bump) + " to bump stop"
                            : bump > -TOUCHED ? "on the bump stop" : detail.length(-bump) + " into bump stop",
                    bump > TOUCHED ? Tone.PLAIN : Tone.WARNING));
        }
        if (left.droop().isPresent()) {
            items.add(new Words(
                    x,
                    middle - Math.max(0, droop),
                    align,
                    0,
                    droop > TOUCHED ? detail.length(droop) + " to droop stop" : "on the droop stop",
                    droop > TOUCHED ? Tone.QUIET : Tone.WARNING));
        }
    }

    private void weight(Wheel wheel) {
        Stance.Posture posture = stance.wheel(wheel);
        boolean lifted = posture.load() <= 0;
        items.add(new Words(
                -posture.y(),
                -0.012 * stance.car().wheelbase(),
                0,
                -1,
                lifted ? "off the ground" : detail.load(posture.load()),
                lifted ? Tone.WARNING : Tone.STRONG));
    }

    /** How high roll centre and centre of gravity stand over the ground, measured beside them. */
    private void heights() {
        double off = 0.09 * axle.track();
        Point2D cg = body.transform(new Point2D.Double(0, stance.car().cgHeight()), null);
        items.addAll(Lines.height(0, stance.rollCentreHeight(end), -off));
        items.addAll(Lines.height(cg.getX(), cg.getY(), off));
    }

    private void dimensions() {
        if (!detail.dimensions()) {
            return;
        }
        double l = stance.car().wheelbase();
        double z = -0.075 * l;
        double half = axle.track() / 2;
        items.add(Lines.line(Ink.MEASURE, -half, z, half, z));
        items.add(Lines.line(Ink.MEASURE, -half, z - 0.012 * l, -half, z + 0.012 * l));
        items.add(Lines.line(Ink.MEASURE, half, z - 0.012 * l, half, z + 0.012 * l));
        items.add(new Words(0, z, 0, 0, "track " + detail.length(axle.track()), Tone.QUIET));
        if (axle instanceof Axle.Live) {
            double height = stance.rollCentreHeight(end);
            double arm = AxleSuspension.of(stance.car(), end).springArm(height);
            double low = 0.03 * l;
            items.add(Lines.line(Ink.MEASURE, -arm, low, 0, low));
            items.add(Lines.line(Ink.MEASURE, -arm, low - 0.012 * l, -arm, low + 0.012 * l));
            items.add(Lines.line(Ink.MEASURE, 0, low - 0.012 * l, 0, low + 0.012 * l));
            items.add(new Words(-arm / 2, low, 0, 0, "springs' arm " + detail.length(arm), Tone.QUIET));
        }
    }

    private void marks() {
        String whose = alone ? "" : stance.name() + ": ";
        double height = stance.rollCentreHeight(end);
        items.add(
                new Mark(Sign.ROLL_CENTRE, 0, height, whose + "roll centre " + detail.length(height), stance.style()));
        Point2D cg = body.transform(new Point2D.Double(0, stance.car().cgHeight()), null);
        items.add(new Mark(
                Sign.CENTRE_OF_GRAVITY,
                cg.getX(),
                cg.getY(),
                whose + "centre of gravity " + detail.length(stance.cgHeight()),
                stance.style()));
    }

    private List<Handle> handles(List<Adjustable> values) {
        String key = EventWords.end(end);
        List<Handle> handles = new ArrayList<>();
        double rollCentre = stance.rollCentreHeight(end);
        Handle.of(values, key + ".lateralLocator.height", 0, rollCentre, 1).ifPresent(handles::add);
        links.flatMap(known -> PointHandles.pivot(known.lines(), end, values, this::seen))
                .ifPresent(handles::add);
        Handle.of(values, key + ".rollCentre.height", 0, rollCentre, 1).ifPresent(handles::add);
        Point2D cg = body.transform(new Point2D.Double(0, stance.car().cgHeight()), null);
        Handle.of(values, "cgHeight", cg.getX(), cg.getY(), 1).ifPresent(handles::add);
        double b = BodyShape.halfWidth(stance.car());
        Point2D sill = body.transform(
                new Point2D.Double(0.94 * b, BodyShape.SILL * stance.car().wheelbase() - stance.down(end)), null);
        Handle.of(values, key + ".lowered", sill.getX(), sill.getY(), -1).ifPresent(handles::add);
        return handles;
    }
}
