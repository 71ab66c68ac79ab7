package evenhand.drawing.measuring;

import evenhand.drawing.Item.Ink;
import java.util.List;

/** Sketches of what is measured on the whole car: weights, lengths, heights. */
final class CarSketches {
    private static final double WIDE = 4.6;
    private static final double LEFT = -1.0;
    private static final double HALF = Pen.TRACK / 2;
    private static final double AXLE = Pen.WHEELBASE;

    private CarSketches() {}

    private static Sketch side(Pen pen, String how) {
        return pen.sketch(how, LEFT, -0.35, 2.1);
    }

    static Sketch wholeWeight() {
        return side(
                new Pen(WIDE)
                        .carFromSide()
                        .scale(0)
                        .scale(AXLE)
                        .words(0, -0.02, 0, -1, "front scales")
                        .words(AXLE, -0.02, 0, -1, "rear scales"),
                "scales under both axles, driver aboard, car level; the front's part is its scales over both");
    }

    static Sketch cornerWeight(String path) {
        Pen pen = new Pen(WIDE).carFromAbove();
        for (String wheel : List.of("frontLeft", "frontRight", "rearLeft", "rearRight")) {
            double x = wheel.startsWith("front") ? 0 : AXLE;
            double z = wheel.endsWith("Left") ? -HALF : HALF;
            boolean asked = path.endsWith(wheel);
            pen.box(asked ? Ink.DIMENSION : Ink.MEASURE, x - 0.42, z - 0.26, 0.84, 0.52);
            if (asked) {
                pen.words(x, z + Math.signum(z) * 0.28, 0, (int) Math.signum(z), "this scale");
            }
        }
        return pen.note(-0.5, 0, 1, 0, "front")
                .sketch("four scales on one level, one under each wheel", LEFT, -1.25, 2.5);
    }

    static Sketch wheelbase() {
        return side(
                new Pen(WIDE).carFromSide().plumb(0, 0.3).plumb(AXLE, 0.3).dimension(0, -0.1, AXLE, -0.1, "wheelbase"),
                "plumb lines from both hubs, tape on the floor between them; on both sides, and the mean taken");
    }

    static Sketch behindFrontAxle() {
        return side(
                new Pen(WIDE)
                        .carFromSide()
                        .plumb(0, 0.3)
                        .path(Ink.PART, 1.3, 1.0, 1.25, 0.55, 1.0, 0.55)
                        .plumb(1.2, 0.55)
                        .dimension(0, -0.1, 1.2, -0.1, "behind the front axle"),
                "plumb lines from the front hub and from what is measured, tape on the floor between them");
    }

    static Sketch centreOfGravity() {
        return side(
                new Pen(WIDE).carFromSide().centreOfGravity(1.2, 0.52).dimension(1.2, 0, 1.2, 0.46, "height"),
                "not measured itself: from an axle lift, or estimated from the height of the roof");
    }

    static Sketch roof() {
        return side(
                new Pen(WIDE).carFromSide().level(0.95, 1.34, 2.35, 1.34).dimension(0.75, 0, 0.75, 1.34, "roof"),
                "a straight edge across the roof, tape from it to the level floor");
    }

    static Sketch heightOfLoad() {
        return side(
                new Pen(WIDE)
                        .carFromSide()
                        .box(Ink.PART, 2.5, 0.62, 0.5, 0.3)
                        .centreOfGravity(2.75, 0.77)
                        .dimension(2.2, 0.77, 2.2, 0, "height"),
                "steel rule from a level floor to the middle of what is carried");
    }

    static Sketch lift(String path) {
        double tilt = Math.toRadians(-11);
        double hubX = AXLE - AXLE * Math.cos(tilt);
        double foot = AXLE * Math.sin(-tilt);
        Pen pen = new Pen(WIDE)
                .floor(-0.9, 3.5)
                .scale(AXLE)
                .bodyFromSide(-tilt)
                .wheel(hubX, foot)
                .wheel(AXLE, 0)
                .path(Ink.PART, hubX - 0.22, 0, hubX, foot - 0.02, hubX + 0.22, 0)
                .path(Ink.PART, hubX - 0.1, foot / 2, hubX + 0.1, foot / 2);
        if (path.endsWith("otherAxleGain")) {
            pen.words(AXLE, -0.04, 0, -1, "gains load");
        } else if (path.endsWith("liftedAxle")) {
            pen.words(hubX, foot + 2 * Pen.RADIUS + 0.5, 0, 1, "this end is lifted");
        } else {
            pen.dimension(hubX - 0.4, foot, hubX - 0.4, 0, "rise");
        }
        return pen.note(AXLE + 0.3, 0.03, 1, 0, "scales")
                .sketch(
                        "springs blocked, one axle lifted straight up, the other on its scales: how far the wheels rose, and what the"
                                + " scales gained",
                        LEFT,
                        -0.35,
                        2.5);
    }

