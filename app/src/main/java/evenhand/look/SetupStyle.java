package evenhand.look;

import java.awt.BasicStroke;
import java.util.List;

/**
 * How a set-up looks wherever it is shown: a colour of the theme, a line style and a marker. It belongs to the set-up and stays
 * when others come, go or change places. What belongs to no set-up is {@link #NONE}.
 *
 * @param index of its look, from 0; two looks are alike in neither colour nor marker, of the first twelve
 */
public record SetupStyle(int index) {
    /** A line of reference, of no set-up. */
    public static final SetupStyle NONE = new SetupStyle(-1);

    /** A sample of a line as such, drawn through, of no set-up. */
    public static final SetupStyle PLAIN = new SetupStyle(-2);

    /** Number of colours and of markers. */
    public static final int DISTINCT = 12;

    /** On and off, in widths of the line; empty = drawn through. */
    private static final List<float[]> DASHES = List.of(
            new float[] {},
            new float[] {5, 2.5f},
            new float[] {1.2f, 1.8f},
            new float[] {6, 2, 1.2f, 2},
            new float[] {2.5f, 1.5f},
            new float[] {9, 2, 1.2f, 2, 1.2f, 2});

    private static final int LINES = DASHES.size();

    public SetupStyle {
        if (index < -2) {
            throw new IllegalArgumentException("no set-up has the look " + index);
        }
    }

    public boolean ofSetup() {
        return index >= 0;
    }

    /** Which of the theme's colours. */
    int colour() {
        return index % DISTINCT;
    }

    /** Line style; after all of them were used it moves on by one, so that no two of 36 set-ups look alike. */
    int dash() {
        return (index + index / LINES) % LINES;
    }

    public Marker marker() {
        return Marker.values()[Math.max(0, index) % DISTINCT];
    }

    /** Its line of this width, px. */
    public BasicStroke stroke(double width) {
        float w = (float) width;
        float[] dash = ofSetup() ? DASHES.get(dash()) : equals(PLAIN) ? DASHES.get(0) : new float[] {3, 3};
        if (dash.length == 0) {
            return new BasicStroke(w, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        }
        float[] lengths = dash.clone();
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] *= w;
        }
        return new BasicStroke(w, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, 0);
    }
}
