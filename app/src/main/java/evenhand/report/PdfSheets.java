package evenhand.report;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** The sheets of one paper, and how far down the last of them is written. Points, from below. */
final class PdfSheets {
    static final double MARGIN = 46;
    static final Color INK = Color.BLACK;
    static final Color QUIET = new Color(0x545454);
    static final Color RULE = new Color(0xb8b8b8);
    private static final double FOOT = 44;
    private static final double FOOT_SIZE = 7.5;

    private final PDDocument document;
    private final PaperSize size;
    private final PdfType type;
    private final PdfTags tags;
    private final List<PDPage> pages = new ArrayList<>();
    private PDPageContentStream stream;

    /** Where the next line begins. */
    double y;

    PdfSheets(PDDocument document, PaperSize size, PdfType type, PdfTags tags) throws IOException {
        this.document = document;
        this.size = size;
        this.type = type;
        this.tags = tags;
        stream = open();
    }

    double width() {
        return size.width() - 2 * MARGIN;
    }

    double right() {
        return size.width() - MARGIN;
    }

    double height() {
        return size.height();
    }

    PDPageContentStream stream() {
        return stream;
    }

    PDPage page() {
        return pages.get(pages.size() - 1);
    }

    private PDPageContentStream open() throws IOException {
        PDPage next = new PDPage(new PDRectangle(size.width(), size.height()));
        document.addPage(next);
        pages.add(next);
        y = size.height() - MARGIN;
        return new PDPageContentStream(document, next);
    }

    void newPage() throws IOException {
        stream.close();
        stream = open();
    }

    boolean isFresh() {
        return y >= size.height() - MARGIN;
    }

    double room() {
        return y - MARGIN - FOOT / 2;
    }

    /** Opens a new page where there is no room for this on the one at hand. */
    void need(double height) throws IOException {
        if (height > room() && !isFresh()) {
            newPage();
        }
    }

    /** Draws something that belongs to an element. */
    void draw(PDStructureElement element, PdfTags.Drawing drawing) throws IOException {
        tags.draw(stream, page(), element, drawing);
    }

    /** One clean line of words; y of its base line. */
    void say(PDStructureElement element, String line, double x, double at, boolean bold, double size, Color colour)
            throws IOException {
        if (!line.isBlank()) {
            draw(element, () -> type.draw(stream, line, x, at, bold, size, colour));
        }
    }

    void rule(Color colour, double thick) throws IOException {
        PdfTags.artefact(stream, () -> {
            stream.setStrokingColor(colour);
            stream.setLineWidth((float) thick);
            stream.moveTo((float) MARGIN, (float) y);
            stream.lineTo((float) right(), (float) y);
            stream.stroke();
        });
    }

    /** All across, downwards from where the next line begins. */
    void tint(Color colour, double height) throws IOException {
        PdfTags.artefact(stream, () -> {
            stream.setNonStrokingColor(colour);
            stream.addRect((float) MARGIN, (float) (y - height), (float) width(), (float) height);
            stream.fill();
        });
    }

    /** A white box for a pen. */
    void box(double x, double bottom, double width, double height, double thick) throws IOException {
        PdfTags.artefact(stream, () -> {
            stream.setNonStrokingColor(Color.WHITE);
            stream.setStrokingColor(RULE);
            stream.setLineWidth((float) thick);
            stream.addRect((float) x, (float) bottom, (float) width, (float) height);
            stream.fillAndStroke();
        });
    }

    /** Ends the paper: at the foot of each sheet its title and number. */
    void close(String title) throws IOException {
        stream.close();
        String left =
                type.wrap(type.clean(title), false, FOOT_SIZE, width() - 150).get(0);
        for (int i = 0; i < pages.size(); i++) {
            String right = "page " + (i + 1) + " of " + pages.size();
            try (PDPageContentStream under = new PDPageContentStream(
                    document, pages.get(i), PDPageContentStream.AppendMode.APPEND, true, true)) {
                PdfTags.artefact(under, () -> {
                    double at = MARGIN - 14;
                    type.draw(under, left, MARGIN, at, false, FOOT_SIZE, QUIET);
                    double width = type.width(right, false, FOOT_SIZE);
                    type.draw(under, right, right() - width, at, false, FOOT_SIZE, QUIET);
                });
            }
        }
    }
}
