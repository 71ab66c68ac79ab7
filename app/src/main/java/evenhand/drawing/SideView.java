package evenhand.drawing;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.catalogue.Adjustable;
import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Mark;
import evenhand.drawing.Item.Outline;
import evenhand.drawing.Item.Sign;
import evenhand.drawing.Item.Tone;
import evenhand.drawing.Item.Words;
import evenhand.look.SetupStyle;
import evenhand.turn.Wheel;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The car from its left, the front to the left: roll centres and the roll axis through them, the centre of gravity above it, what
 * stands on each axle. x backwards from the front axle.
 */
public final class SideView {
    private final Stance stance;
    private final Detail detail;
    private final boolean alone;
    private final List<Item> items = new ArrayList<>();

    private SideView(Stance stance, Detail detail, boolean alone) {
        this.stance = stance;
        this.detail = detail;
        this.alone = alone;
    }

    /** One set-up. */
    public static Drawing of(Stance stance, Detail detail, List<Adjustable> values) {
        SideView view = new SideView(stance, detail, true);
        view.draw();
        return view.drawing("The car from the left" + RearView.pace(stance), view.handles(values));
    }

    /** Several set-ups over one another: how each stands. */
    public static Drawing of(List<Stance> stances, Detail detail) {
        SideView all = new SideView(stances.get(0), detail, false);
        double l = all.stance.car().wheelbase();
        for (End end : End.values()) {
            double radius = all.stance.freeRadius(end);
            all.items.add(Lines.circle(Ink.MEASURE, end == End.FRONT ? 0 : l, radius, radius));
        }
        for (Stance stance : stances) {
            SideView one = new SideView(stance, detail, false);
            one.draw();
            all.items.addAll(one.items);
        }
        return all.drawing("The car from the left", List.of());
    }

    private Drawing drawing(String title, List<Handle> handles) {
        Car car = stance.car();
        double l = car.wheelbase();
        double low = (detail.dimensions() ? 0.09 : 0.015) * l;
        Rectangle2D world = new Rectangle2D.Double(-0.33 * l, -low, 1.72 * l, low + 0.58 * l);
        double bar = detail.scaleBar(car);
        return new Drawing(title, items, handles, world, alone ? RearView.BELOW : 0, bar, detail.length(bar));
    }

    /** Straight through both axles. */
    private double between(double front, double rear, double x) {
        return front + (rear - front) * x / stance.car().wheelbase();
    }

