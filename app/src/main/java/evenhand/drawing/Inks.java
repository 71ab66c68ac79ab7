package evenhand.drawing;

import evenhand.drawing.Item.Mark;
import evenhand.drawing.Item.Outline;
import evenhand.drawing.Item.Sign;
import evenhand.look.SetupStyle;
import evenhand.look.Theme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** Paints the lines of a drawing: the body quiet, wheels and links dark, forces and marks in the colour of their set-up. */
final class Inks {
    /** Sizes of type per metre from which on lines of parts are as thick as they get. */
    private static final double FULL_SIZE = 17;

    private static final double THINNEST = 0.5;

    private final Graphics2D g;
    private final Theme theme;
    private final Scaling scaling;

    Inks(Graphics2D g, Theme theme, Scaling scaling) {
        this.g = g;
        this.theme = theme;
        this.scaling = scaling;
    }

    /** A width in px for a line that is so wide with type of 12 px. */
    double width(double width) {
        return width * theme.size() / 12;
    }

    /** Paints an outline, and says where it is in px. */
    Shape outline(Outline outline) {
        Shape shape = outline.path().createTransformedShape(scaling.transform());
        Color own = outline.style().ofSetup() ? theme.colour(outline.style()) : theme.quiet();
        switch (outline.ink()) {
            case TYRE -> fill(shape, theme.mixed(theme.ink(), 0.7));
            case RIM -> fill(shape, theme.mixed(theme.ink(), 0.25));
            case FREE -> fill(shape, theme.mixed(theme.ink(), 0.35));
            case SQUEEZED -> fill(shape, theme.warning());
            case TRACK -> draw(shape, theme.quiet(), thin(1));
            case GROUND -> draw(shape, theme.quiet(), thin(1.2));
            case BODY ->
                draw(
                        shape,
                        outline.style().ofSetup() ? own : theme.mixed(theme.quiet(), 0.6),
                        outline.style().ofSetup() ? outline.style().stroke(width(1.6)) : thin(1.2));
            case GHOST ->
                draw(shape, theme.soft(outline.style(), 0.75), outline.style().stroke(width(1)));
            case LINK -> draw(shape, theme.ink(), thin(2));
            case ROD -> clear(shape, theme.ink(), asThick(2));
            case STOPPED -> clear(shape, theme.warning(), asThick(3));
            case PART -> draw(shape, theme.mixed(theme.ink(), 0.5), new BasicStroke((float) asThick(2.6)));
            case SKETCH -> draw(shape, theme.mixed(theme.ink(), 0.45), new BasicStroke((float) asThick(2)));
            case PIVOT -> fill(shape, theme.ink());
            case JOINT -> {
                fill(shape, theme.background());
                draw(shape, theme.ink(), new BasicStroke((float) asThick(1.2)));
            }
            case WHEEL -> {
                fill(shape, theme.mixed(theme.ink(), 0.1));
                draw(shape, theme.mixed(theme.ink(), 0.5), thin(1.2));
            }
            case SPRING -> draw(shape, theme.ink(), new BasicStroke((float) asThick(1.2)));
            case AXIS ->
                draw(
                        shape,
                        own,
                        new BasicStroke(
                                (float) width(1.4),
                                BasicStroke.CAP_BUTT,
                                BasicStroke.JOIN_MITER,
                                10,
                                new float[] {(float) width(9), (float) width(3), (float) width(2), (float) width(3)},
                                0));
            case DIMENSION -> draw(shape, theme.colour(new SetupStyle(0)), thin(2));
            case MEASURE -> draw(shape, theme.quiet(), thin(0.8));
        }
        return shape;
    }

    private BasicStroke thin(double width) {
        return new BasicStroke((float) width(width));
    }

    /** The width of a part's line, thinner where the whole car is small. */
    private double asThick(double width) {
        double full = width(width);
        return full * Math.max(THINNEST, Math.min(1, scaling.scale() / theme.size() / FULL_SIZE));
    }

    /** A force: a shaft with a head that is no longer than the arrow. */
    void arrow(Item.Arrow arrow) {
        double x = scaling.px(arrow.x());
        double y = scaling.py(arrow.z());
        double tipX = scaling.px(arrow.tipX());
        double tipY = scaling.py(arrow.tipZ());
        double length = Math.hypot(tipX - x, tipY - y);
        double head = Math.min(width(9), 0.7 * length);
        double alongX = (tipX - x) / length;
        double alongY = (tipY - y) / length;
        Color colour = theme.colour(arrow.style());
        clear(
                new Line2D.Double(x, y, tipX - head * alongX, tipY - head * alongY),
                colour,
                width(arrow.style().ofSetup() ? 2.4 : 1.4));
        Path2D point = new Path2D.Double();
        point.moveTo(tipX, tipY);
        point.lineTo(tipX - head * alongX - 0.4 * head * alongY, tipY - head * alongY + 0.4 * head * alongX);
        point.lineTo(tipX - head * alongX + 0.4 * head * alongY, tipY - head * alongY - 0.4 * head * alongX);
        point.closePath();
        fill(point, colour);
    }

    /** A line with a rim of the ground, so that it is seen on what is dark. */
    private void clear(Shape shape, Color colour, double width) {
        draw(shape, theme.background(), new BasicStroke((float) (2.2 * width)));
        draw(shape, colour, new BasicStroke((float) width));
    }

    private void fill(Shape shape, Color colour) {
        g.setColor(colour);
        g.fill(shape);
    }

    private void draw(Shape shape, Color colour, BasicStroke stroke) {
        g.setColor(colour);
        g.setStroke(stroke);
        g.draw(shape);
    }

    /** A mark, and how far it reaches from its place, px. */
    double sign(Mark mark) {
        double x = scaling.px(mark.x());
        double y = scaling.py(mark.z());
        double r = width(6);
        Color colour = theme.colour(mark.style());
        g.setStroke(new BasicStroke((float) width(1.8)));
        if (mark.sign() == Sign.ROLL_CENTRE) {
            fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r), theme.background());
            g.setColor(colour);
            g.draw(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
            g.draw(new Line2D.Double(x - 1.7 * r, y, x + 1.7 * r, y));
        } else {
            double d = 1.25 * r;
            Path2D diamond = new Path2D.Double();
            diamond.moveTo(x, y - d);
            diamond.lineTo(x + d, y);
            diamond.lineTo(x, y + d);
            diamond.lineTo(x - d, y);
            diamond.closePath();
            fill(diamond, theme.background());
            Path2D lower = new Path2D.Double();
            lower.moveTo(x - d, y);
            lower.lineTo(x + d, y);
            lower.lineTo(x, y + d);
            lower.closePath();
            fill(lower, colour);
            g.setColor(colour);
            g.draw(diamond);
        }
        return 1.3 * r;
    }
}
