package evenhand.report;

import evenhand.look.Typeface;
import evenhand.report.DrawnFont.Letter;
import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Text with letters that the program's family lacks. The machine's fonts have them, but not as files that could be embedded; so
 * the machine sets a line, in the right order and joined as its script asks, and every letter of it becomes one of a
 * {@link DrawnFont}. What is drawn together (a ligature, a letter with its marks) shares its width among its letters, so that
 * each is found by itself.
 */
final class DrawnType {
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private final Font plain = Typeface.plain(DrawnFont.EM);
    private final Font strong = Typeface.strong(DrawnFont.EM);
    private final List<DrawnFont> fonts = new ArrayList<>();
    private final Map<Letter, Place> places = new HashMap<>();
    private final Map<Line, List<Place>> lines = new LinkedHashMap<>();

    /** Where a letter was put. */
    private record Place(DrawnFont font, char code, int width) {}

    private record Line(String text, boolean bold) {}

    /** Glyphs that are drawn together, from the left. */
    private record Cluster(String means, boolean leftwards, double width, Shape outline) {}

    /** Whether the machine has a letter to show for it. */
    boolean has(int letter) {
        return plain.canDisplay(letter) && (!visible(letter) || draws(letter));
    }

    private static boolean visible(int letter) {
        return switch (Character.getType(letter)) {
            case Character.SPACE_SEPARATOR, Character.FORMAT, Character.NON_SPACING_MARK -> false;
            default -> true;
        };
    }

    /** Fonts of coloured pictures have no outlines. */
    private boolean draws(int letter) {
        return !plain.createGlyphVector(CONTEXT, Character.toString(letter))
                .getOutline()
                .getBounds2D()
                .isEmpty();
    }

    /** Width of a line at a size. */
    double width(String text, boolean bold, double size) {
        return places(text, bold).stream().mapToInt(Place::width).sum() * size / DrawnFont.EM;
    }

    /** Shows a line. The stream is between its words: no text has been begun. */
    void draw(PDPageContentStream stream, String text, boolean bold, double size, Matrix from) throws IOException {
        stream.beginText();
        stream.setTextMatrix(from);
        List<Place> line = places(text, bold);
        for (int start = 0; start < line.size(); ) {
            DrawnFont font = line.get(start).font();
            StringBuilder codes = new StringBuilder();
            int end = start;
            while (end < line.size() && line.get(end).font().equals(font)) {
                codes.append(line.get(end++).code());
            }
            stream.setFont(font, (float) size);
            stream.showText(codes.toString());
            start = end;
        }
        stream.endText();
    }

    /** Writes the fonts down; to be called once, when all is drawn. */
    void close() throws IOException {
        for (DrawnFont font : fonts) {
            font.close();
        }
    }

    private List<Place> places(String text, boolean bold) {
        return lines.computeIfAbsent(new Line(text, bold), line -> {
            List<Place> places = new ArrayList<>();
            for (Cluster cluster : clusters(text, bold ? strong : plain)) {
                places.addAll(places(cluster));
            }
            return List.copyOf(places);
        });
    }

    /** The letters of a cluster from the left; the first holds the outline. */
    private List<Place> places(Cluster cluster) {
        int[] letters = cluster.means().codePoints().toArray();
        List<Place> places = new ArrayList<>();
        int left = (int) Math.round(cluster.width());
        for (int i = 0; i < letters.length; i++) {
            int letter = letters[cluster.leftwards() ? letters.length - 1 - i : i];
            int width = left / (letters.length - i);
            left -= width;
            boolean holds = i == 0;
            places.add(place(
                    new Letter(Character.toString(letter), width, holds ? operators(cluster.outline()) : ""),
                    holds ? cluster.outline().getBounds2D() : new Rectangle2D.Double()));
        }
        return places;
    }

    private Place place(Letter letter, Rectangle2D box) {
        Place known = places.get(letter);
        if (known != null) {
            return known;
        }
        if (fonts.isEmpty() || fonts.get(fonts.size() - 1).isFull()) {
            fonts.add(open());
        }
        DrawnFont font = fonts.get(fonts.size() - 1);
        Place place = new Place(font, (char) font.add(letter, box), letter.width());
        places.put(letter, place);
        return place;
    }