    private void draw() {
        Car car = stance.car();
        double l = car.wheelbase();
        items.add(Lines.line(Ink.GROUND, -0.33 * l, 0, 1.39 * l, 0));
        double front = stance.heave(End.FRONT) - stance.down(End.FRONT);
        double rear = stance.heave(End.REAR) - stance.down(End.REAR);
        Path2D body = BodyShape.fromTheLeft(
                car, 1.08 * stance.freeRadius(End.FRONT) + 0.02, 1.08 * stance.freeRadius(End.REAR) + 0.02);
        body.transform(new AffineTransform(1, (rear - front) / l, 0, 1, 0, front));
        items.add(new Outline(body, Ink.BODY, alone ? SetupStyle.NONE : stance.style()));
        for (End end : End.values()) {
            double x = end == End.FRONT ? 0 : l;
            Wheel near = Wheel.of(end, Side.LEFT);
            if (alone) {
                double height = stance.wheel(near).height();
                items.add(Lines.circle(Ink.TYRE, x, height, Math.min(stance.freeRadius(end), Math.max(height, 0.1))));
                items.add(Lines.circle(Ink.RIM, x, height, stance.rimRadius(end)));
                double load = stance.wheel(near).load()
                        + stance.wheel(near.mirrored()).load();
                items.add(new Words(x, -0.012 * l, 0, -1, detail.load(load), Tone.STRONG));
            }
        }
        if (alone) {
            for (End end : End.values()) {
                links(end);
            }
        }
        double frontCentre = stance.rollCentreHeight(End.FRONT);
        double rearCentre = stance.rollCentreHeight(End.REAR);
        items.add(Lines.line(
                Ink.AXIS,
                stance.style(),
                -0.25 * l,
                between(frontCentre, rearCentre, -0.25 * l),
                1.3 * l,
                between(frontCentre, rearCentre, 1.3 * l)));
        double cgX = car.cgBehindFront();
        double cgZ = stance.cgHeight();
        String whose = alone ? "" : stance.name() + ": ";
        if (alone) {
            double beside = 0.06 * l;
            items.addAll(Lines.height(0, frontCentre, -stance.freeRadius(End.FRONT) - beside));
            items.addAll(Lines.height(l, rearCentre, stance.freeRadius(End.REAR) + beside));
            items.addAll(Lines.height(cgX, cgZ, beside));
        }
        if (alone && detail.dimensions()) {
            double axis = between(frontCentre, rearCentre, cgX);
            items.add(Lines.line(Ink.MEASURE, cgX, axis, cgX, cgZ));
            items.add(new Words(
                    cgX, (axis + cgZ) / 2, 1, 0, " " + detail.length(cgZ - axis) + " above the roll axis", Tone.QUIET));
            double z = -0.075 * l;
            items.add(Lines.line(Ink.MEASURE, 0, z, l, z));
            items.add(Lines.line(Ink.MEASURE, 0, z - 0.012 * l, 0, z + 0.012 * l));
            items.add(Lines.line(Ink.MEASURE, l, z - 0.012 * l, l, z + 0.012 * l));
            items.add(new Words(l / 2, z, 0, 0, "wheelbase " + detail.length(l), Tone.QUIET));
        }
        items.add(new Mark(
                Sign.ROLL_CENTRE,
                0,
                frontCentre,
                whose + "front roll centre " + detail.length(frontCentre),
                stance.style()));
        items.add(new Mark(
                Sign.ROLL_CENTRE,
                l,
                rearCentre,
                whose + "rear roll centre " + detail.length(rearCentre),
                stance.style()));
        items.add(new Mark(
                Sign.CENTRE_OF_GRAVITY, cgX, cgZ, whose + "centre of gravity " + detail.length(cgZ), stance.style()));
    }

    /** Measured links, which go with the body: it has come down since, heaves, pitches and leans. */
    private void links(End end) {
        double axle = end == End.FRONT ? 0 : stance.car().wheelbase();
        stance.links(end)
                .ifPresent(links -> items.addAll(DrawnLinks.of(
                        links.lines(),
                        place -> {
                            double x = axle - place.x();
                            double rise = between(stance.heave(End.FRONT), stance.heave(End.REAR), x)
                                    + place.y() * stance.roll(end);
                            return new Point2D.Double(x, place.z() - links.down() + rise);
                        },
                        Set.of())));
    }

    private List<Handle> handles(List<Adjustable> values) {
        Car car = stance.car();
        double l = car.wheelbase();
        double front = stance.heave(End.FRONT) - stance.down(End.FRONT);
        double rear = stance.heave(End.REAR) - stance.down(End.REAR);
        List<Handle> handles = new ArrayList<>();
        double frontCentre = stance.rollCentreHeight(End.FRONT);
        double rearCentre = stance.rollCentreHeight(End.REAR);
        for (String part : List.of(".rollCentre.height", ".lateralLocator.height")) {
            Handle.of(values, End.FRONT.key() + part, 0, frontCentre, 1).ifPresent(handles::add);
            Handle.of(values, End.REAR.key() + part, l, rearCentre, 1).ifPresent(handles::add);
        }
        Handle.of(values, "cgHeight", car.cgBehindFront(), stance.cgHeight(), 1).ifPresent(handles::add);
        double nose = -BodyShape.FRONT_OVERHANG * l;
        double tail = (1 + BodyShape.REAR_OVERHANG) * l;
        Handle.of(values, "front.lowered", nose, 0.20 * l + between(front, rear, nose), -1)
                .ifPresent(handles::add);
        Handle.of(values, "rear.lowered", tail, 0.24 * l + between(front, rear, tail), -1)
                .ifPresent(handles::add);
        return handles;
    }
}
