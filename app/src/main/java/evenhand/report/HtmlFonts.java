package evenhand.report;

import evenhand.look.Typeface;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The program's family inside a page, with no letters but those that the page has. */
final class HtmlFonts {
    /** Outlines, widths and letters; without kerning and ligatures, which are as large again. */
    private static final List<String> KEPT = List.of(
            "head", "hhea", "maxp", "loca", "glyf", "hmtx", "cmap", "name", "OS/2", "post", "cvt ", "fpgm", "prep",
            "gasp");

    private HtmlFonts() {}

    static String faces(Set<Integer> letters) {
        return face("Roboto-Regular.ttf", "normal", letters) + face("Roboto-Bold.ttf", "bold", letters);
    }

    private static String face(String file, String weight, Set<Integer> letters) {
        try (InputStream in = Typeface.file(file);
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            TTFSubsetter some = new TTFSubsetter(font, KEPT);
            some.addAll(letters);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            some.writeToStream(out);
            return "@font-face{font-family:Roboto;font-weight:" + weight + ";src:url(data:font/ttf;base64,"
                    + Base64.getEncoder().encodeToString(out.toByteArray()) + ")}\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
