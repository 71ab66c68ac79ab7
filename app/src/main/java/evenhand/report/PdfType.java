package evenhand.report;

import evenhand.look.Typeface;
import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

/**
 * Words in a PDF: the program's own family, embedded. A line with letters that the family lacks is set in {@link DrawnType}; what
 * no font has is shown as a box and remembered.
 */
final class PdfType {
    /** Stands for a letter that no font has; in the family. */
    private static final String BOX = "\u25CA";

    private final Face plain;
    private final Face strong;
    private final DrawnType drawn = new DrawnType();
    private final Set<String> missing = new LinkedHashSet<>();

    private record Face(PDFont pdf, CmapLookup letters) {
        boolean has(int letter) {
            return letters.getGlyphId(letter) != 0;
        }
    }

    PdfType(PDDocument document) throws IOException {
        plain = face(document, "Roboto-Regular.ttf");
        strong = face(document, "Roboto-Bold.ttf");
    }

    private static Face face(PDDocument document, String file) throws IOException {
        try (InputStream in = Typeface.file(file)) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
            font.setEnableGsub(false); // one letter, one glyph, so that a reader finds the words
            return new Face(PDType0Font.load(document, font, true), font.getUnicodeCmapLookup());
        }
    }

    DrawnType drawn() {
        return drawn;
    }

    PDFont pdf(boolean bold) {
        return (bold ? strong : plain).pdf();
    }

    /** Whether the family has every letter of it. */
    boolean covers(String text, boolean bold) {
        return text.codePoints().allMatch((bold ? strong : plain)::has);
    }

    /** A text in one line, without what cannot be shown: control characters become spaces. */
    String clean(String text) {
        StringBuilder clean = new StringBuilder();
        Typeset.of(text).codePoints().forEach(letter -> {
            int kind = Character.getType(letter);
            if (Character.isISOControl(letter) || letter == 0x2028 || letter == 0x2029) {
                clean.append(' ');
            } else if (kind == Character.SURROGATE || kind == Character.UNASSIGNED || kind == Character.PRIVATE_USE) {
                miss(letter, clean);
            } else if (plain.has(letter) && strong.has(letter)) {
                clean.appendCodePoint(letter);
            } else if (drawn.has(letter)) {
                clean.appendCodePoint(letter);
            } else if (kind != Character.FORMAT && kind != Character.NON_SPACING_MARK) {
                miss(letter, clean);
            }
        });
        return clean.toString();
    }

    private void miss(int letter, StringBuilder clean) {
        missing.add(String.format("U+%04X", letter));
        clean.append(BOX);
    }

    /** What no font of this machine has, in one sentence; none where nothing is missing. */
    List<String> remarks() {
        if (missing.isEmpty()) {
            return List.of();
        }
        String some = missing.stream().limit(5).collect(Collectors.joining(", "));
        return List.of("no font here has " + some + (missing.size() > 5 ? " and " + (missing.size() - 5) + " more" : "")
                + ": shown as " + BOX);
    }

    /** Width of a clean text, points. */
    double width(String text, boolean bold, double size) {
        if (text.isEmpty()) {
            return 0;
        }
        if (!covers(text, bold)) {
            return drawn.width(text, bold, size);
        }
        try {
            return pdf(bold).getStringWidth(text) / 1000 * size;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Sets a clean text; y of its base line from below. What held it together has done its work and is set as a blank. */
    void draw(PDPageContentStream page, String firm, double x, double y, boolean bold, double size, Color colour)
            throws IOException {
        String text = firm.replace('\u00a0', ' ');
        if (text.isBlank()) {
            return;
        }
        page.setNonStrokingColor(colour);
        if (!covers(text, bold)) {
            drawn.draw(page, text, bold, size, Matrix.getTranslateInstance((float) x, (float) y));
            return;
        }
        page.beginText();
        page.setFont(pdf(bold), (float) size);
        page.newLineAtOffset((float) x, (float) y);
        page.showText(text);
        page.endText();
    }

    /** Writes down what was set; to be called once, before the document is kept. */
    void close() throws IOException {
        drawn.close();
    }

    /** Breaks a clean text into lines no wider than this; a word that is wider alone is broken too. */
    List<String> wrap(String text, boolean bold, double size, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        double used = 0;
        double space = width(" ", bold, size);
        for (String word : text.strip().split(" +", -1)) {
            double wide = width(word, bold, size);
            if (!line.isEmpty() && used + space + wide > width) {
                lines.add(line.toString());
                line.setLength(0);
                used = 0;
            }
            if (line.isEmpty()) {
                String rest = word;
                while (width(rest, bold, size) > width && rest.codePointCount(0, rest.length()) > 1) {
                    int end = fitting(rest, bold, size, width);
                    lines.add(rest.substring(0, end));
                    rest = rest.substring(end);
                }
                line.append(rest);
                used = width(rest, bold, size);
            } else {
                line.append(' ').append(word);
                used += space + wide;
            }
        }
        if (!line.isEmpty() || lines.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** As many letters as fit, at least one; broken where people see letters end. */
    private int fitting(String word, boolean bold, double size, double width) {
        java.text.BreakIterator letters = java.text.BreakIterator.getCharacterInstance(java.util.Locale.ROOT);
        letters.setText(word);
        int end = letters.next();
        for (int next = letters.next(); next != java.text.BreakIterator.DONE; next = letters.next()) {
            if (width(word.substring(0, next), bold, size) > width) {
                break;
            }
            end = next;
        }
        return end;
    }
}
