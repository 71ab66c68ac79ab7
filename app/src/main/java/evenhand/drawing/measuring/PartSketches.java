package evenhand.drawing.measuring;

import evenhand.drawing.Item.Ink;

/** Sketches of what is measured on a part: springs, bars, stops, tyres, brakes. */
final class PartSketches {
    private PartSketches() {}

    static Sketch press() {
        return new Pen(1.6)
                .floor(-0.7, 0.7)
                .box(Ink.FREE, -0.3, 0, 0.6, 0.08)
                .coil(0, 0.08, 0, 0.62, 0.28)
                .box(Ink.PART, -0.2, 0.62, 0.4, 0.06)
                .path(Ink.PART, 0, 0.68, 0, 1.0)
                .leader(0.2, 0.78, 0.5, 0.78)
                .dimension(0.38, 0.65, 0.38, 0.78, "shorter by")
                .note(-0.34, 0.04, -1, 0, "scales")
                .sketch(
                        "a press and a scale: how much more load for 20 mm shorter, in the part of the travel that is used",
                        -0.9,
                        -0.1,
                        1.2);
    }

    static Sketch lengths(String path) {
        Pen pen = new Pen(2.0).floor(-0.9, 0.9);
        String asked = path.substring(path.lastIndexOf('.') + 1);
        length(pen, -0.6, 0.8, "free", asked.equals("freeLength"));
        length(pen, 0, 0.58, "in the car", asked.equals("installedLength"));
        length(pen, 0.6, 0.28, "solid", asked.equals("solidLength"));
        return pen.sketch(
                "free on the bench; in the car at rest, along the spring; wire thickness times coils",
                -1.0,
                -0.2,
                1.25);
    }

    private static void length(Pen pen, double x, double high, String words, boolean asked) {
        pen.coil(x, 0, x, high, 0.22);
        if (asked) {
            pen.dimension(x + 0.2, 0, x + 0.2, high, "");
        }
        pen.note(x, -0.02, 0, -1, words);
    }

    static Sketch ratio(String path) {
        boolean bar = path.contains("linkRatio");
        Pen pen = new Pen(2.0)
                .floor(-0.9, 0.9)
                .box(Ink.TYRE, 0.5, 0.06, 0.18, 0.6)
                .rod(0.48, 0.26, -0.5, 0.3)
                .box(Ink.FREE, 0.46, 0, 0.26, 0.06);
        if (bar) {
            pen.path(Ink.LINK, 0.1, 0.28, 0.1, 0.7).joint(0.1, 0.28).joint(0.1, 0.7);
        } else {
            pen.coil(0.12, 0.28, -0.02, 0.86, 0.16);
        }
        return pen.dimension(0.8, 0, 0.8, 0.06, "")
                .words(0.6, 0.7, 0, 1, "wheel up 40 mm")
                .dimension(-0.14, bar ? 0.5 : 0.8, -0.14, 0.34, bar ? "end moves" : "shortens")
                .sketch(
                        "lift the wheel by 40 mm, measure how far the part moves along itself, divide by 40 mm",
                        -1.0,
                        -0.1,
                        1.1);
    }

    static Sketch eyeToEye() {
        return new Pen(2.0)
                .path(Ink.LINK, -0.75, 0.2, -0.1, 0.2)
                .path(Ink.LINK, 0.3, 0.2, 0.75, 0.2)
                .box(Ink.PART, -0.1, 0.13, 0.4, 0.14)
                .joint(-0.75, 0.2)
                .joint(0.75, 0.2)
                .dimension(-0.75, 0.42, 0.75, 0.42, "eye to eye")
                .sketch(
                        "tape between the middles of both eyes: of a damper pushed in and pulled out, of a rod before and after",
                        -1.0,
                        -0.1,
                        0.8);
    }

    static Sketch leaf() {
        return new Pen(2.0)
                .path(Ink.LINK, -0.7, 0.5, -0.35, 0.3, 0, 0.24, 0.35, 0.3, 0.7, 0.5)
                .path(Ink.PART, -0.4, 0.27, 0, 0.19, 0.4, 0.27)
                .joint(-0.7, 0.5)
                .joint(0.7, 0.5)
                .circle(Ink.PART, 0, 0.36, 0.1)
                .dimension(-0.7, 0.66, 0.7, 0.66, "eye to eye")
                .sketch("tape along the main leaf between the middles of its eyes", -1.0, 0, 0.95);
    }

