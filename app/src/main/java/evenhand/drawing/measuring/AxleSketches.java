package evenhand.drawing.measuring;

import evenhand.drawing.Item.Ink;

/** Sketches of what is measured at an axle: where it is located, how the wheels stand, points of its links. */
final class AxleSketches {
    private static final double HALF = Pen.TRACK / 2;
    private static final double WIDE = 2.6;

    private AxleSketches() {}

    private static Sketch behind(Pen pen, String how) {
        return pen.sketch(how, -1.3, -0.3, 1.75);
    }

    private static Pen liveAxle() {
        return new Pen(WIDE)
                .floor(-1.1, 1.1)
                .tyre(-HALF)
                .tyre(HALF)
                .path(Ink.PART, -HALF, 0.3, HALF, 0.3)
                .circle(Ink.PART, 0, 0.3, 0.14);
    }

    static Sketch locator() {
        return liveAxle()
                .path(Ink.PART, 0, 0.18, 0, 0.46)
                .rod(0, 0.46, 0.56, 0.5)
                .rod(0, 0.18, -0.56, 0.16)
                .joint(0, 0.32)
                .dimension(0.22, 0, 0.22, 0.32, "height")
                .leader(0, 0.32, 0.26, 0.32)
                .sketch(
                        "at ride height, steel rule from a level floor to the middle of the pivot bolt; of a rod, the mean of its ends",
                        -1.3,
                        -0.2,
                        1.2);
    }

    static Sketch rollCentre() {
        double x = HALF - 0.1;
        return new Pen(WIDE)
                .floor(-1.1, 1.1)
                .tyre(-HALF)
                .tyre(HALF)
                .rod(x, 0.2, 0.28, 0.24)
                .rod(x, 0.46, 0.36, 0.44)
                .rod(-x, 0.2, -0.28, 0.24)
                .rod(-x, 0.46, -0.36, 0.44)
                .leader(HALF, 0, -0.9, 0.16)
                .leader(-HALF, 0, 0.9, 0.16)
                .rollCentre(0, 0.07)
                .dimension(-0.25, 0, -0.25, 0.07, "height")
                .sketch(
                        "measure the links' joints and let their lines tell it, or fill in the points of the links",
                        -1.3,
                        -0.2,
                        1.0);
    }

    static Sketch camber() {
        return behind(
                new Pen(WIDE)
                        .carFromBehind()
                        .level(HALF + 0.13, 0.06, HALF + 0.2, 0.56)
                        .leader(HALF + 0.13, 0.06, HALF + 0.13, 0.8)
                        .angle(HALF + 0.13, 0.06, 0.66, 82, 90, "")
                        .words(HALF + 0.1, 0.82, 0, 1, "camber"),
                "a digital level across the rim, zeroed on the floor; top leaning inwards counts negative");
    }

    static Sketch toe() {
        double z = HALF + 0.35;
        return new Pen(4.6)
                .carFromAbove()
                .leader(-0.9, -z, 3.4, -z)
                .leader(-0.9, z, 3.4, z)
                .dimension(-0.3, z, -0.3, HALF + 0.09, "")
                .dimension(0.3, z, 0.3, HALF + 0.09, "")
                .words(-0.3, z, 0, 1, "front")
                .words(0.3, z, 0, 1, "rear")
                .note(3.4, z, -1, 1, "string")
                .sketch(
                        "strings along both sides, steel rule to the front and the rear edge of the rim; their difference",
                        -1.0,
                        -1.3,
                        2.75);
    }

    static Sketch overTravel() {
        return behind(
                new Pen(WIDE)
                        .carFromBehind()
                        .box(Ink.FREE, HALF - 0.14, -0.14, 0.28, 0.14)
                        .dimension(HALF - 0.22, 0, HALF - 0.22, -0.14, "travel"),
                "springs out, the wheel on blocks: camber and toe read at every 10 mm of travel");
    }

    static Sketch base(String path) {
        String what = path.contains("damper") ? "dampers" : path.contains("top") ? "stops" : "springs";
        return liveAxle()
                .coil(-0.5, 0.34, -0.46, 0.74, 0.14)
                .coil(0.5, 0.34, 0.46, 0.74, 0.14)
                .plumb(-0.5, 0.34)
                .plumb(0.5, 0.34)
                .dimension(-0.5, 0.12, 0.5, 0.12, "between")
                .note(0, 0.78, 0, 1, what)
                .sketch("tape across the car between the middles of the lower mounts, left to right", -1.3, -0.2, 1.25);
    }

    static Sketch lean() {
        return new Pen(1.6)
                .floor(-0.7, 0.7)
                .coil(0.3, 0.2, -0.05, 1.0, 0.2)
                .leader(0.3, 0.1, 0.3, 1.15)
                .level(0.44, 0.24, 0.16, 0.88)
                .angle(0.3, 0.2, 0.84, 90, 113, "lean")
                .note(0.1, 0.1, -1, 1, "middle of the car")
                .sketch("a digital level along it, seen from behind: from upright, inwards going up", -0.8, -0.1, 1.4);
    }

    static Sketch mountHeight() {
        return liveAxle()
                .coil(-0.5, 0.24, -0.46, 0.74, 0.14)
                .coil(0.5, 0.24, 0.46, 0.74, 0.14)
                .dimension(-0.3, 0, -0.3, 0.24, "height")
                .leader(-0.5, 0.24, -0.26, 0.24)
                .sketch("steel rule from a level floor to where the spring stands", -1.3, -0.2, 1.2);
    }

    static Sketch swing() {
        return new Pen(4.6)
                .floor(-0.9, 3.5)
                .wheel(Pen.WHEELBASE, 0)
                .rod(2.45, 0.5, 1.7, 0.46)
                .rod(2.45, 0.16, 1.7, 0.24)
                .leader(2.45, 0.5, 0.6, 0.4)
                .leader(2.45, 0.16, 0.6, 0.37)
                .joint(0.65, 0.39)
                .dimension(0.65, -0.1, Pen.WHEELBASE, -0.1, "swing arm")
                .dimension(0.4, 0.39, 0.4, 0, "height")
                .sketch("in side view, where the lines of the links meet", -1.0, -0.4, 1.5);
    }

    static Sketch ahead() {
        return new Pen(2.0)
                .floor(-1.0, 1.0)
                .wheel(0, 0)
                .plumb(0, 0.3)
                .rod(-0.1, 0.2, -0.62, 0.32)
                .plumb(-0.62, 0.32)
                .dimension(-0.62, -0.08, 0, -0.08, "ahead")
                .note(-0.9, 0.7, 1, 0, "front of the car this way")
                .sketch(
                        "plumb lines from the hub and from the joint's middle; behind the axle counts negative",
                        -1.1,
                        -0.25,
                        1.1);
    }

    static Sketch out() {
        return liveAxle()
                .leader(0, -0.15, 0, 0.95)
                .note(0, 0.95, 0, 1, "middle of the car")
                .rod(0.46, 0.2, 0.5, 0.42)
                .plumb(0.46, 0.2)
                .dimension(0, 0.08, 0.46, 0.08, "out")
                .sketch(
                        "a line along the middle of the car on the floor; tape from it to under the joint",
                        -1.3,
                        -0.25,
                        1.45);
    }

    static Sketch up() {
        return liveAxle()
                .rod(0.42, 0.2, 0.5, 0.46)
                .leader(0.42, 0.2, 0.22, 0.2)
                .dimension(0.22, 0, 0.22, 0.2, "up")
                .sketch("at ride height, steel rule from a level floor to the middle of the joint", -1.3, -0.2, 1.2);
    }
}
