package evenhand.report;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.font.PDType3Font;

/**
 * A font of drawn letters (Type 3, ISO 32000-1, 9.6.5): each code has its outline, its width and the text that it stands for, so
 * that a reader shows, finds and copies it. One em is {@value #EM} units.
 */
final class DrawnFont extends PDType3Font {
    static final int EM = 1000;

    /** Codes are bytes. */
    static final int MOST = 256;

    /**
     * A letter as it is drawn.
     *
     * @param means the text that it stands for
     * @param width how far the next one stands
     * @param outline in the operators of a PDF; empty where there is nothing to see
     */
    record Letter(String means, int width, String outline) {}

    private final List<Letter> letters = new ArrayList<>();
    private final Rectangle2D bounds = new Rectangle2D.Double();

    DrawnFont() throws IOException {
        super(empty());
    }

    private static COSDictionary empty() {
        COSDictionary font = new COSDictionary();
        font.setItem(COSName.TYPE, COSName.FONT);
        font.setItem(COSName.SUBTYPE, COSName.TYPE3);
        font.setItem(COSName.FONT_MATRIX, numbers(1.0 / EM, 0, 0, 1.0 / EM, 0, 0));
        font.setItem(COSName.RESOURCES, new COSDictionary());
        font.setItem(COSName.CHAR_PROCS, new COSDictionary());
        COSDictionary encoding = new COSDictionary();
        encoding.setItem(COSName.TYPE, COSName.ENCODING);
        encoding.setItem(COSName.DIFFERENCES, new COSArray());
        font.setItem(COSName.ENCODING, encoding);
        return font;
    }

    private static COSArray numbers(double... values) {
        COSArray array = new COSArray();
        for (double value : values) {
            array.add(value == Math.rint(value) ? COSInteger.get((long) value) : new COSFloat((float) value));
        }
        return array;
    }

    boolean isFull() {
        return letters.size() == MOST;
    }

    /** Takes a letter in and gives its code. */
    int add(Letter letter, Rectangle2D box) {
        letters.add(letter);
        bounds.add(box);
        return letters.size() - 1;
    }

    /** A letter's code is the character that stands for it in the text to be shown. */
    @Override
    protected byte[] encode(int code) {
        return new byte[] {(byte) code};
    }

    /** Writes down what was taken in; to be called once, before the document is kept. */
    void close() throws IOException {
        COSDictionary font = getCOSObject();
        COSArray names = new COSArray();
        COSArray widths = new COSArray();
        names.add(COSInteger.ZERO);
        for (int code = 0; code < letters.size(); code++) {
            COSName name = COSName.getPDFName("g" + code);
            names.add(name);
            widths.add(COSInteger.get(letters.get(code).width()));
            font.getCOSDictionary(COSName.CHAR_PROCS).setItem(name, stream(drawing(letters.get(code))));
        }
        font.getCOSDictionary(COSName.ENCODING).setItem(COSName.DIFFERENCES, names);
        font.setItem(COSName.WIDTHS, widths);
        font.setInt(COSName.FIRST_CHAR, 0);
        font.setInt(COSName.LAST_CHAR, letters.size() - 1);
        font.setItem(COSName.FONT_BBOX, box());
        font.setItem(COSName.TO_UNICODE, stream(meanings()));
    }

    private COSArray box() {
        return numbers(
                Math.floor(bounds.getMinX()),
                Math.floor(bounds.getMinY()),
                Math.ceil(bounds.getMaxX()),
                Math.ceil(bounds.getMaxY()));
    }

    /** With its width and box said first, a letter takes the colour of the text. */
    private String drawing(Letter letter) {
        String box = letter.outline().isEmpty()
                ? "0 0 0 0"
                : String.format(
                        Locale.ROOT,
                        "%d %d %d %d",
                        (int) Math.floor(bounds.getMinX()),
                        (int) Math.floor(bounds.getMinY()),
                        (int) Math.ceil(bounds.getMaxX()),
                        (int) Math.ceil(bounds.getMaxY()));
        return letter.width() + " 0 " + box + " d1\n" + letter.outline()
                + (letter.outline().isEmpty() ? "" : "f\n");
    }

    /** The text of each code, as a CMap (ISO 32000-1, 9.10.3). */
    private String meanings() {
        StringBuilder map = new StringBuilder("""
                /CIDInit /ProcSet findresource begin
                12 dict begin
                begincmap
                /CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
                /CMapName /Adobe-Identity-UCS def
                /CMapType 2 def
                1 begincodespacerange
                <00> <FF>
                endcodespacerange
                """);
        int most = 100; // entries that one list may have
        for (int from = 0; from < letters.size(); from += most) {
            int to = Math.min(letters.size(), from + most);
            map.append(to - from).append(" beginbfchar\n");
            for (int code = from; code < to; code++) {
                map.append(String.format("<%02X> <", code));
                for (char c : letters.get(code).means().toCharArray()) {
                    map.append(String.format("%04X", (int) c));
                }
                map.append(">\n");
            }
            map.append("endbfchar\n");
        }
        return map.append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n")
                .toString();
    }

    private static COSStream stream(String text) throws IOException {
        COSStream stream = new COSStream();
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(text.getBytes(StandardCharsets.US_ASCII));
        }
        return stream;
    }
}