    static Sketch perch(String path) {
        Pen pen = new Pen(1.4).path(Ink.PART, -0.12, 0, -0.12, 0.9, 0.12, 0.9, 0.12, 0, -0.12, 0);
        for (int i = 1; i < 9; i++) {
            pen.leader(-0.12, 0.1 * i - 0.02, 0.12, 0.1 * i + 0.02);
        }
        pen.box(Ink.PART, -0.3, 0.42, 0.6, 0.08).coil(0, 0.5, 0, 1.05, 0.42);
        String asked = path.substring(path.lastIndexOf('.') + 1);
        if (asked.equals("raises")) {
            pen.dimension(0.4, 0.5, 0.4, 0.9, "thread left");
        } else if (asked.equals("lowers")) {
            pen.dimension(0.4, 0, 0.4, 0.42, "thread left");
        } else {
            pen.dimension(0.4, 0.42, 0.4, 0.52, "one turn");
        }
        return pen.sketch("ten turns of the perch by a steel rule, over ten; thread left by the rule", -0.7, -0.1, 1.3);
    }

    static Sketch bar(String path) {
        String asked = path.substring(path.lastIndexOf('.') + 1);
        Pen pen = new Pen(2.6)
                .path(Ink.LINK, -0.9, 0.1, -0.75, 0.6, 0.75, 0.6, 0.9, 0.1)
                .box(Ink.PART, -0.5, 0.54, 0.1, 0.12)
                .box(Ink.PART, 0.4, 0.54, 0.1, 0.12)
                .joint(-0.9, 0.1)
                .joint(0.9, 0.1);
        switch (asked) {
            case "armLength" -> pen.leader(-0.75, 0.6, -1.12, 0.6).dimension(-1.05, 0.6, -1.05, 0.1, "arm");
            case "activeLength" -> pen.dimension(-0.75, 0.78, 0.75, 0.78, "what twists");
            case "diameter" -> pen.dimension(0, 0.5, 0, 0.7, "thickness");
            default ->
                pen.path(Ink.PIVOT, 0.82, -0.16, 0.98, -0.16, 0.98, 0, 0.82, 0, 0.82, -0.16)
                        .leader(0.9, 0.1, 0.9, 0)
                        .dimension(0.7, 0.1, 0.7, -0.06, "sinks by");
        }
        return pen.note(0, 0.42, 0, -1, "the bar from above")
                .sketch(
                        asked.equals("rollStiffness")
                                ? "one arm held, a weight hung from the other: how far it sinks"
                                : "calliper with the paint off; tape between the bends, and square from the bar to the drop link",
                        -1.3,
                        -0.25,
                        1.35);
    }

    static Sketch gap(String path) {
        boolean rubber = path.contains("bumpStop");
        Pen pen = new Pen(1.6)
                .floor(-0.7, 0.7)
                .path(Ink.PART, -0.7, 0.9, 0.7, 0.9)
                .path(Ink.PART, -0.6, 0.3, 0.6, 0.3);
        if (rubber) {
            pen.path(Ink.TYRE, -0.1, 0.9, 0.1, 0.9, 0.06, 0.66, -0.06, 0.66, -0.1, 0.9);
        } else {
            pen.box(Ink.PART, -0.08, 0.66, 0.16, 0.24);
        }
        return pen.box(Ink.PART, -0.14, 0.3, 0.28, 0.06)
                .dimension(0.24, 0.36, 0.24, 0.66, "gap")
                .leader(0, 0.66, 0.3, 0.66)
                .note(-0.66, 0.92, 1, 1, "body")
                .note(-0.56, 0.28, 1, -1, "axle")
                .sketch(
                        "car at rest on level ground, steel rule between the stop and what it meets, times wheel travel over its own",
                        -0.8,
                        -0.1,
                        1.25);
    }