    private static DrawnFont open() {
        try {
            return new DrawnFont();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<Cluster> clusters(String text, Font font) {
        char[] letters = text.toCharArray();
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int count = bidi.getRunCount();
        Integer[] runs = new Integer[count];
        byte[] levels = new byte[count];
        for (int run = 0; run < count; run++) {
            runs[run] = run;
            levels[run] = (byte) bidi.getRunLevel(run);
        }
        Bidi.reorderVisually(levels, 0, runs, 0, count);
        List<Cluster> clusters = new ArrayList<>();
        for (int run : runs) {
            boolean leftwards = bidi.getRunLevel(run) % 2 == 1;
            GlyphVector glyphs = font.layoutGlyphVector(
                    CONTEXT,
                    letters,
                    bidi.getRunStart(run),
                    bidi.getRunLimit(run),
                    leftwards ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT);
            clusters.addAll(clusters(glyphs, text.substring(bidi.getRunStart(run), bidi.getRunLimit(run)), leftwards));
        }
        return clusters;
    }

    private static List<Cluster> clusters(GlyphVector glyphs, String text, boolean leftwards) {
        int count = glyphs.getNumGlyphs();
        boolean[] begins = new boolean[text.length() + 1];
        begins[text.length()] = true;
        for (int glyph = 0; glyph < count; glyph++) {
            begins[glyphs.getGlyphCharIndex(glyph)] = true;
        }
        List<Cluster> clusters = new ArrayList<>();
        for (int glyph = 0; glyph < count; ) {
            int first = glyph;
            int from = glyphs.getGlyphCharIndex(first);
            Path2D outline = new Path2D.Double();
            while (glyph < count && glyphs.getGlyphCharIndex(glyph) == from) {
                outline.append(glyphs.getGlyphOutline(glyph++), false);
            }
            int to = from + 1;
            while (!begins[to]) {
                to++;
            }
            double x = glyphs.getGlyphPosition(first).getX();
            // the y of a screen grows downwards
            AffineTransform upwards = new AffineTransform(1, 0, 0, -1, -x, 0);
            clusters.add(new Cluster(
                    text.substring(from, to),
                    leftwards,
                    Math.max(0, glyphs.getGlyphPosition(glyph).getX() - x),
                    outline.createTransformedShape(upwards)));
        }
        return clusters;
    }

    /** A shape as a path of a PDF, in whole units. */
    private static String operators(Shape shape) {
        StringBuilder path = new StringBuilder();
        double[] at = new double[6];
        double fromX = 0;
        double fromY = 0;
        for (PathIterator steps = shape.getPathIterator(null); !steps.isDone(); steps.next()) {
            int kind = steps.currentSegment(at);
            switch (kind) {
                case PathIterator.SEG_MOVETO -> operator(path, 'm', at[0], at[1]);
                case PathIterator.SEG_LINETO -> operator(path, 'l', at[0], at[1]);
                case PathIterator.SEG_CUBICTO -> operator(path, 'c', at);
                case PathIterator.SEG_QUADTO ->
                    operator(
                            path,
                            'c',
                            fromX + 2 * (at[0] - fromX) / 3,
                            fromY + 2 * (at[1] - fromY) / 3,
                            at[2] + 2 * (at[0] - at[2]) / 3,
                            at[3] + 2 * (at[1] - at[3]) / 3,
                            at[2],
                            at[3]);
                default -> path.append("h\n");
            }
            if (kind != PathIterator.SEG_CLOSE) {
                int last = kind == PathIterator.SEG_CUBICTO ? 4 : kind == PathIterator.SEG_QUADTO ? 2 : 0;
                fromX = at[last];
                fromY = at[last + 1];
            }
        }
        return path.toString();
    }

    private static void operator(StringBuilder path, char name, double... numbers) {
        for (double number : numbers) {
            path.append(String.format(Locale.ROOT, "%d ", Math.round(number)));
        }
        path.append(name).append('\n');
    }
}
