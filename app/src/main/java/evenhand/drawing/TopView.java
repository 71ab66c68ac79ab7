package evenhand.drawing;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Spring;
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
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The car from above, the front to the left, its left side at the bottom: tracks, springs, where the weight stands, and how the
 * wheels are turned. x backwards from the front axle, z to the right of the car.
 */
public final class TopView {
    private final Stance stance;
    private final Detail detail;
    private final List<Item> items = new ArrayList<>();

    private TopView(Stance stance, Detail detail) {
        this.stance = stance;
        this.detail = detail;
    }

    /** One set-up. */
    public static Drawing of(Stance stance, Detail detail) {
        TopView view = new TopView(stance, detail);
        view.draw();
        Car car = stance.car();
        double l = car.wheelbase();
        double half = BodyShape.halfWidth(car) + 0.09 * l;
        Rectangle2D world = new Rectangle2D.Double(-0.36 * l, -half, 1.76 * l, 2 * half);
        double bar = detail.scaleBar(car);
        return new Drawing(
                "The car from above" + RearView.pace(stance), view.items, List.of(), world, 0, bar, detail.length(bar));
    }

    private void draw() {
        Car car = stance.car();
        double l = car.wheelbase();
        items.add(new Outline(BodyShape.fromAbove(car), Ink.BODY, SetupStyle.NONE));
        items.add(Lines.line(Ink.MEASURE, -0.34 * l, 0, 1.4 * l, 0));
        double beside = BodyShape.halfWidth(car) + 0.05 * l;
        for (Wheel wheel : Wheel.values()) {
            Axle axle = car.axle(wheel.end());
            double x = wheel.end() == End.FRONT ? 0 : l;
            Stance.Posture posture = stance.wheel(wheel);
            double width = stance.tyreWidth(wheel.end());
            double radius = stance.freeRadius(wheel.end());
            Path2D tyre = new Path2D.Double(
                    new RoundRectangle2D.Double(-radius, -width / 2, 2 * radius, width, 0.35 * width, 0.35 * width));
            AffineTransform place = AffineTransform.getTranslateInstance(x, -posture.y());
            place.rotate(posture.steer());
            tyre.transform(place);
            items.add(new Outline(tyre, Ink.TYRE, SetupStyle.NONE));
            boolean lifted = posture.load() <= 0;
            items.add(new Words(
                    x,
                    -wheel.side().sign() * beside,
                    0,
                    0,
                    wheel.words() + " " + (lifted ? "off the ground" : detail.load(posture.load())),
                    lifted ? Tone.WARNING : Tone.STRONG));
            boolean measured = axle.links()
                    .map(links -> links.mounts().spring().isPresent())
                    .orElse(false);
            if (!measured) {
                spring(axle, x, -wheel.side().sign());
            }
        }
        for (End end : End.values()) {
            double x = end == End.FRONT ? 0 : l;
            double half = car.axle(end).track() / 2 - stance.tyreWidth(end) / 2;
            Optional<Stance.Links> links = stance.links(end);
            if (links.isPresent()) {
                items.addAll(DrawnLinks.of(
                        links.get().lines(), place -> new Point2D.Double(x - place.x(), -place.y()), Set.of()));
            } else if (car.axle(end) instanceof Axle.Live) {
                items.add(Lines.line(Ink.LINK, x, -half, x, half));
                items.add(Lines.circle(Ink.LINK, x, 0, 0.11));
            } else {
                items.add(Lines.line(Ink.MEASURE, x, -half, x, half));
            }
        }
        double right = (0.5 - leftShare()) * 2;
        double cgZ = right * (car.front().track() + car.rear().track()) / 4;
        items.add(new Mark(
                Sign.CENTRE_OF_GRAVITY,
                car.cgBehindFront(),
                cgZ,
                "centre of gravity, " + detail.length(car.cgBehindFront()) + " behind the front axle",
                stance.style()));
        stance.row().ifPresent(row -> {
            double way = 0.42 * l;
            double angle = row.sideslip();
            double x = car.cgBehindFront();
            items.add(Lines.line(
                    Ink.AXIS, stance.style(), x, cgZ, x - way * Math.cos(angle), cgZ - way * Math.sin(angle)));
            items.add(new Words(
                    x - way * Math.cos(angle),
                    cgZ - way * Math.sin(angle),
                    0,
                    1,
                    "the way it goes, " + detail.sideslip(row.roll() < 0 ? -angle : angle),
                    Tone.QUIET));
        });
    }

    private double leftShare() {
        Car car = stance.car();
        double front = car.weights().frontFraction();
        return front * car.weights().leftFraction(End.FRONT)
                + (1 - front) * car.weights().leftFraction(End.REAR);
    }

    private void spring(Axle axle, double x, double side) {
        double foot = axle.spring() instanceof Spring.Leaning leaning
                ? leaning.base() / 2
                : axle.spring() instanceof Spring.Upright upright
                        ? upright.base() / 2
                        : Math.min(1, ((Spring.AtWheel) axle.spring()).motionRatio()) * axle.track() / 2 - 0.14;
        items.add(Lines.circle(Ink.SPRING, x, side * foot, 0.05));
    }
}
