package evenhand.drawing;

import evenhand.look.SetupStyle;
import java.awt.geom.Path2D;

/** Something in a drawing, in metres; z up. */
public sealed interface Item permits Item.Outline, Item.Mark, Item.Words, Item.Arrow {
    /**
     * A line or an area.
     *
     * @param style of the set-up that it belongs to, where several are shown; else {@link SetupStyle#NONE}
     */
    record Outline(Path2D path, Ink ink, SetupStyle style) implements Item {}

    /** How a line is drawn. */
    enum Ink {
        GROUND,
        /** Quiet outline of the body. */
        BODY,
        /** Dark and filled. */
        TYRE,
        RIM,
        LINK,
        /** A link that is drawn where it is, clear of what it passes. */
        ROD,
        /** What such a link is at its limit with. */
        STOPPED,
        /** What goes with the wheel or the axle. */
        PART,
        /** A part whose place is not known: drawn for orientation. */
        SKETCH,
        /** Thin, of the set-up that the shown one is held against. */
        GHOST,
        /** A joint on the body. */
        PIVOT,
        /** A joint elsewhere. */
        JOINT,
        /** A wheel that hides nothing. */
        WHEEL,
        SPRING,
        /** Broken line in the set-up's colour. */
        AXIS,
        /** Thin line of a dimension. */
        MEASURE,
        /** What a sketch asks to be measured. */
        DIMENSION,
        /** Room between stops. */
        TRACK,
        /** Travel that is left. */
        FREE,
        /** What is squeezed. */
        SQUEEZED
    }

    /** A point with a sign of its own, and words beside it. */
    record Mark(Sign sign, double x, double z, String words, SetupStyle style) implements Item {}

    /** What a mark is. */
    enum Sign {
        /** A ring with a level line through it. */
        ROLL_CENTRE,
        /** A square on its corner, upper and lower half filled in turn. */
        CENTRE_OF_GRAVITY
    }

    /**
     * Words at a place.
     *
     * @param alignX −1 the words end there, 0 their middle is there, 1 they begin there
     * @param alignZ −1 they hang below, 0 their middle is there, 1 they stand above
     */
    record Words(double x, double z, int alignX, int alignZ, String words, Tone tone) implements Item {}

    /**
     * A force, from where it acts to where it points, with words at its tip.
     *
     * @param style whose colour it has: that of its part; quiet where it is {@link SetupStyle#NONE}
     */
    record Arrow(double x, double z, double tipX, double tipZ, String words, SetupStyle style) implements Item {}

    /** How loud words are. */
    enum Tone {
        PLAIN,
        QUIET,
        STRONG,
        WARNING
    }
}
