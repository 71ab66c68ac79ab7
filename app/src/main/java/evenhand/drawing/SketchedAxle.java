package evenhand.drawing;

import evenhand.car.Axle;
import evenhand.car.End;
import evenhand.car.LateralLocator;
import evenhand.car.LateralLocator.CarriedBy;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.drawing.Item.Ink;
import evenhand.drawing.Item.Outline;
import evenhand.turn.Wheel;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * What holds and springs an axle, from behind, where its points are not measured: drawn for orientation. Heights that the car's file
 * has are kept: of the locator, and of the roll centre, at which the arms of an independent axle aim.
 */
final class SketchedAxle {
    /** Length of a spring that is not known, m. */
    private static final double SPRING_LENGTH = 0.30;

    private static final double SPRING_WIDTH = 0.09;

    /** Between a wheel and the point that its arms aim at, in tracks. Common practice, no source. */
    private static final double SWING_ARM = 0.8;

    /** Of the arms' joints below and above the wheel's centre, in radii. Common practice, no source. */
    private static final double LOWER_JOINT = -0.45;

    private static final double UPPER_JOINT = 0.5;

    /** Of the arms, in tracks. Common practice, no source. */
    private static final double LOWER_ARM = 0.26;

    private static final double UPPER_ARM = 0.19;

    private final Stance stance;
    private final End end;
    private final Axle axle;
    private final AffineTransform body;
    private final AffineTransform unsprung;
    private final List<Item> items = new ArrayList<>();

    /**
     * An axle as it stands.
     *
     * @param body where the turn moves what goes with the body
     * @param unsprung where it moves what goes with a live axle
     */
    SketchedAxle(Stance stance, End end, AffineTransform body, AffineTransform unsprung) {
        this.stance = stance;
        this.end = end;
        this.body = body;
        this.unsprung = unsprung;
        axle = stance.car().axle(end);
    }

    /** All of it that was asked for. */
    List<Item> items() {
        return List.copyOf(items);
    }

    /**
     * Two arms on each side whose lines meet where the roll centre asks for it: on the line through it from the middle of the tyre's
     * contact. They swing about the body's joints as the turn has the wheels stand.
     */
    SketchedAxle arms() {
        double half = axle.track() / 2;
        double radius = axle.tyre().loadedRadius();
        double height = axle.geometry().rollCentreHeight();
        double away = SWING_ARM * axle.track();
        double aimedAt = height * away / half;
        for (Side each : Side.values()) {
            double side = -each.sign();
            Stance.Posture posture = stance.wheel(Wheel.of(end, each));
            AffineTransform carrier =
                    AffineTransform.getTranslateInstance(-posture.y() - side * half, posture.height() - radius);
            carrier.rotate(-posture.lean(), side * half, radius);
            double in = half - 0.62 * stance.tyreWidth(end);
            for (double[] arm : new double[][] {{LOWER_JOINT, LOWER_ARM}, {UPPER_JOINT, UPPER_ARM}}) {
                double z = radius * (1 + arm[0]);
                double slope = (aimedAt - z) / (away - (half - in));
                double length = arm[1] * axle.track();
                Point2D out = carrier.transform(new Point2D.Double(side * in, z), null);
                Point2D on = body.transform(new Point2D.Double(side * (in - length), z + slope * length), null);
                items.add(Lines.line(Ink.SKETCH, out.getX(), out.getY(), on.getX(), on.getY()));
                items.add(Lines.circle(Ink.PIVOT, on.getX(), on.getY(), 0.012));
                items.add(Lines.circle(Ink.JOINT, out.getX(), out.getY(), 0.012));
            }
        }
        return this;
    }

    /** @param measured whether its tube is drawn by its points */
    SketchedAxle tube(boolean measured) {
        double half = axle.track() / 2 - stance.tyreWidth(end) / 2;
        double z = axle.tyre().loadedRadius();
        Point2D from = unsprung.transform(new Point2D.Double(-half, z), null);
        Point2D to = unsprung.transform(new Point2D.Double(half, z), null);
        if (!measured) {
            items.add(Lines.line(Ink.LINK, from.getX(), from.getY(), to.getX(), to.getY()));
        }
        Point2D middle = unsprung.transform(new Point2D.Double(0, z), null);
        items.add(Lines.circle(Ink.LINK, middle.getX(), middle.getY(), 0.11));
        return this;
    }

    /** What holds the axle sideways; where its ends are is not known, so they are drawn level. */
    SketchedAxle locator(LateralLocator locator) {
        double h = locator.height();
        double reach = 0.36 * axle.track();
        if (locator instanceof LateralLocator.WattsLinkage watt) {
            AffineTransform carrier = watt.carriedBy() == CarriedBy.BODY ? body : unsprung;
            AffineTransform ends = watt.carriedBy() == CarriedBy.BODY ? unsprung : body;
            double crank = 0.055;
            Point2D top = carrier.transform(new Point2D.Double(0, h + crank), null);
            Point2D bottom = carrier.transform(new Point2D.Double(0, h - crank), null);
            Point2D right = ends.transform(new Point2D.Double(reach, h + crank), null);
            Point2D left = ends.transform(new Point2D.Double(-reach, h - crank), null);
            items.add(line(top, bottom));
            items.add(line(top, right));
            items.add(line(bottom, left));
        } else if (locator instanceof LateralLocator.PanhardRod) {
            Point2D onAxle = unsprung.transform(new Point2D.Double(-1.15 * reach, h), null);
            Point2D onBody = body.transform(new Point2D.Double(1.15 * reach, h), null);
            items.add(line(onAxle, onBody));
        }
        return this;
    }

    private static Outline line(Point2D from, Point2D to) {
        return Lines.line(Ink.LINK, from.getX(), from.getY(), to.getX(), to.getY());
    }

    SketchedAxle springs() {
        double length = axle.spring().lengths().installed().orElse(SPRING_LENGTH);
        for (Side each : Side.values()) {
            double side = -each.sign();
            double foot;
            double lower;
            double lean = 0;
            if (axle.spring() instanceof Spring.Leaning leaning) {
                foot = leaning.base() / 2;
                lower = leaning.lowerMountHeight();
                lean = leaning.lean();
            } else if (axle.spring() instanceof Spring.Upright upright) {
                foot = upright.base() / 2;
                lower = axle.tyre().loadedRadius();
            } else {
                Spring.AtWheel at = (Spring.AtWheel) axle.spring();
                foot = Math.min(1, at.motionRatio()) * (axle.track() - stance.tyreWidth(end)) / 2 - SPRING_WIDTH / 2;
                lower = axle.tyre().loadedRadius() - 0.06;
            }
            boolean leaf =
                    axle instanceof Axle.Live live && live.lateralLocator() instanceof LateralLocator.LeafSprings;
            Point2D from = unsprung.transform(new Point2D.Double(side * foot, lower), null);
            if (leaf) {
                items.add(Lines.upright(Ink.SPRING, from.getX(), 0.06, from.getY() - 0.06, from.getY() - 0.02));
                continue;
            }
            Point2D to = body.transform(
                    new Point2D.Double(side * (foot - length * Math.sin(lean)), lower + length * Math.cos(lean)), null);
            items.add(Lines.spring(from.getX(), from.getY(), to.getX(), to.getY(), SPRING_WIDTH));
        }
        return this;
    }
}