    static Sketch twist() {
        return new Pen(2.6)
                .carFromBehind()
                .path(Ink.PART, -1.0, 0.24, 1.0, 0.30)
                .path(Ink.FREE, 0.92, 0.0, 1.08, 0.0, 1.08, 0.22, 0.92, 0.22, 0.92, 0.0)
                .leader(0.9, 0.25, 1.1, 0.25)
                .angle(0, 0.27, 0.7, 0, 14, "twist")
                .sketch(
                        "one axle held, a weight on a beam at the other: the angle between both ends, by two levels",
                        -1.3,
                        -0.2,
                        1.8);
    }

    static Sketch arch() {
        return side(
                new Pen(WIDE).carFromSide().dimension(0, 0.3, 0, 0.66, "to the arch"),
                "steel rule from the middle of the hub up to the wheel arch, before and after");
    }

    static Sketch track() {
        return new Pen(2.6)
                .carFromBehind()
                .plumb(-HALF, 0.6)
                .plumb(HALF, 0.6)
                .dimension(-HALF, -0.1, HALF, -0.1, "track")
                .sketch(
                        "plumb lines at the middle of both treads, or from edge to same edge; tape between them",
                        -1.3,
                        -0.3,
                        1.8);
    }

    static Sketch layout() {
        return new Pen(3.6)
                .floor(-1.8, 1.8)
                .box(Ink.TYRE, -1.65, 0, 0.18, 0.6)
                .box(Ink.TYRE, -0.33, 0, 0.18, 0.6)
                .path(Ink.PART, -1.56, 0.3, -0.24, 0.3)
                .circle(Ink.PART, -0.9, 0.3, 0.12)
                .note(-0.9, 0.64, 0, 1, "live axle")
                .box(Ink.TYRE, 0.2, 0, 0.18, 0.6)
                .box(Ink.TYRE, 1.52, 0, 0.18, 0.6)
                .rod(0.4, 0.2, 0.72, 0.24)
                .rod(0.4, 0.42, 0.72, 0.4)
                .rod(1.5, 0.2, 1.18, 0.24)
                .rod(1.5, 0.42, 1.18, 0.4)
                .box(Ink.PART, 0.72, 0.2, 0.46, 0.24)
                .note(0.95, 0.64, 0, 1, "independent")
                .sketch("look under the car: one beam from wheel to wheel, or links at each", -1.9, -0.1, 1.2);
    }

    static Sketch drivenAxle() {
        return new Pen(WIDE)
                .carFromAbove()
                .box(Ink.PART, -0.3, -0.22, 0.8, 0.44)
                .path(Ink.LINK, 0.5, 0, AXLE, 0)
                .path(Ink.DIMENSION, AXLE, -HALF + 0.1, AXLE, HALF - 0.1)
                .circle(Ink.DIMENSION, AXLE, 0, 0.12)
                .note(-0.5, -0.5, 1, 0, "front")
                .words(AXLE - 0.4, 0.2, -1, 1, "driven: here the rear")
                .sketch("which wheels the engine turns", LEFT, -1.1, 2.2);
    }

    static Sketch axleOnScale() {
        return new Pen(2.6)
                .floor(-1.1, 1.1)
                .box(Ink.FREE, -0.35, 0, 0.7, 0.08)
                .tyre(-HALF)
                .tyre(HALF)
                .path(Ink.PART, -HALF, 0.3, HALF, 0.3)
                .circle(Ink.PART, 0, 0.3, 0.16)
                .path(Ink.PART, 0, 0.08, 0, 0.14)
                .coil(-0.5, 0.34, -0.47, 0.66, 0.12)
                .coil(0.5, 0.34, 0.47, 0.66, 0.12)
                .words(0, 0.5, 0, 1, "what springs do not carry")
                .note(0, -0.02, 0, -1, "scales")
                .sketch(
                        "axle, wheels, brakes and half of links, springs and dampers on scales; parts by parts, or by the parts' book",
                        -1.3,
                        -0.2,
                        1.2);
    }

    static Sketch steeringWheel() {
        return new Pen(2.4)
                .circle(Ink.PART, -0.5, 0.6, 0.42)
                .circle(Ink.PART, -0.5, 0.6, 0.06)
                .leader(-0.5, 0.6, -0.5, 1.1)
                .leader(-0.5, 0.6, -0.93, 0.85)
                .angle(-0.5, 0.6, 0.47, 90, 150, "")
                .words(-0.5, 1.12, 0, 1, "hand wheel")
                .path(Ink.TYRE, 0.5, 0.24, 0.66, 0.2, 0.84, 0.9, 0.68, 0.94, 0.5, 0.24)
                .leader(0.67, 0.1, 0.67, 1.1)
                .angle(0.67, 0.57, 0.48, 76, 90, "")
                .words(0.67, 1.12, 0, 1, "road wheel")
                .sketch(
                        "a degree plate at the hand wheel, turn plates under the tyres; one angle over the other",
                        -1.3,
                        -0.1,
                        1.5);
    }
}