    static Sketch droop() {
        return new Pen(2.0)
                .floor(-0.9, 0.9)
                .box(Ink.WHEEL, 0.3, 0.35, 0.18, 0.6)
                .box(Ink.TYRE, 0.3, 0.08, 0.18, 0.6)
                .rod(0.28, 0.36, -0.5, 0.7)
                .leader(0.5, 0.65, 0.72, 0.65)
                .leader(0.5, 0.38, 0.72, 0.38)
                .dimension(0.62, 0.38, 0.62, 0.65, "droop")
                .sketch(
                        "steel rule from hub to arch at rest, and again with the wheel hanging; the difference",
                        -1.0,
                        -0.1,
                        1.2);
    }

    static Sketch hubHeight() {
        return new Pen(1.4)
                .floor(-0.6, 0.6)
                .wheel(0, 0)
                .leader(0, 0.3, 0.44, 0.3)
                .dimension(0.4, 0, 0.4, 0.3, "to the hub")
                .sketch("steel rule from a level floor to the middle of the hub, car at rest", -0.7, -0.1, 0.8);
    }

    static Sketch sidewall(String path) {
        return new Pen(1.4)
                .floor(-0.6, 0.6)
                .circle(Ink.WHEEL, 0, 0.34, 0.34)
                .circle(Ink.PART, 0, 0.34, 0.2)
                .words(0, 0.58, 0, 0, path.endsWith("rimWidth") ? "6J" : "185/70 R14")
                .sketch(
                        path.endsWith("rimWidth")
                                ? "stamped on the rim, for example 6J: six inches between the flanges"
                                : "read from the wall of the tyre",
                        -0.7,
                        -0.1,
                        0.85);
    }

    static Sketch gauge() {
        return new Pen(1.4)
                .floor(-0.6, 0.6)
                .circle(Ink.WHEEL, -0.15, 0.3, 0.3)
                .circle(Ink.PART, -0.15, 0.3, 0.17)
                .leader(-0.15, 0.15, 0.3, 0.3)
                .circle(Ink.DIMENSION, 0.42, 0.34, 0.13)
                .path(Ink.DIMENSION, 0.42, 0.34, 0.49, 0.41)
                .words(0.42, 0.5, 0, 1, "gauge")
                .sketch("a gauge at the valve, tyre cold", -0.7, -0.1, 0.85);
    }

    static Sketch pedal() {
        return new Pen(1.4)
                .path(Ink.PART, -0.3, 0.9, -0.1, 0.1)
                .joint(-0.3, 0.9)
                .box(Ink.PIVOT, -0.16, 0.04, 0.12, 0.06)
                .rod(-0.24, 0.66, 0.4, 0.66)
                .dimension(-0.36, 0.9, -0.36, 0.08, "to the pad")
                .dimension(0.1, 0.66, 0.1, 0.9, "to the rod")
                .sketch(
                        "steel rule from the pedal's pivot to the pad and to the rod; one over the other",
                        -0.75,
                        -0.05,
                        1.05);
    }

    static Sketch disc() {
        return new Pen(1.0)
                .circle(Ink.WHEEL, 0, 0.35, 0.3)
                .circle(Ink.PART, 0, 0.35, 0.12)
                .joint(0, 0.35)
                .path(Ink.PART, 0.14, 0.2, 0.3, 0.2, 0.3, 0.5, 0.14, 0.5, 0.14, 0.2)
                .dimension(0, 0.35, 0.21, 0.35, "radius")
                .sketch("steel rule from the wheel's axis to the middle of the worn track of the pads", -0.5, 0, 0.75);
    }

    static Sketch bore() {
        return new Pen(1.0)
                .path(Ink.PART, -0.3, 0.1, 0.2, 0.1, 0.2, 0.5, -0.3, 0.5)
                .box(Ink.FREE, -0.1, 0.12, 0.16, 0.36)
                .leader(-0.32, 0.12, -0.1, 0.12)
                .leader(-0.32, 0.48, -0.1, 0.48)
                .dimension(-0.26, 0.48, -0.26, 0.12, "bore")
                .sketch("calliper on the piston, or as it is cast on the part", -0.5, 0, 0.65);
    }
}
